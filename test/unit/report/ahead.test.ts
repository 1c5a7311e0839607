import { describe, expect, it } from 'vitest';
import { settledBy } from '../../../src/trial/break-in.ts';
import type { PlanCell, TrialKind } from '../../../src/trial/plan.ts';
import { rig } from './fixture.ts';
import { headsOf, marginOf, pagesOf, rowsOf, sectionOf, wordsIn } from './page-at.ts';
import { textsOf } from './reading.ts';

const cell = (trial: TrialKind, article: string, wanted: number): PlanCell => ({
  ...{ trial, article, oil: 'L1', fill_m3: 2.4e-3, tilt_ratio: 0, wanted },
});
const cells = [cell('spin', 'A0', 4), cell('spin', 'A1', 4), cell('heat-up', 'A0', 1), cell('heat-up', 'A1', 1)];
const { page } = pagesOf({ plan: { cells } });

describe('what a plan can and cannot separate, on its sheet', () => {
  it('stands effect by effect: of what it can be told apart, and why not of the rest', () => {
    expect(headsOf(page('plan/'), 'reach-spin')).toEqual(['effect', 'can be told apart', 'cannot, and why']);
    const rows = rowsOf(page('plan/'), 'reach-spin');
    expect(rows).toContainEqual(['Article against the baseline at the same litres', 'A1 with L1', '—']);
    expect(rows).toContainEqual(['What the oil does', '—', 'Run with one oil only.']);
    expect(rows).toContainEqual([
      'A drift that bends',
      '—',
      expect.stringContaining('run the baseline in the middle') as string,
    ]);
  });

  it('has a table for each kind of trial, the first open and the others folded', () => {
    const { blocks } = sectionOf(page('plan/'), 'reach');
    expect(blocks.map(({ kind }) => kind)).toEqual(['prose', 'table', 'fold']);
    expect(rowsOf(page('plan/'), 'reach-heat-up').map(([effect]) => effect)).toContain('What airflow does');
  });

  it('is said before testing too: without a run the section is the same', () => {
    const before = pagesOf({ plan: { cells }, runs: () => [], derived: () => [] });
    expect(sectionOf(before.page('plan/'), 'reach')).toEqual(sectionOf(page('plan/'), 'reach'));
  });

  it('is left out of a plan without cells', () => {
    expect(
      pagesOf({ plan: { cells: [] } })
        .page('plan/')
        .sections.map(({ id }) => id),
    ).not.toContain('reach');
  });
});

describe('the next run', () => {
  it('stands on the standing: what is wanted first, how wide the differences are then', () => {
    const rows = rowsOf(page('standing/'), 'next-runs');
    expect(rows.map(([, plan]) => plan)).toEqual([...rows.map(([, plan]) => plan)].sort().reverse());
    expect(rows[0]![1]).toBe('wanted');
    const halves = rows.map(([, , half]) => Number(half));
    expect(halves.every((half) => half > 0)).toBe(true);
    expect(wordsIn(page('standing/'), 'next-trial')).toMatch(/the differences stand at ± \d+(\.\d+)? W on average/);
  });

  it('stands on the plan sheet too, one row a standing, with a way to the whole', () => {
    const rows = rowsOf(page('plan/'), 'next-of-standings');
    expect(rows.map(([standing]) => standing)).toEqual(['At 300 wheel rpm and 60 °C', 'By final rise above ambient']);
    expect(rows[0]![2]).toMatch(/, wanted$/);
  });

  it('lies beyond the plan where that is run as it was written', () => {
    const done = pagesOf({ plan: { cells: [cell('spin', 'A0', 1), cell('spin', 'A1', 1)] } });
    expect(wordsIn(done.page('standing/'), 'next-trial')).toContain('The plan is run as it was written.');
    expect(rowsOf(done.page('standing/'), 'next-runs').every(([, plan]) => plan === 'beyond the plan')).toBe(true);
  });
});

describe('how a state of the rig was broken in', () => {
  const breakIn = (end_ratio: number) => ({
    settledWithin_ratio: 0.002,
    loads: [
      { power_W: 11e3, start_ratio: 0.939, middle_ratio: 0.948, end_ratio: 0.949 },
      { power_W: 22e3, start_ratio: 0.946, middle_ratio: 0.955, end_ratio },
    ],
  });
  const sheet = (end_ratio: number | null) => {
    const record = end_ratio === null ? null : breakIn(end_ratio);
    const [state] = rig.states;
    return pagesOf({ rig: { states: [{ ...state!, breakIn: record, settled: settledBy(record) }] } }).page('rig/');
  };

  it('stands on the rig sheet load by load, with its own criterion', () => {
    expect(rowsOf(sheet(0.956), 'break-in-table')).toEqual([
      ['M1-a', '11.0 kW', '93.9 %', '94.8 %', '94.9 %', '+0.10 %', 'yes'],
      ['M1-a', '22.0 kW', '94.6 %', '95.5 %', '95.6 %', '+0.10 %', 'yes'],
    ]);
    expect(textsOf(sheet(0.956))).toMatch(/State M1-a had settled.*no more than 0\.20\s%/);
  });

  it('says so where it had not settled, and that what was run in it is indicative only', () => {
    expect(rowsOf(sheet(0.959), 'break-in-table').at(-1)!.slice(-2)).toEqual(['+0.40 %', 'no']);
    expect(textsOf(sheet(0.959))).toMatch(/State M1-a had not settled.*indicative only/);
  });

  it('says that none is recorded, and nothing more', () => {
    expect(textsOf(sheet(null))).toMatch(/Break-in not recorded of \nM1-a/);
    expect(() => rowsOf(sheet(null), 'break-in-table')).toThrow('no table');
  });
});

describe('a reader of the margin', () => {
  it('is told what the forecast takes as it is', () => {
    expect(marginOf(page('standing/'), 'next-trial', 'What it rests on.')).toMatch(/scatter|draws anew/);
    expect(marginOf(page('plan/'), 'reach', 'Cannot is a result.')).toContain('however often');
  });
});
