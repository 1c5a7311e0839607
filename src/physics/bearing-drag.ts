import { finiteOrNull, input, output, type Relation } from './relation.ts';

/** What the oil itself costs a bearing: drag in a bath, and the classical two-branch law. Constants recalled. */

const perNmm = 1e-3;
const rpm = 30 / Math.PI;
const script = 'computed by an independent script from recalled constants';

export type Drag = {
  readonly bore_m: number;
  readonly outside_m: number;
  readonly width_m: number;
  readonly oilHeight_m: number;
  /** Read from the chart of the catalogue at oil height over mean diameter. */
  readonly chartFactor: number;
  readonly speed_rad_s: number;
  readonly nu_m2_s: number;
};

export interface DragParts {
  readonly K_roll: number;
  readonly C_w: number;
  readonly angle_rad: number;
  readonly R_s: number;
  readonly drag_Nm: number;
}

/** Drag of the rollers of a tapered roller bearing in a bath; null where a number is not above 0. */
export function bearingDrag(of: Drag): DragParts | null {
  const [d, D, B, H] = [of.bore_m, of.outside_m, of.width_m, of.oilHeight_m].map((x) => x * 1e3) as [
    number,
    number,
    number,
    number,
  ];
  const [n, nu] = [of.speed_rad_s * rpm, of.nu_m2_s * 1e6];
  if (!(d > 0 && D > d && B > 0 && n > 0 && nu > 0) || !(H >= 0 && H <= 1.2 * ((d + D) / 2))) return null;
  const dm = (d + D) / 2;
  const [K_L, K_Z] = [0.7, 6];
  const K_roll = ((K_L * K_Z * (d + D)) / (D - d)) * 1e-12;
  const l = (5 * K_L * B) / dm;
  const C_w = 2.789e-10 * l ** 3 - 2.786e-4 * l ** 2 + 0.0195 * l + 0.6439;
  const angle_rad = 2 * Math.acos((0.6 * dm - H) / (0.6 * dm));
  const f_t = angle_rad >= Math.PI ? 1 : Math.sin(angle_rad / 2);
  const f_A = (0.05 * K_Z * (D + d)) / (D - d);
  const R_s = 0.36 * dm ** 2 * (angle_rad - Math.sin(angle_rad)) * f_A;
  const bath = f_t === 0 ? 0 : 1.093e-7 * n ** 2 * dm ** 3 * ((n * dm ** 2 * f_t) / nu) ** -1.379 * R_s;
  const drag = 4 * of.chartFactor * K_roll * C_w * B * dm ** 4 * n ** 2 + bath;
  return Number.isFinite(drag) ? { K_roll, C_w, angle_rad, R_s, drag_Nm: drag * perNmm } : null;
}

export const bearingDragRelation: Relation<Drag> = {
  id: 'bearing-drag',
  title: 'Drag of a tapered roller bearing in a bath, catalogue model (unverified)',
  formula: {
    latex: String.raw`M_d=4V_MK_{roll}C_wBd_m^4n^2+1.093\cdot10^{-7}n^2d_m^3\left(\frac{nd_m^2f_t}{\nu}\right)^{-1.379}R_s`,
    plain: 'M_d = 4·V_M·K_roll·C_w·B·dm⁴·n² + 1.093e−7·n²·dm³·(n·dm²·f_t/ν)^−1.379·R_s, mm, rpm, mm²/s, N·mm',
  },
  symbols: [
    input('bore_m', 'd', 'bore', 'mm'),
    input('outside_m', 'D', 'outside diameter', 'mm'),
    input('width_m', 'B', 'width', 'mm'),
    input('oilHeight_m', 'H', 'height of the oil over the lowest roller', 'mm'),
    input('chartFactor', 'V_M', 'factor of the chart', '1'),
    input('speed_rad_s', 'n', 'speed', 'rpm'),
    input('nu_m2_s', 'ν', 'kinematic viscosity', 'mm²/s'),
    output('M_d', 'drag', 'mN·m'),
  ],
  range: [],
  source: 'bearingCatalogue',
  grade: 'U',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: {
        ...{ bore_m: 0.035, outside_m: 0.072, width_m: 0.02425, oilHeight_m: 0.02, chartFactor: 2e-4 },
        ...{ speed_rad_s: 2000 / rpm, nu_m2_s: 15e-6 },
      },
      printed: '7.437203',
    },
  ],
  of: (of) => bearingDrag(of)?.drag_Nm ?? null,
};

type Classical = {
  readonly f0: number;
  readonly meanDiameter_m: number;
  readonly speed_rad_s: number;
  readonly nu_m2_s: number;
};
export const bearingViscousRelation: Relation<Classical> = {
  id: 'bearing-viscous',
  title: 'Moment of a bearing without load, classical',
  formula: {
    latex: String.raw`M_0=10^{-7}f_0(\nu n)^{2/3}d_m^3\ (\nu n\ge2000),\quad160\cdot10^{-7}f_0d_m^3`,
    plain: 'M0 = 1e−7·f0·(ν·n)^(2/3)·dm³ from ν·n = 2000, else 160e−7·f0·dm³; mm, mm²/s, rpm, N·mm',
  },
  symbols: [
    input('f0', 'f0', 'factor: 3 to 4 for tapered rollers in a bath', '1'),
    input('meanDiameter_m', 'dm', 'mean of bore and outside', 'mm'),
    input('speed_rad_s', 'n', 'speed', 'rpm'),
    input('nu_m2_s', 'ν', 'kinematic viscosity', 'mm²/s'),
    output('M0', 'moment without load', 'mN·m'),
  ],
  range: [],
  source: 'palmgren',
  grade: 'VC',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { f0: 4, meanDiameter_m: 0.0535, speed_rad_s: 2000 / rpm, nu_m2_s: 15e-6 },
      printed: '59.138301',
    },
    {
      source: `slow branch, ${script}`,
      seen: 'computed',
      inputs: { f0: 4, meanDiameter_m: 0.0535, speed_rad_s: 100 / rpm, nu_m2_s: 15e-6 },
      printed: '9.800344',
    },
  ],
  of: ({ f0, meanDiameter_m, speed_rad_s, nu_m2_s }) => {
    if (!(f0 > 0 && meanDiameter_m > 0 && speed_rad_s >= 0 && nu_m2_s > 0)) return null;
    const product = nu_m2_s * 1e6 * speed_rad_s * rpm;
    const dm3 = (meanDiameter_m * 1e3) ** 3;
    return finiteOrNull((product >= 2000 ? 1e-7 * product ** (2 / 3) : 160e-7) * f0 * dm3 * perNmm);
  },
};

type Loaded = { readonly f1: number; readonly load_N: number; readonly meanDiameter_m: number };
export const bearingLoadRelation: Relation<Loaded> = {
  id: 'bearing-load',
  title: 'Moment of a bearing from its load, classical',
  formula: { latex: String.raw`M_1=f_1P_1d_m`, plain: 'M1 = f1·P1·dm' },
  symbols: [
    input('f1', 'f1', 'factor: 0.0004 for tapered rollers', '1'),
    input('load_N', 'P1', 'load that counts: 2·Y·Fa for tapered rollers', 'N'),
    input('meanDiameter_m', 'dm', 'mean of bore and outside', 'mm'),
    output('M1', 'moment from the load', 'mN·m'),
  ],
  range: [],
  source: 'palmgren',
  grade: 'VC',
  checks: [
    { source: script, seen: 'computed', inputs: { f1: 4e-4, load_N: 9600, meanDiameter_m: 0.0535 }, printed: '205.44' },
  ],
  of: ({ f1, load_N, meanDiameter_m }) =>
    f1 >= 0 && load_N >= 0 && meanDiameter_m > 0 ? finiteOrNull(f1 * load_N * meanDiameter_m) : null,
};
