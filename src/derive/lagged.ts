import type { HeatSeries } from './heat-series.ts';

/** What an axle has felt of its ambient by the end of a run, and the time constant it was lagged with. */
export interface Lagged {
  readonly ambient_K: number;
  /** Null where the time constant is not known: then it is the mean over the run. */
  readonly tau_s: number | null;
}

/**
 * A body of heat follows its surroundings late. What it has felt of them is the logged ambient behind a first-order lag:
 *
 *   A' = (T_amb − A)/τ,   A(0) = T_amb(0),   τ = store/shed
 *
 * tau_s   of the run itself, s; not above zero or not known: mean of the run
 * range   an axle that stood in its ambient before the start        (common practice, no source)
 */
export function laggedAmbient(series: Pick<HeatSeries, 'bin_s' | 'ambient_K'>, tau_s: number | null): Lagged {
  const { ambient_K, bin_s } = series;
  if (tau_s === null || !(tau_s > 0 && Number.isFinite(tau_s)))
    return { ambient_K: ambient_K.reduce((a, b) => a + b, 0) / ambient_K.length, tau_s: null };
  const share = 1 - Math.exp(-bin_s / tau_s);
  let felt = ambient_K[0] ?? NaN;
  for (const air of ambient_K) felt += share * (air - felt);
  return { ambient_K: felt, tau_s };
}

/** Mean of the last half hour: the ambient that a final temperature is stated for. */
export function endAmbient_K({ bin_s, ambient_K }: Pick<HeatSeries, 'bin_s' | 'ambient_K'>): number {
  const last = ambient_K.subarray(Math.max(0, ambient_K.length - Math.round(1800 / bin_s)));
  return last.reduce((a, b) => a + b, 0) / last.length;
}
