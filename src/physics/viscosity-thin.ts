import { finiteOrNull, input, output, type Relation } from './relation.ts';
import { logLogLine, viscosityAt_m2_s } from './viscosity.ts';

const mm2_s = 1e-6;

/**
 * What stands under the two logarithms for an oil of any viscosity, short full form.
 *
 *   Z = ν + 0.7 + exp(−1.47 − 1.84 ν − 0.51 ν²)
 *
 * nu           [m²/s], as mm²/s in the formula; the exponential is natural, not a power of ten
 * returns      Z [1]; null for a viscosity that is not above 0
 * range        ν 0.5 mm²/s and more: below it the two full forms part by more than 0.1 %
 * source       astmD341      check: 1 mm²/s gives 1.7219278 (computed by another program)
 */
export const shortZ = ({ nu_m2_s }: { nu_m2_s: number }): number | null => {
  const nu = nu_m2_s / mm2_s;
  return nu > 0 ? finiteOrNull(nu + 0.7 + Math.exp(-1.47 - 1.84 * nu - 0.51 * nu ** 2)) : null;
};

/**
 * The same, long form: one term after the other comes in as the oil gets thinner.
 *
 *   Z = ν + 0.7 + C − D + E − F + G − H
 *   C = exp(−1.14883 − 2.65868 ν)    D = exp(−0.0038138 − 12.5645 ν)   E = exp(5.46491 − 37.6289 ν)
 *   F = exp(13.0458 − 74.6851 ν)     G = exp(37.4619 − 192.643 ν)      H = exp(80.4945 − 400.468 ν)
 *
 * nu           [m²/s], as mm²/s in the formula
 * returns      Z [1]; null for a viscosity that is not above 0
 * range        ν 0.21 mm²/s and more
 * source       astmD341Long      check: the short form, to 0.11 % from 0.5 mm²/s up
 */
export const longZ = ({ nu_m2_s }: { nu_m2_s: number }): number | null => {
  const nu = nu_m2_s / mm2_s;
  if (!(nu > 0)) return null;
  const sum = longTerms.reduce((z, [sign, a, b]) => z + sign * Math.exp(a - b * nu), nu + 0.7);
  return finiteOrNull(sum);
};

const longTerms = [
  [1, -1.14883, 2.65868],
  [-1, -0.0038138, 12.5645],
  [1, 5.46491, 37.6289],
  [-1, 13.0458, 74.6851],
  [1, 37.4619, 192.643],
  [-1, 80.4945, 400.468],
] as const;

/**
 * Viscosity from Z, the short form turned round by a fit.
 *
 *   ν = x − exp(−0.7487 − 3.295 x + 0.6119 x² − 0.3193 x³),  x = Z − 0.7
 *
 * Z            [1]
 * returns      ν [m²/s]; null where the fit gives none above 0
 * range        Z 1.28 and more, which is 0.5 mm²/s
 * source       astmD341      check: Z of 1 mm²/s gives 0.99994932 back (computed by another program)
 */
export function viscosityFromZ_m2_s({ Z }: { Z: number }): number | null {
  const x = Z - 0.7;
  const nu = finiteOrNull(x - Math.exp(-0.7487 - 3.295 * x + 0.6119 * x ** 2 - 0.3193 * x ** 3));
  return nu !== null && nu > 0 ? nu * mm2_s : null;
}

interface OilAt {
  readonly nu40_m2_s: number;
  readonly nu100_m2_s: number;
  readonly oil_K: number;
}

/**
 * Viscosity of a thin oil at a temperature, from two.
 *
 *   log10 log10 Z = A − B log10 T,  A and B from Z at 40 °C and 100 °C
 *
 * The full form is the simple one with Z − 0.7 in place of ν, so the same line is drawn.
 *
 * nu40, nu100  [m²/s], oil [K]
 * returns      ν [m²/s]; null as the simple form
 * range        0.5 mm²/s and more; above 2 mm²/s it is the simple form again
 * source       astmD341      check: 2.5 and 1.0 mm²/s at 70 °C (computed by another program)
 */
export function thinViscosityAt_m2_s({ nu40_m2_s, nu100_m2_s, oil_K }: OilAt): number | null {
  const z40 = shortZ({ nu_m2_s: nu40_m2_s });
  const z100 = shortZ({ nu_m2_s: nu100_m2_s });
  if (z40 === null || z100 === null) return null;
  const line = logLogLine({ nu40_m2_s: (z40 - 0.7) * mm2_s, nu100_m2_s: (z100 - 0.7) * mm2_s });
  const x_m2_s = line && viscosityAt_m2_s({ line, oil_K });
  return x_m2_s === null ? null : viscosityFromZ_m2_s({ Z: x_m2_s / mm2_s + 0.7 });
}

const script = 'computed by an independent script';
const nu = input('nu_m2_s', 'ν', 'kinematic viscosity', 'm²/s');
const partFrom = { from: 0.5e-6, to: null, why: 'below 0.5 mm²/s the two full forms part by more than 0.1 %' };

export const shortZRelation: Relation<{ readonly nu_m2_s: number }> = {
  id: 'viscosity-z-short',
  title: 'Z of an oil of any viscosity, short form',
  formula: {
    latex: String.raw`Z=\nu+0.7+e^{-1.47-1.84\,\nu-0.51\,\nu^2}`,
    plain: 'Z = ν + 0.7 + exp(−1.47 − 1.84 ν − 0.51 ν²), ν in mm²/s',
  },
  symbols: [nu, output('Z', 'figure under the two logarithms', '1')],
  range: [{ symbol: 'ν', ...partFrom }],
  source: 'astmD341',
  grade: 'V2',
  checks: (
    [
      [0.5, '1.280661'],
      [1, '1.7219278'],
      [2, '2.7007541'],
    ] as const
  ).map(([nu_mm2_s, printed]) => ({
    source: script,
    seen: 'computed',
    inputs: { nu_m2_s: nu_mm2_s * mm2_s },
    printed,
  })),
  of: (oil) => shortZ(oil),
};

export const longZRelation: Relation<{ readonly nu_m2_s: number }> = {
  id: 'viscosity-z-long',
  title: 'Z of an oil of any viscosity, long form',
  formula: {
    latex: String.raw`\begin{aligned}Z&=\nu+0.7+C-D+E-F+G-H\\C&=e^{-1.14883-2.65868\,\nu},\quad D=e^{-0.0038138-12.5645\,\nu},\quad E=e^{5.46491-37.6289\,\nu}\\F&=e^{13.0458-74.6851\,\nu},\quad G=e^{37.4619-192.643\,\nu},\quad H=e^{80.4945-400.468\,\nu}\end{aligned}`,
    plain:
      'Z = ν + 0.7 + C − D + E − F + G − H, ν in mm²/s; C = exp(−1.14883 − 2.65868 ν), D = exp(−0.0038138 − 12.5645 ν), E = exp(5.46491 − 37.6289 ν), F = exp(13.0458 − 74.6851 ν), G = exp(37.4619 − 192.643 ν), H = exp(80.4945 − 400.468 ν)',
  },
  symbols: [nu, output('Z', 'figure under the two logarithms', '1')],
  range: [{ symbol: 'ν', from: 0.21e-6, to: null, why: 'below 0.21 mm²/s the terms run away from each other' }],
  source: 'astmD341Long',
  grade: 'VC',
  checks: [
    ...(
      [
        [0.5, '1.280661'],
        [1, '1.7219278'],
        [2, '2.7007541'],
      ] as const
    ).map(([nu_mm2_s, printed]) => ({
      source: `short form, ${script}`,
      seen: 'computed' as const,
      inputs: { nu_m2_s: nu_mm2_s * mm2_s },
      printed,
      within: { relative: 0.0011, why: 'two forms for one thing: 0.1 % apart' },
    })),
    { source: script, seen: 'computed', inputs: { nu_m2_s: 0.25 * mm2_s }, printed: '1.08583375' },
  ],
  of: (oil) => longZ(oil),
};

export const viscosityFromZRelation: Relation<{ readonly Z: number }> = {
  id: 'viscosity-from-z',
  title: 'Viscosity from Z',
  formula: {
    latex: String.raw`\nu=x-e^{-0.7487-3.295\,x+0.6119\,x^2-0.3193\,x^3},\quad x=Z-0.7`,
    plain: 'ν = x − exp(−0.7487 − 3.295 x + 0.6119 x² − 0.3193 x³) in mm²/s, x = Z − 0.7',
  },
  symbols: [input('Z', 'Z', 'figure under the two logarithms', '1'), output('ν', 'kinematic viscosity', 'm²/s')],
  range: [{ symbol: 'ν', ...partFrom }],
  source: 'astmD341',
  grade: 'V2',
  checks: (
    [
      [1.280661007412, '0.50005466'],
      [1.721927800894, '0.99994932'],
      [2.70075408912, '2.0001721'],
    ] as const
  ).map(([Z, printed]) => ({ source: script, seen: 'computed', inputs: { Z }, printed, unit: 'mm²/s' })),
  of: (at) => viscosityFromZ_m2_s(at),
};

export const thinOilRelation: Relation<Readonly<Record<keyof OilAt, number>>> = {
  id: 'viscosity-thin-oil',
  title: 'Viscosity of a thin oil at any temperature from two',
  formula: {
    latex: String.raw`\log_{10}\log_{10}Z=A-B\,\log_{10}T`,
    plain: 'log10 log10 Z = A − B log10 T, A and B from Z at 40 °C and 100 °C, ν from Z',
  },
  symbols: [
    input('nu40_m2_s', 'ν40', 'kinematic viscosity at 40 °C', 'm²/s'),
    input('nu100_m2_s', 'ν100', 'kinematic viscosity at 100 °C', 'm²/s'),
    input('oil_K', 'T', 'oil temperature', 'K'),
    output('ν', 'kinematic viscosity', 'm²/s'),
  ],
  range: [
    { symbol: 'ν', ...partFrom },
    { symbol: 'T', from: 273.15, to: 473.15, why: 'a line through two points is carried only a little beyond them' },
  ],
  source: 'astmD341',
  grade: 'V2',
  checks: (
    [
      [2.5, 1.0, 20, '4.0071376'],
      [2.5, 1.0, 70, '1.4808959'],
      [2.5, 1.0, 130, '0.72889844'],
      [102, 15, 20, '278.93613'],
    ] as const
  ).map(([nu40, nu100, oil_C, printed]) => ({
    source: `${nu40} and ${nu100} mm²/s, ${script}`,
    seen: 'computed',
    inputs: { nu40_m2_s: nu40 * mm2_s, nu100_m2_s: nu100 * mm2_s, oil_K: oil_C + 273.15 },
    printed,
    unit: 'mm²/s',
  })),
  of: (oil) => thinViscosityAt_m2_s(oil),
};
