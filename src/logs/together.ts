import { channelName, placeOf, type Channel } from './channel.ts';
import * as say from './channel-texts.ts';
import type { ReadingKind } from './channels.ts';
import type { Collector } from './collect.ts';

/** Channels against each other, over the whole log: no more power leaves than enters, and the sump is not colder than the air. */
export function judgeTogether(channels: readonly Channel[], found: Collector): void {
  const of = (is: ReadingKind): Channel | undefined => channels.find((c) => c.is === is);
  const ambient = of('ambient');
  const sump = of('sump');
  if (ambient !== undefined && sump !== undefined) judgeAmbient(ambient, sump, found);
  const [pinion, input, output, left] = [
    of('pinion-speed'),
    of('torque-in'),
    of('output-speed'),
    of('torque-out-left'),
  ];
  if (pinion === undefined || input === undefined) return;
  if (output === undefined || left === undefined || left.value.every(Number.isNaN)) judgeInput(pinion, input, found);
  else judgePower({ pinion, input, output, left, right: of('torque-out-right') }, found);
}

/** What zeros of unloaded flanges may feign, W, and a share of the power for calibration. Common practice, no source. */
const feigned_W = 50;
const feignedShare = 0.02;

function judgePower(
  c: {
    readonly pinion: Channel;
    readonly input: Channel;
    readonly output: Channel;
    readonly left: Channel;
    readonly right: Channel | undefined;
  },
  found: Collector,
): void {
  let [in_W, out_W, rows] = [0, 0, 0];
  for (let row = 0; row < c.pinion.value.length; row++) {
    const input = c.pinion.value[row]! * c.input.value[row]!;
    const output = c.output.value[row]! * (c.left.value[row]! + (c.right?.value[row] ?? 0));
    if (Number.isNaN(input + output)) continue;
    in_W += input;
    out_W += output;
    rows++;
  }
  if (rows === 0 || (out_W - in_W) / rows <= feigned_W + (feignedShare * Math.abs(out_W)) / rows) return;
  found.add('error', () =>
    say.powerGained(placeOf(c.input, 0), channelName(c.input), channelName(c.left), in_W / rows, out_W / rows),
  );
}

/** An axle that turns nothing takes power in; more than a zero feigns cannot come back out of it. */
function judgeInput(pinion: Channel, input: Channel, found: Collector): void {
  const powers = input.value.map((torque, row) => torque * pinion.value[row]!).filter((power) => !Number.isNaN(power));
  const mean_W = powers.reduce((sum, power) => sum + power, 0) / powers.length;
  if (!(mean_W < -feigned_W)) return;
  found.add('error', () => say.powerBack(placeOf(input, 0), channelName(input), channelName(pinion), mean_W));
}

function judgeAmbient(ambient: Channel, sump: Channel, found: Collector): void {
  let [above, sum_K, rows] = [0, 0, 0];
  for (let row = 0; row < sump.value.length; row++) {
    const excess_K = ambient.value[row]! - sump.value[row]!;
    if (Number.isNaN(excess_K)) continue;
    if (excess_K > 0) above++;
    sum_K += excess_K;
    rows++;
  }
  if (rows === 0 || above < 0.98 * rows || sum_K / rows < 1) return;
  const by_K = sum_K / rows;
  found.add(by_K > 15 ? 'error' : 'warning', () =>
    say.ambientAbove(placeOf(ambient, 0), channelName(ambient), channelName(sump), by_K),
  );
}
