import { allAbove0, answer } from './answer.ts';
import {
  fallingFinal_K,
  fallingInputs,
  fallingLossSlope_W_K,
  fallingLoss_W,
  lossOf,
  type FallingLoss,
  type FlatLoss,
} from './falling-loss.ts';
import { input, output, type Relation } from './relation.ts';
import { twoStoreConstants, type TwoStore, type TwoTemperatures } from './two-store.ts';

type Ending = {
  readonly loss: FallingLoss;
  readonly ambient_K: number;
  readonly coupling_W_K: number;
  readonly shed_W_K: number;
};

/**
 * Where two stores end whose heat falls as the oil warms: all heat passes both resistances.
 *
 *   Q(T1) = (T1 − Ta)/(1/G + 1/K),  T2 = Ta + Q(T1)/K
 *
 * ambient [K], coupling G and shed K [W/K]
 * returns      oil T1 and housing T2 [K]; null when G or K is not above 0 and as fallingFinal_K
 * range        as fallingLoss_W
 * source       derived      check: reference run with G 60: oil 93.3100301, housing 82.2619973 °C (computed by another program)
 */
export function twoStoreFallingFinal(of: Ending): TwoTemperatures | null {
  if (!allAbove0(of.coupling_W_K, of.shed_W_K)) return null;
  const shed_W_K = 1 / (1 / of.coupling_W_K + 1 / of.shed_W_K);
  const oil_K = fallingFinal_K({ loss: of.loss, ambient_K: of.ambient_K, shed_W_K });
  if (oil_K === null) return null;
  const housing_K = answer(of.ambient_K + (shed_W_K * (oil_K - of.ambient_K)) / of.shed_W_K);
  return housing_K === null ? null : { oil_K, housing_K };
}

/** A step is this part of the fastest time constant; after so many of the slowest the end is reached. */
const steps = { ofFastest: 0.05, slowest: 40, most: 100_000 };

/**
 * Both temperatures after a time, the heat in the oil falling as it warms; classical Runge–Kutta.
 *
 *   C1 dT1/dt = Q(T1) − G (T1 − T2),  C2 dT2/dt = G (T1 − T2) − K (T2 − Ta)
 *
 * stores [J/K], G, K [W/K], start, ambient [K], time [s]
 * returns      oil and housing [K]; null as twoStoreConstants and fallingLoss_W, for a time below 0, and where the fast time
 *              constant is so short against the run that it would take over a hundred thousand steps
 * range        as fallingLoss_W
 * source       derived      check: reference run after 1800 s: oil 69.5528322, housing 59.3825050 °C (computed by another program)
 */
export function twoStoreFallingAt(
  of: TwoStore & Ending & { readonly start: TwoTemperatures; readonly time_s: number },
): TwoTemperatures | null {
  const end = twoStoreFallingFinal(of);
  const constants = twoStoreConstants(of);
  const coldest_K = Math.min(of.start.oil_K, of.start.housing_K, of.ambient_K);
  const steepest_W_K = fallingLossSlope_W_K({ ...of.loss, oil_K: coldest_K });
  if (end === null || constants === null || steepest_W_K === null || !(of.time_s >= 0)) return null;
  if (of.time_s >= steps.slowest * constants.slow_s) return end;
  const fastest_1_s = 1 / constants.fast_s + steepest_W_K / of.oilStore_J_K;
  const count = Math.ceil((of.time_s * fastest_1_s) / steps.ofFastest);
  if (!(count <= steps.most)) return null;
  let at = of.start;
  for (let i = 0; i < count; i++) at = stepped(of, at, of.time_s / count);
  return Number.isFinite(at.oil_K) && Number.isFinite(at.housing_K) ? at : null;
}

function stepped(of: TwoStore & Ending, at: TwoTemperatures, step_s: number): TwoTemperatures {
  const k1 = rates(of, at);
  const k2 = rates(of, moved(at, k1, step_s / 2));
  const k3 = rates(of, moved(at, k2, step_s / 2));
  const k4 = rates(of, moved(at, k3, step_s));
  return {
    oil_K: at.oil_K + (step_s / 6) * (k1.oil_K_s + 2 * k2.oil_K_s + 2 * k3.oil_K_s + k4.oil_K_s),
    housing_K:
      at.housing_K + (step_s / 6) * (k1.housing_K_s + 2 * k2.housing_K_s + 2 * k3.housing_K_s + k4.housing_K_s),
  };
}

interface Rates {
  readonly oil_K_s: number;
  readonly housing_K_s: number;
}

function rates(of: TwoStore & Ending, at: TwoTemperatures): Rates {
  // NaN where the oil has no loss; it comes out as null above
  const made_W = fallingLoss_W({ ...of.loss, oil_K: at.oil_K }) ?? NaN;
  const passed_W = of.coupling_W_K * (at.oil_K - at.housing_K);
  return {
    oil_K_s: (made_W - passed_W) / of.oilStore_J_K,
    housing_K_s: (passed_W - of.shed_W_K * (at.housing_K - of.ambient_K)) / of.housingStore_J_K,
  };
}

const moved = (at: TwoTemperatures, by: Rates, step_s: number): TwoTemperatures => ({
  oil_K: at.oil_K + by.oil_K_s * step_s,
  housing_K: at.housing_K + by.housing_K_s * step_s,
});

type Flat = FlatLoss & Readonly<Record<'ambient_K' | 'coupling_W_K' | 'shed_W_K', number>>;
const endSymbols = [
  ...fallingInputs.loss,
  fallingInputs.ambient,
  input('coupling_W_K', 'G', 'coupling of oil and housing', 'W/K'),
  input('shed_W_K', 'K', 'shed of the housing', 'W/K'),
];
const sample = { ...fallingInputs.sample, ambient_K: 295.15, coupling_W_K: 60, shed_W_K: 11 };
const run = { ...sample, oilStore_J_K: 6000, housingStore_J_K: 16000, start_K: 295.15 };
const script = 'by an 8th-order integrator (SciPy)';

export const twoStoreFallingFinalRelation: Relation<Flat> = {
  id: 'two-store-falling-final',
  title: 'Final oil temperature, two stores, heat falling with viscosity',
  formula: {
    latex: String.raw`Q_l+Q_v\left(\frac{\nu(T_1)}{\nu_0}\right)^e=\frac{T_1-T_a}{\frac1G+\frac1K}`,
    plain: 'Ql + Qv (ν(T1)/ν0)^e = (T1 − Ta)/(1/G + 1/K)',
  },
  symbols: [...endSymbols, output('T1', 'final oil temperature', 'K')],
  range: fallingInputs.range,
  source: 'derived',
  grade: 'VC',
  checks: [
    {
      source: 'root at 30 digits, computed by an independent script',
      seen: 'computed',
      inputs: sample,
      printed: '93.31003008',
      unit: '°C',
    },
  ],
  of({ ambient_K, coupling_W_K, shed_W_K, ...flat }) {
    const loss = lossOf(flat);
    return loss && (twoStoreFallingFinal({ loss, ambient_K, coupling_W_K, shed_W_K })?.oil_K ?? null);
  },
};

type FlatRun = Flat & Readonly<Record<'oilStore_J_K' | 'housingStore_J_K' | 'start_K' | 'time_s', number>>;
export const twoStoreFallingRelation: Relation<FlatRun> = {
  id: 'two-store-falling',
  title: 'Warming of two stores, heat falling with viscosity',
  formula: {
    latex: String.raw`C_1\frac{dT_1}{dt}=Q(T_1)-G\,(T_1-T_2),\quad C_2\frac{dT_2}{dt}=G\,(T_1-T_2)-K\,(T_2-T_a)`,
    plain: 'C1 dT1/dt = Q(T1) − G (T1 − T2), C2 dT2/dt = G (T1 − T2) − K (T2 − Ta)',
  },
  symbols: [
    ...endSymbols,
    input('oilStore_J_K', 'C1', 'store of the oil and gears', 'J/K'),
    input('housingStore_J_K', 'C2', 'store of the housing', 'J/K'),
    input('start_K', 'T0', 'temperature of both at the start', 'K'),
    input('time_s', 't', 'time', 's'),
    output('T1', 'temperature of the oil', 'K'),
  ],
  range: fallingInputs.range,
  source: 'derived',
  grade: 'VC',
  checks: (
    [
      [60, '28.253589'],
      [300, '38.996925'],
      [600, '47.477346'],
      [1800, '69.552832'],
      [3600, '84.271083'],
    ] as const
  ).map(([time_s, printed]) => ({
    source: script,
    seen: 'computed',
    inputs: { ...run, time_s },
    printed,
    unit: '°C',
  })),
  of({ ambient_K, coupling_W_K, shed_W_K, oilStore_J_K, housingStore_J_K, start_K, time_s, ...flat }) {
    const loss = lossOf(flat);
    const start = { oil_K: start_K, housing_K: start_K };
    const stores = { oilStore_J_K, housingStore_J_K, coupling_W_K, shed_W_K };
    return loss && (twoStoreFallingAt({ ...stores, loss, ambient_K, start, time_s })?.oil_K ?? null);
  },
};
