import type { ColumnMap } from '../trial/rig.ts';
import { closingQuote, unquoted } from './cells.ts';
import type { Collector } from './collect.ts';
import type { Head } from './header.ts';
import { afterLineEnd, carriageReturn, lineEnd, lineFeed, quoteMark, textOf, type LogText } from './lines.ts';
import { readNumber } from './number.ts';
import { oddRows } from './odd-rows.ts';

/** The rows as read: numbers as they stand in the file, NaN where there is none. The arrays may be longer than `rows`. */
export interface Table {
  readonly rows: number;
  readonly line: Int32Array;
  /** Offset of each row in the bytes. */
  readonly start: Uint32Array;
  /** By physical column, from 0; null where the map reads no number. */
  readonly values: readonly (Float64Array | null)[];
  /** Empty cells of each column. */
  readonly empty: readonly number[];
  readonly events: readonly { readonly line: number; readonly text: string }[];
}

/** Reads every row. What is not a plain row of plain numbers goes to `odd-rows.ts`, which is slow and thorough. */
export function readRows(
  given: { readonly text: LogText; readonly map: ColumnMap; readonly head: Head; readonly lineEnds: number },
  found: Collector,
): Table {
  const { map, head } = given;
  const { bytes } = given.text;
  const delimiter = map.delimiter.charCodeAt(0);
  const decimal = map.decimal.charCodeAt(0);
  const width = head.names.length;
  const clock = head.clock.number - 1;
  const clockIsText = map.clock.unit === 'h:mm:ss';
  const event = (head.fitted.find((f) => f.column.is === 'event')?.number ?? 0) - 1;
  const numeric = [...new Set(head.fitted.filter((f) => f.unit !== null).map((f) => f.number - 1))];

  const most = Math.min(given.lineEnds + 1, Math.floor(bytes.length / width) + 1);
  const held = new Set([clock, ...numeric]);
  const values = head.names.map((_, at) => (held.has(at) ? new Float64Array(most) : null));
  const line = new Int32Array(most);
  const start = new Uint32Array(most);
  const empty = head.names.map(() => 0);
  const events: { line: number; text: string }[] = [];
  const edges = new Uint32Array(2 * width + 4);
  const odd = oddRows(given, found);
  const last = head.unitsRow ?? head.line;
  const hasCodes = map.missing.some((word) => /\d/u.test(word));
  let row = 0;
  let number = last.line + 1;

  for (let at = afterLineEnd(bytes, last.to); at < bytes.length; number++) {
    const cells = splitRow(bytes, at, delimiter, edges);
    const end = cells > 0 && cells <= width + 1 ? edges[2 * cells - 1]! : lineEnd(bytes, at);
    const here = { line: number, from: at, to: end };
    at = afterLineEnd(bytes, end);
    if (cells !== width && !(cells === width + 1 && edges[2 * width] === end)) {
      odd.row(here, cells, edges[0]!);
      continue;
    }
    if (!odd.trailing(here, cells > width)) continue;
    const [timeFrom, timeTo] = [edges[2 * clock]!, edges[2 * clock + 1]!];
    let time = clockIsText ? NaN : readNumber(bytes, timeFrom, timeTo, decimal);
    if (Number.isNaN(time)) time = odd.clock(here, timeFrom, timeTo);
    if (Number.isNaN(time)) continue;
    values[clock]![row] = time;
    line[row] = number;
    start[row] = here.from;
    for (const column of numeric) {
      const from = edges[2 * column]!;
      const to = edges[2 * column + 1]!;
      if (from === to) {
        values[column]![row] = NaN;
        empty[column]!++;
        continue;
      }
      let value = readNumber(bytes, from, to, decimal);
      if (Number.isNaN(value) || (hasCodes && odd.standsForNone(value))) value = odd.cell(here, column, from, to);
      values[column]![row] = value;
    }
    if (event >= 0 && edges[2 * event] !== edges[2 * event + 1]) {
      const text = cellText(bytes, edges[2 * event]!, edges[2 * event + 1]!).trim();
      if (text !== '' && !map.missing.includes(text)) events.push({ line: number, text });
    }
    row++;
  }
  odd.close(row);
  return { rows: row, line, start, values, empty, events };
}

/**
 * The edges of each cell of a row, quotes included, and the number of cells; 0 for a quote out of place, whose offset is then
 * edges[0]. Of a row with too many cells only the first are in `edges`.
 */
function splitRow(bytes: Uint8Array, from: number, delimiter: number, edges: Uint32Array): number {
  const size = bytes.length;
  let at = from;
  let cells = 0;
  for (;;) {
    const cell = at;
    if (bytes[at] === quoteMark) {
      const close = closingQuote(bytes, at, lineEnd(bytes, at));
      at = close + 1;
      const ends = at >= size || bytes[at] === delimiter || bytes[at] === lineFeed || bytes[at] === carriageReturn;
      if (close < 0 || !ends) {
        edges[0] = cell;
        return 0;
      }
    } else {
      while (at < size) {
        const byte = bytes[at]!;
        if (byte === delimiter || byte === lineFeed || byte === carriageReturn) break;
        at++;
      }
    }
    edges[2 * cells] = cell;
    edges[2 * cells + 1] = at;
    cells++;
    if (at >= size || bytes[at] !== delimiter) return cells;
    at++;
  }
}

export const cellText = (bytes: Uint8Array, from: number, to: number): string =>
  bytes[from] === quoteMark ? unquoted(bytes, from, to) : textOf(bytes, from, to);
