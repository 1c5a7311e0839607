import type { PlanCell, TrialKind } from './plan.ts';

/** What a plan may be asked to tell apart. */
export const reachKinds = [
  'same litres',
  'same level',
  'fill',
  'oil',
  'tilt',
  'article by fill',
  'article by oil',
  'scatter',
  'steady drift',
  'bent drift',
  'limit',
  'temperature',
  'airflow',
] as const;
export type ReachKind = (typeof reachKinds)[number];

/** One effect, and whether the planned runs can tell it from everything else. */
export interface ReachItem {
  readonly trial: TrialKind;
  readonly kind: ReachKind;
  /** Of what: "P1 with O1"; empty where it is of the whole trial. */
  readonly of: string;
  readonly estimable: boolean;
  /** What it rests on, or what stands in the way: a clause without a full stop. */
  readonly why: string;
  /** Planned cells that it rests on, or that are at hand. */
  readonly cells: readonly PlanCell[];
}

/** Worked out from the plan, the level tables and the tolerances alone, before anything is run. */
export interface PlanReach {
  readonly items: readonly ReachItem[];
}

/** One run of the plan in the order it is to be run. */
export interface PlannedRun {
  /** From 1, over the whole plan. */
  readonly position: number;
  readonly cell: PlanCell;
  /** Which of the runs wanted of its cell, from 1. */
  readonly time: number;
  readonly baseline: boolean;
}
