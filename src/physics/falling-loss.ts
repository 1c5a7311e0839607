import { allAbove0, answer } from './answer.ts';
import { input, output, type Relation } from './relation.ts';
import { logLogLine, viscosityAt_m2_s, viscositySlope_1_K, type LogLogLine } from './viscosity.ts';

/** Heat made in an oil: a part that stands, and a part that falls with viscosity. */
export interface FallingLoss {
  readonly line: LogLogLine;
  readonly standing_W: number;
  /** At the viscosity that the exponent is counted from. */
  readonly viscous_W: number;
  readonly reference_m2_s: number;
  readonly exponent: number;
}

export interface FallingStore {
  readonly loss: FallingLoss;
  readonly ambient_K: number;
  readonly shed_W_K: number;
}

/**
 * Heat made at an oil temperature, where part of the loss falls with viscosity.
 *
 *   Q = Q_l + Q_v (ν/ν0)^e
 *
 * oil          [K], heats [W], reference viscosity ν0 [m²/s], exponent e [1]
 * returns      Q [W]; null where the oil has no viscosity, for heats or an exponent below 0 and for no reference
 * range        that of the viscosity; e from 0 to 0.6 (common practice, no source)
 * source       derived      check: 600 and 150 W at 100 mm²/s, e ½, 83.06802026 °C: 671.748 W (computed by another program)
 */
export function fallingLoss_W(at: FallingLoss & { readonly oil_K: number }): number | null {
  const { standing_W, viscous_W, reference_m2_s, exponent } = at;
  const nu_m2_s = viscosityAt_m2_s(at);
  const sound = standing_W >= 0 && viscous_W >= 0 && exponent >= 0 && allAbove0(reference_m2_s);
  // below what the log-log line holds there is no viscosity to raise to a power
  if (!sound || nu_m2_s === null || !(nu_m2_s > 0)) return null;
  return answer(standing_W + viscous_W * (nu_m2_s / reference_m2_s) ** exponent);
}

/** How fast that heat falls as the oil warms, −dQ/dT = −e Q_v (ν/ν0)^e d ln ν/dT [W/K]; null as fallingLoss_W. */
export function fallingLossSlope_W_K(at: FallingLoss & { readonly oil_K: number }): number | null {
  const viscous_W = fallingLoss_W({ ...at, standing_W: 0 });
  const slope_1_K = viscositySlope_1_K(at);
  return viscous_W === null || slope_1_K === null ? null : answer(-at.exponent * viscous_W * slope_1_K);
}

/**
 * Where one store ends whose heat falls as it warms: the only temperature at which heat made is heat shed.
 *
 *   Q(T) = K (T − Ta)
 *
 * as fallingLoss_W, ambient [K], shed [W/K]
 * returns      T [K]; null for a shed that is not above 0 and where the oil of the ambient has no loss
 * range        as fallingLoss_W
 * source       derived      check: the same with 11 W/K in 22 °C: 83.06802026 °C (computed by another program)
 */
export function fallingFinal_K(of: FallingStore): number | null {
  const { ambient_K, shed_W_K, loss } = of;
  const atAmbient_W = fallingLoss_W({ ...loss, oil_K: ambient_K });
  if (atAmbient_W === null || !allAbove0(shed_W_K, ambient_K)) return null;
  // Heat is most at ambient, so the end is not above what that heat would lead to.
  let low_K = ambient_K;
  let high_K = ambient_K + atAmbient_W / shed_W_K;
  for (let halving = 0; halving < 200 && high_K > low_K; halving++) {
    const middle_K = low_K + (high_K - low_K) / 2;
    if (middle_K === low_K || middle_K === high_K) break;
    const made_W = fallingLoss_W({ ...loss, oil_K: middle_K });
    if (made_W === null) return null;
    if (made_W > shed_W_K * (middle_K - ambient_K)) low_K = middle_K;
    else high_K = middle_K;
  }
  return answer(low_K + (high_K - low_K) / 2);
}

const script = 'computed by an independent script';
const referenceOil = { nu40_m2_s: 102e-6, nu100_m2_s: 15e-6 };

/** What a loss that falls is given by, flat, as a relation takes it. */
export type FlatLoss = Readonly<Record<'nu40_m2_s' | 'nu100_m2_s' | Exclude<keyof FallingLoss, 'line'>, number>>;

/** The loss of flat inputs; null where the two viscosities make no line. */
export function lossOf(of: FlatLoss): FallingLoss | null {
  const line = logLogLine(of);
  return line && { ...of, line };
}

export const fallingInputs = {
  loss: [
    input('nu40_m2_s', 'ν40', 'kinematic viscosity at 40 °C', 'm²/s'),
    input('nu100_m2_s', 'ν100', 'kinematic viscosity at 100 °C', 'm²/s'),
    input('standing_W', 'Ql', 'heat that stands as the oil warms', 'W'),
    input('viscous_W', 'Qv', 'heat that falls with viscosity, at the reference', 'W'),
    input('reference_m2_s', 'ν0', 'reference viscosity', 'm²/s'),
    input('exponent', 'e', 'exponent of viscosity', '1'),
  ],
  ambient: input('ambient_K', 'Ta', 'air at the axle', 'K'),
  shed: input('shed_W_K', 'K', 'shed', 'W/K'),
  range: [{ symbol: 'e', from: 0, to: 0.6, why: 'exponents from 0 to 0.6 are common practice' }],
  sample: { ...referenceOil, standing_W: 600, viscous_W: 150, reference_m2_s: 100e-6, exponent: 0.5 },
} as const;
const { sample } = fallingInputs;

export const fallingLossRelation: Relation<FlatLoss & { readonly oil_K: number }> = {
  id: 'falling-loss',
  title: 'Heat made, part of it falling with viscosity',
  formula: {
    latex: String.raw`Q=Q_l+Q_v\left(\frac{\nu(T)}{\nu_0}\right)^e`,
    plain: 'Q = Ql + Qv (ν(T)/ν0)^e, ν from 40 °C and 100 °C',
  },
  symbols: [...fallingInputs.loss, input('oil_K', 'T', 'oil temperature', 'K'), output('Q', 'heat made', 'W')],
  range: [
    ...fallingInputs.range,
    { symbol: 'T', from: 273.15, to: 473.15, why: 'the line of viscosity is used from 0 °C to 200 °C' },
  ],
  source: 'derived',
  grade: 'VC',
  checks: [
    {
      source: `where the run below rests, ${script}`,
      seen: 'computed',
      inputs: { ...sample, oil_K: 273.15 + 83.06802026 },
      printed: '671.748',
    },
  ],
  of({ oil_K, ...flat }) {
    const loss = lossOf(flat);
    return loss && fallingLoss_W({ ...loss, oil_K });
  },
};

export const fallingFinalRelation: Relation<FlatLoss & { readonly ambient_K: number; readonly shed_W_K: number }> = {
  id: 'falling-final',
  title: 'Final temperature, one store, heat falling with viscosity',
  formula: {
    latex: String.raw`Q_l+Q_v\left(\frac{\nu(T_\infty)}{\nu_0}\right)^e=K\,(T_\infty-T_a)`,
    plain: 'Ql + Qv (ν(T∞)/ν0)^e = K (T∞ − Ta)',
  },
  symbols: [...fallingInputs.loss, fallingInputs.ambient, fallingInputs.shed, output('T∞', 'final temperature', 'K')],
  range: fallingInputs.range,
  source: 'derived',
  grade: 'VC',
  checks: [
    {
      source: `22 °C, 11 W/K, 25 digits, ${script}`,
      seen: 'computed',
      inputs: { ...sample, ambient_K: 295.15, shed_W_K: 11 },
      printed: '83.06802026',
      unit: '°C',
    },
  ],
  of({ ambient_K, shed_W_K, ...flat }) {
    const loss = lossOf(flat);
    return loss && fallingFinal_K({ loss, ambient_K, shed_W_K });
  },
};
