import type { Place } from './finding.ts';

/** Offsets at which lines begin. A line ends at LF, CRLF or a lone CR, as in an editor. */
export function lineStarts(text: string): number[] {
  const starts = [0];
  for (const end of text.matchAll(/\r\n|\n|\r/g)) starts.push(end.index + end[0].length);
  return starts;
}

/** The place of an offset. Columns count UTF-16 code units from 1; a byte order mark at the head is not counted. */
export function placeAt(at: {
  readonly file: string;
  readonly text: string;
  readonly starts?: readonly number[];
  readonly offset: number;
  readonly length?: number;
}): Place {
  const starts = at.starts ?? lineStarts(at.text);
  const offset = Math.min(Math.max(at.offset, 0), at.text.length);
  const index = lineIndex(starts, offset);
  const mark = index === 0 && at.text.startsWith('\uFEFF') ? 1 : 0;
  const start = starts[index]! + mark;
  const lineText = at.text.slice(start, starts[index + 1] ?? at.text.length).replace(/[\r\n]+$/, '');
  const column = Math.min(Math.max(offset - start, 0), lineText.length) + 1;
  const place = { file: at.file, line: index + 1, column, lineText };
  if (at.length === undefined) return place;
  return { ...place, length: Math.max(1, Math.min(at.length, lineText.length - column + 1)) };
}

/** Index of the last start at or before the offset. */
function lineIndex(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}
