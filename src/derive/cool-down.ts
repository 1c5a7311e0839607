import { combine, estimate, type Cause, type Estimate } from '../quantity/estimate.ts';
import type { At, Result, Trace } from '../trial/derived.ts';
import { calibration, fitScatter, gather } from './causes.ts';
import { heatSeries } from './heat-series.ts';
import { logSource, type Reading } from './reading.ts';
import { fitTo, hangTogether, root } from './through-fit.ts';

export interface CoolDownDerived {
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
  readonly fitted: Trace | null;
  readonly why: string | null;
}

/**
 * Time constant of the sump at rest, and what is shed per kelvin then.
 *
 *   T' = −(T − T_amb)/τ      from half an hour after the stop, when oil and housing fall together
 *   K_rest = C/τ             with the store C of the heat-up it follows
 *
 * Not the running value: still gears stir nothing.
 */
export function deriveCoolDown(input: {
  reading: Reading;
  store: { readonly estimate: Estimate; readonly from: { readonly run: string; readonly at: At } } | null;
}): CoolDownDerived {
  const { reading, store } = input;
  const { run, log } = reading;
  const series = heatSeries(reading, { bin_s: 30, loaded: false });
  if (series === null)
    return { results: [], causes: [], fitted: null, why: 'sump or ambient is missing from its logger file' };
  const end_s = series.time_s.at(-1) ?? 0;
  const wait_s = Math.min(1800, end_s / 3);
  const from = series.time_s.findIndex((t) => t >= wait_s);
  if (from < 0 || series.time_s.length - from < 20)
    return { results: [], causes: [], fitted: null, why: 'shorter than a cool-down needs' };
  const y = series.sump_K.subarray(from);
  const ambient = series.ambient_K.subarray(from);
  const curve = (p: readonly number[]): Float64Array => {
    const keep = Math.exp(-series.bin_s / Math.max(p[1]!, 60));
    const out = new Float64Array(y.length);
    let t = p[0]!;
    for (let i = 0; i < out.length; i++) {
      out[i] = t;
      t = ambient[i]! + (t - ambient[i]!) * keep;
    }
    return out;
  };
  const fit = fitTo(y, curve, [y.find((v) => !Number.isNaN(v)) ?? NaN, 4000]);
  const tau_s = fit.parameters[1]!;
  const u = root(fit, 1) * hangTogether(fit.residuals);
  // A fit always answers; an answer that the readings do not hold is none.
  if (!(tau_s > 2 * u)) return { results: [], causes: [], fitted: null, why: 'its sump does not fall towards ambient' };
  // An error of the ambient probe shifts every difference alike: δτ/τ ≈ δT/(mean difference at the end of the stretch).
  const above = meanAbove(y, ambient);
  const air = reading.instrument('ambient');
  const probe = reading.instrument('sump');
  const found = gather([
    { of: fitScatter({ run: run.id, what: 'time constant', u, dof: fit.dof }), sensitivity: 1 },
    { of: air && calibration(air, 295), sensitivity: -tau_s / above },
    { of: probe && calibration(probe, 340), sensitivity: tau_s / above },
  ]);
  const tau = estimate(tau_s, found.parts);
  const rows: readonly [number, number] = [log.time_s.findIndex((t) => t >= wait_s), log.rows];
  const shared = {
    at: {},
    bound: null,
    class: 'derived from measurement',
    notes: ['at rest: not the running value, still gears stir nothing'],
    given: [
      {
        symbol: 'T',
        name: 'sump from half an hour after the stop, mean above ambient',
        value: above,
        u: null,
        unit: 'K',
        from: logSource(log, 'sump', rows),
      },
    ],
  } as const;
  const results: Result[] = [
    {
      ...shared,
      quantity: 'time-constant',
      estimate: tau,
      relation: 'newton-cooling',
      method: 'cool-down/one-store-at-rest',
      steps: [
        { says: 'Time constant of the fitted fall', formula: "T' = −(T − T_amb)/τ", value: tau_s / 60, unit: 'min' },
      ],
    },
  ];
  if (store !== null)
    results.push({
      ...shared,
      quantity: 'shed-rest',
      estimate: combine(store.estimate.value / tau_s, [
        { of: store.estimate, sensitivity: 1 / tau_s },
        { of: tau, sensitivity: -store.estimate.value / tau_s ** 2 },
      ]),
      relation: 'store-over-time-constant',
      method: 'cool-down/store-over-time-constant',
      given: [
        ...shared.given,
        {
          symbol: 'C',
          name: 'store of the heat-up before',
          value: store.estimate.value / 1e3,
          u: null,
          unit: 'kJ/K',
          from: { kind: 'result', quantity: 'store', ...store.from },
        },
      ],
      steps: [
        { says: 'Store over time constant', formula: 'K_rest = C/τ', value: store.estimate.value / tau_s, unit: 'W/K' },
      ],
    });
  return {
    results,
    causes: [...found.causes],
    fitted: { channel: 'sump', time_s: [...series.time_s].slice(from), value: [...curve(fit.parameters)] },
    why: null,
  };
}

function meanAbove(y: Float64Array, ambient: Float64Array): number {
  let sum = 0;
  let n = 0;
  y.forEach((v, i) => {
    if (Number.isNaN(v)) return;
    sum += v - ambient[i]!;
    n++;
  });
  return Math.max(1, sum / Math.max(1, n));
}
