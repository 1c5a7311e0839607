import { clockText, type Timed } from './clock-text.ts';
import type { Collector } from './collect.ts';
import { lineEnd, placeIn } from './lines.ts';
import * as say from './row-texts.ts';
import { counted } from './texts.ts';

/** Fewer repeated rows than this are a hiccup of the logger, for the record only. */
const fewestInBlock = 3;

/** A block that the logger wrote twice: its lines, those it repeats, and the kept rows it begins at and is followed by. */
export interface Block {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly of: { readonly from: number; readonly to: number };
  readonly seams: readonly [number, number];
}

/** Moves the rows that rise in time together, in place. Rows that repeat earlier ones byte for byte are dropped. */
export function dropRepeats(
  log: Timed,
  found: Collector,
): { readonly kept: number; readonly blocks: readonly Block[] } {
  const { table } = log;
  const { line, start } = table;
  const time = table.values[log.clock.number - 1]!;
  const blocks: Block[] = [];
  let single = 0;
  let kept = 0;
  for (let row = 0; row < table.rows; row++) {
    if (kept > 0 && time[row]! <= time[kept - 1]!) {
      const earlier = rowAtTime(time, kept, time[row]!);
      const length = earlier < 0 ? 0 : repeatedRows(log, { earlier, kept, row });
      if (length >= fewestInBlock) {
        const of = { from: line[earlier]!, to: line[earlier + length - 1]! };
        const block = { from: line[row]!, to: line[row + length - 1]!, start: start[row]! };
        blocks.push({ ...block, of, seams: [earlier, kept] });
      } else single += length;
      if (length === 0) refuse(log, { row, before: kept - 1 }, found);
      row += Math.max(length, 1) - 1;
      continue;
    }
    if (kept !== row) {
      for (const column of table.values) if (column) column[kept] = column[row]!;
      line[kept] = line[row]!;
      start[kept] = start[row]!;
    }
    kept++;
  }
  if (single > 0) found.note(`${counted(single, 'repeated row')} used once`);
  return { kept, blocks };
}

/** Index of the kept row of exactly this time, or −1. */
function rowAtTime(time: Float64Array, kept: number, wanted: number): number {
  let low = 0;
  let high = kept - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! < wanted) low = middle + 1;
    else high = middle;
  }
  return time[low] === wanted ? low : -1;
}

/** How many rows from `row` on are the same bytes as those from `earlier` on. */
function repeatedRows(
  log: Timed,
  at: { readonly earlier: number; readonly kept: number; readonly row: number },
): number {
  let length = 0;
  while (at.earlier + length < at.kept && at.row + length < log.table.rows) {
    if (!sameLine(log, at.earlier + length, at.row + length)) break;
    length++;
  }
  return length;
}

function sameLine(log: Timed, a: number, b: number): boolean {
  const { bytes } = log.text;
  const [one, other] = [log.table.start[a]!, log.table.start[b]!];
  const length = lineEnd(bytes, one) - one;
  if (lineEnd(bytes, other) - other !== length) return false;
  for (let at = 0; at < length; at++) if (bytes[one + at] !== bytes[other + at]) return false;
  return true;
}

function refuse(log: Timed, at: { readonly row: number; readonly before: number }, found: Collector): void {
  const { line, start } = log.table;
  const said = (row: number): { line: number; text: string } => ({ line: line[row]!, text: clockText(log, row) });
  const from = start[at.row]!;
  found.add('error', () => {
    const place = placeIn(log.text, { line: line[at.row]!, from, to: lineEnd(log.text.bytes, from) });
    return say.clockBack(place, said(at.row), said(at.before));
  });
}
