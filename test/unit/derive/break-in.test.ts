import { describe, expect, it } from 'vitest';
import { breakInFindings } from '../../../src/derive/break-in.ts';
import { readNotes } from '../../../src/notes/book.ts';
import { rigPage } from '../../../src/report/rig.ts';
import { viewOf } from '../../../src/report/view.ts';
import { asFiles } from '../notes/good-book.ts';
import { outcome, placed, spoil } from '../notes/spoilt.ts';
import { input } from '../report/fixture.ts';

const state = 'preload-touched: false, note: "as built"';
const written = (end: string): string =>
  `preload-touched: false, break-in: { settled-within: 0.2 %, loads: [{ power: 11 kW, start: 93 %, middle: 94 %, end: 94.1 % }, { power: 22 kW, start: 94.1 %, middle: 95.0 %, end: ${end} }] }, note: "as built"`;
const bookWith = (end: string) => readNotes(asFiles(spoil('hill-bowl/rig.md', state, written(end)))).series[0]!;

describe('the break-in of a rig state', () => {
  it('that had not settled warns once, at its place, with the load that moved most and how many runs lean on it', () => {
    const { rig, runs } = bookWith('95.9 %');
    const findings = breakInFindings(rig, runs, 'hill-bowl');
    expect(rig.states[0]?.settled).toBe(false);
    expect(placed(findings)).toEqual(['state-not-settled rig.md:18:91']);
    expect(findings[0]).toMatchObject({ level: 'warning', about: { series: 'hill-bowl' } });
    expect(findings[0]?.says).toContain('22.0 kW still rose by 0.90 %');
    expect(findings[0]?.says).toContain(`${runs.length} runs`);
  });

  it('that had not settled says nothing while no run was made in it, or only drafts', () => {
    const { rig, runs } = bookWith('95.9 %');
    expect(breakInFindings(rig, [], 'hill-bowl')).toEqual([]);
    const drafts = runs.map((run) => ({ ...run, status: 'draft' as const }));
    expect(breakInFindings(rig, drafts, 'hill-bowl')).toEqual([]);
  });

  it('that settled, or was never recorded, warns of nothing', () => {
    const settled = bookWith('95.1 %');
    expect(settled.rig.states[0]?.settled).toBe(true);
    expect(breakInFindings(settled.rig, settled.runs, 'hill-bowl')).toEqual([]);
    const { rig, runs } = outcome(spoil('hill-bowl/rig.md', state, state)).notes.series[0]!;
    expect(rig.states[0]).toMatchObject({ breakIn: null, settled: null });
    expect(breakInFindings(rig, runs, 'hill-bowl')).toEqual([]);
  });

  it('needs its unit like every efficiency', () => {
    expect(placed(outcome(spoil('hill-bowl/rig.md', state, written('95.1'))).loud)).toEqual([
      'unit-missing rig.md:18:234',
    ]);
  });
});

describe('the rig sheet', () => {
  const textOf = (rig: Parameters<typeof input>[0]): string =>
    JSON.stringify(rigPage(viewOf(input(rig))).sections.find(({ id }) => id === 'states')?.blocks);

  it('says that a break-in is not recorded', () => {
    expect(textOf({})).toContain('Break-in not recorded of ');
  });

  it('holds start, middle and end of each load, and whether it settled', () => {
    const { rig } = bookWith('95.9 %');
    const said = textOf({ rig: { states: rig.states } });
    for (const text of ['94.1\u202f%', '95.0\u202f%', '95.9\u202f%', '+0.90\u202f%', 'had not settled'])
      expect(said).toContain(text);
    expect(textOf({ rig: { states: bookWith('95.1 %').rig.states } })).toContain('Q1-a had settled');
  });
});
