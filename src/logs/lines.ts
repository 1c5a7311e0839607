import type { Place } from '../finding/finding.ts';

export const lineFeed = 10;
export const carriageReturn = 13;
export const quoteMark = 34;

/** A log as the scanner sees it: UTF-8, no byte order mark. */
export interface LogText {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** One physical line, as a text editor counts: CR LF, LF and CR each end one. Offsets are into the bytes. */
export interface Line {
  readonly line: number;
  readonly from: number;
  readonly to: number;
}

export function lineEnd(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at < bytes.length && bytes[at] !== lineFeed && bytes[at] !== carriageReturn) at++;
  return at;
}

export const afterLineEnd = (bytes: Uint8Array, end: number): number =>
  bytes[end] === carriageReturn && bytes[end + 1] === lineFeed ? end + 2 : end + 1;

/** The first lines of a file, at most `count`. */
export function firstLines(bytes: Uint8Array, count: number): Line[] {
  const lines: Line[] = [];
  for (let from = 0; from < bytes.length && lines.length < count;) {
    const to = lineEnd(bytes, from);
    lines.push({ line: lines.length + 1, from, to });
    from = afterLineEnd(bytes, to);
  }
  return lines;
}

export function lineHolding(bytes: Uint8Array, offset: number): Line {
  let line = 1;
  let from = 0;
  for (;;) {
    const to = lineEnd(bytes, from);
    const next = afterLineEnd(bytes, to);
    if (offset < next || next >= bytes.length) return { line, from, to };
    line++;
    from = next;
  }
}

export const textOf = (bytes: Uint8Array, from: number, to: number): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes.subarray(from, to));

/** A line longer than this is not shown under a finding: no editor shows it either. */
const longestShown = 2000;

/** The place of bytes[from, to) of a line, counted in characters. */
export function placeIn(text: LogText, line: Line, from = line.from, to = line.to): Place {
  const column = textOf(text.bytes, line.from, from).length + 1;
  const length = Math.max(1, textOf(text.bytes, from, to).length);
  const place = { file: text.file, line: line.line, column, length };
  return line.to - line.from > longestShown ? place : { ...place, lineText: textOf(text.bytes, line.from, line.to) };
}
