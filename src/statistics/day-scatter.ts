import { fTail } from './f-tail.ts';

/** What days add to repeats, beside what groups and one linear drift explain. */
export interface DaysApart {
  readonly days: readonly string[];
  /** Of F, its tail, and the degrees of freedom above and below. */
  readonly ratio: number;
  readonly p: number;
  readonly dofDays: number;
  readonly dof: number;
  /** Standard deviation of one run within its day, and of the days; never below zero. */
  readonly s: number;
  readonly s_day: number;
}

/**
 * The variance of days, with groups and drift fitted first (fitting constants, method 3):
 *
 *   s² = (SS_rest − SS_days)/ν,   s_day² = max(0, (SS_days − r·s²)/tr(Z'MZ))
 *
 * M takes out group means and the common slope, Z says which run belongs to which day, r is what the days add to the rank.
 * Balanced groups of one day each give the s_L of ISO 5725-2.
 *
 * time    null when no drift is taken out
 * returns null when the plan cannot tell days from groups and drift (r below 2), or has fewer than 3 degrees left
 * source  Henderson, Biometrics 9 (1953) 226, method 3 (from memory)    check: ASTM E691 glucose example
 */
export function daysApart(runs: {
  readonly values: readonly number[];
  readonly group: readonly string[];
  readonly time: readonly number[] | null;
  readonly day: readonly string[];
}): DaysApart | null {
  const without = residualMaker(runs);
  const days = [...new Set(runs.day)];
  const left = without(runs.values);
  const columns = days.map((d) => without(runs.day.map((x) => (x === d ? 1 : 0))));
  const basis: number[][] = [];
  for (const column of columns) {
    const own = basis.reduce((v, q) => minus(v, q, dot(v, q)), column);
    // Below this a day adds only rounding to the days before it.
    if (dot(own, own) > 1e-9) basis.push(own.map((x) => x / Math.sqrt(dot(own, own))));
  }
  const dofDays = basis.length;
  const groups = new Set(runs.group).size;
  const dof = runs.values.length - groups - (without.slope ? 1 : 0) - dofDays;
  if (dofDays < 2 || dof < 3) return null;
  const ofDays = basis.reduce((sum, q) => sum + dot(q, left) ** 2, 0);
  const s2 = Math.max(0, dot(left, left) - ofDays) / dof;
  const trace = columns.reduce((sum, c) => sum + dot(c, c), 0);
  const ratio = ofDays === 0 ? 0 : ofDays / dofDays / s2;
  return {
    ...{ days, ratio, dofDays, dof },
    p: fTail(ratio, { above: dofDays, below: dof }),
    s: Math.sqrt(s2),
    s_day: Math.sqrt(Math.max(0, (ofDays - dofDays * s2) / trace)),
  };
}

/** Takes group means and the common slope out of a column; `slope` says whether there is one to take out. */
function residualMaker(of: {
  readonly group: readonly string[];
  readonly time: readonly number[] | null;
}): ((v: readonly number[]) => number[]) & { readonly slope: boolean } {
  const { group, time } = of;
  const centred = (v: readonly number[]): number[] => {
    const sums = new Map<string, { n: number; sum: number }>();
    v.forEach((x, i) => {
      const own = sums.get(group[i]!) ?? { n: 0, sum: 0 };
      sums.set(group[i]!, { n: own.n + 1, sum: own.sum + x });
    });
    return v.map((x, i) => x - sums.get(group[i]!)!.sum / sums.get(group[i]!)!.n);
  };
  const along = time === null ? null : centred(time);
  const length2 = along === null ? 0 : dot(along, along);
  const slope = along !== null && length2 > 0;
  return Object.assign(
    (v: readonly number[]): number[] => {
      const own = centred(v);
      return slope ? minus(own, along, dot(own, along) / length2) : own;
    },
    { slope },
  );
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
const minus = (a: readonly number[], b: readonly number[], times: number): number[] =>
  a.map((x, i) => x - times * b[i]!);
