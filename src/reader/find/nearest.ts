import type { FindCondition, FindRun, FindSeries } from '../../trial/find.ts';
import { facetsIn, type Facet } from './differs.ts';

/** A run that comes near to what is asked: in what it differs, and the condition at which it is nearest (null: any). */
export interface Near {
  readonly series: FindSeries;
  /** Runs that come equally near, of one cell. */
  readonly runs: readonly FindRun[];
  readonly condition: FindCondition | null;
  readonly differs: readonly Facet[];
}

interface Kept {
  readonly distance: number;
  readonly series: FindSeries;
  readonly runs: FindRun[];
  readonly condition: FindCondition | null;
}

/**
 * The nearest that was tested. Fields have no common measure, so a run comes near when no other differs in fewer of the
 * same fields; among runs that differ in the same fields the one that lies least far off stands for them.
 */
export function nearestOf() {
  const byMask = new Map<number, Kept>();
  return {
    offer: (of: {
      mask: number;
      distance: number;
      series: FindSeries;
      run: FindRun;
      condition: FindCondition | null;
    }): void => {
      const { mask, distance, series, run, condition } = of;
      const kept = byMask.get(mask);
      if (kept === undefined || distance < kept.distance - 1e-9)
        byMask.set(mask, { distance, series, runs: [run], condition });
      else if (
        distance <= kept.distance + 1e-9 &&
        series === kept.series &&
        run[2] === kept.runs[0]![2] &&
        condition === kept.condition &&
        !kept.runs.includes(run)
      )
        kept.runs.push(run);
    },
    found: (most: number): readonly Near[] =>
      [...byMask]
        .filter(([mask]) => ![...byMask.keys()].some((other) => other !== mask && (other & mask) === other))
        .map(([mask, kept]) => ({ ...kept, differs: facetsIn(mask) }))
        .sort((a, b) => a.differs.length - b.differs.length || a.distance - b.distance)
        .slice(0, most)
        .map(({ series, runs, condition, differs }) => ({ series, runs, condition, differs })),
  };
}
