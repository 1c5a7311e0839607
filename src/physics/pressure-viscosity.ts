import { finiteOrNull, input, output, type Relation } from './relation.ts';

/** How far any of these is carried: two ways of measuring it disagree on one oil, and the estimates with both. */
export const alphaBand = 0.25;

/** A heavy machine oil: Stachowiak & Batchelor, Engineering Tribology, Table 2.3 (read). */
export const handbookAlphas: readonly {
  readonly oil_K: number;
  readonly viscosity_Pa_s: number;
  readonly alpha_1_Pa: number;
}[] = [
  { oil_K: 303.15, viscosity_Pa_s: 0.31, alpha_1_Pa: 34.6e-9 },
  { oil_K: 333.15, viscosity_Pa_s: 0.0442, alpha_1_Pa: 26.3e-9 },
  { oil_K: 373.15, viscosity_Pa_s: 0.0094, alpha_1_Pa: 19.5e-9 },
];

/**
 * Pressure–viscosity coefficient from the viscosity at no pressure.
 *
 *   α = (0.6 + 0.965 log10 η) 10⁻⁸,  η in mPa·s
 *
 * viscosity    [Pa·s]
 * returns      α [1/Pa], ± 25 %; null for 0.24 mPa·s and less, where none above 0 comes out
 * range        9.4 to 310 mPa·s, the handbook oil it was held against
 * source       wooster      check: 44.2 mPa·s gives 21.878325 1/GPa (computed by another program)
 */
export function alphaByViscosity_1_Pa({ viscosity_Pa_s }: { viscosity_Pa_s: number }): number | null {
  const alpha = finiteOrNull((0.6 + 0.965 * Math.log10(viscosity_Pa_s * 1e3)) * 1e-8);
  return alpha !== null && alpha > 0 ? alpha : null;
}

/** Factor s and exponent t of α = s ν^t 10⁻⁹, ν in mm²/s; recalled and not confirmed. */
const powerLaws = {
  mineral: { s: 9.904, t: 0.139 },
  pao: { s: 7.382, t: 0.1335 },
} as const;

/**
 * Pressure–viscosity coefficient by the base oil, unverified.
 *
 *   α = s ν^t 10⁻⁹,  mineral s 9.904, t 0.139;  PAO s 7.382, t 0.1335
 *
 * nu           [m²/s], as mm²/s in the formula
 * returns      α [1/Pa], ± 25 %; null for a viscosity that is not above 0
 * range        none stated
 * source       gold2001      check: 15 mm²/s gives 14.430697 and 10.596983 1/GPa (computed by another program)
 */
export const alphaByBase_1_Pa = (oil: { base: keyof typeof powerLaws; nu_m2_s: number }): number | null =>
  oil.nu_m2_s > 0 ? finiteOrNull(powerLaws[oil.base].s * (oil.nu_m2_s * 1e6) ** powerLaws[oil.base].t * 1e-9) : null;

const script = 'computed by an independent script';
const alpha = output('α', 'pressure–viscosity coefficient', '1/GPa');
const nu = input('nu_m2_s', 'ν', 'kinematic viscosity', 'm²/s');

export const alphaRelation: Relation<{ readonly viscosity_Pa_s: number }> = {
  id: 'pressure-viscosity',
  title: 'Pressure–viscosity coefficient from viscosity',
  formula: {
    latex: String.raw`\alpha=(0.6+0.965\,\log_{10}\eta)\cdot10^{-8}`,
    plain: 'α = (0.6 + 0.965 log10 η) 10⁻⁸ 1/Pa, η in mPa·s',
  },
  symbols: [input('viscosity_Pa_s', 'η', 'dynamic viscosity', 'Pa·s'), alpha],
  range: [{ symbol: 'η', from: 9.4e-3, to: 0.31, why: 'viscosities of the handbook oil it was held against' }],
  source: 'wooster',
  grade: 'VC',
  checks: [
    ...(
      [
        [44.2, '21.878325'],
        [9.4, '15.390684'],
        [12.3, '16.517584'],
      ] as const
    ).map(([viscosity_mPa_s, printed]) => ({
      source: script,
      seen: 'computed' as const,
      inputs: { viscosity_Pa_s: viscosity_mPa_s * 1e-3 },
      printed,
    })),
    ...handbookAlphas.map(({ viscosity_Pa_s, alpha_1_Pa }) => ({
      source: 'Stachowiak & Batchelor, Table 2.3, heavy machine oil',
      seen: 'published' as const,
      inputs: { viscosity_Pa_s },
      printed: (alpha_1_Pa * 1e9).toFixed(1),
      within: { relative: alphaBand, why: 'the coefficient is carried with ± 25 %; this one reads 13 to 21 % low' },
    })),
  ],
  of: (oil) => alphaByViscosity_1_Pa(oil),
};

export const alphaMineralRelation: Relation<{ readonly nu_m2_s: number }> = {
  id: 'pressure-viscosity-mineral',
  title: 'Pressure–viscosity coefficient of a mineral oil, unverified',
  formula: {
    latex: String.raw`\alpha=9.904\,\nu^{0.139}\cdot10^{-9}`,
    plain: 'α = 9.904 ν^0.139 · 10⁻⁹ 1/Pa, ν in mm²/s',
  },
  symbols: [nu, alpha],
  range: [],
  source: 'gold2001',
  grade: 'U',
  checks: [{ source: script, seen: 'computed', inputs: { nu_m2_s: 15e-6 }, printed: '14.430697' }],
  of: (oil) => alphaByBase_1_Pa({ ...oil, base: 'mineral' }),
};

export const alphaPaoRelation: Relation<{ readonly nu_m2_s: number }> = {
  id: 'pressure-viscosity-pao',
  title: 'Pressure–viscosity coefficient of a polyalphaolefin, unverified',
  formula: {
    latex: String.raw`\alpha=7.382\,\nu^{0.1335}\cdot10^{-9}`,
    plain: 'α = 7.382 ν^0.1335 · 10⁻⁹ 1/Pa, ν in mm²/s',
  },
  symbols: [nu, alpha],
  range: [],
  source: 'gold2001',
  grade: 'U',
  checks: [{ source: script, seen: 'computed', inputs: { nu_m2_s: 15e-6 }, printed: '10.596983' }],
  of: (oil) => alphaByBase_1_Pa({ ...oil, base: 'pao' }),
};
