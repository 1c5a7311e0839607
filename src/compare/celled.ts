import { type Cause, type CauseTable } from '../quantity/estimate.ts';
import { pinionSpeed_rad_s } from '../physics/speeds.ts';
import type { DriftOver, Series } from '../trial/book.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import type { Rig } from '../trial/rig.ts';
import type { Bridge } from '../trial/campaign.ts';
import { bridged, withCampaigns } from './bridging.ts';
import { aroundOf, firstCampaign, isBaseOf, keptBy, ofCampaigns, shiftScatter, withinCampaigns } from './campaigns.ts';
import { corrected } from './corrected.ts';
import { groupsOf, withoutMixed, type Group } from './group.ts';
import { alone, repeated, type Celled } from './repeated.ts';
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
  /** What became of each later campaign, table by table. */
  readonly bridges: readonly Bridge[];
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
  const time = timeBase(drift, runs.values());
  const around = aroundOf(series, [...runs.values()], table);
  const raw = groupsOf(runs).filter((group) => only(group) || isRefitGroup(group, record));
  const isBase = isBaseOf(series);
  /** The runs of these campaigns, brought to one ambient. */
  const ready = (group: Group, campaigns: readonly string[]): Group =>
    corrected(withoutMixed(ofCampaigns(group, campaigns), series), around(campaigns).reference);
  const repeatedOf = (group: Group, campaigns: readonly string[]): Celled | null =>
    repeated(group, {
      isSeriesCause: around(campaigns).isSeriesCause,
      time: time === null || campaigns.length === 1 ? time : withinCampaigns(time, group.reduced),
      ...{ isBase, lab: labScatter(group, record) },
    });
  /** Scatter of one refit in watts at the loaded speed: from the spin runs near the main temperature, or the lab's own figure. */
  const refitOf = keptBy((campaigns): RefitScatter | null => {
    const spin = raw.find((g) => isRefitGroup(g, record));
    const found = spin && repeatedOf(ready(spin, campaigns), campaigns)?.repeatability;
    return found == null ? labRefit(record) : { u_W: found.s, dof: found.dof };
  });
  /** Null where neither repeats nor known causes say how far one run scatters. */
  const celledOf = (group: Group, campaigns: readonly string[]): Celled | null => {
    const measured = repeatedOf(group, campaigns);
    if (group.trial === 'spin' || (measured?.repeatability?.dof ?? 0) >= enoughRepeats) return measured;
    const refit = refitOf(campaigns.slice(0, 1)) ?? refitOf([firstCampaign]);
    return single(group, { refit, rig, series, mean: around(campaigns).mean }) ?? measured;
  };
  const finished = (group: Group, celled: Celled | null): CelledSeries['groups'][number] => ({
    group,
    celled: unsettled(group, widened(celled ?? alone(group), wider), rig.states),
  });
  const later = (series.campaigns ?? []).filter(({ id }) => [...runs.values()].some((r) => r.cell.campaign === id));
  const found = raw.filter(only).map((group) => {
    const first = ready(group, [firstCampaign]);
    const others = later
      .map((campaign) => ({ campaign, own: { ...ready(group, [campaign.id]), campaign: campaign.id } }))
      .filter(({ own }) => own.reduced.length + own.bounded.length + own.mixed.length > 0);
    if (others.length === 0) return { bridges: [], tables: [finished(first, celledOf(first, [firstCampaign]))] };
    const before = celledOf(first, [firstCampaign]);
    const judged = others.map(({ campaign, own }) => {
      const after = (): Celled | null => celledOf(own, [campaign.id]);
      const scatter = shiftScatter({
        ...{ first: before, own: after, isBase, causes: table, lab: labScatter(group, record) },
      });
      const bracketed = group.trial === 'spin';
      const runsOf = { before: first.reduced, after: own.reduced };
      return { own, after, bridge: bridged({ campaign, table: group, ...runsOf, isBase, scatter, bracketed }) };
    });
    const bridges = judged.map(({ bridge }) => bridge);
    const joined = bridges.filter(({ outcome }) => outcome !== 'separate');
    const all = [firstCampaign, ...joined.map(({ campaign }) => campaign)];
    const main = joined.length === 0 ? first : ready(group, all);
    const celled = joined.length === 0 ? before : celledOf(main, all);
    return {
      bridges,
      tables: [
        finished(main, celled && withCampaigns(celled, { bridges: joined, isBase })),
        ...judged.filter(({ bridge }) => bridge.outcome === 'separate').map(({ own, after }) => finished(own, after())),
      ],
    };
  });
  const tables = found.flatMap((one) => one.tables);
  for (const { celled } of tables) for (const c of celled.causes) table.set(c.id, c);
  return { groups: tables, causes: table, bridges: found.flatMap(({ bridges }) => bridges) };
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

/** The lab's own figure for a refit, in watts at the loaded speed. */
function labRefit({ series, plan, rig }: Compared): RefitScatter | null {
  const speed = plan?.load?.outputSpeed_rad_s ?? series.reference.outputSpeed_rad_s;
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
