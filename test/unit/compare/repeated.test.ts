import { describe, expect, it } from 'vitest';
import { groupsOf } from '../../../src/compare/group.ts';
import { repeated, type Repeating } from '../../../src/compare/repeated.ts';
import { judge } from '../../../src/compare/standing.ts';
import { difference, effectiveDof, standardUncertainty, type Cause } from '../../../src/quantity/estimate.ts';
import { tukeyKramer } from '../../../src/statistics/tukey.ts';
import { calibrationCause, plan, series, spinRun } from './runs.ts';

type Row = readonly [article: string, order: number, watts: number];
const groupOf = (rows: readonly Row[], more: { calibration_W?: number; readings_W?: number } = {}) => {
  const runs = rows.map(([article, order, watts]) => spinRun({ article, order, watts, ...more }));
  return groupsOf(new Map(runs.map((r) => [r.run, r])))[0]!;
};
const celledOf = (rows: readonly Row[], more = {}) =>
  repeated(groupOf(rows, more), { ...repeating, isSeriesCause: (id) => id.startsWith('calibration:') })!;
const repeating: Repeating = {
  isSeriesCause: () => false,
  isBase: ({ article }) => article === 'P0',
  time: { over: 'order', of: ({ order }) => order },
  lab: null,
};
const tableOf = (causes: readonly Cause[]) => new Map([calibrationCause, ...causes].map((c) => [c.id, c]));
const diff = (rows: readonly Row[], more = {}) => {
  const celled = celledOf(rows, more);
  const [a, b] = ['P0', 'P1'].map((id) => celled.cells.find((c) => c.cell.article === id)!.estimate);
  return { celled, d: difference(b!, a!) };
};

/** P1 is 20 W below P0 and everything rises by 3 W a run; what is added on top is scatter. */
const drifting = (orders: readonly (readonly ['P0' | 'P1', number])[], scatter: readonly number[] = []): Row[] =>
  orders.map(([article, order], i) => [article, order, (article === 'P0' ? 240 : 220) + 3 * order + (scatter[i] ?? 0)]);
const lopsided = [
  ['P0', 1],
  ['P0', 2],
  ['P1', 3],
  ['P0', 4],
  ['P1', 6],
  ['P1', 8],
  ['P0', 9],
] as const;

describe('baseline, candidate, baseline: a drift of the bench is taken out', () => {
  // aba-bracket at the level of a cell: the candidate at t2 is held against the baseline's line between t1 and t3, by hand
  it('so that a candidate run late is not blamed for it', () => {
    const { d, celled } = diff(drifting(lopsided));
    expect(d.value).toBeCloseTo(-20, 9);
    expect(celled.drift!.slope).toBeCloseTo(3, 9);
    // Plain means would say: P0 at mean order 4, P1 at 17/3, so 5 W too little.
    expect(-20 + 3 * (17 / 3 - 4)).toBeCloseTo(-15, 9);
  });

  it('and its doubt is what least squares with a common slope leaves: s·√(1/n1 + 1/n2 + (t1 − t2)²/Sxx), by hand', () => {
    const { d, celled } = diff(drifting(lopsided, [2, -1, 1, -2, 0, 1, -1]));
    // mean orders 4 and 17/3; sums of squares within: 9 + 4 + 0 + 25 and (64 + 1 + 49)/9
    const sxx = 38 + 114 / 9;
    const wanted = celled.repeatability!.s * Math.sqrt(1 / 4 + 1 / 3 + (17 / 3 - 4) ** 2 / sxx);
    expect(celled.repeatability!.dof).toBe(7 - 3);
    expect(standardUncertainty(d)).toBeCloseTo(wanted, 9);
  });

  it('and A-B-B-A at equal spacing cancels a straight drift whatever its size: s·√(1/n + 1/n)', () => {
    const balanced = [
      ['P0', 1],
      ['P1', 2],
      ['P1', 3],
      ['P0', 4],
      ['P0', 5],
      ['P1', 6],
      ['P1', 7],
      ['P0', 8],
    ] as const;
    const { d, celled } = diff(drifting(balanced, [1, -1, 2, 0, -1, 0, 1, -2]));
    // scatter means: P0 −0.5, P1 0.5
    expect(d.value).toBeCloseTo(-19, 9);
    expect(standardUncertainty(d)).toBeCloseTo(celled.repeatability!.s * Math.SQRT1_2, 9);
  });
});

describe('what belongs where', () => {
  const rows: Row[] = [
    ['P0', 1, 240],
    ['P1', 2, 221],
    ['P0', 3, 243],
    ['P1', 4, 219],
    ['P0', 5, 241],
    ['P1', 6, 223],
  ];

  it('a calibration that all runs share cancels in the difference and stands in each cell', () => {
    const { d, celled } = diff(rows, { calibration_W: 7 });
    expect(d.parts.map((p) => p.cause)).not.toContain('calibration:torque-low');
    for (const c of celled.cells)
      expect(c.estimate.parts[0]).toEqual({ cause: 'calibration:torque-low', u: expect.closeTo(7, 9) as number });
  });

  it('the readings of one run are inside the scatter between refits and are not counted again', () => {
    expect(standardUncertainty(diff(rows, { readings_W: 4 }).d)).toBe(standardUncertainty(diff(rows).d));
  });

  it('two cells sized by one pooled scatter have its degrees of freedom, not the sum of both', () => {
    const { d, celled } = diff(rows);
    // 6 runs less 2 cells less the drift
    expect(celled.repeatability!.dof).toBe(3);
    expect(effectiveDof(d, tableOf(celled.causes))).toBeCloseTo(3, 9);
    const strangers = tableOf(celled.causes.map((c) => ({ ...c, family: c.id })));
    expect(effectiveDof(d, strangers)).toBeGreaterThan(4);
  });

  it('without repeats there is no scatter, and no cells; with two repeats in all drift is not taken out', () => {
    expect(
      repeated(
        groupOf([
          ['P0', 1, 240],
          ['P1', 2, 220],
        ]),
        repeating,
      ),
    ).toBeNull();
    const few = celledOf([
      ['P0', 1, 240],
      ['P1', 2, 221],
      ['P0', 3, 242],
      ['P1', 4, 219],
    ]);
    expect(few.drift).toBeNull();
    expect(few.repeatability).toEqual({ s: expect.closeTo(Math.SQRT2, 9) as number, dof: 2 });
    expect(few.notes.join()).toContain('not taken out');
  });
});

describe('the word about a difference', () => {
  const judgedOf = (gap: number) => {
    const rows: Row[] = [
      ['P0', 1, 240],
      ['P1', 2, 241 - gap],
      ['P0', 3, 242],
      ['P1', 4, 239 - gap],
      ['P0', 5, 241],
      ['P1', 6, 243 - gap],
      ['P0', 7, 241],
    ];
    const group = groupOf(rows);
    const celled = repeated(group, repeating)!;
    return judge({ group, celled, causes: tableOf(celled.causes), series, plan, trials: null });
  };

  it('is separated beyond the half-width against the baseline and not separated within it', () => {
    const [small, large] = [judgedOf(2), judgedOf(40)].map((j) => j.effects[0]!);
    for (const e of [small!, large!]) {
      const half = tukeyKramer({ groups: 2, dof: e.dof, coverage: 0.95 }) * standardUncertainty(e.estimate);
      expect((e.simultaneous[1] - e.simultaneous[0]) / 2).toBeCloseTo(half, 9);
      expect(e.separated).toBe(Math.abs(e.estimate.value) > half);
    }
    expect([small!.separated, large!.separated]).toEqual([false, true]);
  });

  it('gives two cells one letter when they are not separated and two when they are', () => {
    const letters = (gap: number) => judgedOf(gap).standings[0]!.rows.map((r) => r.letters);
    expect(new Set(letters(2)).size).toBe(1);
    expect(new Set(letters(40)).size).toBe(2);
  });
});
