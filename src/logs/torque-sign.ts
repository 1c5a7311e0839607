import { channelName, leaveOut, linesOf, placeOf, spanOf_s, usualChange, type Channel } from './channel.ts';
import * as say from './channel-texts.ts';
import type { Collector } from './collect.ts';

/** Two readings are the same size within this share. */
const alike = 0.1;
/** A torque smaller than this many usual changes is noise round zero and turns over by nature. */
const overNoise = 10;

/**
 * Takes out stretches in which a torque reads as its own mirror image from one row to the next while the speed holds: a plug or a
 * sign switch, for no torque turns over at one speed and one size.
 */
export function judgeTorqueSign(c: Channel, all: readonly Channel[], found: Collector): void {
  if (!c.is.startsWith('torque')) return;
  const speed = all.find((other) => other.is === (c.is === 'torque-in' ? 'pinion-speed' : 'output-speed'));
  const { value } = c;
  let floor: number | null = null;
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= alike * Math.abs(b);
  const turnsOver = (row: number): boolean => {
    const [now, before] = [value[row]!, value[row - 1]!];
    if (before === 0 || !near(-now, before)) return false;
    floor ??= overNoise * usualChange(value);
    if (Math.abs(before) < floor) return false;
    return speed === undefined || (speed.value[row] !== 0 && near(speed.value[row]!, speed.value[row - 1]!));
  };
  for (let row = 2; row < value.length; row++) {
    if (!near(value[row - 2]!, value[row - 1]!) || !turnsOver(row)) continue;
    const stood = value[row - 1]!;
    let end = row + 1;
    while (end < value.length && !near(value[end]!, stood) && value[end]! * stood <= 0) end++;
    const turned = { from: row, to: end - 1 };
    found.add('warning', () =>
      say.torqueSign(placeOf(c, turned.from), channelName(c), spanOf_s(c, turned), linesOf(c, turned)),
    );
    leaveOut(c, turned);
    row = end;
  }
}
