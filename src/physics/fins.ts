import { besselI, besselK } from './bessel.ts';
import { input, output, type Relation } from './relation.ts';

/** Fins on a cover. Their efficiency is never the question on a cast cover; their direction, gaps and dirt are. */

const finite = (x: number): number | null => (Number.isFinite(x) && x >= 0 ? x : null);
const script = 'computed by an independent script';
const h = input('transfer_W_m2K', 'h', 'heat-transfer coefficient', 'W/(m²·K)');
const k = input('conductivity_W_mK', 'k', 'thermal conductivity of the metal', 'W/(m·K)');
const thick = input('thickness_m', 't', 'thickness of a fin', 'mm');
const efficiency = output('ηf', 'efficiency of the fin', '1');

type Straight = {
  readonly transfer_W_m2K: number;
  readonly conductivity_W_mK: number;
  readonly thickness_m: number;
  readonly height_m: number;
};
export const straightFinRelation: Relation<Straight> = {
  id: 'fin-straight',
  title: 'Efficiency of a straight fin',
  formula: {
    latex: String.raw`\eta_f=\frac{\tanh(mL_c)}{mL_c},\quad m=\sqrt{\frac{2h}{kt}},\ L_c=L+\frac t2`,
    plain: 'ηf = tanh(m·Lc)/(m·Lc), m = √(2h/(k·t)), Lc = L + t/2',
  },
  symbols: [h, k, thick, input('height_m', 'L', 'height of the fin', 'mm'), efficiency],
  range: [],
  source: 'incroperaConvection',
  grade: 'VC',
  checks: [
    {
      source: 'cast fins of 20 × 4 mm, by an independent script',
      seen: 'computed',
      inputs: { transfer_W_m2K: 25, conductivity_W_mK: 160, thickness_m: 0.004, height_m: 0.02 },
      printed: '0.9875836',
    },
    {
      source: 'circulated solution of a vertical heat sink',
      seen: 'published',
      inputs: { transfer_W_m2K: 4.83, conductivity_W_mK: 240, thickness_m: 0.001, height_m: 0.024 },
      printed: '0.992',
    },
  ],
  of: (f) => {
    const x =
      Math.sqrt((2 * f.transfer_W_m2K) / (f.conductivity_W_mK * f.thickness_m)) * (f.height_m + f.thickness_m / 2);
    if (!(f.transfer_W_m2K >= 0 && f.conductivity_W_mK > 0 && f.thickness_m > 0 && f.height_m >= 0)) return null;
    return x === 0 ? 1 : finite(Math.tanh(x) / x);
  },
};

type Ring = {
  readonly transfer_W_m2K: number;
  readonly conductivity_W_mK: number;
  readonly thickness_m: number;
  readonly inner_m: number;
  readonly outer_m: number;
};
/** Exact, with the tip as half a thickness more; a reading off a chart can be three points lower. */
export const annularFinRelation: Relation<Ring> = {
  id: 'fin-annular',
  title: 'Efficiency of a fin round a cylinder',
  formula: {
    latex: String.raw`\eta_f=\frac{2r_1}{m(r_{2c}^2-r_1^2)}\,\frac{K_1(mr_1)I_1(mr_{2c})-I_1(mr_1)K_1(mr_{2c})}{I_0(mr_1)K_1(mr_{2c})+K_0(mr_1)I_1(mr_{2c})}`,
    plain:
      'ηf = 2 r1/(m(r2c² − r1²))·[K1(m r1) I1(m r2c) − I1(m r1) K1(m r2c)]/[I0(m r1) K1(m r2c) + K0(m r1) I1(m r2c)], r2c = r2 + t/2',
  },
  symbols: [
    ...[h, k, thick, input('inner_m', 'r1', 'radius at the root', 'mm')],
    ...[input('outer_m', 'r2', 'radius at the tip', 'mm'), efficiency],
  ],
  range: [],
  source: 'incroperaConvection',
  grade: 'VC',
  checks: [
    {
      source: `finned cylinder of Incropera and DeWitt, Example 3.10, exact, ${script}`,
      seen: 'computed',
      inputs: { transfer_W_m2K: 50, conductivity_W_mK: 186, thickness_m: 0.006, inner_m: 0.025, outer_m: 0.045 },
      printed: '0.9785522',
    },
  ],
  of: (f) => {
    if (!(
      f.transfer_W_m2K > 0 &&
      f.conductivity_W_mK > 0 &&
      f.thickness_m > 0 &&
      f.inner_m > 0 &&
      f.outer_m > f.inner_m
    ))
      return null;
    const m = Math.sqrt((2 * f.transfer_W_m2K) / (f.conductivity_W_mK * f.thickness_m));
    const [r1, r2] = [f.inner_m, f.outer_m + f.thickness_m / 2];
    const [a, b] = [m * r1, m * r2];
    if (b > 100) return null;
    const above = besselK(1, a) * besselI(1, b) - besselI(1, a) * besselK(1, b);
    const below = besselI(0, a) * besselK(1, b) + besselK(0, a) * besselI(1, b);
    return finite(((2 * r1) / (m * (r2 ** 2 - r1 ** 2))) * (above / below));
  },
};

type Array_ = {
  readonly transfer_W_m2K: number;
  readonly fins_m2: number;
  readonly base_m2: number;
  readonly finEfficiency: number;
};
export const finnedConductanceRelation: Relation<Array_> = {
  id: 'fin-array',
  title: 'What a finned surface sheds for a kelvin',
  formula: {
    latex: String.raw`hA=h\,(A_t-N\!A_f(1-\eta_f)),\quad A_t=N\!A_f+A_b`,
    plain: 'hA = h·(At − N·Af·(1 − ηf)), At = N·Af + Ab',
  },
  symbols: [
    h,
    input('fins_m2', 'N·Af', 'surface of all fins', 'm²'),
    input('base_m2', 'Ab', 'surface between them', 'm²'),
    input('finEfficiency', 'ηf', 'efficiency of a fin', '1'),
    output('hA', 'shed', 'W/K'),
  ],
  range: [{ symbol: 'ηf', from: 0, to: 1, why: 'an efficiency' }],
  source: 'incroperaConvection',
  grade: 'VC',
  checks: [
    {
      source: `cast cover with eight fins, ${script}`,
      seen: 'computed',
      inputs: {
        ...{ transfer_W_m2K: 25, fins_m2: 8 * 2 * 0.022 * 0.18, base_m2: 0.2 * 0.18 - 8 * 0.004 * 0.18 },
        finEfficiency: 0.9875836,
      },
      printed: '2.320332',
    },
    {
      source: 'finned cylinder: Incropera and DeWitt, Example 3.10, 690 W over 200 K with the chart’s 0.95',
      seen: 'memory',
      inputs: { transfer_W_m2K: 50, fins_m2: 5 * 0.0105, base_m2: 0.0716 - 5 * 0.0105, finEfficiency: 0.95 },
      printed: '3.45',
    },
    {
      source: `the same, exact, 704.656 W over 200 K, ${script}`,
      seen: 'computed',
      inputs: {
        ...{ transfer_W_m2K: 50, fins_m2: 5 * 2 * Math.PI * (0.048 ** 2 - 0.025 ** 2) },
        ...{ base_m2: 2 * Math.PI * 0.025 * (0.15 - 5 * 0.006), finEfficiency: 0.9785522 },
      },
      printed: '3.5232791',
    },
  ],
  of: ({ transfer_W_m2K, fins_m2, base_m2, finEfficiency }) =>
    transfer_W_m2K >= 0 && fins_m2 >= 0 && base_m2 >= 0
      ? finite(transfer_W_m2K * (base_m2 + fins_m2 * finEfficiency))
      : null,
};

export const finSpacingRelation: Relation<{ readonly height_m: number; readonly Ra: number }> = {
  id: 'fin-spacing',
  title: 'Gap between upright fins that free air likes most',
  formula: { latex: String.raw`S=\frac{2.714\,L}{Ra_L^{1/4}}`, plain: 'S = 2.714·L/Ra^¼' },
  symbols: [
    input('height_m', 'L', 'height of the fins along the air', 'm'),
    input('Ra', 'Ra', 'Rayleigh number of that height', '1'),
    output('S', 'gap', 'mm'),
  ],
  range: [],
  source: 'barCohenRohsenow1984',
  grade: 'V1',
  checks: [
    {
      source: 'circulated solution of a vertical heat sink',
      seen: 'published',
      inputs: { height_m: 0.18, Ra: 1.8e7 },
      printed: '7.5',
    },
  ],
  of: ({ height_m, Ra }) => (Ra > 0 && height_m > 0 ? finite((2.714 * height_m) / Ra ** 0.25) : null),
};
