import { finiteOrNull, input, output, type Relation } from './relation.ts';

interface Solid {
  readonly modulus_Pa: number;
  readonly poisson: number;
}

/**
 * Modulus of two bodies pressed together, as the film formulas want it.
 *
 *   2/E' = (1 − p1²)/E1 + (1 − p2²)/E2
 *
 * moduli       [Pa], Poisson's ratios p [1]
 * returns      E' [Pa]; null unless both moduli are above 0. With 1 in place of 2, as some write it, films come out 8 % off
 * range        none
 * source       hamrockDowson      check: steel of 200 GPa and 0.3 on itself: 219.7802 GPa
 */
export function contactModulus_Pa(pair: { first: Solid; second: Solid }): number | null {
  const bodies = [pair.first, pair.second];
  if (!bodies.every(({ modulus_Pa }) => modulus_Pa > 0)) return null;
  const compliance = bodies.reduce((sum, { modulus_Pa, poisson }) => sum + (1 - poisson ** 2) / modulus_Pa, 0);
  return compliance > 0 ? finiteOrNull(2 / compliance) : null;
}

interface Radii {
  readonly along_m: number;
  readonly across_m: number;
}

/**
 * Ellipticity of a contact: how much longer it is across the motion than along it.
 *
 *   k = (Ry/Rx)^(2/π)
 *
 * radii        [m], x along the motion, y across it
 * returns      k [1], 1 for a round contact; null unless both radii are above 0
 * range        k from 1
 * source       hamrockAnderson1983      check: the ball bearing of its example, inner race: 9.139
 */
export const ellipticity = ({ along_m, across_m }: Radii): number | null =>
  along_m > 0 && across_m > 0 ? finiteOrNull((across_m / along_m) ** (2 / Math.PI)) : null;

/** The same by an older fit, k = 1.03 (Ry/Rx)^0.64 [1]: 3 % more for a round contact, 4 % for a ball in its race. */
export const ellipticityByFit = ({ along_m, across_m }: Radii): number | null =>
  along_m > 0 && across_m > 0 ? finiteOrNull(1.03 * (across_m / along_m) ** 0.64) : null;

const radii = [
  input('along_m', 'Rx', 'reduced radius along the motion', 'm'),
  input('across_m', 'Ry', 'reduced radius across the motion', 'm'),
  output('k', 'ellipticity', '1'),
];
const example = 'Hamrock & Anderson, NASA RP-1105, radial ball bearing';
const fromOne = [{ symbol: 'k', from: 1, to: null, why: 'the contact is no longer along the motion than across it' }];

type Pair = { readonly E1_Pa: number; readonly p1: number; readonly E2_Pa: number; readonly p2: number };
export const contactModulusRelation: Relation<Pair> = {
  id: 'contact-modulus',
  title: 'Modulus of two bodies pressed together',
  formula: {
    latex: String.raw`\frac{2}{E'}=\frac{1-p_1^2}{E_1}+\frac{1-p_2^2}{E_2}`,
    plain: "2/E' = (1 − p1²)/E1 + (1 − p2²)/E2",
  },
  symbols: [
    input('E1_Pa', 'E1', 'modulus of the first body', 'Pa'),
    input('p1', 'p1', 'Poisson’s ratio of the first body', '1'),
    input('E2_Pa', 'E2', 'modulus of the second body', 'Pa'),
    input('p2', 'p2', 'Poisson’s ratio of the second body', '1'),
    output("E'", 'modulus of the pair', 'GPa'),
  ],
  range: [],
  source: 'hamrockDowson',
  grade: 'V2',
  checks: [
    {
      source: `${example}: steel on steel`,
      seen: 'memory',
      inputs: { E1_Pa: 200e9, p1: 0.3, E2_Pa: 200e9, p2: 0.3 },
      printed: '219.7802',
    },
  ],
  of: ({ E1_Pa, p1, E2_Pa, p2 }) =>
    contactModulus_Pa({ first: { modulus_Pa: E1_Pa, poisson: p1 }, second: { modulus_Pa: E2_Pa, poisson: p2 } }),
};

export const ellipticityRelation: Relation<Readonly<Record<keyof Radii, number>>> = {
  id: 'ellipticity',
  title: 'Ellipticity of a contact',
  formula: { latex: String.raw`k=\left(\frac{R_y}{R_x}\right)^{2/\pi}`, plain: 'k = (Ry/Rx)^(2/π)' },
  symbols: radii,
  range: fromOne,
  source: 'hamrockAnderson1983',
  grade: 'VC',
  checks: [
    { source: `${example}, inner race`, seen: 'memory', inputs: ball(0.005109279), printed: '9.139' },
    { source: `${example}, outer race`, seen: 'memory', inputs: ball(0.007590721), printed: '7.103' },
  ],
  of: (contact) => ellipticity(contact),
};

export const ellipticityFitRelation: Relation<Readonly<Record<keyof Radii, number>>> = {
  id: 'ellipticity-fit',
  title: 'Ellipticity of a contact, by fit',
  formula: { latex: String.raw`k=1.03\left(\frac{R_y}{R_x}\right)^{0.64}`, plain: 'k = 1.03 (Ry/Rx)^0.64' },
  symbols: radii,
  range: fromOne,
  source: 'hamrockDowson',
  grade: 'VC',
  checks: [
    {
      source: `${example}, inner race`,
      seen: 'memory',
      inputs: ball(0.005109279),
      printed: '9.139',
      within: { relative: 0.045, why: 'the example takes the other form, 4 % below' },
    },
    {
      source: `${example}, outer race`,
      seen: 'memory',
      inputs: ball(0.007590721),
      printed: '7.103',
      within: { relative: 0.045, why: 'the example takes the other form, 4 % below' },
    },
  ],
  of: (contact) => ellipticityByFit(contact),
};

/** A ball in its race, as the example has it. */
function ball(along_m: number): Radii & Readonly<Record<keyof Radii, number>> {
  return { along_m, across_m: 0.1651 };
}
