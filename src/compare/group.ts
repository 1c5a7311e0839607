import type { Estimate } from '../quantity/estimate.ts';
import type { At, Cell, DerivedRun, Result } from '../trial/derived.ts';
import type { Series } from '../trial/book.ts';
import type { Correction } from '../trial/compared.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { TrialKind } from '../trial/plan.ts';
import { notRepeats } from './conditions.ts';
import * as texts from './texts.ts';

/** One number of one run, ready to be held against others. */
export interface Reduced {
  readonly run: DerivedRun;
  readonly estimate: Estimate;
  /** How it was brought to load, speed and ambient of the series. */
  readonly corrected?: Correction;
}

/** All runs that give one quantity at one condition. */
export interface Group {
  readonly trial: TrialKind;
  readonly quantity: QuantityName;
  readonly at: At;
  readonly reduced: readonly Reduced[];
  /** Runs that have only a bound, such as a limit not reached. */
  readonly bounded: readonly { readonly run: DerivedRun; readonly side: 'above' | 'below'; readonly at: number }[];
  /** Cells of which no figure is made, and why: their runs do not repeat each other. */
  readonly mixed: readonly { readonly cell: Cell; readonly reasons: readonly string[] }[];
  /** The later campaign that it is of alone; absent in that of the first and of those joined to it. */
  readonly campaign?: string;
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
      // A mean over the refits that reached a limit, less those that did not, would be too low.
      reduced: g.reduced.filter((r) => !g.bounded.some((b) => cellKey(b.run.cell) === cellKey(r.run.cell))),
      bounded: g.bounded,
      mixed: [],
    }));
}

/** The group less the cells whose runs differ in more than being repeated; those are named with their reasons. */
export function withoutMixed(group: Group, series: Series): Group {
  const cells = new Map(group.reduced.map((r) => [cellKey(r.run.cell), r.run.cell]));
  const mixed = [...cells.values()].flatMap((cell) => {
    const runs = group.reduced.map((r) => r.run).filter((run) => cellKey(run.cell) === cellKey(cell));
    const unknown =
      group.quantity === 'limit-crossing' && runs.some((run) => !run.results.some((r) => r.quantity === 'final-rise'));
    const reasons = [...notRepeats({ runs, quantity: group.quantity, series }), ...(unknown ? [texts.noFinal] : [])];
    return reasons.length === 0 ? [] : [{ cell, reasons }];
  });
  const out = new Set(mixed.map((m) => cellKey(m.cell)));
  return { ...group, reduced: group.reduced.filter((r) => !out.has(cellKey(r.run.cell))), mixed };
}

export const atKey = (at: At): string =>
  [
    at.outputSpeed_rad_s?.toFixed(4),
    at.sump_K === 'own' ? 'own' : at.sump_K?.toFixed(2),
    at.limit_K?.toFixed(2),
    at.basis,
  ].join('|');

export const cellKey = (c: Cell): string =>
  `${c.article}|${c.oil}|${c.fill_m3.toFixed(6)}|${c.tilt_ratio.toFixed(4)}${c.campaign === undefined ? '' : `|${c.campaign}`}`;

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
      : a.fill_m3 - b.fill_m3 || ((a.campaign ?? '') < (b.campaign ?? '') ? -1 : 1);
