import type { ChannelKind } from '../trial/rig.ts';

/** Words of a header → what the column holds; null where they say nothing, or more than one thing. Names are those of the trade. */
export function channelWords(header: string): ChannelKind | null {
  const words = header
    .toLowerCase()
    .replace(/[[(][^\])]*[\])]\s*$/, '')
    .split(/[^\p{L}\p{N}]+|(?<=\p{L})(?=\d)/u)
    .filter((word) => word !== '');
  const has = (...any: readonly string[]): boolean => words.some((word) => any.includes(word));
  const fits = rules.filter(({ when }) => when(has));
  return fits[0]?.is ?? null;
}

type Has = (...any: readonly string[]) => boolean;

const input = ['in', 'input', 'pinion', 'prop', 'drive', 'driveshaft', 'motor'];
const output = ['out', 'output', 'wheel', 'hub', 'axle'];
const left = ['left', 'l', 'lh'];
const right = ['right', 'r', 'rh'];
const torque = ['torque', 'tq', 'trq', 'm', 'md'];
const speed = ['speed', 'rpm', 'n', 'revs', 'rev'];
const bearing = ['bearing', 'brg', 'race', 'cup', 'pb'];

/** The first that fits holds: the narrow ones stand before the wide ones. */
const rules: readonly { readonly is: ChannelKind; readonly when: (has: Has) => boolean }[] = [
  { is: 'event', when: (has) => has('event', 'events', 'evt', 'mark', 'marker', 'remark', 'note', 'comment') },
  {
    is: 'airflow',
    when: (has) =>
      has('airflow', 'airspeed', 'wind', 'vane', 'anemometer', 'fan') ||
      (has('air') && has('speed', 'flow', 'velocity')) ||
      (has('u') && has('air')),
  },
  {
    is: 'ambient',
    when: (has) => has('ambient', 'amb', 'room', 'inlet') || (has('air') && has('t', 'temp', 'temperature')),
  },
  { is: 'pinion-bearing', when: (has) => has(...bearing) },
  { is: 'skin', when: (has) => has('skin', 'surface', 'housing', 'case', 'casing') },
  { is: 'sump', when: (has) => has('sump') || (has('oil') && !has('level', 'height')) },
  { is: 'level', when: (has) => has('level', 'lvl', 'height', 'z') },
  { is: 'torque-out-left', when: (has) => has(...torque) && has(...output) && has(...left) },
  { is: 'torque-out-right', when: (has) => has(...torque) && has(...output) && has(...right) },
  { is: 'torque-in', when: (has) => has(...torque) && has(...input) && !has(...output) },
  { is: 'pinion-speed', when: (has) => has(...speed) && has(...input) && !has(...output) },
  { is: 'output-speed', when: (has) => has(...speed) && has(...output) && !has(...input) },
];
