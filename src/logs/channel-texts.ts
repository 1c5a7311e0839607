import { writeNumber } from '../quantity/write.ts';
import type { Finding, Place } from '../finding/finding.ts';
import { error, linesText, quoted, span_s, warning } from './texts.ts';

export const channelGap = (
  place: Place,
  name: string,
  span: number,
  at: { from: number; to: number },
  reason: string,
): Finding =>
  warning(
    'channel-gap',
    place,
    `${name} has no reading for ${span_s(span)} (${linesText(at.from, at.to)}): ${reason}.`,
    'A gap is not filled in.',
    'Look for a loose connector; say in the note what was found.',
    'Steady windows over the gap use the readings that are there.',
  );
export const channelStep = (
  place: Place,
  name: string,
  by: string,
  span: number,
  at: { from: number; to: number; toEnd: boolean },
): Finding =>
  warning(
    'channel-step',
    place,
    `${name} steps by ${by} within ${span_s(span)}${at.toEnd ? ' and does not come back' : ''} (${linesText(at.from, at.to)}).`,
    'It is more than the map allows as max-step.',
    'Look for a loose probe. If the change was real, raise max-step in the map.',
    'These readings are not used.',
  );
export const channelStuck = (
  place: Place,
  name: string,
  value: string,
  span: number,
  at: { from: number; to: number },
  moving: string,
): Finding =>
  warning(
    'channel-stuck',
    place,
    `${name} reads ${value} for ${span_s(span)} (${linesText(at.from, at.to)}) while ${moving} changes.`,
    'It is longer than the map allows as stuck.',
    'Look at the sensor and its connector; say in the note what was found.',
    'These readings are not used.',
  );
export const channelSaturated = (place: Place, name: string, text: string, count: number): Finding =>
  warning(
    'channel-saturated',
    place,
    `${name} repeats its extreme ${quoted(text)} ${count} times in a row.`,
    'A channel that otherwise moves does so at the end of its range, or where a code stands for no reading.',
    `If it is a code, add it to  missing:  in the map; otherwise set  plausible:  to the range of the channel.`,
    'The readings are kept.',
  );
export const torqueSign = (place: Place, name: string, span: number, at: { from: number; to: number }): Finding =>
  warning(
    'torque-sign',
    place,
    `${name} changes its sign at the same size for ${span_s(span)} (${linesText(at.from, at.to)}) while the speed holds.`,
    'A torque does not turn over within a row.',
    'Look at the plug and the sign switch of the channel.',
    'These readings are not used.',
  );
export const unitDoubtful = (place: Place, name: string, range: string, band: string, other: string | null): Finding =>
  warning(
    'unit-contradicted',
    place,
    `${name} reads ${range}, most of it outside ${band}.`,
    other === null
      ? 'The unit in the map, its column or its range is wrong.'
      : `The unit in the map is in doubt: ${other}.`,
    'Correct the unit or the column in the map, or give plausible: for this channel.',
    'This log is not used until a person decides; the run has no figures.',
  );
export const powerGained = (place: Place, input: string, output: string, in_W: number, out_W: number): Finding =>
  error(
    'power-gained',
    place,
    `On the mean ${Math.round(out_W)} W leave and ${Math.round(in_W)} W enter.`,
    `More cannot leave than enters: ${input} or ${output} has the wrong unit, sign or column.`,
    'Correct unit, sign or column of the one that is wrong in the map.',
  );
export const powerBack = (place: Place, input: string, speed: string, in_W: number): Finding =>
  error(
    'power-back',
    place,
    `On the mean ${writeNumber(in_W, 0)} W enter at the input: ${input} and ${speed} have opposite signs.`,
    'An axle that drives nothing takes power in and cannot give it back.',
    'Write  sign: -1  for the one of the two that is turned, in the map.',
  );
export const ambientAbove = (place: Place, ambient: string, sump: string, by_K: number): Finding => {
  const says = `${ambient} lies above ${sump} all through, by ${writeNumber(by_K, 1)} K on the mean.`;
  const write = 'Check which probe is on which column, and the units of both.';
  return by_K > 15
    ? error('ambient-above-sump', place, says, 'One of the two has the wrong unit or column.', write)
    : warning(
        'ambient-above-sump',
        place,
        says,
        'The two channels may be swapped.',
        write,
        'Both are used as the map names them.',
      );
};
