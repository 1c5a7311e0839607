import type { HeatSeries } from './heat-series.ts';
import { meanOf } from './readings-of.ts';

/**
 * Why neither final temperature nor what rests on it may be told of a heat-up; null when they may. A fit always answers:
 * it takes a look at the physics to see that the answer is none.
 */
export function untold(of: { series: HeatSeries; ambient_K: number; final_K: number; u_K: number }): string | null {
  const { series, ambient_K, final_K, u_K } = of;
  if (Number.isNaN(ambient_K)) return 'ambient was not read in the last half hour';
  if (!(meanOf(series.heat_W).mean > 0))
    return 'shaft power out is not less than shaft power in; the signs or zeros of the torque columns are wrong';
  if (!(final_K - ambient_K > 2 * u_K))
    return 'the sump of this run does not bend towards a temperature that could be told from ambient';
  return null;
}
