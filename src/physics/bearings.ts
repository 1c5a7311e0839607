import { input, output, type Relation } from './relation.ts';

/**
 * Friction of a tapered roller bearing by two ways that lie ± 50 % apart; preload decides in an axle, and only a measured
 * turning torque says it. Constants of the catalogue way are recalled.
 */
export type Bearing = {
  readonly bore_m: number;
  readonly outside_m: number;
  readonly radial_N: number;
  readonly axial_N: number;
  /** Axial factor Y of the bearing. */
  readonly axialFactor: number;
  readonly speed_rad_s: number;
  readonly nu_m2_s: number;
  /** Constants of its series. */
  readonly R1: number;
  readonly S1: number;
};

/** R1 and S1 of series of tapered roller bearings, recalled (R2 10.9, S2 2 but for 330: R2 11.3). */
export const taperedSeries: Readonly<Record<string, { readonly R1: number; readonly S1: number }>> = {
  '302': { R1: 1.76e-6, S1: 0.017 },
  '303': { R1: 1.69e-6, S1: 0.017 },
  '313': { R1: 1.84e-6, S1: 0.048 },
  '320 X': { R1: 2.38e-6, S1: 0.014 },
  '322': { R1: 2.27e-6, S1: 0.018 },
  '322 B': { R1: 2.38e-6, S1: 0.026 },
  '323': { R1: 2.38e-6, S1: 0.019 },
  '329': { R1: 2.31e-6, S1: 0.009 },
  '330': { R1: 2.71e-6, S1: 0.01 },
};

export interface BearingFriction {
  readonly G_rr: number;
  readonly G_sl: number;
  readonly heating: number;
  readonly starving: number;
  readonly mixing: number;
  readonly sliding: number;
  readonly rolling_Nm: number;
  readonly sliding_Nm: number;
}

const perNmm = 1e-3;
const rpm = 30 / Math.PI;
const script = 'computed by an independent script from recalled constants';
const [rollerTapered, starvingBath, boundary, full] = [6, 3e-8, 0.12, 0.002] as const;

/**
 * Rolling and sliding moments of the catalogue model for an oil bath that does not flood the bearing; null where a number is
 * not above 0.
 *
 *   M_rr = φ_ish·φ_rs·G_rr·(ν·n)^0.6,   M_sl = G_sl·μ_sl            mm, N, mm²/s, rpm; N·mm
 */
export function bearingFriction(of: Bearing): BearingFriction | null {
  const [d, D] = [of.bore_m * 1e3, of.outside_m * 1e3];
  const [n, nu] = [of.speed_rad_s * rpm, of.nu_m2_s * 1e6];
  if (!(d > 0 && D > d && n > 0 && nu > 0 && of.radial_N >= 0 && of.axial_N >= 0)) return null;
  const dm = (d + D) / 2;
  const load = (factor: number): number => of.radial_N + factor * of.axialFactor * of.axial_N;
  const G_rr = of.R1 * dm ** 2.38 * load(10.9) ** 0.31;
  const G_sl = of.S1 * dm ** 0.82 * load(2);
  const heating = 1 / (1 + 1.84e-9 * (n * dm) ** 1.28 * nu ** 0.64);
  const starving = Math.exp(-starvingBath * nu * n * (d + D) * Math.sqrt(rollerTapered / (2 * (D - d))));
  const mixing = Math.exp(-2.6e-8 * (n * nu) ** 1.4 * dm);
  const sliding = mixing * boundary + (1 - mixing) * full;
  return {
    ...{ G_rr, G_sl, heating, starving, mixing, sliding },
    rolling_Nm: heating * starving * G_rr * (nu * n) ** 0.6 * perNmm,
    sliding_Nm: G_sl * sliding * perNmm,
  };
}

const example: Bearing = {
  ...{ bore_m: 0.035, outside_m: 0.072, radial_N: 5000, axial_N: 3000, axialFactor: 1.6 },
  ...{ speed_rad_s: 2000 / rpm, nu_m2_s: 15e-6, ...taperedSeries['322']! },
};
const symbols = [
  input('bore_m', 'd', 'bore', 'mm'),
  input('outside_m', 'D', 'outside diameter', 'mm'),
  input('radial_N', 'Fr', 'radial load', 'N'),
  input('axial_N', 'Fa', 'axial load', 'N'),
  input('axialFactor', 'Y', 'axial factor', '1'),
  input('speed_rad_s', 'n', 'speed', 'rpm'),
  input('nu_m2_s', 'ν', 'kinematic viscosity', 'mm²/s'),
  input('R1', 'R1', 'constant of the series, rolling', '1'),
  input('S1', 'S1', 'constant of the series, sliding', '1'),
];

export const bearingRollingRelation: Relation<Bearing> = {
  id: 'bearing-rolling',
  title: 'Rolling moment of a tapered roller bearing, catalogue model (unverified)',
  formula: {
    latex: String.raw`M_{rr}=\varphi_{ish}\varphi_{rs}\,R_1d_m^{2.38}(F_r+R_2YF_a)^{0.31}(\nu n)^{0.6}`,
    plain: 'M_rr = φ_ish·φ_rs·R1·dm^2.38·(Fr + R2·Y·Fa)^0.31·(ν·n)^0.6, mm, N, mm²/s, rpm, N·mm',
  },
  symbols: [...symbols, output('M_rr', 'rolling moment', 'mN·m')],
  range: [],
  source: 'bearingCatalogue',
  grade: 'U',
  checks: [{ source: script, seen: 'computed', inputs: example, printed: '404.3287' }],
  of: (of) => bearingFriction(of)?.rolling_Nm ?? null,
};

export const bearingSlidingRelation: Relation<Bearing> = {
  id: 'bearing-sliding',
  title: 'Sliding moment of a tapered roller bearing, catalogue model (unverified)',
  formula: {
    latex: String.raw`M_{sl}=S_1d_m^{0.82}(F_r+S_2YF_a)\,\mu_{sl},\quad\mu_{sl}=\varphi_{bl}\mu_{bl}+(1-\varphi_{bl})\mu_{EHL}`,
    plain: 'M_sl = S1·dm^0.82·(Fr + S2·Y·Fa)·(φ_bl·0.12 + (1 − φ_bl)·0.002), N·mm',
  },
  symbols: [...symbols, output('M_sl', 'sliding moment', 'mN·m')],
  range: [],
  source: 'bearingCatalogue',
  grade: 'U',
  checks: [{ source: script, seen: 'computed', inputs: example, printed: '75.27074' }],
  of: (of) => bearingFriction(of)?.sliding_Nm ?? null,
};

type Quick = { readonly friction: number; readonly load_N: number; readonly bore_m: number };
export const bearingQuickRelation: Relation<Quick> = {
  id: 'bearing-quick',
  title: 'Moment of a rolling bearing, quick estimate',
  formula: { latex: String.raw`M=\tfrac12\mu Pd`, plain: 'M = ½·μ·P·d' },
  symbols: [
    input('friction', 'μ', 'friction: 0.0018 for tapered rollers', '1'),
    input('load_N', 'P', 'equivalent load', 'N'),
    input('bore_m', 'd', 'bore', 'mm'),
    output('M', 'moment', 'mN·m'),
  ],
  range: [],
  source: 'bearingCatalogue',
  grade: 'V1',
  checks: [
    {
      source: 'constant friction of tapered rollers, general catalogue of a bearing maker',
      seen: 'published',
      inputs: { friction: 0.0018, load_N: 10_000, bore_m: 0.04 },
      printed: '360.0',
    },
  ],
  of: ({ friction, load_N, bore_m }) =>
    friction >= 0 && load_N >= 0 && bore_m > 0 ? 0.5 * friction * load_N * bore_m : null,
};
