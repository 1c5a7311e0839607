import type { NoteHead } from './note.ts';

export interface PlanCell {
  readonly trial: TrialKind;
  readonly article: string;
  readonly oil: string;
  readonly fill_m3: number;
  readonly tilt_ratio: number;
  readonly wanted: number;
}

/** When the baseline comes back within a trial; null where the words of the note do not say. */
export interface Rerun {
  readonly start: boolean | null;
  readonly middle: boolean | null;
  readonly end: boolean | null;
  /** After so many runs of other cells. */
  readonly everyN: number | null;
}

export type TrialKind = 'flow' | 'spin' | 'heat-up' | 'cool-down' | 'soak' | 'check';

/** `plan.md` */
export interface Plan extends NoteHead {
  /** Names of what the plan varies on purpose: article, fill, oil, tilt, airflow. A difference in these is the subject, not a mismatch. */
  readonly factors: readonly string[];
  readonly repeatUnit: 'refit' | 'refill' | 'rerun';
  readonly order: 'random' | 'fixed' | 'latin';
  readonly seed: number | null;
  /** In words. */
  readonly baselineRerun: string;
  readonly rerun: Rerun;
  /** Output shaft (wheel) speeds of the stepped trials, rad/s. */
  readonly steps_rad_s: readonly number[];
  readonly hold_s: number;
  readonly steadyWindow_s: number;
  readonly steadySlope_K_s: number;
  readonly temperatures_K: readonly number[];
  readonly limits_K: readonly number[];
  readonly sustained_s: number;
  readonly maxTime_s: number;
  readonly load: { readonly outputSpeed_rad_s: number; readonly powerOut_W: number } | null;
  readonly cells: readonly PlanCell[];
}
