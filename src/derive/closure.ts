import type { Estimate } from '../quantity/estimate.ts';
import { estimate } from '../quantity/estimate.ts';
import type { At, Result } from '../trial/derived.ts';
import type { HeatLaw } from './heat-law.ts';
import type { HeatSeries } from './heat-series.ts';
import type { StoreFit } from './stores.ts';

/**
 * Energy balance over a whole run, as mean power:
 *
 *   ΔQ = [∫Q dt − ∫K·(T − T_amb) dt − C·(T_end − T_start)]/t
 *
 * Heat and the two conductances come from the same run, so a rest says that the model does not fit, not that heat is lost.
 * Where torque was not read the heat law of the run stands in.
 * Its uncertainty is that of the heat made: a rest inside it says nothing. Null without a store and a shed.
 */
export function closureOf(input: {
  series: HeatSeries;
  heat: Pick<HeatLaw, 'at_W'>;
  taken: StoreFit;
  made: Estimate;
  at: At;
}): Result | null {
  const { series, heat, taken, made, at } = input;
  const { curve_K, store, shed } = taken;
  if (store === null || shed === null || curve_K.length !== series.time_s.length) return null;
  const n = curve_K.length;
  let heat_J = 0;
  let gone_J = 0;
  for (let i = 0; i < n; i++) {
    const read_W = series.heat_W[i]!;
    heat_J += (Number.isNaN(read_W) ? heat.at_W(curve_K[i]!) : read_W) * series.bin_s;
    gone_J += shed.value * (curve_K[i]! - series.ambient_K[i]!) * series.bin_s;
  }
  const stored_J = store.value * (curve_K[n - 1]! - curve_K[0]!);
  const whole_s = n * series.bin_s;
  const left_W = (heat_J - gone_J - stored_J) / whole_s;
  return {
    quantity: 'closure',
    at,
    estimate: estimate(left_W, made.parts),
    bound: null,
    class: 'derived from measurement',
    relation: 'closure',
    method: 'heat-up/closure',
    notes: ['mean over the whole run'],
    given: [],
    steps: [
      { says: 'Heat made over the run', formula: '∫Q dt', value: heat_J / 1e6, unit: 'MJ' },
      { says: 'Heat shed over the run', formula: '∫K·(T − T_amb) dt', value: gone_J / 1e6, unit: 'MJ' },
      { says: 'Heat stored', formula: 'C·(T_end − T_start)', value: stored_J / 1e6, unit: 'MJ' },
      { says: 'Left over, as mean power', formula: 'ΔQ', value: left_W, unit: 'W' },
    ],
  };
}
