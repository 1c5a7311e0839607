import { describe, expect, it } from 'vitest';
import { estimate } from '../../../src/quantity/estimate.ts';
import type { SectionData } from '../../../src/report/page.ts';
import type { DerivedRun } from '../../../src/trial/derived.ts';
import { input } from './fixture.ts';
import { fileOf, media } from './fixture-flow.ts';
import { blocksOf } from './reading.ts';
import {
  firstOf,
  headsOf,
  joined,
  leadOf,
  marginOf,
  pagesOf,
  plainSpaces,
  rowsOf,
  sectionOf,
  wordsIn,
} from './page-at.ts';

const { page, pages } = pagesOf();
const pair = page('side-by-side/F-02~F-03/');

const level = (run: string, level_z_m: number | null) => ({
  derived: (all: readonly DerivedRun[]) =>
    all.map((d) => (d.run === run ? { ...d, conditions: { ...d.conditions, level_z_m } } : d)),
});

describe('which flow trials stand side by side', () => {
  it('those with one oil and one tilt and the same litres or the same level, the baseline’s first', () => {
    expect(
      pages.filter(({ kind }) => kind === 'side-by-side').map(({ path }) => path.slice('series/pan/'.length)),
    ).toEqual(['side-by-side/', 'side-by-side/F-02~F-03/', 'side-by-side/F-02~F-04/', 'side-by-side/F-03~F-04/']);
  });

  it('and each pair says on which basis', () => {
    expect(rowsOf(page('side-by-side/'), 'pairs-table').map((cells) => cells.slice(0, 3))).toEqual([
      ['A0w, 2.40 L, F-02', 'A1w, 2.40 L, F-03', 'same litres and level'],
      ['A0w, 2.40 L, F-02', 'A1w, 3.59 L, F-04', 'same level'],
      ['A1w, 2.40 L, F-03', 'A1w, 3.59 L, F-04', 'same level'],
    ]);
    // 3 mm is the tolerance of the series: 3.2 mm apart is another level
    const apart = pagesOf(level('F-03', -0.0565));
    expect(rowsOf(apart.page('side-by-side/'), 'pairs-table')[0]![2]).toBe('same litres');
  });

  it('others are not there, and the list says why', () => {
    expect(rowsOf(page('side-by-side/'), 'apart-table').map((cells) => cells.at(-1))).toEqual([
      'one is level, the other 12 % nose up',
      'one is 12 % nose up, the other level',
      'one is 12 % nose up, the other level',
    ]);
    const apart = pagesOf(level('F-04', -0.06));
    expect(apart.at('side-by-side/F-02~F-04/')).toBeUndefined();
    expect(wordsIn(apart.page('side-by-side/'), 'not-side-by-side')).toContain(
      'neither the litres are the same (2.40 L and 3.59 L) nor the levels (−53.3 mm and −60.0 mm)',
    );
    const unknown = pagesOf(level('F-04', null));
    expect(wordsIn(unknown.page('side-by-side/'), 'not-side-by-side')).toContain(
      'nor the levels (−53.3 mm and not known)',
    );
  });

  it('nor those of another oil, rig state or direction', () => {
    const other = (change: Partial<DerivedRun>) =>
      wordsIn(
        pagesOf({ derived: (all) => all.map((d) => (d.run === 'F-03' ? { ...d, ...change } : d)) }).page(
          'side-by-side/',
        ),
        'not-side-by-side',
      );
    const own = input().derived.get('F-03');
    expect(other({ cell: { ...own!.cell, oil: 'L2' } })).toContain('oils differ: L1 and L2');
    expect(other({ rigState: 'M1-b' })).toContain('rig states differ: M1-a and M1-b');
    expect(other({ conditions: { ...own!.conditions, rotation: 'reverse' } })).toContain(
      'they turned in opposite directions',
    );
  });
});

describe('two runs side by side', () => {
  it('say in title and lead on which basis, and Reach of both', () => {
    expect(plainSpaces(pair.title)).toBe('A0w 2.40 L and A1w 2.40 L, side by side at the same litres and level');
    expect(leadOf(pair)).toBe(
      'Same litres and level: 2.40 L of L1 in both. A0w, 2.40 L: Reach is 1 at 150 wheel rpm and 3 at 300 on the way up. A1w, 2.40 L: Reach is 0 at 150 wheel rpm and 2 at 300 on the way up. ',
    );
    expect(marginOf(page('side-by-side/F-02~F-04/'), 'both', 'Same level.')).toContain('may take more litres');
  });

  it('have a section a step that can be linked, with stills and two drawings to one scale', () => {
    expect(pair.sections.map(({ id }) => id)).toEqual(['both', '150rpm-up', '300rpm-up', 'way-down']);
    const step = { ...pair, sections: [sectionOf(pair, '300rpm-up')] };
    const [left, right] = firstOf(step, 'pair')!.sides;
    expect(joined(left.title)).toBe('A0w clear bowl, 2.40 L');
    expect(left.blocks.map(({ kind }) => kind)).toEqual(['stills', 'chart']);
    // its still is not in the folder
    expect(right.blocks.map(({ kind }) => kind)).toEqual(['chart']);
    const drawings = blocksOf(step).flatMap((b) => (b.kind === 'chart' ? [b.chart.data as SectionData] : []));
    expect(drawings).toHaveLength(2);
    expect(drawings[0]!.frame).toEqual(drawings[1]!.frame);
    expect(drawings[0]!.frame).toMatchObject({ left: -111, right: 120, top: 111, bottom: -120 });
    expect(drawings.map(({ running }) => running.map(({ z }) => Math.round(z)))).toEqual([[-65], [-64]]);
  });

  it('take the still by rule before the one that was chosen', () => {
    const [left] = firstOf({ ...pair, sections: [sectionOf(pair, '300rpm-up')] }, 'pair')!.sides;
    const [stills] = left.blocks;
    expect(stills?.kind === 'stills' && stills.items.map(({ source }) => source)).toEqual([
      'pan/pictures/F-02-300.png',
    ]);
  });

  it('lay grades side by side, and name a difference only where both may be read and used', () => {
    expect(headsOf(pair, 'compare-300rpm-up')).toEqual(['seen', 'A0w, F-02', 'A1w, F-03', 'difference']);
    const rows = rowsOf(pair, 'compare-300rpm-up');
    expect(rows[0]).toEqual(['Reach', '3 joint', '2', 'one lower']);
    expect(rows[1]).toEqual(['Side fall', '1 joint', '1', 'equal']);
    expect(rows[2]).toEqual(['Wall hit (not usable)', '1 joint', '1', 'not usable']);
    expect(rows.find(([name]) => name === 'running level')!.slice(1, 3)).toEqual(['−65.0 ± 1.2 mm', '−64.0 ± 1.2 mm']);
    expect(rows.find(([name]) => name === 'sump')!.slice(1, 3)).toEqual(['58.0 °C', '58.0 °C']);
  });

  it('name no difference where one is open, or could not be graded', () => {
    expect(rowsOf(pair, 'way-down-table')).toEqual([
      ['150 rpm down', '1 or ng open', '0 or 1 open', '−62.0 ± 1.2 mm', '−61.0 ± 1.2 mm', 'left open'],
    ]);
    const blind = pagesOf({
      derived: (all) =>
        all.map((d) =>
          d.run === 'F-03'
            ? {
                ...d,
                flow: {
                  ...d.flow!,
                  steps: d.flow!.steps.map((s) => ({
                    ...s,
                    grades: {
                      ...s.grades!,
                      reach: { ...s.grades!.reach, stands: 'ng' as const, how: 'equal' as const },
                    },
                  })),
                },
              }
            : d,
        ),
    }).page('side-by-side/F-02~F-03/');
    expect(rowsOf(blind, 'compare-300rpm-up')[0]!.at(-1)).toBe('not gradable');
  });

  it('give the way down a row a step that can be linked', () => {
    const block = blocksOf(pair).find((b) => b.kind === 'table' && b.table.id === 'way-down-table');
    expect(block?.kind === 'table' && block.table.rows.map(({ anchor }) => anchor)).toEqual(['150rpm-down']);
  });

  it('play two clips together where both are in the folder, without a trace of their own', () => {
    const clips = firstOf(pair, 'two-clips')!.clips;
    expect(clips.map(({ source }) => source)).toEqual(['pan/runs/F-02.webm', 'pan/runs/F-03.webm']);
    expect(clips.map(({ traces }) => traces)).toEqual([null, null]);
    expect(clips.map(({ steps }) => steps[1]!.name)).toEqual(['300 rpm up', '300 rpm up']);
    const one = new Map([...media].filter(([path]) => path !== 'pan/runs/F-03.webm'));
    expect(firstOf(pagesOf({ media: one }).page('side-by-side/F-02~F-03/'), 'two-clips')).toBeUndefined();
  });

  it('say where two stills were not taken by one rule', () => {
    const both = new Map([...media, fileOf('pan/pictures/F-03-300.png')]);
    const changed = pagesOf({
      media: both,
      runs: (all) =>
        all.map((r) =>
          r.id === 'F-03'
            ? { ...r, stills: r.stills.map((s) => ({ ...s, rule: 'chosen' as const, offset_s: null })) }
            : r,
        ),
    }).page('side-by-side/F-02~F-03/');
    expect(marginOf(changed, '300rpm-up', 'Not the same moment.')).toBe('The two stills were not taken by one rule.');
    expect(
      marginOf(pagesOf({ media: both }).page('side-by-side/F-02~F-03/'), '300rpm-up', 'Not the same moment.'),
    ).toBeUndefined();
  });

  it('draw the race only where the axle is tilted', () => {
    const drawn = blocksOf(pair).flatMap((b) => (b.kind === 'chart' ? [b.chart.data as SectionData] : []));
    expect(drawn.every(({ race }) => race === null)).toBe(true);
  });
});

describe('what differs besides the article', () => {
  /** The second run colder, its Reynolds number that of the thicker oil; the probe in the mist where asked for. */
  const colder = (by_K: number, reynolds: number, mist = false) =>
    pagesOf({
      derived: (all) =>
        all.map((d) =>
          d.run !== 'F-03'
            ? d
            : {
                ...d,
                flow: {
                  ...d.flow!,
                  steps: d.flow!.steps.map((s) => ({ ...s, sump_K: s.sump_K! - by_K, probeAbove: mist })),
                },
                results: d.results.map((r) =>
                  r.quantity === 'reynolds' ? { ...r, estimate: estimate(reynolds, []) } : r,
                ),
              },
        ),
    }).page('side-by-side/F-02~F-03/');
  const sumpOf = (sheet: typeof pair) => plainSpaces(marginOf(sheet, 'both', 'Sump.')!);

  it('is said of the oil: which run was colder, and how much thicker its oil was', () => {
    // 2100 in the other run: 2100/1750 is 1.2
    expect(sumpOf(colder(2.4, 1750))).toBe(
      'A1w in F-03 was run 2.4 K colder than A0w in F-02, at 150 rpm up where they lie farthest apart: its oil was 20 % thicker, which moves what is carried and what is held up.',
    );
    expect(sumpOf(colder(-2.4, 2520))).toContain('A0w in F-02 was run 2.4 K colder than A1w in F-03');
    expect(sumpOf(colder(-2.4, 2520))).toContain('20 % thicker');
    expect(sumpOf(pair)).toBe('Alike in both, within 0.0 K at every step.');
  });

  it('is not said of a probe in the mist, which the table marks', () => {
    const mist = colder(-2, 2400, true);
    expect(sumpOf(mist)).toBe('At no step was it read in both: how thick the oils were is not known.');
    const cells = rowsOf(mist, 'compare-300rpm-up').find(([name]) => name === 'sump')!;
    expect(cells.slice(1, 3)).toEqual(['58.0 °C', '60.0 °C, probe above the level']);
  });

  it('stands before pictures in oils more than twice as thick as each other', () => {
    expect(wordsIn(colder(20, 700), 'both')).toContain('The oil of one run was 3.0 times thicker');
    expect(wordsIn(colder(-20, 6300), 'both')).toContain('The oil of one run was 3.0 times thicker');
    expect(wordsIn(colder(10, 1200), 'both')).not.toContain('times thicker');
  });

  it('is weighed: one grade against two observers of one step, a level without what both share', () => {
    expect(marginOf(pair, 'both', 'One grade.')).toContain('unlike grades of Reach in 2 of 7 pairs');
    expect(marginOf(pagesOf({ agreements: [] }).page('side-by-side/F-02~F-03/'), 'both', 'One grade.')).toBeUndefined();
    // both runs of this book have one and the same two causes
    expect(marginOf(pair, 'both', 'Levels.')).toContain('In the ± of both stands refitting and torque zero, which');
    const own = pagesOf({
      derived: (all) =>
        all.map((d) => ({
          ...d,
          results: d.results.map((r) =>
            r.quantity === 'running-level'
              ? { ...r, estimate: estimate(r.estimate!.value, [{ cause: `readings:${d.run}`, u: 5e-4 }]) }
              : r,
          ),
        })),
    }).page('side-by-side/F-02~F-03/');
    expect(marginOf(own, 'both', 'Levels.')).toBeUndefined();
  });
});

describe('an article sheet', () => {
  it('leads to the pairs that it is in behind its window copy', () => {
    expect(JSON.stringify(sectionOf(page('articles/A1/'), 'runs'))).toContain('series/pan/side-by-side/F-02~F-03/');
    expect(wordsIn(page('articles/A1/'), 'runs')).toContain('A0w 2.40 L (F-02) and A1w 2.40 L (F-03)');
  });
});
