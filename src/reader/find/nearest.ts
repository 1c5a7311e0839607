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
  readonly groups: { series: FindSeries; runs: FindRun[]; condition: FindCondition | null }[];
}

export interface Offered {
  readonly mask: number;
  readonly distance: number;
  readonly series: FindSeries;
  readonly run: FindRun;
  readonly condition: FindCondition | null;
}

/** So many cells that come equally near stand for all of them. */
const mostAlike = 3;

/**
 * The nearest that was tested. Fields have no common measure, so a run comes near when no other differs in fewer of the
 * same fields; among runs that differ in the same fields those that lie least far off stand for them.
 */
export function nearestOf() {
  const byMask = new Map<number, Kept>();
  return {
    offer: ({ mask, distance, series, run, condition }: Offered): void => {
      const kept = byMask.get(mask);
      if (kept === undefined || distance < kept.distance - 1e-9)
        byMask.set(mask, { distance, groups: [{ series, runs: [run], condition }] });
      else if (distance <= kept.distance + 1e-9) {
        const own = kept.groups.find((group) => group.series === series && group.runs[0]![2] === run[2]);
        if (own === undefined) {
          if (kept.groups.length < mostAlike) kept.groups.push({ series, runs: [run], condition });
        } else if (!own.runs.includes(run)) own.runs.push(run);
      }
    },
    found: (most: number): readonly Near[] =>
      [...byMask]
        .filter(([mask]) => ![...byMask.keys()].some((other) => other !== mask && (other & mask) === other))
        .map(([mask, { distance, groups }]) => ({ distance, groups, differs: facetsIn(mask) }))
        .sort((a, b) => a.differs.length - b.differs.length || a.distance - b.distance)
        .flatMap(({ groups, differs }) =>
          [...groups].sort((a, b) => b.runs.length - a.runs.length).map((group) => ({ ...group, differs })),
        )
        .slice(0, most),
  };
}
