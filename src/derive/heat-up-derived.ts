import type { Cause, Estimate } from '../quantity/estimate.ts';
import type { Crossing, ModelTried, Result, Trace } from '../trial/derived.ts';

/** What a loaded heat-up gives. */
export interface HeatUpDerived {
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
  readonly models: readonly ModelTried[];
  readonly crossings: readonly Crossing[];
  readonly fitted: Trace | null;
  readonly remarks: readonly string[];
  readonly heatSlope_W_K: Estimate | null;
  /** Why only what was read directly is given; null when everything is. */
  readonly untold: string | null;
  readonly why: string | null;
}

/** A run that gives nothing, and why. */
export const nothing = (why: string): HeatUpDerived => ({
  results: [],
  causes: [],
  models: [],
  crossings: [],
  fitted: null,
  remarks: [],
  heatSlope_W_K: null,
  untold: null,
  why,
});
