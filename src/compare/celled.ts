import { type Cause, type CauseTable } from '../quantity/estimate.ts';
import { pinionSpeed_rad_s } from '../physics/speeds.ts';
import type { DriftOver, Series } from '../trial/book.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import type { Rig } from '../trial/rig.ts';
import { meanKnown } from './conditions.ts';
import { corrected } from './corrected.ts';
import { cellKey, groupsOf, withoutMixed, type Group } from './group.ts';
import { alone, repeated, type Celled, type Repeating } from './repeated.ts';
import { single, type Meters, type RefitScatter } from './single.ts';
import * as texts from './texts.ts';
import { timeBase } from './time-base.ts';

/** What a comparison asks of a series, beside its runs. */
export interface Compared {
  readonly series: Series;
  readonly plan: Pick<Plan, 'factors' | 'load'> | null;
  readonly rig: Meters &
    Pick<Rig, 'teethPinion' | 'teethRing' | 'hubReduction'> & {
      /** Whether each state had settled; without them nothing is said of it. */
      readonly states?: readonly Pick<Rig['states'][number], 'id' | 'settled'>[];
    };
}

/** Groups of a series with the figures of their cells, and every cause that these have. */
export interface CelledSeries {
  readonly groups: readonly { readonly group: Group; readonly celled: Celled }[];
  readonly causes: CauseTable;
}

/**
 * The figures of every cell. Spin runs repeat each other, so their scatter is measured; a loaded run mostly stands alone and
 * takes its scatter from causes.
 */
export function celledSeries(
  record: Compared,
  runs: ReadonlyMap<string, DerivedRun>,
  how: {
    readonly drift: DriftOver;
    /** Every standard uncertainty so many times; 1 unless said. */
    readonly wider?: number;
    /** Only these; all unless said. */
    readonly only?: (group: Group) => boolean;
  },
): CelledSeries {
  const { series, rig } = record;
  const { drift, wider = 1, only = () => true } = how;
  const table = new Map<string, Cause>();
  for (const run of runs.values()) for (const c of run.causes) table.set(c.id, c);
  const carriers = new Map<string, number>();
  for (const run of runs.values())
    for (const id of new Set(run.causes.map((c) => c.id))) carriers.set(id, (carriers.get(id) ?? 0) + 1);
  // What several runs carry, as the final temperature of one heat-up, is not inside the scatter between them.
  const isSeriesCause = (id: string): boolean => table.get(id)?.scope === 'series' || (carriers.get(id) ?? 0) > 1;
  const loaded = [...runs.values()].filter((r) => r.trial === 'heat-up' && r.leftOut === null).map((r) => r.conditions);
  const mean = {
    ambient_K: meanOf(loaded.map((c) => c.ambient_K)),
    airflow_m_s: meanOf(loaded.map((c) => c.airflow_m_s)),
  };
  const stated = series.reference.ambient_K;
  const reference = { ambient_K: stated ?? mean.ambient_K, stated: stated !== null };
  const groups = groupsOf(runs)
    .filter((group) => only(group) || isRefitGroup(group, record))
    .map((group) => corrected(withoutMixed(group, series), reference));
  const time = timeBase(drift, runs.values());
  const repeating = (group: Group): Repeating => ({
    ...{ isSeriesCause, time, lab: labScatter(group, record) },
    isBase: (cell) => cellKey(cell) === cellKey({ ...cell, ...series.baseline, tilt_ratio: 0 }),
  });
  const refit = refitScatter(groups, record, repeating);
  /** Null where neither repeats nor known causes say how far one run scatters. */
  const celledOf = (group: Group): Celled | null => {
    const measured = repeated(group, repeating(group));
    if (group.trial === 'spin' || (measured?.repeatability?.dof ?? 0) >= enoughRepeats) return measured;
    return single(group, { refit, rig, series, mean }) ?? measured;
  };
  const found = groups
    .filter(only)
    .map((group) => ({ group, celled: unsettled(group, widened(celledOf(group) ?? alone(group), wider), rig.states) }));
  for (const { celled } of found) for (const c of celled.causes) table.set(c.id, c);
  return { groups: found, causes: table };
}

/** Degrees of freedom from which the scatter of loaded runs is measured and not put together from causes. */
const enoughRepeats = 4;

/** The group that the scatter of one refit is taken from: spin at the loaded speed, near the main temperature. */
export function isRefitGroup({ quantity, at }: Pick<Group, 'quantity' | 'at'>, record: Compared): boolean {
  const { series, plan } = record;
  const speed = plan?.load?.outputSpeed_rad_s ?? series.reference.outputSpeed_rad_s;
  return (
    quantity === 'spin-power' &&
    Math.abs((at.outputSpeed_rad_s ?? 0) - speed) < 1e-6 &&
    typeof at.sump_K === 'number' &&
    Math.abs(at.sump_K - series.reference.mainSump_K) < 0.01
  );
}

/** Scatter of one refit in watts at the loaded speed: from the spin runs near the main temperature, or the lab's own figure. */
function refitScatter(
  groups: readonly Group[],
  record: Compared,
  repeating: (group: Group) => Repeating,
): RefitScatter | null {
  const { series, plan, rig } = record;
  const speed = plan?.load?.outputSpeed_rad_s ?? series.reference.outputSpeed_rad_s;
  const spin = groups.find((g) => isRefitGroup(g, record));
  const found = spin === undefined ? null : repeated(spin, repeating(spin))?.repeatability;
  if (found != null) return { u_W: found.s, dof: found.dof };
  if (series.refit_Nm === null) return null;
  return { u_W: series.refit_Nm * pinionSpeed_rad_s({ output_rad_s: speed, teeth: rig }), dof: Infinity };
}

/** The lab's own figure for a refit, as this quantity has it. */
function labScatter({ quantity, at }: Group, { series, rig }: Compared): number | null {
  if (series.refit_Nm === null) return null;
  if (quantity === 'spin-torque') return series.refit_Nm;
  if (quantity !== 'spin-power' || at.outputSpeed_rad_s === undefined) return null;
  return series.refit_Nm * pinionSpeed_rad_s({ output_rad_s: at.outputSpeed_rad_s, teeth: rig });
}

/** While a gear set still beds in, a later article gains by being later: what follows from such runs is indicative only. */
function unsettled({ reduced }: Group, celled: Celled, states: Compared['rig']['states'] = []): Celled {
  const used = states.filter(({ id, settled }) => settled === false && reduced.some(({ run }) => run.rigState === id));
  if (used.length === 0) return celled;
  return { ...celled, indicative: [...celled.indicative, texts.notSettled(used.map(({ id }) => id))] };
}

/** The same cells with every standard uncertainty so many times; values stay. */
function widened(celled: Celled, times: number): Celled {
  if (times === 1) return celled;
  const wide = ({ value, parts }: Celled['cells'][number]['estimate']) => ({
    value,
    parts: parts.map(({ cause, u }) => ({ cause, u: u * times })),
  });
  return {
    ...celled,
    cells: celled.cells.map((c) => ({
      ...c,
      estimate: wide(c.estimate),
      runs: c.runs.map((r) => ({ ...r, estimate: wide(r.estimate) })),
    })),
    repeatability:
      celled.repeatability === null ? null : { ...celled.repeatability, s: celled.repeatability.s * times },
  };
}

const meanOf = (list: readonly (number | null)[]): number => meanKnown(list) ?? 0;
