import { fTail } from './f-tail.ts';
import type { Scatter } from './least-squares.ts';
import { tQuantile } from './student.ts';

export interface OneWayAnova {
  readonly ssBetween: number;
  readonly ssWithin: number;
  readonly dofBetween: number;
  readonly dofWithin: number;
  /** Infinity when nothing varies within the groups. */
  readonly ratio: number;
  /** Tail of F beyond the ratio. */
  readonly p: number;
  /** Standard deviation of one reading within its group. */
  readonly s: number;
  readonly grandMean: number;
  readonly means: readonly number[];
}

/** The pooled standard deviation within groups; a group of one adds nothing; null when no group has two readings. */
export function pooledScatter(groups: readonly (readonly number[])[]): Scatter | null {
  const within = groups.map(deviationsOf);
  const dof = within.reduce((sum, g) => sum + Math.max(0, g.n - 1), 0);
  return dof > 0 ? { s: Math.sqrt(within.reduce((sum, g) => sum + g.ss, 0) / dof), dof } : null;
}

/**
 * One-way analysis of variance, in two passes after taking off the first reading, since sums of raw squares lose the
 * scatter under a large mean. Empty groups are left out; null with fewer than two groups or no repeat.
 *
 * source  e-Handbook 7.4.3                             check: its three groups of five; StRD SiRstv, SmLs01, SmLs07
 */
export function oneWayAnova(groups: readonly (readonly number[])[]): OneWayAnova | null {
  const full = groups.filter((g) => g.length > 0);
  const n = full.reduce((sum, g) => sum + g.length, 0);
  const dofBetween = full.length - 1;
  const dofWithin = n - full.length;
  if (dofBetween < 1 || dofWithin < 1) return null;
  const zero = full[0]![0]!;
  const shifted = full.map((g) => deviationsOf(g.map((x) => x - zero)));
  const grand = shifted.reduce((sum, g) => sum + g.mean * g.n, 0) / n;
  const ssBetween = shifted.reduce((sum, g) => sum + g.n * (g.mean - grand) ** 2, 0);
  const ssWithin = shifted.reduce((sum, g) => sum + g.ss, 0);
  const ratio = ssBetween === 0 ? 0 : ssBetween / dofBetween / (ssWithin / dofWithin);
  return {
    ssBetween,
    ssWithin,
    dofBetween,
    dofWithin,
    ratio,
    p: fTail(ratio, { above: dofBetween, below: dofWithin }),
    s: Math.sqrt(ssWithin / dofWithin),
    grandMean: zero + grand,
    means: shifted.map((g) => zero + g.mean),
  };
}

export interface Precision {
  readonly mean: number;
  /** Of one run repeated without touching anything. */
  readonly repeatability: number;
  /** Between groups (days, refits), never below zero. */
  readonly between: number;
  /** Of one run in another group; never below the repeatability. */
  readonly reproducibility: number;
}

/**
 *   s_L² = max(0, (MS between − MS within)/n₀),   s_R² = s_L² + s_r²,   n₀ = (N − Σn²/N)/(p − 1)
 *
 * source  ISO 5725-2 clause 7.4 (from memory)          check: ASTM E691 glucose example
 */
export function precision(groups: readonly (readonly number[])[]): Precision | null {
  const anova = oneWayAnova(groups);
  if (anova === null) return null;
  const sizes = groups.map((g) => g.length);
  const n = sizes.reduce((sum, k) => sum + k, 0);
  const runsEach = (n - sizes.reduce((sum, k) => sum + k * k, 0) / n) / anova.dofBetween;
  const between2 = Math.max(0, (anova.ssBetween / anova.dofBetween - anova.s ** 2) / runsEach);
  return {
    mean: anova.grandMean,
    repeatability: anova.s,
    between: Math.sqrt(between2),
    reproducibility: Math.sqrt(between2 + anova.s ** 2),
  };
}

export interface GrubbsTest {
  readonly index: number;
  readonly G: number;
  readonly critical: number;
  readonly outlying: boolean;
}

/**
 * One reading far from the others; null below three readings or when all are equal. A look for a cause, not a leave to delete.
 *
 *   G = max|y − m| / s,   limit (n − 1)/√n · √(t² / (n − 2 + t²)),   t at 1 − α/2n, or 1 − α/n for one side
 *
 * source  e-Handbook 1.3.5.17.1; ISO 5725-2 clause 7.3.4         check: the eight readings there, G 2.4687 over 2.0317
 */
export function grubbs(given: {
  readonly values: readonly number[];
  readonly side?: 'either' | 'upper' | 'lower';
  readonly coverage?: number;
}): GrubbsTest | null {
  const { values, side = 'either', coverage = 0.95 } = given;
  const n = values.length;
  const { mean, ss } = deviationsOf(values);
  if (n < 3 || ss === 0) return null;
  const farOut = values.map((v) => (side === 'either' ? Math.abs(v - mean) : side === 'upper' ? v - mean : mean - v));
  const farthest = Math.max(...farOut);
  const G = farthest / Math.sqrt(ss / (n - 1));
  const critical = grubbsLimit({ n, side, coverage });
  return { index: farOut.indexOf(farthest), G, critical, outlying: G > critical };
}

export function grubbsLimit(of: { readonly n: number; readonly side: string; readonly coverage: number }): number {
  const t = tQuantile(1 - (1 - of.coverage) / (of.side === 'either' ? 2 * of.n : of.n), of.n - 2);
  return ((of.n - 1) / Math.sqrt(of.n)) * Math.sqrt(t ** 2 / (of.n - 2 + t ** 2));
}

/** Mean and sum of squared deviations, the rounding of the mean taken back out. */
function deviationsOf(values: readonly number[]): { readonly n: number; readonly mean: number; readonly ss: number } {
  const n = values.length;
  if (n === 0) return { n, mean: 0, ss: 0 };
  const zero = values[0]!;
  const mean = zero + values.reduce((sum, v) => sum + (v - zero), 0) / n;
  const error = values.reduce((sum, v) => sum + (v - mean), 0);
  return { n, mean: mean + error / n, ss: values.reduce((sum, v) => sum + (v - mean) ** 2, 0) - error ** 2 / n };
}
