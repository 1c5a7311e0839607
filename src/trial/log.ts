import type { Finding } from '../finding/finding.ts';
import type { ChannelKind } from './rig.ts';

/**
 * A logger file in SI. Columns are aligned with `time_s`, which rises strictly; a missing reading is NaN.
 * `line[i]` is the physical line of row i in the raw file, as a text editor counts.
 */
export interface Log {
  readonly file: string;
  readonly sha256: string;
  readonly rows: number;
  readonly time_s: Float64Array;
  readonly line: Int32Array;
  readonly channels: ReadonlyMap<ChannelKind, Float64Array>;
  readonly events: readonly { readonly time_s: number; readonly line: number; readonly text: string }[];
  /** Physical column (from 1) of each channel in the raw file. */
  readonly columnOf: ReadonlyMap<ChannelKind, number>;
  readonly findings: readonly Finding[];
  /** What was handled and noted, in the trade's words: "1 byte order mark dropped". */
  readonly record: readonly string[];
}
