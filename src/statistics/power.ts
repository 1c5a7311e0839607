import { scatterPoints } from './scatter-points.ts';
import { coverageFactor, normalTail } from './student.ts';

interface Pair {
  /** Standard deviation of one run. */
  readonly s: number;
  /** Degrees of freedom behind s, pooled over all groups that gave it. */
  readonly dof: number;
  readonly n1: number;
  readonly n2: number;
  readonly coverage?: number;
}

/** Smallest observed difference of two means that would have been separated: t · s · √(1/n₁ + 1/n₂). */
export const smallestDifference = (of: Pair): number =>
  coverageFactor(of.coverage ?? 0.95, of.dof) * of.s * Math.sqrt(1 / of.n1 + 1 / of.n2);

/**
 * Chance that a true difference of this size is separated, on its own side.
 *
 *   P(T > t) with T noncentral t = ∫ Φ(δ − t x) f(x) dx,   x = √(χ²_ν/ν),   δ = difference / (s √(1/n₁ + 1/n₂))
 *
 * source  noncentral t as a mixture of normals (from memory)
 *         check: documentation of power.t.test in R, 20 runs each, 0.8689528
 */
export function chanceToSeparate(of: Pair & { readonly difference: number }): number {
  const { dof } = of;
  const shift = Math.abs(of.difference) / (of.s * Math.sqrt(1 / of.n1 + 1 / of.n2));
  const t = coverageFactor(of.coverage ?? 0.95, dof);
  let [reached, all] = [0, 0];
  for (const { x, weight } of scatterPoints(dof)) {
    all += weight;
    reached += weight * normalTail(t * x - shift);
  }
  return reached / all;
}

interface Plan {
  readonly s: number;
  readonly difference: number;
  /** Groups of equal size that s is pooled over; 2 unless said. */
  readonly groups?: number;
  readonly coverage?: number;
  /** Wanted chance to separate a true difference of that size; without it, runs that separate it when just that is observed. */
  readonly chance?: number;
}

/** Runs needed in each group, rounded up; null above a thousand. */
export function runsNeeded(plan: Plan): number | null {
  const { chance, groups = 2 } = plan;
  for (let n = 2; n <= 1000; n++) {
    const pair = { ...plan, n1: n, n2: n, dof: groups * (n - 1) };
    if (
      chance === undefined ? smallestDifference(pair) <= Math.abs(plan.difference) : chanceToSeparate(pair) >= chance
    ) {
      return n;
    }
  }
  return null;
}

/** True difference that these runs separate with the wanted chance, by halving. */
export function detectableDifference(of: Pair & { readonly chance: number }): number {
  let [low, high] = [0, smallestDifference(of)];
  while (chanceToSeparate({ ...of, difference: high }) < of.chance) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (chanceToSeparate({ ...of, difference: middle }) < of.chance) low = middle;
    else high = middle;
  }
  return high;
}
