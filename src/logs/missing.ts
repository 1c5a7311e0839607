import {
  cellOf,
  channelName,
  leaveOut,
  linesOf,
  placeOf,
  reads,
  spanOf_s,
  stretches,
  type Channel,
  type Stretch,
} from './channel.ts';
import * as say from './channel-texts.ts';
import type { Collector } from './collect.ts';
import { counted, quoted } from './texts.ts';

/** Fewer empty cells in a row than this go into the record only. */
const fewestInGap = 3;

/** Says each stretch without a reading, and takes out those beyond the range. `range` is SI. */
export function judgeGaps(c: Channel, range: readonly [number, number], found: Collector): void {
  const [least, most] = range;
  const stated = c.column.plausible !== null;
  const outside = (row: number): boolean => {
    const value = c.value[row]!;
    return value < least || value > most || (stated && (atEnd(value, least) || atEnd(value, most)));
  };
  const gaps = stretches(c.value.length, (row) => Number.isNaN(c.value[row]!) || outside(row));
  const thinned = regularLength(gaps);
  let [few, regular] = [0, 0];
  for (const gap of gaps) {
    const length = gap.to - gap.from + 1;
    const first = cellOf(c, gap.from).cell.text.trim();
    const read = rowsOf(gap).find((row) => !Number.isNaN(c.value[row]!));
    const silent = read === undefined && !/^[+-]?[\d.,]+/u.test(first);
    if (silent && length === thinned) regular++;
    else if (silent && length < fewestInGap) few += length;
    else {
      const reason =
        read === undefined
          ? inWords(first, silent)
          : `${reads(c, c.value[read]!)} is beyond ${reads(c, least)} to ${reads(c, most)}`;
      found.add('warning', () =>
        say.channelGap(placeOf(c, read ?? gap.from), channelName(c), spanOf_s(c, gap), linesOf(c, gap), reason),
      );
    }
    if (read !== undefined) leaveOut(c, gap);
  }
  if (few > 0) found.note(`${channelName(c)}: ${counted(few, 'single reading')} missing`);
  if (regular > 0) found.note(`${channelName(c)} is written in every ${thinned + 1}th row`);
}

const inWords = (text: string, silent: boolean): string =>
  text === ''
    ? 'the cells are empty'
    : silent
      ? `the cells say ${quoted(text)}`
      : `${quoted(text)} is declared as missing`;

const rowsOf = (s: Stretch): number[] => Array.from({ length: s.to - s.from + 1 }, (_, at) => s.from + at);

/** A reading exactly at a stated end is a saturated channel; at zero it is a shaft or fan at rest. */
const atEnd = (value: number, end: number): boolean => end !== 0 && Math.abs(value - end) <= 1e-9 * Math.abs(end);

/** A slow channel beside fast ones leaves gaps of one length all through; 0 when it does not. */
function regularLength(gaps: readonly Stretch[]): number {
  const counts = new Map<number, number>();
  for (const gap of gaps) counts.set(gap.to - gap.from + 1, (counts.get(gap.to - gap.from + 1) ?? 0) + 1);
  const [length, count] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [0, 0];
  return gaps.length > 20 && count >= 0.9 * gaps.length ? length : 0;
}
