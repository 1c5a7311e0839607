import { leastSquares, predict } from './least-squares.ts';
import type { Refused, Scatter } from './least-squares.ts';

export interface GroupsWithDrift {
  readonly ok: true;
  /** In order of first appearance; `means` and `covariance` follow it. */
  readonly groups: readonly string[];
  /** Of each group, at the middle time of the series. */
  readonly means: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  /** Common to all groups, per unit of time. */
  readonly drift: { readonly slope: number; readonly u: number };
  readonly s: number;
  readonly dof: number;
  /** Of the design: large when a group lies all at one end of the series, so that drift and group tell one story. */
  readonly condition: number;
}

/**
 * Group means with one linear drift over the whole series taken out.
 *
 *   value = mean[group] + drift · (time − middle time)
 *
 * Needs one run more than unknowns, unless the scatter of one run is given from elsewhere. Refused when drift and groups
 * cannot be told apart: all runs at one time, or no group seen twice.
 *
 * source  analysis of covariance with common slope; common practice, no source
 *         check: A-B-A and A-B-B-A by hand
 */
export function groupsWithDrift(runs: {
  readonly values: readonly number[];
  readonly group: readonly string[];
  readonly time: readonly number[];
  readonly scatter?: Scatter;
}): GroupsWithDrift | Refused {
  const groups = [...new Set(runs.group)];
  const middle = runs.time.reduce((sum, t) => sum + t, 0) / runs.time.length;
  const fit = leastSquares({
    design: runs.group.map((name, i) => [...groups.map((g) => (g === name ? 1 : 0)), runs.time[i]! - middle]),
    y: runs.values,
    names: [...groups, 'Drift'],
    ...(runs.scatter && { scatter: runs.scatter }),
  });
  if (!fit.ok) return fit;
  const k = groups.length;
  const drift = predict(
    fit,
    fit.coefficients.map((_, i) => (i === k ? 1 : 0)),
  );
  return {
    ok: true,
    groups,
    means: fit.coefficients.slice(0, k),
    covariance: fit.covariance.slice(0, k).map((row) => row.slice(0, k)),
    drift: { slope: drift.value, u: drift.u },
    s: fit.s,
    dof: fit.dof,
    condition: fit.condition,
  };
}

/** One group less another, covariance in: what the two share cancels. A group that is not there is our bug. */
export function groupDifference(
  fit: Pick<GroupsWithDrift, 'groups' | 'means' | 'covariance'>,
  pair: { readonly of: string; readonly against: string },
): { readonly value: number; readonly u: number } {
  if (!fit.groups.includes(pair.of) || !fit.groups.includes(pair.against))
    throw new Error('difference of a group not fitted');
  const row = fit.groups.map((g) => (g === pair.of ? 1 : 0) - (g === pair.against ? 1 : 0));
  return predict({ coefficients: fit.means, covariance: fit.covariance }, row);
}
