import { describe, expect, it } from 'vitest';
import { nextFromCauses } from '../../../src/compare/next-from-causes.ts';
import { nextTrials } from '../../../src/compare/next-trial.ts';
import { compareSeries } from '../../../src/compare/series.ts';
import { estimate, type Cause, type Part } from '../../../src/quantity/estimate.ts';
import type { Plan } from '../../../src/trial/plan.ts';
import { planned } from './planned.ts';
import { spinRun } from './runs.ts';

/** Spin runs of each article, without any drift taken out; what the plan still wants of them, or none. */
function nextOf(
  watts: Readonly<Record<string, readonly number[]>>,
  cells: readonly string[] | null,
  more: Partial<Plan> = {},
) {
  const runs = Object.entries(watts).flatMap(([article, list]) => list.map((w) => ({ article, w })));
  const byId = new Map(
    runs.map(({ article, w }, i) => spinRun({ article, order: i + 1, watts: w })).map((run) => [run.run, run]),
  );
  const own = planned(cells ?? [], more);
  // The plan also says which difference is the subject: it is there when the runs are compared.
  const compared = compareSeries({ ...own, claims: [] }, byId, { drift: 'none' });
  const record = { ...own, plan: cells === null ? null : own.plan };
  const [next] = nextTrials({ record, runs: byId, compared });
  return next!;
}
const of = (next: ReturnType<typeof nextOf>, article: string) =>
  next.runs.find(({ cell }) => cell.article === article)!;

// Sums of squares about the means: 2 + 8 = 10 with 5 degrees of freedom, s = √2.
const pair = { P0: [239, 241, 240, 240], P1: [198, 202, 200] };
const s = Math.SQRT2;

describe('one more run of a cell, where scatter is measured', () => {
  // Against one article alone Dunnett’s factor is Student’s t: 2.571 for 5, 2.447 for 6 degrees (tables of any handbook).
  it('makes the mean firmer and adds a degree of freedom', () => {
    const next = nextOf(pair, null);
    expect(next.from).toBe('repeats');
    expect(next.now).toBeCloseTo(2.571 * s * Math.sqrt(1 / 4 + 1 / 3), 2);
    expect(of(next, 'P1').after).toBeCloseTo(2.447 * s * Math.sqrt(1 / 4 + 1 / 4), 2);
    expect(of(next, 'P0').after).toBeCloseTo(2.447 * s * Math.sqrt(1 / 5 + 1 / 3), 2);
  });

  // Two articles and the baseline three times each, 6 degrees: two-sided 5 % factor 2.86 (Dunnett 1964, from memory).
  it('with more articles takes the factor that holds for all of them at once', () => {
    const three = { P0: [239, 241, 240], P1: [199, 201, 200], P2: [219, 221, 220] };
    const next = nextOf(three, null);
    expect(Math.abs(next.now - 2.86 * Math.sqrt(2 / 3))).toBeLessThan(0.005);
    // The baseline stands in both differences, an article in one.
    expect(next.runs[0]).toMatchObject({ baseline: true });
  });

  it('narrows most where runs are fewest', () => {
    expect(nextOf(pair, null).runs.map(({ cell }) => cell.article)).toEqual(['P1', 'P0']);
  });
});

describe('what the plan still wants', () => {
  const cells = ['spin P0 2.40 O1 x4', 'spin P1 2.40 O1 x4'];
  it('comes first, and what lies beyond it after', () => {
    const next = nextOf(pair, cells);
    expect(next.plan).toBe('open');
    expect(next.runs.map(({ cell, kind }) => [cell.article, kind])).toEqual([
      ['P1', 'planned'],
      ['P0', 'further'],
    ]);
  });

  it('is nothing where it is run as it was written, or where there is none', () => {
    expect(nextOf(pair, ['spin P0 2.40 O1 x4', 'spin P1 2.40 O1 x3']).plan).toBe('done');
    expect(nextOf(pair, null).plan).toBe('none');
    for (const next of [nextOf(pair, null), nextOf(pair, ['spin P0 2.40 O1 x4', 'spin P1 2.40 O1 x3'])])
      expect(next.runs.every(({ kind }) => kind === 'further')).toBe(true);
  });

  it('adds a difference where its cell was never run: it brings no degree of freedom, and a third to be held at once', () => {
    const next = nextOf(pair, [...cells, 'spin P2 2.40 O1']);
    const fresh = of(next, 'P2');
    // A single run beside four: wider than the difference of three beside four.
    expect(fresh.adds).toBeGreaterThan(next.now);
    // Held at once with another, the old difference grows wider.
    expect(fresh.after).toBeGreaterThan(next.now);
    expect(of(nextOf(pair, cells), 'P1').adds).toBeNull();
  });

  it('is no business of this table where the baseline cannot be held against it', () => {
    expect(of(nextOf(pair, [...cells, 'spin P2 3.00 O2']), 'P2')).toBeUndefined();
  });
});

describe('one more run of a cell, where its causes are put together', () => {
  const cause = (id: string, scope: Cause['scope']): Cause => ({
    id,
    name: id,
    kind: 'offset',
    distribution: 'normal',
    dof: Infinity,
    scope,
  });
  const runs = [spinRun({ article: 'P0', order: 1, watts: 240 }), spinRun({ article: 'P1', order: 2, watts: 200 })];
  const record = { ...planned([]), series: { ...planned([]).series, refit_Nm: 0.05 } };
  // The scatter of the lab stands in for repeats; figures and causes are laid over it by hand.
  const compared = compareSeries(
    { ...record, claims: [] },
    new Map(
      [...runs, spinRun({ article: 'P0', order: 3, watts: 241 }), spinRun({ article: 'P1', order: 4, watts: 201 })].map(
        (r) => [r.run, r],
      ),
    ),
    { drift: 'none' },
  );
  const standing = compared.standings[0]!;
  const parts: readonly Part[] = [
    { cause: 'refit of P1-2', u: 3 },
    { cause: 'refit of P0-1', u: -4 },
    { cause: 'level table', u: 12 },
  ];
  const [row] = standing.rows.filter(({ effect }) => effect !== null);
  // u = √(9 + 16 + 144) = 13, and the interval stands at twice that.
  const effect = {
    ...row!.effect!,
    estimate: estimate(-40, parts),
    simultaneous: [-66, -14] as const,
    ...{ runs: ['P1-2'], againstRuns: ['P0-1'] },
  };
  const figures = compared.cells.map((figure) => ({
    ...figure,
    estimate: estimate(
      0,
      parts.filter((p) => !p.cause.startsWith('refit') || p.cause.includes(figure.cell.article)),
    ),
  }));
  const widths = nextFromCauses({
    ...{ standing, figures, effects: [effect], fresh: [] },
    causes: new Map(
      [cause('refit of P1-2', 'refit'), cause('refit of P0-1', 'refit'), cause('level table', 'series')].map((c) => [
        c.id,
        c,
      ]),
    ),
  });
  const after = (article: string) => widths.runs.find((run) => run.cell.article === article)!.after;

  it('halves the variance that a run draws anew, and nothing of what the series shares', () => {
    expect(widths.now).toBeCloseTo(26, 9);
    expect(after('P1')).toBeCloseTo(2 * Math.sqrt(169 - 9 / 2), 9);
    expect(after('P0')).toBeCloseTo(2 * Math.sqrt(169 - 16 / 2), 9);
  });

  it('names the cause that takes the largest part, 144 of 169', () => {
    expect(widths.largest).toEqual({ cause: 'level table', share: expect.closeTo(144 / 169, 9) as number });
  });
});
