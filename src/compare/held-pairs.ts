import { difference, effectiveDof, mean, type CauseTable, type Estimate } from '../quantity/estimate.ts';
import { coverageFactor } from '../statistics/student.ts';
import type { Series } from '../trial/book.ts';
import type { ByTrials, CellFigure, Effect } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Contrast } from '../trial/factorial.ts';
import { publishedInterval, type SeriesTrials } from './by-trials.ts';
import { conditionsDiffer } from './conditions.ts';
import { atKey, cellKey } from './group.ts';
import { ownInterval } from './verdict.ts';

/** A figure of a cell that has a value, and where its oil stood at rest. */
export interface Placed {
  readonly figure: CellFigure;
  readonly estimate: Estimate;
  readonly level: Estimate | null;
}

export type HeldPair =
  { readonly ok: true; readonly effect: Effect } | { readonly ok: false; readonly reasons: readonly string[] };

/** Differences of two cells: the effect that a standing holds, or one made here; each is made once. */
export interface HeldPairs {
  of(own: Placed, base: Placed): HeldPair;
  /** Why two cells may not be held against each other; empty when they may. */
  differ(own: Placed, base: Placed): readonly string[];
  /** Those that no standing holds. */
  made(): Effect[];
}

interface Known extends Judged {
  readonly effects: readonly Effect[];
  readonly runs: ReadonlyMap<string, DerivedRun>;
}

/** What an interval is formed with; `trials` is null where none are run. */
export interface Judged {
  readonly series: Series;
  readonly causes: CauseTable;
  readonly trials: SeriesTrials | null;
}

export function heldPairs(known: Known): HeldPairs {
  const keyOf = (e: Pick<Effect, 'cell' | 'against' | 'quantity' | 'at'>): string =>
    [e.quantity, atKey(e.at), cellKey(e.cell), cellKey(e.against)].join(' ');
  const held = new Map(known.effects.map((e) => [keyOf(e), e]));
  const made = new Map<string, Effect>();
  const runsOf = ({ figure }: Placed): DerivedRun[] => figure.runs.flatMap((id) => known.runs.get(id) ?? []);
  const differ = (own: Placed, base: Placed): readonly string[] =>
    conditionsDiffer({
      quantity: own.figure.quantity,
      series: known.series,
      runs: runsOf(own),
      againstRuns: runsOf(base),
    });
  return {
    differ,
    of(own, base) {
      const { quantity, at, cell } = own.figure;
      const key = keyOf({ quantity, at, cell, against: base.figure.cell });
      const there = held.get(key) ?? made.get(key);
      if (there !== undefined) return { ok: true, effect: there };
      const reasons = differ(own, base);
      if (reasons.length > 0) return { ok: false, reasons };
      const effect = effectOf(own, base, known);
      made.set(key, effect);
      return { ok: true, effect };
    },
    made: () => [...made.values()],
  };
}

function effectOf(own: Placed, base: Placed, known: Known): Effect {
  const { series, causes } = known;
  const { quantity, at, cell, runs } = own.figure;
  const against = base.figure.cell;
  const found = contrast(difference(own.estimate, base.estimate), [own, base], known);
  const { estimate, interval, trials, separated, indicative } = found;
  const dof = effectiveDof(estimate, causes);
  const sameLitres = Math.abs(cell.fill_m3 - against.fill_m3) <= series.tolerance.fill_m3;
  return {
    ...{ cell, against, quantity, at, estimate, interval, trials, separated, indicative, dof, runs },
    simultaneous: interval,
    k: coverageFactor(series.coverage, dof),
    margin: null,
    basis: cell.article === against.article ? 'fill is the subject' : sameLitres ? 'same litres' : 'same level',
    againstRuns: base.figure.runs,
    notes: [...new Set([...own.figure.notes, ...base.figure.notes])],
  };
}

/** A number made of the figures of several cells, with its own interval. */
export function contrast(estimate: Estimate, of: readonly Placed[], judged: Judged): Contrast {
  const { series, causes } = judged;
  const trials: ByTrials | null = judged.trials?.ofSum(estimate) ?? null;
  const interval = publishedInterval(ownInterval(estimate, causes, series.coverage), trials);
  const indicative = [...new Set(of.flatMap(({ figure }) => figure.indicative))];
  return {
    estimate,
    interval,
    trials,
    separated: indicative.length === 0 && (interval[0] > 0 || interval[1] < 0),
    indicative,
    runs: [...new Set(of.flatMap(({ figure }) => figure.runs))],
  };
}

/** Mean level at rest of the runs of a cell; null where one of them has none. */
export function levelOf(figure: CellFigure, runs: ReadonlyMap<string, DerivedRun>): Estimate | null {
  const levels = figure.runs.map(
    (id) => runs.get(id)?.results.find(({ quantity }) => quantity === 'static-level')?.estimate ?? null,
  );
  const known = levels.filter((level) => level !== null);
  return known.length === 0 || known.length < levels.length ? null : mean(known);
}
