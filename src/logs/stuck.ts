import { channelName, leaveOut, linesOf, placeOf, reads, type Channel, type Stretch } from './channel.ts';
import * as say from './channel-texts.ts';
import type { Collector } from './collect.ts';

/**
 * Takes out each stretch in which a channel stands still longer than its map allows while another one moves. A shaft or a torque
 * that reads zero is at rest, not stuck.
 */
export function judgeStuck(c: Channel, all: readonly Channel[], found: Collector): void {
  const limit_s = c.column.stuck_s;
  if (limit_s === null) return;
  const rests = c.is.includes('speed') || c.is.includes('torque');
  for (const s of stillStretches(c)) {
    const span_s = c.time_s[s.to]! - c.time_s[s.from]!;
    const value = c.value[s.from]!;
    if (span_s <= limit_s || (rests && value === 0)) continue;
    const moving = all.find((other) => other !== c && moves(other, s));
    if (moving === undefined) continue;
    found.add('warning', () =>
      say.channelStuck(placeOf(c, s.from), channelName(c), reads(c, value), span_s, linesOf(c, s), moving.is),
    );
    leaveOut(c, s);
  }
}

/** Stretches of one value, missing readings within them passed over. */
function stillStretches(c: Channel): Stretch[] {
  const { value } = c;
  const found: Stretch[] = [];
  let [from, to] = [-1, -1];
  const close = (): void => {
    if (to > from) found.push({ from, to });
  };
  for (let row = 0; row < value.length; row++) {
    if (Number.isNaN(value[row]!)) continue;
    if (from < 0 || value[row] !== value[from]) {
      close();
      from = row;
    }
    to = row;
  }
  close();
  return found;
}

function moves(c: Channel, s: Stretch): boolean {
  let first = NaN;
  for (let row = s.from; row <= s.to; row++) {
    const value = c.value[row]!;
    if (Number.isNaN(value)) continue;
    if (Number.isNaN(first)) first = value;
    else if (value !== first) return true;
  }
  return false;
}
