import type { ColumnMap } from '../trial/rig.ts';
import { cellsOf, closingQuote, plainName, unquoted } from './cells.ts';
import { readClock } from './clock-text.ts';
import type { Collector } from './collect.ts';
import type { Head } from './header.ts';
import { placeIn, quoteMark, textOf, type Line, type LogText } from './lines.ts';
import { readNumber } from './number.ts';
import { readOddCell, type Refusal } from './odd-cell.ts';
import * as say from './row-texts.ts';
import { columnName, counted, quoted, type Named } from './texts.ts';

/** What a row that is not plain becomes: a reading, a missing reading, a line of the record, or a finding. */
export interface OddRows {
  /** A row whose cells do not fit the header; `quote` is the offset of a quote out of place when `cells` is 0. */
  readonly row: (line: Line, cells: number, quote: number) => void;
  /** Whether a row may end in one more delimiter than the header: all do, or none. */
  readonly trailing: (line: Line, more: boolean) => boolean;
  /** The clock of a row, or NaN when the row is none. */
  readonly clock: (line: Line, from: number, to: number) => number;
  /** The reading of a cell that is no plain number, or NaN. */
  readonly cell: (line: Line, column: number, from: number, to: number) => number;
  /** Whether the map declares this number as a sign for no reading. */
  readonly standsForNone: (value: number) => boolean;
  readonly close: (rows: number) => void;
}

export function oddRows(
  given: { readonly text: LogText; readonly map: ColumnMap; readonly head: Head },
  found: Collector,
): OddRows {
  const { text, map, head } = given;
  const { bytes } = text;
  const delimiter = map.delimiter.charCodeAt(0);
  const decimal = map.decimal.charCodeAt(0);
  const width = head.names.length;
  const codes = map.missing.map((word) => numberOf(word, decimal)).filter((value) => !Number.isNaN(value));
  const words = new Map<string, number>();
  const count = { blank: 0, bare: 0, space: 0, minus: 0, trailing: 0, segments: 1 };
  let firstIsTrailing: boolean | null = null;
  const named = (column: number): Named => ({ number: column + 1, header: head.names[column]! });
  const unitsText = head.unitsRow === null ? null : textOf(bytes, head.unitsRow.from, head.unitsRow.to);

  const headAgain = (line: Line): boolean => {
    const lineText = textOf(bytes, line.from, line.to);
    if (lineText === unitsText) return true;
    const cells = cellsOf(bytes, line, delimiter).map((cell) => plainName(cell.text));
    if (cells[head.clock.number - 1] !== plainName(head.clock.header) && !sharesHalf(cells, head.names)) return false;
    const same = head.names.every((name, at) => plainName(name) === cells[at]) && !cells.slice(width).some(Boolean);
    const place = placeIn(text, line);
    if (same) {
      count.segments++;
      found.add('warning', () => say.headerAgain(place, head.line.line));
    } else found.add('error', () => say.headerChanged(place, head.line.line));
    return true;
  };

  return {
    row: (line, cells, quote) => {
      if (cells === 1 && line.from === line.to) {
        count.blank++;
        return;
      }
      const isLast = bytes.subarray(line.to).every((byte) => byte <= 32);
      const cut = cells < width && isLast && (cells > 0 || closingQuote(bytes, quote, line.to) < 0);
      const lineText = textOf(bytes, line.from, line.to);
      if (cut) found.add('warning', () => say.lastRowCut(placeIn(text, line), lineText));
      else if (cells === 0) found.add('error', () => badQuote(text, line, quote));
      else if (/^\s*$/u.test(lineText.replaceAll(map.delimiter, ''))) count.bare++;
      else if (!headAgain(line)) found.add('error', () => ragged(text, line, { map, width, cells }));
    },
    trailing: (line, more) => {
      if (more) count.trailing++;
      firstIsTrailing ??= more;
      if (more === firstIsTrailing) return true;
      const [cells, expected] = more ? [width + 1, width] : [width, width + 1];
      found.add('error', () => say.rowRagged(placeIn(text, line), cells, expected));
      return false;
    },
    clock: (line, from, to) => {
      const said = cellText(bytes, from, to);
      const reading = readClock(said, map);
      if (reading.kind === 'time') return reading.time;
      const place = placeIn(text, line, from, to);
      if (reading.kind === 'missing') {
        if (textOf(bytes, line.from, line.to).replaceAll(map.delimiter, '').trim() === '') count.bare++;
        else found.add('error', () => say.clockMissing(place, head.clock));
      } else if (!headAgain(line)) {
        const { clock } = head;
        if (reading.kind === 'date') found.add('error', () => say.clockDate(place, clock, said), 'clock-date');
        else if (reading.kind === 'form')
          found.add('error', () => say.clockForm(place, clock, said, map.clock.unit), 'clock-form');
        else
          found.add(
            'error',
            () => say.cellRefused(place, clock, said, reading.why, map.decimal),
            alike(reading.why, said),
          );
      }
      return NaN;
    },
    cell: (line, column, from, to) => {
      let [left, right] = [from, to];
      while (left < right && bytes[left]! <= 32) left++;
      while (right > left && bytes[right - 1]! <= 32) right--;
      const padded = readNumber(bytes, left, right, decimal);
      if (!Number.isNaN(padded) && !codes.includes(padded)) return padded;
      const said = cellText(bytes, left, right);
      const reading = readOddCell(said, map);
      if (reading.kind === 'missing' || (reading.kind === 'number' && codes.includes(reading.value))) {
        const key = `${quoted(said.trim())} in ${columnName(named(column))}`;
        words.set(key, (words.get(key) ?? 0) + 1);
        return NaN;
      }
      if (reading.kind === 'number') {
        for (const mended of reading.mended) count[mended]++;
        return reading.value;
      }
      const place = placeIn(text, line, from, to);
      found.add(
        'error',
        () => say.cellRefused(place, named(column), said, reading.why, map.decimal),
        alike(reading.why, said),
      );
      return NaN;
    },
    standsForNone: (value) => codes.includes(value),
    close: (rows) => {
      const size = bytes.length;
      const ended = size === 0 || bytes[size - 1]! === 10 || bytes[size - 1]! === 13;
      if (count.blank > 0) found.note(`${counted(count.blank, 'blank line')} passed over`);
      if (count.bare > 0) found.note(`${counted(count.bare, 'row')} of delimiters only passed over`);
      if (count.space > 0) found.note(`odd spaces taken off ${counted(count.space, 'number')}`);
      if (count.minus > 0) found.note(`${counted(count.minus, 'minus sign')} U+2212 read as -`);
      if (rows > 0 && count.trailing > 0) found.note('each row ends in one empty cell');
      if (!ended) found.note('the last line has no line end');
      if (count.segments > 1) found.note(`${count.segments} segments, each with its header`);
      for (const [key, n] of words) found.note(`missing: ${n} × ${key}`);
    },
  };
}

const cellText = (bytes: Uint8Array, from: number, to: number): string =>
  bytes[from] === quoteMark && to - from > 1 ? unquoted(bytes, from, to) : textOf(bytes, from, to);

/** Decimal marks and groups come of the map or the export as a whole; anything else is one mistake where the same text stands again. */
const alike = (why: Refusal, said: string): string =>
  ['decimal', 'thousands', 'ambiguous'].includes(why) ? why : `${why} ${said}`;

const sharesHalf = (cells: readonly string[], names: readonly string[]): boolean =>
  names.filter((name) => cells.includes(plainName(name))).length * 2 > names.length;

function numberOf(word: string, decimal: number): number {
  const bytes = new TextEncoder().encode(word);
  return readNumber(bytes, 0, bytes.length, decimal);
}

function badQuote(text: LogText, line: Line, quote: number): ReturnType<typeof say.quoteOpen> {
  const close = closingQuote(text.bytes, quote, line.to);
  if (close < 0) return say.quoteOpen(placeIn(text, line, quote, line.to));
  return say.quoteMisplaced(placeIn(text, line, quote, close + 1), textOf(text.bytes, close + 1, line.to));
}

function ragged(
  text: LogText,
  line: Line,
  row: { readonly map: ColumnMap; readonly width: number; readonly cells: number },
): ReturnType<typeof say.rowRagged> {
  const { map, width, cells } = row;
  const whole = cellsOf(text.bytes, line, map.delimiter.charCodeAt(0)).every((cell) => /^[+-]?\d*$/u.test(cell.text));
  const place = placeIn(text, line);
  const commaTwice = map.delimiter === ',' && cells > width && whole;
  return commaTwice ? say.decimalDelimiter(place, cells, width) : say.rowRagged(place, cells, width);
}
