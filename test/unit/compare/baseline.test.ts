import { describe, expect, it } from 'vitest';
import { notBracketed, wanderFromCauses, wanderOf } from '../../../src/compare/baseline.ts';
import { timeBase } from '../../../src/compare/time-base.ts';
import { estimate } from '../../../src/quantity/estimate.ts';
import { cell, derived } from './runs.ts';

const run = (article: string, order: number, startedDay = `2026-03-${10 + order}`) =>
  derived({ run: `${article}-${order}`, order, startedDay, cell: cell({ article }) });
const isBase = (r: { cell: { article: string } }) => r.cell.article === 'P0';

describe('whether the baseline wandered from itself', () => {
  // F of 5 and 10 degrees is 5.64 at 1 % (tables of any handbook).
  const others = [1, -1, 1, -1, 1, -1, 1, -1, 1, -1];
  it('is told by the F of its own scatter over that of the others, at 1 %', () => {
    const of = (s: number) => wanderOf({ own: [s, -s, s, -s, s, -s], others, othersDof: 10, lab: null })!;
    // s² · 6/5 against 1: 2.1² · 1.2 = 5.29, 2.2² · 1.2 = 5.81
    expect([of(2.1).wandered, of(2.2).wandered]).toEqual([false, true]);
  });
  it('takes the figure of the lab where there are no others, and says nothing without either', () => {
    expect(wanderOf({ own: [5, -5], others: [], othersDof: 0, lab: 1 })!.wandered).toBe(true);
    expect(wanderOf({ own: [1, -1], others: [], othersDof: 0, lab: 1 })!.wandered).toBe(false);
    expect(wanderOf({ own: [5, -5], others: [], othersDof: 0, lab: null })).toBeNull();
    expect(wanderOf({ own: [0], others, othersDof: 10, lab: 1 })).toBeNull();
  });
  it('of runs that stand alone is told by what their causes allow', () => {
    const two = (apart: number) =>
      [0, apart].map((value, i) => ({
        run: run('P0', i),
        estimate: estimate(value, [{ cause: `own:${i}`, u: 1 }]),
      }));
    // u of the difference is √2; 2.576·√2 = 3.64 at 1 %
    expect(wanderFromCauses(two(3.5), new Map())!.wandered).toBe(false);
    expect(wanderFromCauses(two(3.8), new Map())!.wandered).toBe(true);
    expect(wanderFromCauses(two(3.8).slice(0, 1), new Map())).toBeNull();
  });
});

describe('a table is indicative only', () => {
  const why = (runs: Parameters<typeof notBracketed>[0]['runs']) => notBracketed({ runs, isBase }).join('; ');
  it('when the baseline was not run again after the last article', () => {
    expect(why([run('P0', 1), run('P1', 2), run('P0', 3), run('P1', 4)])).toContain('not run again after P1-4');
    expect(why([run('P0', 1), run('P1', 2)])).toContain('run once only');
    expect(why([run('P0', 1), run('P1', 2), run('P0', 3)])).toBe('');
  });
  it('when every run is of one day', () => {
    const day = '2026-03-10';
    expect(why([run('P0', 1, day), run('P1', 2, day), run('P0', 3, day)])).toContain('one day');
  });
  it('for no reason of this kind where there is nothing beside the baseline', () => {
    expect(why([run('P0', 1), run('P0', 2)])).toBe('');
  });
});

describe('the time that drift is taken over', () => {
  const hours = (order: number, from_h: number, to_h: number) =>
    derived({ run: `S-${order}`, order, clock_s: [from_h * 3600, to_h * 3600] });
  const runs = [hours(1, 0, 2), hours(2, 20, 24), hours(3, 48, 50)];
  it('is the hours that the rig turned, at the middle of each run', () => {
    expect(runs.map((r) => timeBase('running-time', runs)!.of(r))).toEqual([1, 4, 7]);
  });
  it('or the hours by the clock since the first start, or the order, or none', () => {
    expect(runs.map((r) => timeBase('clock-time', runs)!.of(r))).toEqual([1, 22, 49]);
    expect(runs.map((r) => timeBase('order', runs)!.of(r))).toEqual([1, 2, 3]);
    expect(timeBase('none', runs)).toBeNull();
  });
});
