import type { Cause } from '../quantity/estimate.ts';
import { pinionSpeed_rad_s } from '../physics/speeds.ts';
import type { ComparedSeries } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { agreementsOf } from './agreement.ts';
import { judgeClaims } from './claims.ts';
import { meanKnown } from './conditions.ts';
import { dependsOn } from './depends.ts';
import { groupsOf, withoutMixed, type Group } from './group.ts';
import { alone, repeated, type Celled } from './repeated.ts';
import { single, type RefitScatter } from './single.ts';
import { splitsOf } from './splits.ts';
import { judge } from './standing.ts';

/**
 * Every quantity of every trial, cell by cell: figures of cells, effects against the baseline, standings, refusals.
 * Spin runs repeat each other, so their scatter is measured; a loaded run mostly stands alone and takes its scatter from causes.
 */
export function compareSeries(record: SeriesRecord, runs: ReadonlyMap<string, DerivedRun>): ComparedSeries {
  const { series, plan, rig } = record;
  const table = new Map<string, Cause>();
  for (const run of runs.values()) for (const c of run.causes) table.set(c.id, c);
  const carriers = new Map<string, number>();
  for (const run of runs.values())
    for (const id of new Set(run.causes.map((c) => c.id))) carriers.set(id, (carriers.get(id) ?? 0) + 1);
  // What several runs carry, as the final temperature of one heat-up, is not inside the scatter between them.
  const isSeriesCause = (id: string): boolean => table.get(id)?.scope === 'series' || (carriers.get(id) ?? 0) > 1;
  const groups = groupsOf(runs).map((group) => withoutMixed(group, series));
  const refit = refitScatter(groups, record, isSeriesCause);
  const loaded = [...runs.values()].filter((r) => r.trial === 'heat-up' && r.leftOut === null).map((r) => r.conditions);
  const mean = {
    ambient_K: meanOf(loaded.map((c) => c.ambient_K)),
    airflow_m_s: meanOf(loaded.map((c) => c.airflow_m_s)),
  };
  /** Null where neither repeats nor known causes say how far one run scatters. */
  const celledOf = (group: Group): Celled | null => {
    const measured = repeated(group, isSeriesCause);
    if (group.trial === 'spin' || (measured?.repeatability?.dof ?? 0) >= enoughRepeats) return measured;
    return single(group, { refit, rig, series, mean }) ?? measured;
  };
  const out = { cells: [], effects: [], refusals: [], standings: [] } as {
    [K in 'cells' | 'effects' | 'refusals' | 'standings']: ComparedSeries[K][number][];
  };
  for (const group of groups) {
    const celled = celledOf(group) ?? alone(group);
    for (const c of celled.causes) table.set(c.id, c);
    const judged = judge({ group, celled, causes: table, series, plan });
    out.cells.push(...judged.cells);
    out.effects.push(...judged.effects);
    out.refusals.push(...judged.refusals);
    out.standings.push(...judged.standings);
  }
  const { cells, effects } = out;
  const claimed = judgeClaims(record.claims, { ...out, runs, causes: table, series });
  const { agreements, causes } = agreementsOf({ runs, rule: series.agreement });
  for (const c of causes) table.set(c.id, c);
  return {
    ...out,
    effects: [...effects, ...claimed.effects],
    claims: claimed.claims,
    splits: splitsOf({ effects, cells }),
    depends: dependsOn({ effects, series }),
    agreements,
    causes: [...table.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    findings: [],
  };
}

/** Degrees of freedom from which the scatter of loaded runs is measured and not put together from causes. */
const enoughRepeats = 4;

/** Scatter of one refit in watts at the loaded speed: from the spin runs near the main temperature, or the lab's own figure. */
function refitScatter(
  groups: readonly Group[],
  record: SeriesRecord,
  isSeriesCause: (id: string) => boolean,
): RefitScatter | null {
  const { series, plan, rig } = record;
  const speed = plan?.load?.outputSpeed_rad_s ?? series.reference.outputSpeed_rad_s;
  const spin = groups.find(
    (g) =>
      g.quantity === 'spin-power' &&
      Math.abs((g.at.outputSpeed_rad_s ?? 0) - speed) < 1e-6 &&
      typeof g.at.sump_K === 'number' &&
      Math.abs(g.at.sump_K - series.reference.mainSump_K) < 0.01,
  );
  const found = spin === undefined ? null : repeated(spin, isSeriesCause)?.repeatability;
  if (found != null) return { u_W: found.s, dof: found.dof };
  if (series.refit_Nm === null) return null;
  return { u_W: series.refit_Nm * pinionSpeed_rad_s({ output_rad_s: speed, teeth: rig }), dof: Infinity };
}

const meanOf = (list: readonly (number | null)[]): number => meanKnown(list) ?? 0;
