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
  if (fit === null || !fit.ok) return betweenReadings({ ...input, at, rows });
  const [a = 0, b = 0, c = 0] = fit.coefficients;
  const disc = b * b - 4 * a * c;
  const root = disc <= 0 || b <= 0 ? -a / b : (-2 * a) / (b + Math.sqrt(disc));
  const slope = (b + 2 * c * root) / 60;
  // A step is no parabola: its root lies somewhere else, or it falls there.
  if (!(Math.abs(60 * root) <= around && slope > 0)) return betweenReadings({ ...input, at, rows });
  const row = [1, root, root * root];
  const variance = row.reduce((s, ri, i) => s + row.reduce((q, rj, j) => q + ri * rj * fit.covariance[i]![j]!, 0), 0);
  const u_K = Math.sqrt(variance) * hangTogether(fit.residuals);
  return { t_s: t0 + 60 * root, u_s: u_K / slope, slope_K_s: slope, rows };
}

/** Where too few readings, or a step, leave no curve to fit: half-way from the reading before, and open by that much. */
function betweenReadings(of: {
  time_s: Float64Array;
  sump_K: Float64Array;
  at: number;
  rows: readonly [number, number];
}): Crossed {
  const { time_s, sump_K, at, rows } = of;
  let before = Math.max(0, at - 1);
  while (before > 0 && Number.isNaN(sump_K[before]!)) before--;
  const gap_s = Math.max(time_s[at]! - time_s[before]!, 1e-3);
  const slope_K_s = Math.max((sump_K[at]! - sump_K[before]!) / gap_s, 1e-6);
  return { t_s: time_s[at]! - gap_s / 2, u_s: gap_s / Math.sqrt(12), slope_K_s, rows };
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
