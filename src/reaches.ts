import { compareSeries } from './compare/series.ts';
import { amendedRecord } from './derive/amended.ts';
import { deriveSeries, type KeptRun } from './derive/series.ts';
import { buildLedger } from './ledger/build.ts';
import type { Figure } from './ledger/figure.ts';
import { reachOf, type State } from './ledger/reach.ts';
import type { DerivedRun } from './trial/derived.ts';
import type { Reach } from './trial/reach.ts';
import type { SeriesRecord } from './trial/series.ts';

/**
 * What each correction reached: the series is reduced and compared once more as it stood before each of them. Intervals here
 * are the linear ones on both sides, since trials are drawn for what is published today.
 */
export function reachesOf(of: {
  /** As all corrections read it. */
  readonly record: SeriesRecord;
  readonly derived: ReadonlyMap<string, DerivedRun>;
  readonly how: { readonly sums: ReadonlyMap<string, string>; readonly rigShown: boolean };
  readonly kept: KeptRun;
  /** The record as its notes were read without some corrections, none of them applied to the logs yet. */
  readonly before: (without: ReadonlySet<string>) => SeriesRecord | null;
}): Reach<Figure>[] {
  const { record, derived, how, kept, before } = of;
  const changing = record.corrections.filter(({ changes }) => changes.length > 0);
  if (changing.length === 0) return [];
  const stateOf = (read: SeriesRecord, runs: ReadonlyMap<string, DerivedRun>): State => {
    const compared = compareSeries(read, runs);
    return { compared, ledger: buildLedger({ record: read, runs, compared, ...how }) };
  };
  const earlier = changing.map((_, i): State | null => {
    const read = before(new Set(changing.slice(i).map(({ id }) => id)));
    if (read === null) return null;
    const then = amendedRecord(read, changing.slice(0, i));
    return stateOf(then, deriveSeries(then, kept).runs);
  });
  const states = [...earlier, stateOf(record, derived)];
  return changing.flatMap((correction, i): Reach<Figure>[] => {
    const [was, is] = [states[i], states[i + 1]];
    return was == null || is == null ? [] : [reachOf(correction, was, is)];
  });
}
