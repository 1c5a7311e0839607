import { cellOf, channelName, placeOf, type Channel } from './channel.ts';
import * as say from './channel-texts.ts';
import type { Collector } from './collect.ts';

/** Metrology practice (common practice, no source): more than three readings in a row at the extreme. */
const mostAtExtreme = 3;
/** A channel that repeats its readings oftener than this is coarse, and stands at its extreme by nature. */
const coarseShare = 0.1;

/** Warns of a channel that stands at its own greatest or least reading though it moves elsewhere: its range ends there. */
export function judgeSaturation(c: Channel, found: Collector): void {
  const { value } = c;
  let low = Infinity;
  let high = -Infinity;
  for (let row = 0; row < value.length; row++) {
    const now = value[row]!;
    if (now < low) low = now;
    if (now > high) high = now;
  }
  if (low >= high) return;
  const runs: { end: number; from: number; length: number }[] = [];
  let same = 0;
  for (let row = 1; row < value.length; row++) {
    const now = value[row]!;
    if (now !== value[row - 1]) continue;
    if ((now !== low && now !== high) || now === 0) {
      same++;
      continue;
    }
    const from = row - 1;
    while (row + 1 < value.length && value[row + 1] === now) row++;
    if (row - from >= mostAtExtreme) runs.push({ end: now, from, length: row - from + 1 });
  }
  if (same > coarseShare * value.length) return;
  for (const end of [low, high]) {
    const run = runs.find((r) => r.end === end);
    if (run === undefined) continue;
    const text = cellOf(c, run.from).cell.text;
    found.add('warning', () => say.channelSaturated(placeOf(c, run.from), channelName(c), text, run.length));
  }
}
