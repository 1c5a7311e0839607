import { input, output, type Relation } from './relation.ts';

/** Lip seals by two technical reports that lie a factor of 1.6 apart. The same for both articles, so it cancels in a difference. */

const script = 'computed by an independent script from recalled constants';
const rpm = 30 / Math.PI;
const shaft = input('shaft_m', 'd', 'diameter of the shaft', 'mm');

/** N·m a metre of diameter: fluorocarbon and nitrile rubber, recalled. */
export const sealConstants_N = { fluorocarbon: 3.737, nitrile: 2.429 } as const;

export const sealTorqueRelation: Relation<{ readonly constant_N: number; readonly shaft_m: number }> = {
  id: 'seal-torque',
  title: 'Torque of a lip seal (unverified)',
  formula: { latex: String.raw`T=c\,d`, plain: 'T = c·d' },
  symbols: [
    input('constant_N', 'c', 'constant of the rubber: 3.737 N fluorocarbon, 2.429 N nitrile', 'N'),
    shaft,
    output('T', 'torque', 'N·m'),
  ],
  range: [],
  source: 'isoTr14179of1',
  grade: 'U',
  checks: [
    { source: script, seen: 'computed', inputs: { constant_N: 3.737, shaft_m: 0.06 }, printed: '0.22422' },
    { source: script, seen: 'computed', inputs: { constant_N: 2.429, shaft_m: 0.06 }, printed: '0.14574' },
  ],
  of: ({ constant_N, shaft_m }) => (constant_N > 0 && shaft_m > 0 ? constant_N * shaft_m : null),
};

type Sealed = {
  readonly oil_K: number;
  readonly nu40_m2_s: number;
  readonly shaft_m: number;
  readonly speed_rad_s: number;
};
export const sealPowerRelation: Relation<Sealed> = {
  id: 'seal-power',
  title: 'Power of a lip seal by oil and speed (unverified)',
  formula: {
    latex: String.raw`P=[145-1.6\,t+350\,\log_{10}\log_{10}(\nu_{40}+0.8)]\,d^2n\cdot10^{-7}`,
    plain: 'P = [145 − 1.6 t + 350 log10 log10(ν40 + 0.8)]·d²·n·1e−7; °C, mm²/s, mm, rpm, W',
  },
  symbols: [
    input('oil_K', 't', 'oil temperature', '°C'),
    input('nu40_m2_s', 'ν40', 'kinematic viscosity at 40 °C', 'mm²/s'),
    shaft,
    input('speed_rad_s', 'n', 'speed of the shaft', 'rpm'),
    output('P', 'power', 'W'),
  ],
  range: [{ symbol: 't', from: 273.15, to: 393.15, why: 'recalled for oil between 0 and 120 °C' }],
  source: 'isoTr14179of2',
  grade: 'U',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { oil_K: 363.15, nu40_m2_s: 102e-6, shaft_m: 0.06, speed_rad_s: 2000 / rpm },
      printed: '77.23388',
    },
  ],
  of: ({ oil_K, nu40_m2_s, shaft_m, speed_rad_s }) => {
    const oil = 145 - 1.6 * (oil_K - 273.15) + 350 * Math.log10(Math.log10(nu40_m2_s * 1e6 + 0.8));
    const P = oil * (shaft_m * 1e3) ** 2 * speed_rad_s * rpm * 1e-7;
    return oil > 0 && shaft_m > 0 && speed_rad_s >= 0 && Number.isFinite(P) ? P : null;
  },
};
