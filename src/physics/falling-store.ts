import { allAbove0, answer } from './answer.ts';
import {
  fallingFinal_K,
  fallingInputs,
  fallingLossSlope_W_K,
  fallingLoss_W,
  lossOf,
  type FallingStore,
  type FlatLoss,
} from './falling-loss.ts';
import { input, output, type Relation } from './relation.ts';

const ln = { last: 40, panels: 400, halvings: 60 };

/**
 * Time of one store from a start to a temperature on its way, its heat falling as it warms.
 *
 *   t = ∫ C dT/[Q(T) − K (T − Ta)],  run over u = ln[(T∞ − T0)/(T∞ − T)], in which a constant loss is even
 *
 * store, start, to [K]; as fallingFinal_K
 * returns      t [s]; null for a temperature that is not on the way from start to end, for a store that is not above 0 and as the end
 * range        as fallingLoss_W
 * source       derived      check: the same, 22 kJ/K, to 70 °C: 2700.22805 s (computed by another program)
 */
export function fallingTimeTo_s(
  of: FallingStore & { readonly store_J_K: number; readonly start_K: number; readonly to_K: number },
): number | null {
  const end_K = fallingFinal_K(of);
  if (end_K === null || !allAbove0(of.store_J_K, of.start_K) || !Number.isFinite(of.to_K)) return null;
  if (of.to_K === of.start_K) return 0;
  const ratio = (end_K - of.start_K) / (end_K - of.to_K);
  return ratio > 1 && ratio < Infinity ? timeOver_s(of, end_K, Math.log(ratio)) : null;
}

/**
 * Temperature of one store after a time, its heat falling as it warms.
 *
 * as fallingTimeTo_s, time [s]
 * returns      T [K], the end after more than any number of time constants; null as fallingFinal_K and for a time below 0
 * range        as fallingLoss_W
 * source       derived      check: the same after 1800 s: 61.52777836 °C (computed by another program)
 */
export function fallingStoreAt_K(
  of: FallingStore & { readonly store_J_K: number; readonly start_K: number; readonly time_s: number },
): number | null {
  const end_K = fallingFinal_K(of);
  if (end_K === null || !allAbove0(of.store_J_K, of.start_K) || !(of.time_s >= 0)) return null;
  let low = 0;
  let high = ln.last;
  const whole_s = timeOver_s(of, end_K, high);
  if (whole_s === null) return null;
  if (of.time_s >= whole_s || of.start_K === end_K) return end_K;
  for (let halving = 0; halving < ln.halvings; halving++) {
    const middle = (low + high) / 2;
    const middle_s = timeOver_s(of, end_K, middle);
    if (middle_s === null) return null;
    if (middle_s < of.time_s) low = middle;
    else high = middle;
  }
  return answer(end_K + (of.start_K - end_K) * Math.exp(-(low + high) / 2));
}

/** Simpson's rule over u from 0: dt/du = C (T∞ − T)/[Q(T) − K (T − Ta)] is smooth to the end. */
function timeOver_s(
  of: FallingStore & { readonly store_J_K: number; readonly start_K: number },
  end_K: number,
  to: number,
): number | null {
  const endHeat_W = fallingLoss_W({ ...of.loss, oil_K: end_K });
  const endSlope_W_K = fallingLossSlope_W_K({ ...of.loss, oil_K: end_K });
  if (endHeat_W === null || endSlope_W_K === null) return null;
  let sum_s = 0;
  for (let i = 0; i <= ln.panels; i++) {
    const left_K = (end_K - of.start_K) * Math.exp((-to * i) / ln.panels);
    const made_W = fallingLoss_W({ ...of.loss, oil_K: end_K - left_K });
    if (made_W === null) return null;
    // what the heat adds to the shed, its slope between here and the end; a difference of nothing near the end
    const atEnd = Math.abs(left_K) < 1e-4;
    const fall_W_K = atEnd ? endSlope_W_K : (made_W - endHeat_W) / left_K;
    const weight = i === 0 || i === ln.panels ? 1 : i % 2 === 1 ? 4 : 2;
    sum_s += (weight * of.store_J_K) / (of.shed_W_K + fall_W_K);
  }
  return answer((sum_s * to) / (3 * ln.panels));
}

type Run = FlatLoss & Readonly<Record<'ambient_K' | 'shed_W_K' | 'store_J_K' | 'start_K', number>>;
const script = 'at 25 digits by two methods, computed by an independent script';
const symbols = [
  ...fallingInputs.loss,
  fallingInputs.ambient,
  fallingInputs.shed,
  input('store_J_K', 'C', 'store', 'J/K'),
  input('start_K', 'T0', 'temperature at the start', 'K'),
];
const sample = { ...fallingInputs.sample, ambient_K: 295.15, shed_W_K: 11, store_J_K: 22000, start_K: 295.15 };

export const fallingStoreRelation: Relation<Run & { readonly time_s: number }> = {
  id: 'falling-one-store',
  title: 'Warming and cooling of one store, heat falling with viscosity',
  formula: {
    latex: String.raw`C\frac{dT}{dt}=Q_l+Q_v\left(\frac{\nu(T)}{\nu_0}\right)^e-K\,(T-T_a)`,
    plain: 'C dT/dt = Ql + Qv (ν(T)/ν0)^e − K (T − Ta)',
  },
  symbols: [...symbols, input('time_s', 't', 'time', 's'), output('T', 'temperature of the oil', 'K')],
  range: fallingInputs.range,
  source: 'derived',
  grade: 'VC',
  checks: [
    ...(
      [
        [300, '32.20156707'],
        [600, '40.45585364'],
        [1800, '61.52777836'],
        [3600, '75.10360875'],
      ] as const
    ).map(([time_s, printed]) => ({
      source: script,
      seen: 'computed' as const,
      inputs: { ...sample, time_s },
      printed,
      unit: '°C',
    })),
    {
      source: 'cooling from 110 °C, by an 8th-order integrator (SciPy)',
      seen: 'computed',
      inputs: { ...sample, start_K: 383.15, time_s: 1800 },
      printed: '93.3196503',
      unit: '°C',
    },
    {
      source: 'from −20 °C, by an 8th-order integrator (SciPy)',
      seen: 'computed',
      inputs: { ...sample, start_K: 253.15, time_s: 60 },
      printed: '-14.4239261',
      unit: '°C',
    },
  ],
  of({ ambient_K, shed_W_K, store_J_K, start_K, time_s, ...flat }) {
    const loss = lossOf(flat);
    return loss && fallingStoreAt_K({ loss, ambient_K, shed_W_K, store_J_K, start_K, time_s });
  },
};

export const fallingTimeRelation: Relation<Run & { readonly to_K: number }> = {
  id: 'falling-time-to',
  title: 'Time to a limit, one store, heat falling with viscosity',
  formula: {
    latex: String.raw`t=\int_{T_0}^{T_\mathrm{lim}}\frac{C\,dT}{Q(T)-K\,(T-T_a)}`,
    plain: 't = ∫ C dT/[Q(T) − K (T − Ta)] from T0 to T lim; not reached where T lim is not before T∞',
  },
  symbols: [...symbols, input('to_K', 'Tlim', 'limit', 'K'), output('t', 'time to the limit', 's')],
  range: fallingInputs.range,
  source: 'derived',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: { ...sample, to_K: 343.15 }, printed: '2700.22805' }],
  of({ ambient_K, shed_W_K, store_J_K, start_K, to_K, ...flat }) {
    const loss = lossOf(flat);
    return loss && fallingTimeTo_s({ loss, ambient_K, shed_W_K, store_J_K, start_K, to_K });
  },
};
