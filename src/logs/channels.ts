import type { ReadingKind } from '../trial/rig.ts';

export type { ReadingKind } from '../trial/rig.ts';
export { channelDimension as dimensionOf } from '../trial/rig.ts';

const oil_K = [213.15, 673.15] as const;

/**
 * What no axle trial reads beyond, SI: used where the map states no range, so that a code such as −999 or 9999 is no temperature.
 * Common practice, no source; wide on purpose, but for the air round a bench, which is where °F taken for °C shows.
 */
export const widestRange: Readonly<Record<ReadingKind, readonly [number, number]>> = {
  'pinion-speed': [-3000, 3000],
  'output-speed': [-3000, 3000],
  'torque-in': [-2e5, 2e5],
  'torque-out-left': [-2e5, 2e5],
  'torque-out-right': [-2e5, 2e5],
  sump: oil_K,
  skin: oil_K,
  'pinion-bearing': oil_K,
  ambient: [223.15, 333.15],
  airflow: [-1, 150],
  level: [-3, 3],
};
