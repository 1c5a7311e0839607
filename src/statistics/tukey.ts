import rangeQuantile from '@stdlib/stats-base-dists-studentized-range-quantile';
import { coverageFactor } from './student.ts';

/**
 * Quantile of the studentized range of k means. Two means are Student's t; below two degrees of freedom, where the
 * tables end, the larger figure after Bonferroni stands in, which separates less and never more.
 */
export function studentizedRangeQuantile(p: number, k: number, dof: number): number {
  if (k <= 2) return Math.SQRT2 * coverageFactor(p, dof);
  if (dof < 2) return Math.SQRT2 * coverageFactor(1 - (2 * (1 - p)) / (k * (k - 1)), dof);
  const key = `${p} ${k} ${dof}`;
  const known = asked.get(key) ?? rangeQuantile(p, k, dof);
  asked.set(key, known);
  return known;
}

/**
 * Tukey–Kramer factor q/√2: the simultaneous half width of a difference is this times s·√(1/n₁ + 1/n₂).
 *
 * source  e-Handbook 7.4.7.1                           check: its four groups of five, q 4.05
 */
export const tukeyKramer = (of: { readonly groups: number; readonly dof: number; readonly coverage: number }): number =>
  studentizedRangeQuantile(of.coverage, of.groups, of.dof) / Math.SQRT2;

/** One quantile takes some tens of milliseconds, and every standing of a series asks for the same few. */
const asked = new Map<string, number>();
