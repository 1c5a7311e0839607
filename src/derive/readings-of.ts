import { viscosityAt_m2_s, type LogLogLine } from '../physics/viscosity.ts';
import { meanOfReadings, type MeanOfReadings } from '../statistics/series.ts';

/** Viscosity on an oil's line; NaN where it has none, so that the reading there is passed over like a missing one. */
export const nuAt = (line: LogLogLine, oil_K: number): number => viscosityAt_m2_s({ line, oil_K }) ?? NaN;

/** Mean of a stretch of readings; with none it is NaN of count 0, which every caller asks about before use. */
export const meanOf = (values: ArrayLike<number>): MeanOfReadings =>
  meanOfReadings(values) ?? { mean: NaN, s: NaN, u: NaN, n: 0, effectiveN: 0, dof: 1, lag1: 0 };
