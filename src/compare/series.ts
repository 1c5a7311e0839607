import type { DriftOver } from '../trial/book.ts';
import type { ComparedSeries } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { agreementsOf } from './agreement.ts';
import { seriesTrials, type Remember } from './by-trials.ts';
import { celledSeries } from './celled.ts';
import { judgeClaims } from './claims.ts';
import { costsOf } from './cost.ts';
import { filmRatios } from './film.ts';
import { dependsOn } from './depends.ts';
import { factorialsOf } from './factorial.ts';
import type { Areas } from './cover-share.ts';
import { splitsOf } from './splits.ts';
import { ownInterval } from './verdict.ts';
import { surfaceSheds } from './surface.ts';
import { judge } from './standing.ts';

/** How a series is compared, beside what its notes say. */
export interface Comparing {
  /** Seed of the trials; null where a choice is only tried: then every interval is the linear one. */
  readonly seed?: string | null;
  readonly remember?: Remember;
  /** Another base of the drift than the series has, or none. */
  readonly drift?: DriftOver;
}

/** Every quantity of every trial, cell by cell: figures of cells, effects against the baseline, standings, refusals. */
export function compareSeries(
  record: SeriesRecord,
  runs: ReadonlyMap<string, DerivedRun>,
  { seed = null, remember = afresh, drift = record.series.driftOver }: Comparing = {},
): ComparedSeries {
  const { series, plan } = record;
  const { groups, causes: known, bridges } = celledSeries(record, runs, { drift });
  const table = new Map(known);
  const out = { cells: [], effects: [], refusals: [], standings: [] } as {
    [K in 'cells' | 'effects' | 'refusals' | 'standings']: ComparedSeries[K][number][];
  };
  const trials = seed === null ? null : seriesTrials({ seed, causes: table, coverage: series.coverage, remember });
  for (const { group, celled } of groups) {
    const judged = judge({ group, celled, causes: table, series, plan, trials });
    out.cells.push(...judged.cells);
    out.effects.push(...judged.effects);
    out.refusals.push(...judged.refusals);
    out.standings.push(...judged.standings);
  }
  const { cells, effects } = out;
  const claimed = judgeClaims(record.claims, { ...out, runs, causes: table, series, trials });
  const shown = [...effects, ...claimed.effects];
  const factored = factorialsOf({
    cells: cells.filter(({ cell }) => cell.campaign === undefined),
    effects: shown,
    runs,
    series,
    causes: table,
    trials,
  });
  const { agreements, causes } = agreementsOf({ runs, rule: series.agreement });
  for (const c of causes) table.set(c.id, c);
  return {
    seed,
    ...(bridges.length === 0 ? {} : { bridges }),
    ...out,
    effects: [...shown, ...factored.effects],
    factorials: factored.factorials,
    claims: claimed.claims,
    splits: splitsOf({
      ...{ effects, cells, trials, areas: areasOf(record) },
      interval: (e) => ownInterval(e, table, series.coverage),
    }),
    costs: costsOf({ effects, series, rig: record.rig, half: (e) => halfOf(ownInterval(e, table, series.coverage)) }),
    surfaces: surfaceSheds({ cells, series, rig: record.rig, areas: areasOf(record) }),
    films: filmRatios({ effects, cells, oils: record.oils }),
    depends: dependsOn({ effects, series }),
    agreements,
    causes: [...table.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    findings: [],
  };
}

const areasOf = ({ rig, articles }: SeriesRecord): Areas => ({
  axle_m2: rig.rejectingArea_m2,
  article_m2: (id) => articles.get(id)?.outsideArea_m2 ?? null,
});

const halfOf = ([low, high]: readonly [number, number]): number => (high - low) / 2;

const afresh: Remember = (_, make) => make();
