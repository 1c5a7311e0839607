import { leastSquares } from '../statistics/least-squares.ts';
import { hangTogether } from './through-fit.ts';

/** First sustained crossing of a limit: time, its standard uncertainty from readings, and how steep the sump is there. */
export interface Crossed {
  readonly t_s: number;
  readonly u_s: number;
  readonly slope_K_s: number;
  readonly rows: readonly [number, number];
}

/**
 * The first time the sump stays at or above the limit for `sustained_s`, so that a spike does not count; then a parabola
 * through the five minutes round it says when, because single readings scatter. Null when it was never sustained.
 */
export function firstSustained(input: {
  time_s: Float64Array;
  sump_K: Float64Array;
  limit_K: number;
  sustained_s: number;
}): Crossed | null {
  const { time_s, sump_K, limit_K, sustained_s } = input;
  const at = sustainedFrom(input);
  if (at === null) return null;
  const around = 150;
  const t0 = time_s[at]!;
  const rows: [number, number] = [at, at];
  while (rows[0] > 0 && t0 - time_s[rows[0] - 1]! <= around) rows[0]--;
  while (rows[1] < time_s.length && time_s[rows[1]]! - t0 <= Math.max(around, sustained_s)) rows[1]++;
  const keep: number[] = [];
  for (let i = rows[0]; i < rows[1]; i++) if (!Number.isNaN(sump_K[i]!)) keep.push(i);
  const x = keep.map((i) => (time_s[i]! - t0) / 60);
  const y = keep.map((i) => sump_K[i]! - limit_K);
  const fit = keep.length < 8 ? null : leastSquares({ design: x.map((v) => [1, v, v * v]), y });
  if (fit === null || !fit.ok)
    return { t_s: t0, u_s: (time_s[at]! - (time_s[at - 1] ?? t0)) / 2, slope_K_s: NaN, rows };
  const [a = 0, b = 0, c = 0] = fit.coefficients;
  const disc = b * b - 4 * a * c;
  const root = disc <= 0 || b <= 0 ? -a / b : (-2 * a) / (b + Math.sqrt(disc));
  const slope = (b + 2 * c * root) / 60;
  const row = [1, root, root * root];
  const variance = row.reduce((s, ri, i) => s + row.reduce((q, rj, j) => q + ri * rj * fit.covariance[i]![j]!, 0), 0);
  const u_K = Math.sqrt(variance) * hangTogether(fit.residuals);
  return { t_s: t0 + 60 * root, u_s: u_K / slope, slope_K_s: slope, rows };
}

/** Row from which every reading stays at or above the limit for the sustained time. */
function sustainedFrom(input: {
  time_s: Float64Array;
  sump_K: Float64Array;
  limit_K: number;
  sustained_s: number;
}): number | null {
  const { time_s, sump_K, limit_K, sustained_s } = input;
  let from: number | null = null;
  for (let i = 0; i < time_s.length; i++) {
    const v = sump_K[i]!;
    if (Number.isNaN(v)) continue;
    if (v < limit_K) from = null;
    else from ??= i;
    if (from !== null && time_s[i]! - time_s[from]! >= sustained_s) return from;
  }
  return null;
}
