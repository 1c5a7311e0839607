import { channelName, differs, leaveOut, linesOf, placeOf, type Channel } from './channel.ts';
import * as say from './channel-texts.ts';
import type { Collector } from './collect.ts';

/** A rate is judged over one second at least: noise between two close readings is no step. */
const shortest_s = 1;
/** A jump after fewer readings than this makes those the odd ones, not all that follow. */
const fewestBefore = 3;

/**
 * Takes out what lies between a step faster than the map allows and the step back; without a step back, all that follows.
 * The side before the step is the one that stands.
 */
export function judgeStep(c: Channel, found: Collector): void {
  const { value, time_s } = c;
  const rate = c.column.maxStep;
  if (rate === null) return;
  const jump = (from: number, to: number): number => {
    const change = value[to]! - value[from]!;
    return Math.abs(change) > rate * Math.max(time_s[to]! - time_s[from]!, shortest_s) ? change : 0;
  };
  const read: number[] = [];
  for (let row = 0; row < value.length; row++) if (!Number.isNaN(value[row]!)) read.push(row);
  for (let at = 1; at < read.length; at++) {
    const change = jump(read[at - 1]!, read[at]!);
    if (change === 0) continue;
    const first = at < fewestBefore ? 0 : at;
    const back = first === 0 ? at : stepBack(read, at, change, jump);
    const odd = { from: read[first]!, to: read[back - 1]! };
    const span_s = time_s[read[at]!]! - time_s[read[at - 1]!]!;
    const where = { ...linesOf(c, odd), toEnd: back === read.length };
    found.add('warning', () =>
      say.channelStep(placeOf(c, odd.from), channelName(c), differs(c, change), span_s, where),
    );
    leaveOut(c, odd);
    at = back;
  }
}

/** Place in `read` of the first jump the other way, at least half as large; the number of readings when there is none. */
function stepBack(
  read: readonly number[],
  at: number,
  change: number,
  jump: (from: number, to: number) => number,
): number {
  for (let next = at + 1; next < read.length; next++) {
    const back = jump(read[next - 1]!, read[next]!);
    if (back * change < 0 && Math.abs(back) >= Math.abs(change) / 2) return next;
  }
  return read.length;
}
