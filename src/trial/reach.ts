import type { ClaimWord } from './claim.ts';
import type { Correction } from './amendment.ts';

/** A figure before and after a correction, as the ledger of each day has it. */
export interface Moved<F> {
  readonly id: string;
  readonly before: F | null;
  readonly after: F | null;
}

/** What one correction reached, worked out from the series with and without it. */
export interface Reach<F> {
  readonly correction: Correction;
  /** Figures whose value, bound or word moved. */
  readonly figures: readonly Moved<F>[];
  /** Ids of figures that have the same value in another interval, since they share a cause with what was corrected. */
  readonly intervals: readonly string[];
  readonly runs: readonly string[];
  readonly claims: readonly { readonly id: string; readonly before: ClaimWord; readonly after: ClaimWord }[];
}
