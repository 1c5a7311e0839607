import { standardUncertainty, type Cause, type CauseTable, type Part } from '../quantity/estimate.ts';
import type { CellFigure, Effect, Standing } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import type { NextRun, NextTrial } from '../trial/next-trial.ts';
import { cellKey } from './group.ts';

export type Widths = Pick<NextTrial, 'from' | 'now' | 'largest'> & { readonly runs: readonly Omit<NextRun, 'kind'>[] };

/**
 * Where no scatter is measured, the variance of a difference is that of its causes: those that each run draws anew shrink
 * with the number of runs, those of the whole series do not. The factor of the interval is left as it is.
 *
 *   own variance of n runs → n/(n + 1) of it
 */
export function nextFromCauses(of: {
  standing: Standing;
  effects: readonly Effect[];
  figures: readonly CellFigure[];
  causes: CauseTable;
  /** Wanted cells without a difference yet. */
  fresh: readonly Cell[];
}): Widths {
  const { standing, effects, figures, causes, fresh } = of;
  const partsOf = (cell: Cell): ReadonlySet<string> => {
    const figure = figures.find(
      (f) =>
        f.quantity === standing.quantity &&
        JSON.stringify(f.at) === JSON.stringify(standing.at) &&
        cellKey(f.cell) === cellKey(cell),
    );
    return new Set((figure?.estimate?.parts ?? []).map(({ cause }) => cause));
  };
  const base = partsOf(standing.against);
  const rows = effects.map((effect) => {
    const own = partsOf(effect.cell);
    const u = standardUncertainty(effect.estimate);
    const ofRuns = (mine: ReadonlySet<string>, other: ReadonlySet<string>): number =>
      variance(
        effect.estimate.parts.filter(
          ({ cause }) => mine.has(cause) && !other.has(cause) && drawnAnew(causes.get(cause)),
        ),
      );
    const half = (effect.simultaneous[1] - effect.simultaneous[0]) / 2;
    return {
      ...{ cell: effect.cell, all: u ** 2, factor: u === 0 ? 0 : half / u },
      own: ofRuns(own, base) / (effect.runs.length + 1),
      base: ofRuns(base, own) / (effect.againstRuns.length + 1),
    };
  });
  const halves = (less: (row: (typeof rows)[number]) => number): number =>
    mean(rows.map((row) => row.factor * Math.sqrt(Math.max(0, row.all - less(row)))));
  const now = halves(() => 0);
  return {
    from: 'causes',
    now,
    largest: largestOf(effects, causes),
    runs: [
      { cell: standing.against, baseline: true, after: halves((row) => row.base), adds: null },
      ...rows.map((mine) => ({
        ...{ cell: mine.cell, baseline: false, adds: null },
        after: halves((row) => (row === mine ? row.own : 0)),
      })),
      // What its own causes will be is not known; those of the others are like it.
      ...fresh.map((cell) => ({ cell, baseline: false, after: now, adds: now })),
    ],
  };
}

/** What another run would draw anew; a calibration of the series, a survey of a level table it would not. */
const drawnAnew = (cause: Cause | undefined): boolean => cause !== undefined && cause.scope !== 'series';

const variance = (parts: readonly Part[]): number => parts.reduce((sum, { u }) => sum + u ** 2, 0);

/** Causes of one name together, whichever run they are of; their mean part over the differences. */
function largestOf(effects: readonly Effect[], causes: CauseTable): Widths['largest'] {
  const shares = new Map<string, number>();
  for (const { estimate, runs, againstRuns } of effects) {
    const all = standardUncertainty(estimate) ** 2;
    for (const { cause, u } of all === 0 ? [] : estimate.parts) {
      const name = [...runs, ...againstRuns].reduce(
        (text, run) => text.replace(` of ${run}`, '').replace(` in ${run}`, ''),
        causes.get(cause)?.name ?? cause,
      );
      shares.set(name, (shares.get(name) ?? 0) + u ** 2 / all / effects.length);
    }
  }
  const [first] = [...shares].sort(([, a], [, b]) => b - a);
  return first === undefined ? null : { cause: first[0], share: first[1] };
}

export const mean = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;
