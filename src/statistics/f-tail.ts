import fCdf from '@stdlib/stats-base-dists-f-cdf';

/**
 * Upper tail of F, by P(F > x; a, b) = P(F < 1/x; b, a): one less the lower tail prints 0 below 1e-16.
 * A ratio of 0 or less has the tail 1.
 */
export const fTail = (ratio: number, dof: { readonly above: number; readonly below: number }): number =>
  ratio > 0 ? fCdf(1 / ratio, dof.below, dof.above) : 1;
