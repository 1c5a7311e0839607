import { cellOf, channelName, placeOf, stretches, type Channel } from './channel.ts';
import * as say from './channel-texts.ts';
import type { Collector } from './collect.ts';

/** Metrology practice (common practice, no source): more than three readings in a row at the extreme. */
const mostAtExtreme = 3;
/** A channel that repeats its readings oftener than this is coarse, and stands at its extreme by nature. */
const coarseShare = 0.1;

/** Warns of a channel that stands at its own greatest or least reading though it moves elsewhere: its range ends there. */
export function judgeSaturation(c: Channel, found: Collector): void {
  const { value } = c;
  let [low, high, read, same] = [Infinity, -Infinity, 0, 0];
  for (let row = 0; row < value.length; row++) {
    const now = value[row]!;
    if (Number.isNaN(now)) continue;
    read++;
    if (now < low) low = now;
    if (now > high) high = now;
  }
  const extremes = [low, high].filter((end) => end !== 0);
  if (low === high || read === 0) return;
  for (let row = 1; row < value.length; row++) {
    if (value[row] === value[row - 1] && !extremes.includes(value[row]!)) same++;
  }
  if (same > coarseShare * read) return;
  for (const end of extremes) {
    const runs = stretches(value.length, (row) => value[row] === end).filter((s) => s.to - s.from + 1 > mostAtExtreme);
    const [run] = runs;
    if (run === undefined) continue;
    const text = cellOf(c, run.from).cell.text;
    found.add('warning', () => say.channelSaturated(placeOf(c, run.from), channelName(c), text, run.to - run.from + 1));
  }
}
