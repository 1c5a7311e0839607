import { input, output, type Relation } from './relation.ts';

/** How viscosity rises with pressure. Carry ± 25 %; in a ratio of one oil to itself it nearly cancels. */

const script = 'computed by an independent script from the recalled constants';
const alpha = output('α', 'pressure–viscosity coefficient', '1/GPa');

export const woosterRelation: Relation<{ readonly viscosity_Pa_s: number }> = {
  id: 'pressure-viscosity',
  title: 'Pressure–viscosity coefficient from viscosity',
  formula: {
    latex: String.raw`\alpha=(0.6+0.965\,\log_{10}\eta)\cdot10^{-8}\ \mathrm{Pa}^{-1}`,
    plain: 'α = (0.6 + 0.965 log10 η)·10⁻⁸ 1/Pa, η in mPa·s',
  },
  symbols: [input('viscosity_Pa_s', 'η', 'dynamic viscosity', 'mPa·s'), alpha],
  range: [
    {
      symbol: 'η',
      from: 1e-3,
      to: 10,
      why: 'recalled for mineral oils between 1 mPa·s and 10 Pa·s; ± 25 % even there',
    },
  ],
  source: 'wooster',
  grade: 'VC',
  checks: [
    { source: script, seen: 'computed', inputs: { viscosity_Pa_s: 0.0442 }, printed: '21.878325' },
    { source: script, seen: 'computed', inputs: { viscosity_Pa_s: 0.0094 }, printed: '15.390684' },
    { source: script, seen: 'computed', inputs: { viscosity_Pa_s: 0.0123 }, printed: '16.517584' },
    ...(
      [
        [0.0442, '26.3'],
        [0.0094, '19.5'],
      ] as const
    ).map(([viscosity_Pa_s, printed]) => ({
      source: 'heavy machine oil: Stachowiak and Batchelor, Engineering Tribology, Table 2.3',
      seen: 'published' as const,
      inputs: { viscosity_Pa_s },
      printed,
      within: { relative: 0.25, why: 'the two lie 17 and 21 % apart; hence ± 25 %' },
    })),
  ],
  of: ({ viscosity_Pa_s }) => {
    const alpha_1_Pa = (0.6 + 0.965 * Math.log10(viscosity_Pa_s * 1e3)) * 1e-8;
    return alpha_1_Pa > 0 && Number.isFinite(alpha_1_Pa) ? alpha_1_Pa : null;
  },
};

/** Constants of the power law for two kinds of base oil, recalled. */
export const goldConstants = { mineral: { s: 9.904, t: 0.139 }, polyalphaolefin: { s: 7.382, t: 0.1335 } } as const;

export const goldRelation: Relation<{ readonly nu_m2_s: number; readonly s: number; readonly t: number }> = {
  id: 'pressure-viscosity-power',
  title: 'Pressure–viscosity coefficient, second estimate (unverified)',
  formula: {
    latex: String.raw`\alpha=s\,\nu^{t}\cdot10^{-9}\ \mathrm{Pa}^{-1}`,
    plain: 'α = s·ν^t·10⁻⁹ 1/Pa, ν in mm²/s',
  },
  symbols: [
    input('nu_m2_s', 'ν', 'kinematic viscosity', 'mm²/s'),
    input('s', 's', 'constant of the base oil: mineral 9.904', '1'),
    input('t', 't', 'exponent of the base oil: mineral 0.139', '1'),
    alpha,
  ],
  range: [],
  source: 'gold2001',
  grade: 'U',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { nu_m2_s: 15e-6, ...goldConstants.mineral },
      printed: '14.430697',
    },
    {
      source: script,
      seen: 'computed',
      inputs: { nu_m2_s: 15e-6, ...goldConstants.polyalphaolefin },
      printed: '10.596983',
    },
  ],
  of: ({ nu_m2_s, s, t }) => (nu_m2_s > 0 && s > 0 ? finite(s * (nu_m2_s * 1e6) ** t * 1e-9) : null),
};

const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);
