import { input, output, type Relation } from './relation.ts';

/**
 * Full form of the log-log line for thin oils, below 2 mm²/s, where the constant 0.7 is no longer enough. The exponentials
 * are natural ones.
 */

const script = 'computed by an independent script, natural exponentials';
const ofOil = [
  [0.5, '1.280661', '0.50005466'],
  [1, '1.7219278', '0.99994932'],
  [2, '2.7007541', '2.0001721'],
] as const;

export const thinOilRelation: Relation<{ readonly nu_m2_s: number }> = {
  id: 'viscosity-thin',
  title: 'What stands under the double logarithm for a thin oil',
  formula: {
    latex: String.raw`Z=\nu+0.7+e^{-1.47-1.84\,\nu-0.51\,\nu^2}`,
    plain: 'Z = ν + 0.7 + exp(−1.47 − 1.84 ν − 0.51 ν²), ν in mm²/s',
  },
  symbols: [
    input('nu_m2_s', 'ν', 'kinematic viscosity', 'mm²/s'),
    output('Z', 'number under the double logarithm', '1'),
  ],
  range: [{ symbol: 'ν', from: 0.3e-6, to: null, why: 'below 0.3 mm²/s the short form is not used' }],
  source: 'astmD341',
  grade: 'V2',
  checks: ofOil.map(([nu, printed]) => ({
    source: script,
    seen: 'computed',
    inputs: { nu_m2_s: nu * 1e-6 },
    printed,
  })),
  of: ({ nu_m2_s }) => {
    const nu = nu_m2_s * 1e6;
    return nu >= 0 && Number.isFinite(nu) ? nu + 0.7 + Math.exp(-1.47 - 1.84 * nu - 0.51 * nu * nu) : null;
  },
};

export const thinOilInverseRelation: Relation<{ readonly Z: number }> = {
  id: 'viscosity-thin-inverse',
  title: 'Viscosity of a thin oil, turned round',
  formula: {
    latex: String.raw`\nu=z-e^{-0.7487-3.295\,z+0.6119\,z^2-0.3193\,z^3},\quad z=Z-0.7`,
    plain: 'ν = z − exp(−0.7487 − 3.295 z + 0.6119 z² − 0.3193 z³), z = Z − 0.7, ν in mm²/s',
  },
  symbols: [input('Z', 'Z', 'number under the double logarithm', '1'), output('ν', 'kinematic viscosity', 'mm²/s')],
  range: [{ symbol: 'ν', from: 0.3e-6, to: null, why: 'below 0.3 mm²/s the short form is not used' }],
  source: 'astmD341',
  grade: 'V2',
  checks: ofOil.map(([, Z, printed]) => ({
    source: `${script}: there and back`,
    seen: 'computed',
    inputs: { Z: Number(Z) },
    printed,
    within: { relative: 1e-6, why: 'the number put in is rounded to seven digits' },
  })),
  of: ({ Z }) => {
    const z = Z - 0.7;
    const nu = z - Math.exp(-0.7487 - 3.295 * z + 0.6119 * z ** 2 - 0.3193 * z ** 3);
    return nu > 0 && Number.isFinite(nu) ? nu * 1e-6 : null;
  },
};
