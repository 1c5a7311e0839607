import tCdf from '@stdlib/stats-base-dists-t-cdf';
import tQuantileOf from '@stdlib/stats-base-dists-t-quantile';
import normalQuantile from '@stdlib/stats-base-dists-normal-quantile';

/** Quantile of Student's t; degrees of freedom need not be whole, Infinity is the normal distribution. Check: JCGM 100 table G.2. */
export const tQuantile = (p: number, dof: number): number =>
  dof === Infinity ? normalQuantile(p, 0, 1) : tQuantileOf(p, dof);

/** Coverage factor: half width of the two-sided interval, in standard uncertainties. */
export const coverageFactor = (coverage: number, dof: number): number => tQuantile((1 + coverage) / 2, dof);

/** Two-sided tail beyond ±t; from the lower tail, where small probabilities keep their digits. */
export const tTail = (t: number, dof: number): number => 2 * tCdf(-Math.abs(t), Math.min(dof, asGoodAsNormal));

/** Upper tail of the standard normal distribution. */
export const normalTail = (z: number): number => tCdf(-z, asGoodAsNormal);

/** The library has no infinite degrees of freedom here; from 1e14 on the tail is the normal one to eleven digits out to t = 8. */
const asGoodAsNormal = 1e14;
