import { finiteOrNull, input, output, type Relation } from './relation.ts';

/** A ratio of lives is carried within this factor both ways, inside one oil; hours are never given. */
export const lifeBandFactor = 1.5;

interface TwoTemps {
  readonly first_K: number;
  readonly second_K: number;
}

/**
 * How long an oil lasts at a second temperature against a first: oxidation doubles with every 10 K.
 *
 *   L2/L1 = 2^(−(T2 − T1)/10)
 *
 * temperatures [K], where the oil is hottest and not the sump if one knows it
 * returns      [1]; null below 0 K
 * range        from about 80 °C: below it something else ends an oil; while its antioxidant lasts, without water and metal in it
 * source       oxidationPer10K      check: from 90 to 120 °C an eighth
 */
export const lifeRatio = ({ first_K, second_K }: TwoTemps): number | null =>
  first_K > 0 && second_K > 0 ? finiteOrNull(2 ** (-(second_K - first_K) / 10)) : null;

/** The same with its factor of 1.5 both ways. */
export function lifeRatioBand(at: TwoTemps): { readonly low: number; readonly high: number } | null {
  const ratio = lifeRatio(at);
  return ratio === null ? null : { low: ratio / lifeBandFactor, high: ratio * lifeBandFactor };
}

/**
 * The same by an activation energy of 91 kJ/mol, unverified; the constant that would give hours is left out.
 *
 *   L2/L1 = 10^(4750 (1/T2 − 1/T1))
 *
 * temperatures [K]
 * returns      [1]; null below 0 K
 * range        as lifeRatio
 * source       oxidationLife      check: from 90 to 100 °C 0.446 (computed by another program)
 */
export const lifeRatioByActivation = ({ first_K, second_K }: TwoTemps): number | null =>
  first_K > 0 && second_K > 0 ? finiteOrNull(10 ** (4750 * (1 / second_K - 1 / first_K))) : null;

const symbols = [
  input('first_K', 'T1', 'first oil temperature', '°C'),
  input('second_K', 'T2', 'second oil temperature', '°C'),
  output('L2/L1', 'life at the second over life at the first', '1'),
];
const why = 'below about 80 °C other things than oxidation end an oil';
const range = [
  { symbol: 'T1', from: 353.15, to: null, why },
  { symbol: 'T2', from: 353.15, to: null, why },
];

export const lifeRatioRelation: Relation<Readonly<Record<keyof TwoTemps, number>>> = {
  id: 'oil-life-ratio',
  title: 'Life of an oil at one temperature against another',
  formula: {
    latex: String.raw`\frac{L_2}{L_1}=2^{-(T_2-T_1)/10}`,
    plain: 'L2/L1 = 2^(−(T2 − T1)/10 K), within a factor of 1.5',
  },
  symbols,
  range,
  source: 'oxidationPer10K',
  grade: 'V1',
  checks: [
    {
      source: 'turbine oils: oxidation doubles per 10 °C, so 30 K leave an eighth',
      seen: 'published',
      inputs: { first_K: 363.15, second_K: 393.15 },
      printed: '0.125',
    },
  ],
  of: (at) => lifeRatio(at),
};

export const lifeByActivationRelation: Relation<Readonly<Record<keyof TwoTemps, number>>> = {
  id: 'oil-life-ratio-activation',
  title: 'Life of an oil at one temperature against another, by activation energy, unverified',
  formula: {
    latex: String.raw`\frac{L_2}{L_1}=10^{4750\left(\frac{1}{T_2}-\frac{1}{T_1}\right)}`,
    plain: 'L2/L1 = 10^(4750 K (1/T2 − 1/T1)), within a factor of 1.5',
  },
  symbols,
  range,
  source: 'oxidationLife',
  grade: 'U',
  checks: [
    {
      source: 'computed by an independent script',
      seen: 'computed',
      inputs: { first_K: 363.15, second_K: 373.15 },
      printed: '0.446',
    },
  ],
  of: (at) => lifeRatioByActivation(at),
};
