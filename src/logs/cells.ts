import { quoteMark, textOf, type Line } from './lines.ts';

/** A cell of one line: where it stands, quotes included, and what it says, quotes taken off. */
export interface Cell {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The cells of one line, for heads and for findings; the rows themselves are read by `rows.ts` without making texts. */
export function cellsOf(bytes: Uint8Array, line: Line, delimiter: number): Cell[] {
  const cells: Cell[] = [];
  let at = line.from;
  for (;;) {
    const from = at;
    const close = bytes[at] === quoteMark && at < line.to ? closingQuote(bytes, at, line.to) : -1;
    if (close >= 0) at = close + 1;
    while (at < line.to && bytes[at] !== delimiter) at++;
    cells.push({
      from,
      to: at,
      text: close === at - 1 && close > from ? unquoted(bytes, from, at) : textOf(bytes, from, at),
    });
    if (at >= line.to) return cells;
    at++;
  }
}

/** Offset of the quote that closes the one at `open`, or −1 when the line ends first: a quoted cell keeps to one line. */
export function closingQuote(bytes: Uint8Array, open: number, end: number): number {
  for (let at = open + 1; at < end; at++) {
    if (bytes[at] !== quoteMark) continue;
    if (at + 1 < end && bytes[at + 1] === quoteMark) at++;
    else return at;
  }
  return -1;
}

export const unquoted = (bytes: Uint8Array, from: number, to: number): string =>
  textOf(bytes, from + 1, to - 1).replaceAll('""', '"');

/** A name or unit as one compares it: no odd spaces, one code for micro and for the degree with its letter. */
export const plainName = (text: string): string => text.normalize('NFKC').replace(/\s+/gu, ' ').trim();
