import { describe, expect, it } from 'vitest';
import { compareSeries } from '../../../src/compare/series.ts';
import type { DerivedRun } from '../../../src/trial/derived.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { record, spinRun } from './runs.ts';

const loads = [{ power_W: 22e3, start_ratio: 0.94, middle_ratio: 0.95, end_ratio: 0.956 }];
const inState = (settled: boolean | null, more: Partial<SeriesRecord['rig']['states'][number]> = {}): SeriesRecord => ({
  ...record,
  claims: [],
  rig: {
    ...record.rig,
    states: record.rig.states.map((state) => ({
      ...state,
      breakIn: settled === null ? null : { settledWithin_ratio: 0.002, loads },
      settled,
      ...more,
    })),
  },
});

// P1 lies 40 W below the baseline, and refits scatter by a watt or two: separated by any rule.
const runs: readonly DerivedRun[] = [
  ['P0', 240],
  ['P1', 200],
  ['P0', 243],
  ['P1', 199],
  ['P0', 241],
  ['P1', 202],
  ['P0', 242],
].map(([article, watts], i) => spinRun({ article: String(article), order: i + 1, watts: Number(watts) }));
const standingOf = (of: SeriesRecord) => {
  const [standing] = compareSeries(of, new Map(runs.map((run) => [run.run, run])), { seed: '0' }).standings;
  const effect = standing!.rows.find(({ baseline }) => !baseline)!.effect!;
  return { why: standing!.indicative.join('; '), separated: effect.separated, effect };
};

describe('a standing of runs whose rig state had not settled', () => {
  it('is indicative only, names the state, and separates nothing', () => {
    const { why, separated, effect } = standingOf(inState(false));
    expect(why).toBe('rig state Q1-a had not settled');
    expect(effect.indicative).toEqual(['rig state Q1-a had not settled']);
    expect(separated).toBe(false);
  });

  it('stands whole where the state had settled, where no break-in is recorded, and where none of its runs is of that state', () => {
    for (const of of [inState(true), inState(null), inState(false, { id: 'Q0-x' })])
      expect(standingOf(of)).toMatchObject({ why: '', separated: true });
  });

  it('keeps its figures and its interval: only the word changes', () => {
    const [loose, firm] = [standingOf(inState(false)).effect, standingOf(inState(true)).effect];
    expect(loose.estimate).toEqual(firm.estimate);
    expect(loose.simultaneous).toEqual(firm.simultaneous);
  });
});
