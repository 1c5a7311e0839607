import { difference, effectiveDof, standardUncertainty, type CauseTable } from '../quantity/estimate.ts';
import { fTail } from '../statistics/f-tail.ts';
import { tTail } from '../statistics/student.ts';
import type { Wander } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Reduced } from './group.ts';
import * as texts from './texts.ts';

/** Chance below which the baseline's own scatter is no accident. */
const level = 0.01;

/**
 * Whether the runs of the baseline scatter more, after the drift, than those of the other cells or than the lab's own
 * figure allows: F test of the two variances, one-sided. Null with fewer than two runs of the baseline, or nothing to hold
 * them against.
 *
 * source  ISO 5725-2:1994, 7.3 looks at wild variances by Cochran's test; with one suspect cell named beforehand it is F
 */
export function wanderOf(of: {
  /** Differences of the baseline's runs from their own fitted mean, and those of all other runs. */
  readonly own: readonly number[];
  readonly others: readonly number[];
  readonly othersDof: number;
  /** Standard deviation of one refit that the lab knows from elsewhere. */
  readonly lab: number | null;
}): Wander | null {
  const dof = of.own.length - 1;
  if (dof < 1) return null;
  const known =
    of.othersDof >= 2
      ? { s: Math.sqrt(sumOfSquares(of.others) / of.othersDof), dof: of.othersDof }
      : of.lab === null
        ? null
        : { s: of.lab, dof: 1e6 };
  if (known === null || known.s === 0) return null;
  const s = Math.sqrt(sumOfSquares(of.own) / dof);
  const p = fTail((s / known.s) ** 2, { above: dof, below: known.dof });
  return { runs: of.own.length, s, against: known.s, p, wandered: p < level };
}

/** The same for runs whose scatter comes from causes: the farthest two against what their causes allow, for as many pairs. */
export function wanderFromCauses(runs: readonly Reduced[], causes: CauseTable): Wander | null {
  const pairs = runs.flatMap((a, i) => runs.slice(i + 1).map((b) => difference(a.estimate, b.estimate)));
  const judged = pairs
    .map((d) => ({ d, u: standardUncertainty(d), dof: effectiveDof(d, causes) }))
    .filter(({ u }) => u > 0)
    .map(({ d, u, dof }) => ({ by: Math.abs(d.value), u, p: tTail(Math.abs(d.value) / u, dof) }))
    .sort((a, b) => a.p - b.p);
  const [farthest] = judged;
  if (farthest === undefined) return null;
  const p = Math.min(1, farthest.p * judged.length);
  // Of two runs d apart the standard deviation is d/√2.
  const [s, against] = [farthest.by / Math.SQRT2, farthest.u / Math.SQRT2];
  return { runs: runs.length, s, against, p, wandered: p < level };
}

/** What makes a table of repeats indicative only, whatever its figures say. */
export function notBracketed(of: {
  readonly runs: readonly DerivedRun[];
  readonly isBase: (run: DerivedRun) => boolean;
}): string[] {
  const base = of.runs.filter(of.isBase);
  const others = of.runs.filter((run) => !of.isBase(run));
  if (base.length === 0 || others.length === 0) return [];
  const last = [...others].sort((a, b) => b.order - a.order)[0]!;
  const after = base.some((run) => run.order > last.order);
  const days = new Set(of.runs.map(({ startedDay }) => startedDay));
  return [
    ...(after ? [] : [base.length === 1 ? texts.baselineOnce : texts.baselineNotAgain(last.run)]),
    ...(days.size === 1 ? [texts.oneDay] : []),
  ];
}

const sumOfSquares = (list: readonly number[]): number => list.reduce((sum, x) => sum + x * x, 0);
