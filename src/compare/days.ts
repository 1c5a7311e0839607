import type { Cause, Part } from '../quantity/estimate.ts';
import { daysApart } from '../statistics/day-scatter.ts';
import type { DayScatter } from '../trial/compared.ts';
import type { Reduced } from './group.ts';

/** Days of one group: what they add, and what each of them does to the mean of a cell. */
export interface Days {
  readonly told: DayScatter;
  /** Within a day, with what is left to measure it by. */
  readonly within: { readonly s: number; readonly dof: number };
  /** What the days do to an estimate that weighs the runs of the group so, in their order. */
  readonly parts: (weights: readonly number[]) => Part[];
  readonly causes: readonly Cause[];
}

/** Missing it makes intervals too narrow, so days are believed sooner than effects are (common practice, no source). */
const level = 0.1;

/**
 * Runs of one day may share more than those of two: a soak, a level, the air. Where they do, each day is a cause of its own
 * that all cells seen on it share, so that articles run side by side on the same days keep a narrow difference and articles
 * run on days of their own do not. Means stay plain means: what a third article could tell of two days is not used, so such
 * intervals are a touch wide. Null where the plan cannot tell days from cells and drift.
 */
export function daysOf(of: {
  readonly reduced: readonly Reduced[];
  readonly group: readonly string[];
  readonly time: readonly number[] | null;
  readonly family: string;
}): Days | null {
  const { reduced, group, time, family } = of;
  const day = reduced.map((r) => r.run.startedDay);
  const found = daysApart({ values: reduced.map((r) => r.estimate.value), group, time, day });
  if (found === null) return null;
  const { days, ratio, p, s_day, dofDays, s, dof } = found;
  const id = (d: string): string => `day:${family}:${d}`;
  return {
    told: { days: days.length, ratio, p, s_day, separated: p < level },
    within: { s, dof },
    parts: (weights) =>
      days.flatMap((d) => {
        const weight = weights.reduce((sum, w, i) => sum + (day[i] === d ? w : 0), 0);
        return Math.abs(weight) < 1e-12 ? [] : [{ cause: id(d), u: weight * s_day }];
      }),
    causes: days.map((d) => ({
      id: id(d),
      name: `what the runs of ${d} share`,
      kind: 'offset',
      distribution: 't',
      dof: dofDays,
      scope: 'day',
      family: `day:${family}`,
    })),
  };
}
