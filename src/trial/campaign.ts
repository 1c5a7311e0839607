import type { At } from './derived.ts';
import type { QuantityName } from './figures.ts';
import type { TrialKind } from './plan.ts';

/** What is done with a baseline that moved by more than it repeats: `adjust` counts only when it was declared before the campaign. */
export const bridgeWays = ['separate', 'adjust'] as const;

/** Runs of a later time, on a rig that may have been rebuilt since: from that day on, to the day of the next campaign. */
export interface Campaign {
  readonly id: string;
  readonly from: string;
  readonly why: string;
  readonly bridge: (typeof bridgeWays)[number];
  /** Day on which `bridge` was chosen; null where none is given. */
  readonly declared: string | null;
}

/** The later campaign of a day; null in the first one, which has no name. */
export const campaignOf = (campaigns: readonly Campaign[], day: string): Campaign | null =>
  campaigns.reduce<Campaign | null>(
    (last, c) => (c.from <= day && (last === null || c.from >= last.from) ? c : last),
    null,
  );

/** A way chosen after the first run is chosen by its outcome. */
export const mayAdjust = ({ bridge, declared, from }: Campaign): boolean =>
  bridge === 'adjust' && declared !== null && declared < from;

/** Runs of the baseline in one campaign, and their mean. SI. */
export interface BaselineRuns {
  readonly runs: readonly string[];
  readonly mean: number;
}

/** Whether runs of a later campaign may stand in one table with those of the first, in one quantity at one condition. */
export interface Bridge {
  readonly campaign: string;
  readonly trial: TrialKind;
  readonly quantity: QuantityName;
  readonly at: At;
  /**
   * joint: one table, with what the baseline moved by as a term of the campaign · adjusted: the same beyond what it repeats, as
   * the series said beforehand · separate: a table of its own.
   */
  readonly outcome: 'joint' | 'adjusted' | 'separate';
  /** Baseline in the first campaign and in this one; null where it was not run. */
  readonly before: BaselineRuns | null;
  readonly after: BaselineRuns | null;
  /** `after` less `before`; null unless both were run. SI. */
  readonly shift: number | null;
  /** Standard uncertainty of the shift from the scatter of refits. */
  readonly u: number | null;
  /** Standard deviation of one refit that it was held to, and its degrees of freedom. */
  readonly scatter: { readonly s: number; readonly dof: number } | null;
  /** What the shift of these means may come to (95 %). */
  readonly limit: number | null;
  /** One sentence: why it is so. */
  readonly why: string;
}

/** What was added to the runs of a later campaign, so that they stand beside those of the first. SI. */
export interface Moved {
  readonly campaign: string;
  readonly by: number;
  /** Runs of the baseline on both sides, which say so. */
  readonly runs: readonly string[];
}
