import { describe, expect, it } from 'vitest';
import { plannedRuns, seedOf } from '../../../src/compare/plan-order.ts';
import type { Plan } from '../../../src/trial/plan.ts';
import { planned } from './planned.ts';

const four = ['spin P0 2.40 O1 x3', 'spin P1 2.40 O1 x3', 'spin P2 2.40 O1 x3', 'spin P3 2.40 O1 x3'];
const orderOf = (cells: readonly string[], more: Partial<Plan> = {}) =>
  plannedRuns(planned(cells, more)).map(({ cell, time, baseline }) => ({ article: cell.article, time, baseline }));
const names = (list: readonly { article: string }[]): string => list.map(({ article }) => article).join(' ');
const rerun = (of: Partial<Plan['rerun']> = {}) => ({
  rerun: { start: true, middle: true, end: true, everyN: null, ...of },
});

describe('the order that a plan draws', () => {
  it('holds every wanted run once, its places counted from 1', () => {
    const runs = plannedRuns(planned(four));
    expect(runs.map(({ position }) => position)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    for (const article of ['P0', 'P1', 'P2', 'P3'])
      expect(runs.filter(({ cell }) => cell.article === article).map(({ time }) => time)).toEqual([1, 2, 3]);
  });

  it('is that of its seed: the same again from the same, another from another', () => {
    expect(orderOf(four, { seed: 7 })).toEqual(orderOf(four, { seed: 7 }));
    const drawn = new Set(Array.from({ length: 20 }, (_, seed) => names(orderOf(four, { seed }))));
    expect(drawn.size).toBeGreaterThan(5);
    expect(seedOf(planned(four, { seed: null }).plan)).toBe(1);
    expect(orderOf(four, { seed: null })).toEqual(orderOf(four, { seed: 1 }));
  });

  it('is shuffled within rounds: no cell comes a second time before each other was run once', () => {
    for (let seed = 0; seed < 50; seed++) {
      const others = orderOf(four, { seed }).filter(({ baseline }) => !baseline);
      expect(others.map(({ time }) => time)).toEqual([1, 1, 1, 2, 2, 2, 3, 3, 3]);
    }
  });

  // Chi square of 6 orders, 5 degrees of freedom: 20.5 at 0.1 % (tables of any handbook).
  it('draws each order of a round alike', () => {
    const counted = new Map<string, number>();
    const once = four.map((cell) => cell.replace('x3', 'x1'));
    for (let seed = 0; seed < 600; seed++) {
      const order = names(orderOf(once, { seed }).filter(({ baseline }) => !baseline));
      counted.set(order, (counted.get(order) ?? 0) + 1);
    }
    expect(counted.size).toBe(6);
    const chi2 = [...counted.values()].reduce((sum, n) => sum + (n - 100) ** 2 / 100, 0);
    expect(chi2).toBeLessThan(20.5);
  });

  it('brings the baseline at the start, in the middle and at the end of every trial', () => {
    for (let seed = 0; seed < 20; seed++) {
      const runs = orderOf(four, { seed, ...rerun() });
      // nine others: five before the middle one, four after
      expect(runs.flatMap(({ baseline }, i) => (baseline ? [i] : []))).toEqual([0, 6, 11]);
    }
  });

  it('brings it after so many of the others where the plan says so, and last', () => {
    const more = [...four.slice(1), 'spin P0 2.40 O1 x4'];
    const at = orderOf(more, rerun({ everyN: 3 })).flatMap(({ baseline }, i) => (baseline ? [i] : []));
    expect(at).toEqual([0, 4, 8, 12]);
  });

  it('keeps it from the start or the end where the plan says so', () => {
    const at = (of: Partial<Plan['rerun']>) =>
      orderOf(four, rerun(of)).flatMap(({ baseline }, i) => (baseline ? [i] : []));
    // nine others in three stretches, and the baseline behind or before each
    expect(at({ start: false })).toEqual([3, 7, 11]);
    expect(at({ end: false })).toEqual([0, 4, 8]);
  });

  it('with a single run of the baseline puts it first, or last where the plan wants it only there', () => {
    const one = ['spin P0 2.40 O1', ...four.slice(1)];
    expect(orderOf(one)[0]!.article).toBe('P0');
    expect(orderOf(one, rerun({ start: false })).at(-1)!.article).toBe('P0');
  });

  it('as written goes through the cells as they stand; as a Latin square each round begins one later', () => {
    const cells = four.slice(1);
    expect(names(orderOf(cells, { order: 'fixed' }))).toBe('P1 P2 P3 P1 P2 P3 P1 P2 P3');
    expect(names(orderOf(cells, { order: 'latin' }))).toBe('P1 P2 P3 P2 P3 P1 P3 P1 P2');
  });

  it('lets a cool-down follow the heat-up of its cell; one without comes last', () => {
    const runs = plannedRuns(
      planned([
        'heat-up P0 2.40 O1',
        'heat-up P1 2.40 O1',
        'cool-down P1 2.40 O1',
        'cool-down P2 2.40 O1',
        'flow P0w 2.40 O1',
      ]),
    ).map(({ cell }) => `${cell.trial} ${cell.article}`);
    expect(runs.indexOf('cool-down P1')).toBe(runs.indexOf('heat-up P1') + 1);
    expect(runs.indexOf('cool-down P2')).toBeGreaterThan(runs.indexOf('heat-up P1'));
    expect(runs).toHaveLength(5);
  });

  it('leaves out a cell whose article or oil is not known: it has a finding of its own', () => {
    expect(names(orderOf(['spin P0 2.40 O1', 'spin P9 2.40 O1', 'spin P1 2.40 O9']))).toBe('P0');
    expect(orderOf([])).toEqual([]);
  });
});
