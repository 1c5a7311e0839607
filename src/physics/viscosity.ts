import { input, output, type Relation } from './relation.ts';

/** log10 log10(ν/(mm²/s) + 0.7) = A − B log10(T/K) */
export interface LogLogLine {
  readonly A: number;
  readonly B: number;
}

const mm2_s = 1e-6;
const at40_K = 313.15;
const at100_K = 373.15;

/**
 * The straight line of an oil through its two data-sheet viscosities, at 40 °C and 100 °C.
 *
 *   W(ν) = log10 log10(ν + 0.7),  B = [W(ν40) − W(ν100)] / [log10 373.15 − log10 313.15],  A = W(ν40) + B log10 313.15
 *
 * nu40, nu100  [m²/s], as mm²/s in the formula
 * returns      A, B [1]; null when a viscosity is not above 0.3 mm²/s or does not fall with temperature
 * range        ν > 2 mm²/s
 * source       astmD341, simple form      check: circulated worksheet, 32 and 5.4 mm²/s give 8.5 mm²/s at 80 °C
 */
export const logLogLine = (oil: { nu40_m2_s: number; nu100_m2_s: number }): LogLogLine | null =>
  logLogLineThrough({ oil_K: at40_K, nu_m2_s: oil.nu40_m2_s }, { oil_K: at100_K, nu_m2_s: oil.nu100_m2_s });

/** The same line through any two measured points, the cooler one first. */
export function logLogLineThrough(
  cool: { oil_K: number; nu_m2_s: number },
  warm: { oil_K: number; nu_m2_s: number },
): LogLogLine | null {
  const B = (doubleLog(cool.nu_m2_s) - doubleLog(warm.nu_m2_s)) / (Math.log10(warm.oil_K) - Math.log10(cool.oil_K));
  const A = doubleLog(cool.nu_m2_s) + B * Math.log10(cool.oil_K);
  return Number.isFinite(A) && Number.isFinite(B) && B > 0 ? { A, B } : null;
}

/**
 * Kinematic viscosity on the line at a temperature.
 *
 *   ν = 10^(10^(A − B log10 T)) − 0.7
 *
 * oil          [K]
 * returns      ν [m²/s]; null where the line runs beyond any number (near 0 K) or the temperature is no temperature
 * range        0 °C to 200 °C, ν > 2 mm²/s: below 0 °C a multigrade leaves the line
 * source       astmD341, simple form      check: as logLogLine
 */
export function viscosityAt_m2_s(at: { line: LogLogLine; oil_K: number }): number | null {
  const nu = 10 ** (10 ** (at.line.A - at.line.B * Math.log10(at.oil_K))) - 0.7;
  return Number.isFinite(nu) && at.oil_K > 0 ? nu * mm2_s : null;
}

/** Temperature at which the oil has a viscosity, the line turned round; null for 0.3 mm²/s and less. */
export function temperatureFor_K(at: { line: LogLogLine; nu_m2_s: number }): number | null {
  const oil_K = 10 ** ((at.line.A - doubleLog(at.nu_m2_s)) / at.line.B);
  return Number.isFinite(oil_K) ? oil_K : null;
}

/**
 * Relative change of viscosity with temperature: what a kelvin of error in the oil temperature does.
 *
 *   d ln ν/dT = −(B/T) Z ln Z / ν,   Z = ν + 0.7
 *
 * oil          [K]
 * returns      [1/K], negative; null as viscosityAt_m2_s
 * range        as viscosityAt_m2_s
 * source       astmD341, differentiated   check: reference oil at 90 °C, −0.02527597 1/K (computed by another program)
 */
export function viscositySlope_1_K(at: { line: LogLogLine; oil_K: number }): number | null {
  const nu_m2_s = viscosityAt_m2_s(at);
  if (nu_m2_s === null) return null;
  const nu = nu_m2_s / mm2_s;
  const Z = nu + 0.7;
  return (-at.line.B / at.oil_K) * ((Z * Math.log(Z)) / nu);
}

/** log10 log10(ν + 0.7) with ν in mm²/s; NaN for ν ≤ 0.3 mm²/s, kept inside this file. */
const doubleLog = (nu_m2_s: number): number => Math.log10(Math.log10(nu_m2_s / mm2_s + 0.7));

const range: Relation['range'] = [
  { symbol: 'T', from: 273.15, to: null, why: 'below 0 °C a multigrade gear oil leaves the line' },
  { symbol: 'T', from: null, to: 473.15, why: 'above 200 °C the simple form is not used' },
];
const nu40 = input('nu40_m2_s', 'ν40', 'kinematic viscosity at 40 °C', 'm²/s');
const nu100 = input('nu100_m2_s', 'ν100', 'kinematic viscosity at 100 °C', 'm²/s');
const oil = input('oil_K', 'T', 'oil temperature', 'K');
const referenceOil = { nu40_m2_s: 102e-6, nu100_m2_s: 15e-6 };
const script = 'computed by an independent script, simple form';

type OilAt = { readonly nu40_m2_s: number; readonly nu100_m2_s: number; readonly oil_K: number };

export const viscosityRelation: Relation<OilAt> = {
  id: 'viscosity-log-log',
  title: 'Viscosity at any temperature from two',
  formula: {
    latex: String.raw`\log_{10}\log_{10}(\nu+0.7)=A-B\,\log_{10}T`,
    plain: 'log10 log10(ν + 0.7) = A − B log10 T, ν in mm²/s, A and B from 40 °C and 100 °C',
  },
  symbols: [nu40, nu100, oil, output('ν', 'kinematic viscosity', 'm²/s')],
  range: [...range, { symbol: 'ν', from: 2e-6, to: null, why: 'the simple form holds above 2 mm²/s' }],
  source: 'astmD341',
  grade: 'V2',
  checks: [
    {
      source: 'circulated D341 worksheet: 32 and 5.4 mm²/s',
      seen: 'published',
      inputs: { nu40_m2_s: 32e-6, nu100_m2_s: 5.4e-6, oil_K: 353.15 },
      printed: '8.5',
      unit: 'mm²/s',
    },
    ...(
      [
        [-20, '6033.3184'],
        [0, '1039.6127'],
        [20, '278.93613'],
        [40, '102.0'],
        [60, '46.514303'],
        [80, '24.897827'],
        [100, '15.0'],
        [120, '9.8756688'],
        [140, '6.9578442'],
      ] as const
    ).map(([oil_C, printed]) => ({
      source: script,
      seen: 'computed' as const,
      inputs: { ...referenceOil, oil_K: oil_C + 273.15 },
      printed,
      unit: 'mm²/s',
    })),
  ],
  of({ oil_K, ...of }) {
    const line = logLogLine(of);
    return line && viscosityAt_m2_s({ line, oil_K });
  },
};

export const viscositySlopeRelation: Relation<OilAt> = {
  id: 'viscosity-slope',
  title: 'Relative change of viscosity with temperature',
  formula: {
    latex: String.raw`\frac{d\ln\nu}{dT}=-\frac{B}{T}\,\frac{Z\ln Z}{\nu},\quad Z=\nu+0.7`,
    plain: 'd ln ν/dT = −(B/T) Z ln Z / ν, Z = ν + 0.7, ν in mm²/s',
  },
  symbols: [nu40, nu100, oil, output('d ln ν/dT', 'relative change of viscosity', '1/K')],
  range,
  source: 'astmD341',
  grade: 'VC',
  checks: [
    {
      source: 'derivative taken at 25 digits by another program',
      seen: 'computed',
      inputs: { ...referenceOil, oil_K: 363.15 },
      printed: '-0.02527597',
    },
  ],
  of({ oil_K, ...of }) {
    const line = logLogLine(of);
    return line && viscositySlope_1_K({ line, oil_K });
  },
};
