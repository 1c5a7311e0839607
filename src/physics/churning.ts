import { input, output, type Check, type Relation } from './relation.ts';

/**
 * Churning of one gear in a bath, by a law with four regimes. For the form of a fit, its exponents and an envelope only:
 * four published laws span a factor of 17 at one hot point of a road axle, so none is shown as a loss of an axle.
 */
export type Churned = {
  readonly radius_m: number;
  readonly dip_m: number;
  readonly width_m: number;
  readonly module_m: number;
  readonly teeth: number;
  readonly toothHeight_m: number;
  readonly pressureAngle_rad: number;
  readonly helixAngle_rad: number;
  readonly volume_m3: number;
  readonly density_kg_m3: number;
  readonly speed_rad_s: number;
  readonly nu_m2_s: number;
};

export interface Churning {
  readonly Re: number;
  readonly Fr: number;
  /** Ω²·(R·b·m)^(1/3), m/s². */
  readonly gamma_m_s2: number;
  readonly coefficient: number;
  readonly torque_Nm: number;
  readonly power_W: number;
}

const g_m_s2 = 9.80665;
/** Where the two speed regimes end and begin, m/s², and where viscosity stops to matter. */
const [slowTo, fastFrom, turbulentFrom] = [750, 1250, 4000] as const;

/** Wetted surface of the gear: faces, rim and the flanks of the teeth in the bath, m². */
export function churnedSurface_m2(of: Churned): number {
  const half = Math.acos(1 - of.dip_m / of.radius_m);
  const faces = of.radius_m ** 2 * (2 * half - Math.sin(2 * half));
  const rim = 2 * of.radius_m * of.width_m * half;
  const flanks =
    (2 * of.teeth * half * of.toothHeight_m * of.width_m) /
    (Math.PI * Math.cos(of.pressureAngle_rad) * Math.cos(of.helixAngle_rad));
  return faces + rim + flanks;
}

/** Every number of the law; null where the gear does not dip, is under oil whole, stands still, or a length is not above 0. */
export function churning(of: Churned): Churning | null {
  const positive = [
    of.radius_m,
    of.dip_m,
    of.width_m,
    of.module_m,
    of.volume_m3,
    of.density_kg_m3,
    of.speed_rad_s,
    of.nu_m2_s,
  ];
  if (!positive.every((x) => x > 0 && Number.isFinite(x)) || of.dip_m > 2 * of.radius_m) return null;
  const { radius_m: R, width_m: b, speed_rad_s: omega } = of;
  const D = 2 * R;
  const Re = (omega * R * b) / of.nu_m2_s;
  const Fr = (omega ** 2 * R) / g_m_s2;
  const gamma_m_s2 = omega ** 2 * (R * b * of.module_m) ** (1 / 3);
  const viscous = Re < turbulentFrom ? Re ** -0.21 : null;
  const slow =
    (viscous === null ? 0.239 : 1.366 * viscous) *
    (of.dip_m / D) ** 0.45 * (of.volume_m3 / D ** 3) ** 0.1 * Fr ** -0.6 * (b / D) ** 0.21; // prettier-ignore
  const fast =
    (viscous === null ? 3.644 : 20.797 * viscous) *
    (of.dip_m / D) ** 0.1 * (of.volume_m3 / D ** 3) ** -0.35 * Fr ** -0.88 * (b / D) ** 0.85; // prettier-ignore
  const share = Math.min(1, Math.max(0, (gamma_m_s2 - slowTo) / (fastFrom - slowTo)));
  const coefficient = slow + share * (fast - slow);
  const torque_Nm = 0.5 * of.density_kg_m3 * omega ** 2 * R ** 3 * churnedSurface_m2(of) * coefficient;
  return Number.isFinite(torque_Nm) ? { Re, Fr, gamma_m_s2, coefficient, torque_Nm, power_W: torque_Nm * omega } : null;
}

/** Power over speed and viscosity, as the slow rows of the law have it: turbulent, and where viscosity still acts. */
export const churningExponents = { speed: { turbulent: 1.8, viscous: 1.59, fast: 1.24 }, viscosity: 0.21 } as const;

const symbols = [
  input('radius_m', 'R', 'pitch radius', 'mm'),
  input('dip_m', 'h', 'dip of the gear', 'mm'),
  input('width_m', 'b', 'face width', 'mm'),
  input('module_m', 'm', 'module', 'mm'),
  input('teeth', 'z', 'teeth', '1'),
  input('toothHeight_m', 'H', 'height of a tooth', 'mm'),
  input('pressureAngle_rad', 'αn', 'pressure angle', '°'),
  input('helixAngle_rad', 'β', 'spiral or helix angle', '°'),
  input('volume_m3', 'V0', 'oil in the housing', 'L'),
  input('density_kg_m3', 'ρ', 'density of the oil', 'kg/m³'),
  input('speed_rad_s', 'Ω', 'speed of the gear', 'rad/s'),
  input('nu_m2_s', 'ν', 'kinematic viscosity', 'mm²/s'),
];
const range: Relation['range'] = [
  { symbol: 'R', from: 0.045, to: 0.08, why: 'measured on single gears of 90 to 160 mm' },
  { symbol: 'b', from: 0.014, to: 0.024, why: 'measured on widths of 14 to 24 mm' },
  { symbol: 'm', from: 0.0015, to: 0.005, why: 'measured on modules of 1.5 to 5 mm' },
  { symbol: 'ν', from: 33e-6, to: 320e-6, why: 'measured between 33 and 320 mm²/s' },
];
const axle = {
  ...{ radius_m: 0.111, dip_m: 0.045, width_m: 0.035, module_m: 0.0054, teeth: 41, toothHeight_m: 0.0108 },
  ...{ pressureAngle_rad: (20 * Math.PI) / 180, helixAngle_rad: (30 * Math.PI) / 180 },
  ...{ volume_m3: 0.002, density_kg_m3: 820 },
};
const roadSpeed = 74.6714456392;
const checked = (inputs: Churned, printed: string, what: string): Check<Churned> => ({
  source: `${what}, by an independent script; the coefficients were read in an open implementation`,
  seen: 'computed',
  inputs,
  printed,
});

export const churningTorqueRelation: Relation<Churned> = {
  id: 'churning-torque',
  title: 'Churning torque of one gear, four regimes',
  formula: {
    latex: String.raw`T=\tfrac12\rho\Omega^2R^3S_mC_m,\quad C_m=c\left(\frac hD\right)^{p}\left(\frac{V_0}{D^3}\right)^{q}Fr^{r}Re_c^{s}\left(\frac bD\right)^{t}`,
    plain:
      'T = ½ρΩ²R³·Sm·Cm; slow: 1.366 or 0.239, 0.45, 0.1, −0.6, −0.21 or 0, 0.21; fast: 20.797 or 3.644, 0.1, −0.35, −0.88, −0.21 or 0, 0.85',
  },
  symbols: [...symbols, output('T', 'churning torque', 'N·m')],
  range,
  source: 'changenet2011',
  grade: 'V1',
  checks: [
    checked({ ...axle, speed_rad_s: roadSpeed, nu_m2_s: 15e-6 }, '0.5172103', 'slow, hot oil'),
    checked({ ...axle, speed_rad_s: roadSpeed, nu_m2_s: 150e-6 }, '0.6033434', 'slow, cold oil'),
    checked({ ...axle, speed_rad_s: 230, nu_m2_s: 15e-6 }, '3.7266951', 'fast, hot oil'),
  ],
  of: (of) => churning(of)?.torque_Nm ?? null,
};

export const churningPowerRelation: Relation<Churned> = {
  ...churningTorqueRelation,
  id: 'churning-power',
  title: 'Churning power of one gear, four regimes',
  formula: { latex: String.raw`P=T\,\Omega`, plain: 'P = T·Ω' },
  symbols: [...symbols, output('P', 'churning power', 'W')],
  checks: [
    checked({ ...axle, speed_rad_s: roadSpeed, nu_m2_s: 15e-6 }, '38.62084', 'slow, hot oil'),
    checked({ ...axle, speed_rad_s: roadSpeed, nu_m2_s: 150e-6 }, '45.05252', 'slow, cold oil'),
    checked({ ...axle, speed_rad_s: 230, nu_m2_s: 15e-6 }, '857.1399', 'fast, hot oil'),
  ],
  of: (of) => churning(of)?.power_W ?? null,
};
