import type { Finding } from '../finding/finding.ts';
import type { Figure } from '../ledger/figure.ts';
import type { Ledger } from '../ledger/ledger.ts';
import type { Book } from '../trial/book.ts';
import type { ComparedSeries } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { AxleAnswer, AxleData } from '../trial/own-axle.ts';
import type { Outlook } from '../trial/outlook.ts';
import type { Reach } from '../trial/reach.ts';
import type { StressInput, StressTable } from '../trial/stress.ts';
import type { MediaFile, SeriesRecord } from '../trial/series.ts';

/** Who reads: the house sees every note, the public only what is marked for it. */
export type Audience = 'house' | 'public';

/** All that the pages of one series are made from. */
export interface SeriesInput {
  readonly book: Book;
  readonly record: SeriesRecord;
  readonly derived: ReadonlyMap<string, DerivedRun>;
  readonly compared: ComparedSeries;
  readonly ledger: Ledger;
  /** Its words under every other choice. */
  readonly stress: StressTable & { readonly input: StressInput };
  /** What its plan can part, which run would narrow most, and its run cards. */
  readonly outlook: Outlook;
  /** What a reader's own axle is scaled from, and the answer for the series' own case; null where nothing was spun. */
  readonly ownAxle: { readonly data: AxleData; readonly reference: AxleAnswer } | null;
  /** SHA-256 of every file of the book, by path. */
  readonly sums: ReadonlyMap<string, string>;
  /** Pictures and clips that are in the folder, by path. */
  readonly media: ReadonlyMap<string, MediaFile>;
  readonly findings: readonly Finding[];
  /** What a public build held back before it came here; the pages add what they hold back themselves. */
  readonly held: { readonly runs: number; readonly notes: number; readonly claims: number };
  readonly audience: Audience;
  /** What each correction reached, in the order they were published. */
  readonly reaches: readonly Reach<Figure>[];
}

/** All that the pages outside a series are made from. */
export interface BookInput {
  readonly book: Book;
  readonly series: readonly SeriesInput[];
  readonly findings: readonly Finding[];
  readonly audience: Audience;
}
