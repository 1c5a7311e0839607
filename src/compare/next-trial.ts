import { standardUncertainty } from '../quantity/estimate.ts';
import { dunnett, sharedByRuns } from '../statistics/dunnett.ts';
import type { Series } from '../trial/book.ts';
import type { ComparedSeries, Effect, Standing } from '../trial/compared.ts';
import type { Cell, DerivedRun } from '../trial/derived.ts';
import type { NextRun, NextTrial } from '../trial/next-trial.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { mean, nextFromCauses, type Widths } from './next-from-causes.ts';
import { openOf, type OpenCells } from './open-cells.ts';
import { sameCell } from './plan-done.ts';

/** What the next run of each standing could be held against. */
export interface NextInput {
  readonly record: Pick<SeriesRecord, 'series' | 'plan' | 'articles' | 'oils'>;
  readonly runs: ReadonlyMap<string, DerivedRun>;
  readonly compared: Pick<ComparedSeries, 'standings' | 'cells' | 'causes'>;
}

/** Of each standing: how wide its differences are now, and what one more run of each cell would do to them. */
export function nextTrials(input: NextInput): NextTrial[] {
  const { standings, cells: figures, causes: list } = input.compared;
  const causes = new Map(list.map((cause) => [cause.id, cause]));
  return standings.flatMap((standing) => {
    const effects = standing.rows.flatMap(({ effect }) => (effect === null ? [] : [effect]));
    if (effects.length === 0) return [];
    const open = openOf(standing, effects, input);
    const next =
      standing.repeatability === null
        ? nextFromCauses({ standing, effects, figures, causes, fresh: open.fresh })
        : nextFromRepeats({ standing, effects, open, s: standing.repeatability, series: input.record.series });
    const kindOf = (cell: Cell): NextRun['kind'] =>
      open.wanted.some((one) => sameCell(one, cell, { tilt_ratio: 1e-6 })) ? 'planned' : 'further';
    return [
      {
        ...{ standing: standing.id, plan: open.plan },
        ...next,
        runs: inOrder(next.runs.map((run): NextRun => ({ ...run, kind: kindOf(run.cell) }))),
      },
    ];
  });
}

/** Wanted cells that are in the standing, then those that are not, then what lies beyond the plan; the narrowest first. */
const inOrder = (runs: readonly NextRun[]): NextRun[] =>
  [...runs].sort((a, b) => turn(a) - turn(b) || a.after - b.after || (a.cell.article < b.cell.article ? -1 : 1));
const turn = (run: NextRun): number => (run.kind === 'further' ? 2 : run.adds === null ? 0 : 1);

interface Repeats {
  readonly standing: Standing;
  readonly effects: readonly Effect[];
  readonly open: OpenCells;
  readonly s: { readonly s: number; readonly dof: number };
  readonly series: Series;
}

/**
 * With measured scatter, one run more of cell i makes its difference
 *
 *   u² = s²·(1/(nᵢ+1) + 1/n₀) + rest²,   half width = d(ν+1)·u
 *
 * s as it is; `rest` is what does not shrink with runs, such as the drift; d the factor of Dunnett for the new numbers.
 */
function nextFromRepeats({ standing: { against }, effects, open, s: { s, dof }, series }: Repeats): Widths {
  const baselineRuns = effects[0]!.againstRuns.length;
  const rows = effects.map(({ cell, runs, estimate }) => ({
    ...{ cell, n: runs.length },
    rest2: Math.max(0, standardUncertainty(estimate) ** 2 - s ** 2 * (1 / runs.length + 1 / baselineRuns)),
  }));
  const halves = (list: readonly { n: number; rest2: number }[], n0: number, spare: number): number[] => {
    const shared = sharedByRuns({ baselineRuns: n0, runs: list.map(({ n }) => n) });
    const d = dunnett({ dof: spare, coverage: 1 - series.familyLevel, shared });
    return list.map(({ n, rest2 }) => d * Math.sqrt(s ** 2 * (1 / n + 1 / n0) + rest2));
  };
  const more = (at: number) => rows.map((row, i) => (i === at ? { ...row, n: row.n + 1 } : row));
  const only = { baseline: false, adds: null };
  return {
    from: 'repeats',
    largest: null,
    now: mean(halves(rows, baselineRuns, dof)),
    runs: [
      { ...only, cell: against, baseline: true, after: mean(halves(rows, baselineRuns + 1, dof + 1)) },
      ...rows.map(({ cell }, i) => ({ ...only, cell, after: mean(halves(more(i), baselineRuns, dof + 1)) })),
      // Not compared here, yet its repeats are in the pooled scatter.
      ...open.besides.map((cell) => ({ ...only, cell, after: mean(halves(rows, baselineRuns, dof + 1)) })),
      ...open.fresh.map((cell) => {
        // A first run of a cell brings a mean of its own, and so no degree of freedom.
        const all = halves([...rows, { n: 1, rest2: 0 }], baselineRuns, dof);
        return { ...only, cell, after: mean(all.slice(0, -1)), adds: all.at(-1) ?? null };
      }),
    ],
  };
}
