/**
 * Indices of spikes: readings further from the median of their window than some scaled median absolute deviations.
 * They are to become gaps, not medians. Missing readings (NaN) are neither judged nor counted; at the ends the window is
 * moved inwards. Where most of the window is one value, a step of resolution stands for the deviation.
 *
 *   |y − median| > threshold · max(1.4826 · MAD, resolution)
 *
 * source  common practice, no source                   check: seven sump readings by hand, score 302
 */
export function hampel(given: {
  readonly values: ArrayLike<number>;
  /** Smallest step of the channel, in its unit. */
  readonly resolution: number;
  readonly window?: number;
  readonly threshold?: number;
}): number[] {
  const { values, resolution, window = 7, threshold = 3 } = given;
  const present = Array.from(values, (value, index) => ({ value, index })).filter(({ value }) => !Number.isNaN(value));
  if (present.length < window) return [];
  return present.flatMap(({ value, index }, i) => {
    const from = Math.min(Math.max(0, i - (window >> 1)), present.length - window);
    const { middle, scale } = spread(present.slice(from, from + window).map((p) => p.value));
    return Math.abs(value - middle) > threshold * Math.max(scale, resolution) ? [index] : [];
  });
}

/** Median and scaled median absolute deviation, an estimate of the standard deviation that spikes do not move. */
export function spread(values: readonly number[]): { readonly middle: number; readonly scale: number } {
  const middle = median(values);
  return { middle, scale: 1.4826 * median(values.map((v) => Math.abs(v - middle))) };
}

/** Of no values is our bug. */
export function median(values: readonly number[]): number {
  if (values.length === 0) throw new Error('median of no values');
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
