import { describe, expect, it } from 'vitest';
import { groupsOf } from '../../../src/compare/group.ts';
import { repeated, type Celled } from '../../../src/compare/repeated.ts';
import {
  difference,
  effectiveDof,
  standardUncertainty,
  type Cause,
  type Estimate,
} from '../../../src/quantity/estimate.ts';
import { fillNormal, seededSource } from '../../../src/statistics/seeded.ts';
import { coverageFactor } from '../../../src/statistics/student.ts';
import { spinRun } from './runs.ts';

type Row = readonly [article: string, day: number, watts: number];

/** Runs in the order of their days; no drift is taken out. */
const celledOf = (rows: readonly Row[]): Celled => {
  const runs = rows.map(([article, day, watts], i) => ({
    ...spinRun({ article, order: i + 1, watts }),
    startedDay: `2026-03-0${day}`,
  }));
  return repeated(groupsOf(new Map(runs.map((r) => [r.run, r])))[0]!, {
    isSeriesCause: () => false,
    isBase: ({ article }) => article === 'P0',
    time: null,
    lab: null,
  })!;
};
const ofArticle = (celled: Celled, id: string): Estimate =>
  celled.cells.find(({ cell }) => cell.article === id)!.estimate;
const dayParts = (e: Estimate): number[] => e.parts.filter(({ cause }) => cause.startsWith('day:')).map(({ u }) => u);

const [day, refit] = [
  [6, -5, 4, -5],
  [0.4, -0.3, 0.1, -0.5, 0.2, 0.3, -0.4, 0.6],
];
const sideBySide = (['P0', 'P1'] as const).flatMap((article, a) =>
  day.map((d, i): Row => [article, i + 1, (a === 0 ? 240 : 220) + d + refit[4 * a + i]!]),
);

describe('days of a plan that runs several articles on one day', () => {
  it('are a scatter beside the refits: two articles on four days, by hand', () => {
    const { days, repeatability } = celledOf(sideBySide);
    // Two-way table without repeat: s² from the residuals of cell and day, s_day² = (MS_day − s²)/2.
    const y = [0, 1].map((a) => sideBySide.slice(4 * a, 4 * a + 4).map(([, , w]) => w));
    const apart = y[0]!.map((w, i) => w - y[1]![i]!);
    const middle = apart.reduce((a, b) => a + b, 0) / 4;
    const s2 = apart.reduce((sum, x) => sum + (x - middle) ** 2, 0) / 2 / 3;
    const means = y[0]!.map((w, i) => (w + y[1]![i]!) / 2);
    const all = means.reduce((a, b) => a + b, 0) / 4;
    const ms = (2 * means.reduce((sum, x) => sum + (x - all) ** 2, 0)) / 3;
    expect(repeatability).toEqual({ s: expect.closeTo(Math.sqrt(s2), 9) as number, dof: 3 });
    expect(days!.s_day).toBeCloseTo(Math.sqrt((ms - s2) / 2), 9);
    expect(days!.ratio).toBeCloseTo(ms / s2, 9);
    expect(days).toMatchObject({ days: 4, separated: true });
  });

  it('fall out of a difference of articles that share them, and stay in each article', () => {
    const celled = celledOf(sideBySide);
    const [p0, p1] = [ofArticle(celled, 'P0'), ofArticle(celled, 'P1')];
    expect(dayParts(p0)).toEqual(Array.from({ length: 4 }, () => expect.closeTo(celled.days!.s_day / 4, 9) as number));
    expect(dayParts(difference(p1, p0)).every((u) => Math.abs(u) < 1e-12)).toBe(true);
    expect(standardUncertainty(difference(p1, p0))).toBeCloseTo(celled.repeatability!.s / Math.sqrt(2), 9);
  });

  it('are not told where every run has a day of its own, nor of two days, which no scatter can be taken from', () => {
    expect(celledOf(sideBySide.map(([a, , w], i): Row => [a, i + 1, w])).days).toBeNull();
    expect(celledOf(sideBySide.map(([a, d, w]): Row => [a, d > 2 ? 2 : 1, w])).days).toBeNull();
  });

  it('that add nothing leave the scatter of refits as it was', () => {
    const level = sideBySide.map(([a, d, w]): Row => [a, d, w - day[d - 1]!]);
    const { days, repeatability } = celledOf(level);
    expect(days!.separated).toBe(false);
    expect(repeatability!.dof).toBe(6);
  });
});

it('intervals hold the truth at least as often as they say, where an article was run on days of its own', () => {
  const draws = 400;
  const plan = [
    ...[1, 2, 3, 4].flatMap((d) => ['P0', 'P2', 'P3'].map((a) => [a, d] as const)),
    ...[5, 6].flatMap((d) => ['P1', 'P2', 'P3'].map((a) => [a, d] as const)),
  ];
  let [within, narrow] = [0, 0];
  for (let k = 0; k < draws; k++) {
    const z = new Float64Array(plan.length + 7);
    fillNormal(z, seededSource('days', k));
    const celled = celledOf(plan.map(([a, d], i): Row => [a, d, 200 + 4 * z[plan.length + d]! + z[i]!]));
    const d = difference(ofArticle(celled, 'P1'), ofArticle(celled, 'P0'));
    const table = new Map(celled.causes.map((c): [string, Cause] => [c.id, c]));
    if (Math.abs(d.value) <= coverageFactor(0.95, effectiveDof(d, table)) * standardUncertainty(d)) within++;
    if (Math.abs(d.value) <= coverageFactor(0.95, 12) * celled.repeatability!.s * Math.sqrt(1 / 4 + 1 / 2)) narrow++;
  }
  console.log(`held in ${within} of ${draws}; with the scatter within days alone in ${narrow}`);
  expect(within / draws).toBeGreaterThan(0.92);
  expect(narrow / draws).toBeLessThan(0.7);
});
