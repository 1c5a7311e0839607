import { leastSquares, predict } from './least-squares.ts';
import { coverageFactor } from './student.ts';

/** Mean of logged readings that follow each other. `u` is that of the mean; Infinity with one reading. */
export interface MeanOfReadings {
  readonly mean: number;
  /** Standard deviation of one reading. */
  readonly s: number;
  readonly u: number;
  readonly n: number;
  /** Independent readings that say as much; fast logging does not buy certainty. */
  readonly effectiveN: number;
  /** effectiveN − 1, at least 1. */
  readonly dof: number;
  readonly lag1: number;
}

export interface SlopeOfReadings {
  readonly slope: number;
  /** Standard uncertainty, widened for readings that follow each other. */
  readonly u: number;
  readonly mean: number;
  readonly n: number;
  readonly effectiveN: number;
  /** effectiveN − 2, at least 1. */
  readonly dof: number;
}

/**
 * Mean and its uncertainty when neighbours resemble each other. Missing readings (NaN) are left out; null when none is left.
 *
 *   r₁ = Σ (yᵢ − m)(yᵢ₊₁ − m) / Σ (yᵢ − m)²,   u = s / √n_eff
 *
 * source  e-Handbook 1.3.5.12 (r₁); n_eff common practice, no source      check: StRD Lew, Michelso, Mavro, NumAcc4
 */
export function meanOfReadings(values: ArrayLike<number>): MeanOfReadings | null {
  const present = Array.from(values).filter((v) => !Number.isNaN(v));
  const n = present.length;
  if (n === 0) return null;
  const shift = present[0]!;
  const rough = shift + average(present.map((v) => v - shift));
  const mean = rough + average(present.map((v) => v - rough));
  const deviations = Array.from(values, (v) => v - mean);
  const sum = squares(deviations);
  const s = n > 1 ? Math.sqrt(sum / (n - 1)) : Infinity;
  const lag1 = lagOne(deviations);
  const effectiveN = effectiveReadings(n, lag1);
  return { mean, s, u: s / Math.sqrt(effectiveN), n, effectiveN, dof: Math.max(1, effectiveN - 1), lag1 };
}

/** n(1 − r₁)/(1 + r₁) of a first-order autoregressive series, no less than one reading and no more than there are. */
export const effectiveReadings = (n: number, lag1: number): number =>
  Math.min(n, Math.max(1, (n * (1 - lag1)) / (1 + lag1)));

/** Line through readings; pairs with a gap are left out. Null with fewer than three readings or with all at one time. */
export function slope(readings: {
  readonly t: ArrayLike<number>;
  readonly y: ArrayLike<number>;
}): SlopeOfReadings | null {
  const pairs = Array.from(readings.t, (t, i) => ({ t, y: readings.y[i]! })).filter(
    ({ t, y }) => !Number.isNaN(t) && !Number.isNaN(y),
  );
  const n = pairs.length;
  if (n < 3) return null;
  const [t0, y0] = [pairs[0]!.t, pairs[0]!.y];
  const middle = average(pairs.map(({ t }) => t - t0));
  const fit = leastSquares({ design: pairs.map(({ t }) => [1, t - t0 - middle]), y: pairs.map(({ y }) => y - y0) });
  if (!fit.ok) return null;
  const line = predict(fit, [0, 1]);
  const effectiveN = effectiveReadings(n, lagOne(fit.residuals));
  return {
    slope: line.value,
    u: line.u * Math.sqrt(n / effectiveN),
    mean: y0 + fit.coefficients[0]!,
    n,
    effectiveN,
    dof: Math.max(1, effectiveN - 2),
  };
}

/**
 * Steady in the equivalence form: the whole 95 % interval of the slope lies within ± limit.
 * A slope that merely is not separated from zero shows nothing.
 */
export const isSteady = (of: {
  readonly slope: number;
  readonly u: number;
  readonly dof: number;
  readonly limit: number;
}): boolean => Math.abs(of.slope) + coverageFactor(0.95, of.dof) * of.u < of.limit;

/** Lag-1 autocorrelation of deviations; a gap breaks the chain; 0 when nothing varies. */
function lagOne(deviations: readonly number[]): number {
  const sum = squares(deviations);
  const products = deviations.slice(1).map((d, i) => d * deviations[i]!);
  return sum > 0 ? products.reduce((total, p) => total + (Number.isNaN(p) ? 0 : p), 0) / sum : 0;
}

const average = (v: readonly number[]): number => v.reduce((sum, x) => sum + x, 0) / v.length;

const squares = (v: readonly number[]): number => v.reduce((sum, x) => sum + (Number.isNaN(x) ? 0 : x * x), 0);
