import type { Estimate } from '../quantity/estimate.ts';
import type { At, Cell, DerivedRun, Result } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { TrialKind } from '../trial/plan.ts';

/** One number of one run, ready to be held against others. */
export interface Reduced {
  readonly run: DerivedRun;
  readonly estimate: Estimate;
}

/** All runs that give one quantity at one condition. */
export interface Group {
  readonly trial: TrialKind;
  readonly quantity: QuantityName;
  readonly at: At;
  readonly reduced: readonly Reduced[];
  /** Runs that have only a bound, such as a limit not reached. */
  readonly bounded: readonly { readonly run: DerivedRun; readonly side: 'above' | 'below'; readonly at: number }[];
}

/** Quantities that are held against each other, by trial. */
const compared: Readonly<Partial<Record<TrialKind, readonly QuantityName[]>>> = {
  spin: ['spin-power'],
  'heat-up': ['final-rise', 'final-temperature', 'heat-made', 'shed', 'store', 'limit-crossing', 'bearing-rise'],
};

export function groupsOf(runs: ReadonlyMap<string, DerivedRun>): Group[] {
  const found = new Map<
    string,
    { trial: TrialKind; first: Result; reduced: Reduced[]; bounded: Group['bounded'][number][] }
  >();
  for (const run of runs.values()) {
    if (run.leftOut !== null) continue;
    for (const r of run.results) {
      if (compared[run.trial]?.includes(r.quantity) !== true) continue;
      const key = `${run.trial}|${r.quantity}|${atKey(r.at)}`;
      const group = found.get(key) ?? { trial: run.trial, first: r, reduced: [], bounded: [] };
      if (r.estimate !== null) group.reduced.push({ run, estimate: r.estimate });
      else if (r.bound !== null) group.bounded.push({ run, ...r.bound });
      found.set(key, group);
    }
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, g]) => ({
      trial: g.trial,
      quantity: g.first.quantity,
      at: g.first.at,
      reduced: g.reduced,
      bounded: g.bounded,
    }));
}

export const atKey = (at: At): string =>
  [
    at.outputSpeed_rad_s?.toFixed(4),
    at.sump_K === 'own' ? 'own' : at.sump_K?.toFixed(2),
    at.limit_K?.toFixed(2),
    at.basis,
  ].join('|');

export const cellKey = (c: Cell): string => `${c.article}|${c.oil}|${c.fill_m3.toFixed(6)}|${c.tilt_ratio.toFixed(4)}`;

/** In order of article id, then litres: a table does not suggest an order that the runs do not show. */
export const byArticle = (a: Cell, b: Cell): number =>
  a.article !== b.article
    ? a.article < b.article
      ? -1
      : 1
    : a.oil !== b.oil
      ? a.oil < b.oil
        ? -1
        : 1
      : a.fill_m3 - b.fill_m3;
