import { fromSI, toSI, unitsOf } from '../quantity/units.ts';
import { channelName, placeOf, reads, type Channel } from './channel.ts';
import * as say from './channel-texts.ts';
import { dimensionOf, widestRange } from './channels.ts';
import type { Collector } from './collect.ts';
import { judgeGaps } from './missing.ts';
import { judgeSaturation } from './saturation.ts';
import { judgeStep } from './step.ts';
import { judgeStuck } from './stuck.ts';
import { judgeTorqueSign } from './torque-sign.ts';

/**
 * Judges each channel by itself and takes out, in place, the readings that do not stand: beyond the range, turned over, stepping,
 * stuck. One warning a stretch. Where a unit is in doubt nothing else is judged: every reading is wrong then, and the log is
 * not used until a person decides. That is a warning, not an error: one such file does not stop a series.
 */
export function judgeChannels(channels: readonly Channel[], found: Collector): 'usable' | 'unit in doubt' {
  const doubts = channels.filter((channel) => judgeUnit(channel, found));
  if (doubts.length > 0) return 'unit in doubt';
  for (const channel of channels) {
    judgeGaps(channel, rangeOf(channel), found);
    judgeTorqueSign(channel, channels, found);
    judgeStep(channel, found);
  }
  for (const channel of channels) judgeStuck(channel, channels, found);
  for (const channel of channels) judgeSaturation(channel, found);
  return 'usable';
}

const rangeOf = (c: Channel): readonly [number, number] => c.column.plausible ?? widestRange[c.is];

/** Most readings beyond the range is no fault of a connector: the unit, the column or the range is wrong. */
function judgeUnit(c: Channel, found: Collector): boolean {
  const [least, most] = rangeOf(c);
  let read = 0;
  let beyond = 0;
  let low = Infinity;
  let high = -Infinity;
  for (let row = 0; row < c.value.length; row++) {
    const value = c.value[row]!;
    if (Number.isNaN(value)) continue;
    read++;
    if (value < least || value > most) beyond++;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (beyond * 2 <= read) return false;
  found.add('warning', () => {
    const first = c.value.findIndex((value) => value < least || value > most);
    const range = `${reads(c, low)} to ${reads(c, high)}`;
    return say.unitDoubtful(
      placeOf(c, first),
      channelName(c),
      range,
      `${reads(c, least)} to ${reads(c, most)}`,
      otherUnit(c, [low, high]),
    );
  });
  return true;
}

/** The one other unit in which all of it would lie within the range, or null. */
function otherUnit(c: Channel, [low, high]: readonly [number, number]): string | null {
  const [least, most] = rangeOf(c);
  const fits = unitsOf(dimensionOf[c.is]).filter((unit) => {
    const [from, to] = [toSI(unit, fromSI(c.unit, low)), toSI(unit, fromSI(c.unit, high))];
    return unit.name !== c.unit.name && from >= least && to <= most;
  });
  const [unit] = fits;
  if (fits.length !== 1 || unit === undefined) return null;
  const [from, to] = [low, high].map((si) => reads(c, toSI(unit, fromSI(c.unit, si)), 3));
  return `read as ${unit.name} it is ${from!} to ${to!}`;
}
