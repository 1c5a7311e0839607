import { finiteOrNull, input, output, type Relation } from './relation.ts';

/**
 * Viscosity of oil with bubbles against that of the oil alone. All of these raise it; none of them says what air does to a
 * film in a contact, and no law that does is accepted.
 *
 *   rigid   η/η0 = 1 + 2.5 φ
 *
 * air share φ  [1]
 * returns      [1]
 * range        φ to 0.1: there the laws give 10, 15 and 25 % more
 * source       einstein1906      check: a tenth of air: 1.25
 */
export const rigidBubbles = ({ airShare }: { airShare: number }): number | null => finiteOrNull(1 + 2.5 * airShare);

/**
 * The same for bubbles whose surface moves with the oil.
 *
 *   η/η0 = 1 + 2.5 φ (λ + 0.4)/(λ + 1)
 *
 * air share φ, λ viscosity of the gas over that of the oil [1]
 * returns      [1]: 1 + φ for clean air, the rigid law for λ without end; null for λ below 0
 * range        φ to 0.1
 * source       taylor1932      check: a tenth of clean air: 1.1
 */
export const cleanBubbles = (at: { airShare: number; viscosityRatio: number }): number | null =>
  at.viscosityRatio >= 0
    ? finiteOrNull(1 + 2.5 * at.airShare * ((at.viscosityRatio + 0.4) / (at.viscosityRatio + 1)))
    : null;

/** The same by measured oils, recalled: η/η0 = 1 + 1.5 φ [1], 1.5 % for each percent of air; unverified. */
export const measuredBubbles = ({ airShare }: { airShare: number }): number | null => finiteOrNull(1 + 1.5 * airShare);

const air = input('airShare', 'φ', 'air share by volume', '1');
const ratio = output('η/η0', 'viscosity against that without air', '1');
const range = [{ symbol: 'φ', from: 0, to: 0.1, why: 'at a tenth of air the laws part by 15 %, and bubbles meet' }];
const script = 'computed by an independent script';

export const rigidBubblesRelation: Relation<{ readonly airShare: number }> = {
  id: 'viscosity-rigid-bubbles',
  title: 'Viscosity of oil with rigid bubbles',
  formula: { latex: String.raw`\frac{\eta}{\eta_0}=1+2.5\,\varphi`, plain: 'η/η0 = 1 + 2.5 φ' },
  symbols: [air, ratio],
  range,
  source: 'einstein1906',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: { airShare: 0.1 }, printed: '1.25' }],
  of: (oil) => rigidBubbles(oil),
};

export const cleanBubblesRelation: Relation<{ readonly airShare: number; readonly viscosityRatio: number }> = {
  id: 'viscosity-clean-bubbles',
  title: 'Viscosity of oil with clean bubbles',
  formula: {
    latex: String.raw`\frac{\eta}{\eta_0}=1+2.5\,\varphi\,\frac{\lambda+0.4}{\lambda+1}`,
    plain: 'η/η0 = 1 + 2.5 φ (λ + 0.4)/(λ + 1)',
  },
  symbols: [air, input('viscosityRatio', 'λ', 'viscosity of the gas over that of the oil', '1'), ratio],
  range,
  source: 'taylor1932',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: { airShare: 0.1, viscosityRatio: 0 }, printed: '1.100' }],
  of: (oil) => cleanBubbles(oil),
};

export const measuredBubblesRelation: Relation<{ readonly airShare: number }> = {
  id: 'viscosity-aerated-oil',
  title: 'Viscosity of aerated oil, unverified',
  formula: { latex: String.raw`\frac{\eta}{\eta_0}=1+1.5\,\varphi`, plain: 'η/η0 = 1 + 0.015 B, B in %' },
  symbols: [air, ratio],
  range,
  source: 'hayward1961',
  grade: 'U',
  checks: [{ source: script, seen: 'computed', inputs: { airShare: 0.1 }, printed: '1.150' }],
  of: (oil) => measuredBubbles(oil),
};
