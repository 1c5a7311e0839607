import { effectiveDof, standardUncertainty, type CauseTable, type Estimate } from '../quantity/estimate.ts';
import { coverageFactor } from '../statistics/student.ts';
import type { ClaimWord, Clause } from '../trial/claim.ts';

/** Own interval of an estimate at a coverage. */
export function ownInterval(e: Estimate, causes: CauseTable, coverage: number): readonly [number, number] {
  const half = coverageFactor(coverage, effectiveDof(e, causes)) * standardUncertainty(e);
  return [e.value - half, e.value + half];
}

/** What a claim asks of an effect: signs turned so that it reads effect ≥ threshold. */
export type Asked = Pick<Clause, 'direction' | 'threshold'>;

/**
 * The word of one clause from its value and interval [l, h], signs turned so that the claim reads effect ≥ t, t ≥ 0.
 *
 *   shown l ≥ t (l > 0 when t = 0) · shown against h < t · not shown l ≤ 0 ≤ h · else leaning
 *   within t: shown −t ≤ l and h ≤ t · shown against l > t or h < −t · leaning when the value lies inside · else not shown
 *
 * The first that holds. A claim that the whole interval contradicts is shown against, even where it also holds 0.
 */
export function wordOf(asked: Asked, value: number, interval: readonly [number, number]): ClaimWord {
  const t = asked.threshold;
  if (asked.direction === 'within') {
    const [l, h] = interval;
    if (-t <= l && h <= t) return 'shown';
    if (l > t || h < -t) return 'shown against';
    return Math.abs(value) <= t ? 'leaning' : 'not shown';
  }
  const turned = asked.direction === 'lower' ? ([-interval[1], -interval[0]] as const) : interval;
  const [l, h] = turned;
  if (t === 0 ? l > 0 : l >= t) return 'shown';
  if (h < t) return 'shown against';
  return l <= 0 && h >= 0 ? 'not shown' : 'leaning';
}

/** The word of a claim of several clauses: it holds only where all of them do. */
export function wholeWord(words: readonly ClaimWord[]): ClaimWord {
  if (words.length === 0 || words.includes('cannot tell')) return 'cannot tell';
  if (words.every((word) => word === 'shown')) return 'shown';
  if (words.includes('shown against')) return 'shown against';
  return words.includes('not shown') ? 'not shown' : 'leaning';
}
