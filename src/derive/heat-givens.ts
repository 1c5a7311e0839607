import type { Given } from '../trial/derived.ts';
import { logSource, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';

/** What every figure of a heat-up is given: readings of its logger file with their lines. */
export function givens(i: {
  reading: Reading;
  whole: readonly [number, number];
  lastRows: readonly [number, number];
  ambient: number;
  u: number;
  made: number;
  n: number;
}): Record<'sump' | 'ambient' | 'heat' | 'torqueIn' | 'torqueOut', Given> {
  const { log } = i.reading;
  const mean = (kind: 'torque-in' | 'torque-out-left' | 'sump'): number =>
    meanOf(i.reading.channel(kind) ?? new Float64Array(0)).mean;
  const last = meanOf(i.reading.channel('sump')!.subarray(...i.lastRows));
  return {
    sump: {
      symbol: 'T',
      name: 'sump temperature, mean of the last half hour',
      value: last.mean - 273.15,
      u: last.u,
      unit: '°C',
      from: logSource(log, 'sump', i.whole),
    },
    ambient: {
      symbol: 'T_amb',
      name: 'ambient, mean of the last half hour',
      value: i.ambient - 273.15,
      u: i.u,
      unit: '°C',
      from: logSource(log, 'ambient', i.lastRows),
    },
    heat: {
      symbol: 'Q',
      name: 'heat made, scatter of one 20 s mean',
      value: i.made,
      u: null,
      unit: 'W',
      from: logSource(log, 'torque-in', i.whole),
    },
    torqueIn: {
      symbol: 'T_in',
      name: 'input torque less zero, mean of the run',
      value: mean('torque-in'),
      u: null,
      unit: 'N·m',
      from: logSource(log, 'torque-in', i.whole),
    },
    torqueOut: {
      symbol: 'T_out',
      name: 'left output torque less zero, mean of the run',
      value: mean('torque-out-left'),
      u: null,
      unit: 'N·m',
      from: logSource(log, 'torque-out-left', i.whole),
    },
  };
}
