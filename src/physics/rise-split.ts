import { input, output, type Relation } from './relation.ts';

/** A cell at rest in its final state: what it makes, and its final rise above ambient. */
export interface HeatAndRise {
  readonly heat_W: number;
  readonly rise_K: number;
}

/** A difference of rise in two parts that add up to it. Negative is cooler than the baseline. */
export interface RiseSplit {
  readonly logMean_K: number;
  /** Part of the difference by the heat made. */
  readonly byHeatMade_K: number;
  /** Part of the difference by the shed. */
  readonly byShed_K: number;
}

/**
 * Logarithmic mean of two rises.
 *
 *   M = (ΔT_B − ΔT_A)/ln(ΔT_B/ΔT_A),  M = ΔT_A where both are equal
 *
 * a, b         [K]
 * returns      M [K]; null unless both are above 0
 * range        both rises above 0
 * source       definition      check: 60 and 80 K: 20/ln(4/3) = 69.521 K
 */
export function logMean_K(rises: { a_K: number; b_K: number }): number | null {
  if (!(rises.a_K > 0) || !(rises.b_K > 0) || rises.a_K === Infinity || rises.b_K === Infinity) return null;
  const part = (rises.b_K - rises.a_K) / rises.a_K;
  return part === 0 ? rises.a_K : (rises.b_K - rises.a_K) / Math.log1p(part);
}

/**
 * How much of a difference of final rise comes of making less heat and how much of shedding more; exact, no residue.
 *
 *   ΔT_B − ΔT_A = M ln(Q_B/Q_A) + M ln(K_A/K_B),  K = Q/ΔT
 *
 * baseline A, other B: heat [W], rise [K]
 * returns      both parts and M [K]; null unless all four numbers are above 0
 * range        final states, not rises on the way
 * source       derived        check: the parts add up to the difference
 */
export function riseSplit(of: { baseline: HeatAndRise; other: HeatAndRise }): RiseSplit | null {
  const mean_K = logMean_K({ a_K: of.baseline.rise_K, b_K: of.other.rise_K });
  if (mean_K === null || !(of.baseline.heat_W > 0) || !(of.other.heat_W > 0)) return null;
  const heatRatio = of.other.heat_W / of.baseline.heat_W;
  const shedRatio = of.other.heat_W / of.other.rise_K / (of.baseline.heat_W / of.baseline.rise_K);
  return { logMean_K: mean_K, byHeatMade_K: mean_K * Math.log(heatRatio), byShed_K: -mean_K * Math.log(shedRatio) };
}

export const logMeanRelation: Relation<{ readonly a_K: number; readonly b_K: number }> = {
  id: 'log-mean-rise',
  title: 'Makes less, sheds more: the log-mean split',
  formula: {
    latex: String.raw`\Delta T_B-\Delta T_A=M\ln\frac{Q_B}{Q_A}+M\ln\frac{K_A}{K_B},\quad M=\frac{\Delta T_B-\Delta T_A}{\ln(\Delta T_B/\Delta T_A)}`,
    plain: 'ΔT_B − ΔT_A = M ln(Q_B/Q_A) + M ln(K_A/K_B), M = (ΔT_B − ΔT_A)/ln(ΔT_B/ΔT_A)',
  },
  symbols: [
    input('a_K', 'ΔT_A', 'final rise of the baseline', 'K'),
    input('b_K', 'ΔT_B', 'final rise of the other', 'K'),
    output('M', 'logarithmic mean of the rises', 'K'),
  ],
  range: [],
  source: 'derived',
  grade: 'VC',
  checks: [
    {
      source: 'ln(4/3) = 0.28768207 of any table of logarithms: 20/0.28768207',
      seen: 'memory',
      inputs: { a_K: 60, b_K: 80 },
      printed: '69.521',
    },
  ],
  of: (rises) => logMean_K(rises),
};
