import type { Place } from '../finding/finding.ts';
import { differenceFromSI, fromSI, type Unit } from '../quantity/units.ts';
import type { Column } from '../trial/rig.ts';
import { cellsOf, type Cell } from './cells.ts';
import type { ReadingKind } from './channels.ts';
import { lineEnd, placeIn, type Line, type LogText } from './lines.ts';
import { columnName } from './texts.ts';

/** One channel of a log while it is judged: its readings in SI on the common clock, changed in place, and the way back to the file. */
export interface Channel {
  readonly is: ReadingKind;
  readonly column: Column;
  readonly number: number;
  readonly header: string;
  readonly unit: Unit;
  readonly value: Float64Array;
  readonly time_s: Float64Array;
  readonly line: Int32Array;
  readonly start: Uint32Array;
  readonly text: LogText;
  readonly delimiter: number;
}

/** Rows from `from` to `to`, both within. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The sump, as findings name it: channel, and column of the file. */
export const channelName = (c: Channel): string => `${c.is} (${columnName(c)})`;

export const linesOf = (c: Channel, s: Stretch): Stretch => ({ from: c.line[s.from]!, to: c.line[s.to]! });

/** From its first row to the row after it, which ends it; or to the end of the log. */
export const spanOf_s = (c: Channel, s: Stretch): number =>
  c.time_s[Math.min(s.to + 1, c.time_s.length - 1)]! - c.time_s[s.from]!;

export function cellOf(c: Channel, row: number): { readonly line: Line; readonly cell: Cell } {
  const from = c.start[row]!;
  const line = { line: c.line[row]!, from, to: lineEnd(c.text.bytes, from) };
  return { line, cell: cellsOf(c.text.bytes, line, c.delimiter)[c.number - 1] ?? { from, to: line.to, text: '' } };
}

export function placeOf(c: Channel, row: number): Place {
  const { line, cell } = cellOf(c, row);
  return placeIn(c.text, line, cell.from, cell.to);
}

/** As many digits as a reading has, with a true minus. */
const written = (value: number, digits: number): string => `${Number(value.toPrecision(digits))}`.replace('-', '−');

/** SI as the bench reads it, in the unit of the map. */
export const reads = (c: Channel, si: number, digits = 5): string =>
  `${written(fromSI(c.unit, si), digits)} ${c.unit.name}`;

/** A change as the bench reads it: of °C in K, of anything else in its unit. */
export const differs = (c: Channel, change: number): string =>
  `${written(differenceFromSI(c.unit, change), 3)} ${c.unit.name === '°C' ? 'K' : c.unit.name}`;

export const leaveOut = (c: Channel, s: Stretch): void => {
  c.value.fill(NaN, s.from, s.to + 1);
};

/** Stretches of rows of which `holds` is true. */
export function stretches(rows: number, holds: (row: number) => boolean): Stretch[] {
  const found: Stretch[] = [];
  for (let row = 0; row < rows; row++) {
    if (!holds(row)) continue;
    const from = row;
    while (row + 1 < rows && holds(row + 1)) row++;
    found.push({ from, to: row });
  }
  return found;
}

/** Median size of the change from one reading to the next, from a thousand places spread over the channel. */
export function usualChange(value: Float64Array): number {
  const stride = Math.max(1, Math.floor(value.length / 1000));
  const changes: number[] = [];
  for (let row = 1; row < value.length; row += stride) {
    const change = Math.abs(value[row]! - value[row - 1]!);
    if (!Number.isNaN(change)) changes.push(change);
  }
  return Float64Array.from(changes).sort()[changes.length >> 1] ?? 0;
}
