import { difference, effectiveDof, standardUncertainty, type Cause } from '../quantity/estimate.ts';
import type { Series } from '../trial/book.ts';
import type { Cell, DerivedRun } from '../trial/derived.ts';
import { meanKnown } from './conditions.ts';
import type { Reference } from './corrected.ts';
import { cellKey, type Group, type Reduced } from './group.ts';
import type { Celled } from './repeated.ts';
import type { LoadedMean } from './single.ts';
import type { TimeBase } from './time-base.ts';

/** The first campaign has no name, since nothing was there to tell it from. */
export const firstCampaign = '';

const isOf = (campaigns: readonly string[], { cell }: DerivedRun): boolean =>
  campaigns.includes(cell.campaign ?? firstCampaign);

/** The runs of these campaigns alone. */
export const ofCampaigns = (group: Group, campaigns: readonly string[]): Group => ({
  ...group,
  reduced: group.reduced.filter(({ run }) => isOf(campaigns, run)),
  bounded: group.bounded.filter(({ run }) => isOf(campaigns, run)),
});

/** What stands around the runs of some campaigns. */
export interface Around {
  /** What several of them carry, as the final temperature of one heat-up, is not inside the scatter between them. */
  readonly isSeriesCause: (id: string) => boolean;
  readonly mean: LoadedMean;
  readonly reference: Reference;
}

/** Runs of other campaigns change nothing of it, so that a table stays as it was when a later article arrives. */
export function aroundOf(
  series: Series,
  runs: readonly DerivedRun[],
  causes: ReadonlyMap<string, Cause>,
): (campaigns: readonly string[]) => Around {
  return keptBy((campaigns) => {
    const own = runs.filter((run) => isOf(campaigns, run));
    const carriers = new Map<string, number>();
    for (const run of own)
      for (const id of new Set(run.causes.map((c) => c.id))) carriers.set(id, (carriers.get(id) ?? 0) + 1);
    const loaded = own.filter((r) => r.trial === 'heat-up' && r.leftOut === null).map((r) => r.conditions);
    const mean = {
      ambient_K: meanKnown(loaded.map((c) => c.ambient_K)) ?? 0,
      airflow_m_s: meanKnown(loaded.map((c) => c.airflow_m_s)) ?? 0,
    };
    const stated = series.reference.ambient_K;
    return {
      isSeriesCause: (id) => causes.get(id)?.scope === 'series' || (carriers.get(id) ?? 0) > 1,
      mean,
      reference: { ambient_K: stated ?? mean.ambient_K, stated: stated !== null },
    };
  });
}

/** Made once for the same campaigns. */
export function keptBy<T>(make: (campaigns: readonly string[]) => T): (campaigns: readonly string[]) => T {
  const kept = new Map<string, T>();
  return (campaigns) => {
    const key = campaigns.join(' ');
    if (!kept.has(key)) kept.set(key, make(campaigns));
    return kept.get(key)!;
  };
}

/** Months between campaigns are no drift: each is moved to the middle of the first, so that only what goes on within them counts. */
export function withinCampaigns(time: TimeBase, reduced: readonly Reduced[]): TimeBase {
  const times = new Map<string, number[]>();
  for (const { run } of reduced) {
    const campaign = run.cell.campaign ?? firstCampaign;
    times.set(campaign, [...(times.get(campaign) ?? []), time.of(run)]);
  }
  const middles = new Map([...times].map(([id, list]) => [id, list.reduce((a, b) => a + b, 0) / list.length]));
  const first = middles.get(firstCampaign) ?? 0;
  return { ...time, of: (run) => time.of(run) - (middles.get(run.cell.campaign ?? firstCampaign) ?? first) + first };
}

/**
 * Standard deviation of one refit that the baseline's shift is held to: what repeats of the first campaign scatter by, else the
 * lab's own figure, else what the causes of both say, those that both share left out.
 */
export function shiftScatter(of: {
  readonly first: Celled | null;
  /** Asked only where nothing else tells. */
  readonly own: () => Celled | null;
  readonly lab: number | null;
  readonly isBase: (cell: Cell) => boolean;
  readonly causes: ReadonlyMap<string, Cause>;
}): { readonly s: number; readonly dof: number } | null {
  const { first, lab } = of;
  if (first?.repeatability != null) return first.repeatability;
  if (lab !== null) return { s: lab, dof: Infinity };
  const own = of.own();
  const [before, after] = [first, own].map((celled) =>
    celled?.unranked === null ? celled.cells.find(({ cell }) => of.isBase(cell)) : undefined,
  );
  if (first === null || own === null || before === undefined || after === undefined) return null;
  const d = difference(after.estimate, before.estimate);
  const causes = new Map([...of.causes, ...[...first.causes, ...own.causes].map((c) => [c.id, c] as const)]);
  return {
    s: standardUncertainty(d) / Math.sqrt(1 / before.runs.length + 1 / after.runs.length),
    dof: effectiveDof(d, causes),
  };
}

export const isBaseOf =
  ({ baseline }: Pick<Series, 'baseline'>) =>
  (cell: Cell): boolean =>
    cellKey(cell) === cellKey({ ...cell, ...baseline, tilt_ratio: 0 });
