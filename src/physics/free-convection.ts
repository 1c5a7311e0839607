import { allAbove0, answer } from './answer.ts';
import { input, output, type Relation } from './relation.ts';
import { gravity_m_s2 } from './speeds.ts';

interface Buoyancy {
  readonly expansion_1_K: number;
  /** Surface over air; its amount counts, a cold surface in warm air is the same. */
  readonly difference_K: number;
  readonly length_m: number;
  readonly nu_m2_s: number;
  readonly diffusivity_m2_s: number;
}

/**
 * Rayleigh number: how strongly warm air drives itself.
 *
 *   Ra = g β |ΔT| L³/(ν α),  β = 1/T of an ideal gas at film temperature
 *
 * expansion    [1/K], difference [K], length (height, or diameter) [m], nu, diffusivity [m²/s]
 * returns      Ra [1]; null unless expansion, length, ν and α are above 0
 * range        none
 * source       definition      check: Incropera & DeWitt, example 9.2: 1.813e9
 */
export function rayleigh(air: Buoyancy): number | null {
  const { expansion_1_K, difference_K, length_m, nu_m2_s, diffusivity_m2_s } = air;
  if (!allAbove0(expansion_1_K, length_m, nu_m2_s, diffusivity_m2_s)) return null;
  const drive_m_s2 = gravity_m_s2 * expansion_1_K * Math.abs(difference_K);
  return answer(((drive_m_s2 * length_m) / nu_m2_s) * (length_m / diffusivity_m2_s) * length_m);
}

interface Driven {
  readonly rayleigh: number;
  readonly prandtl: number;
}

/**
 * Mean Nusselt number of an upright plate in still air: a cover, or a side wall of the housing.
 *
 *   Nu = { 0.825 + 0.387 Ra^(1/6) / [1 + (0.492/Pr)^(9/16)]^(8/27) }²
 *
 * rayleigh with the height as length, prandtl  [1], air at film temperature
 * returns      Nu [1]; null for a Pr that is not above 0 or an Ra below 0
 * range        Ra ≤ 1e12
 * source       churchillChu1975      check: Incropera & DeWitt, example 9.2: 147
 */
export const plateNusselt = (air: Driven): number | null => churchillChu(air, 0.825, 0.492);

/**
 * Mean Nusselt number of a level cylinder in still air: an axle tube.
 *
 *   Nu = { 0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27) }²
 *
 * rayleigh with the diameter as length, prandtl  [1], air at film temperature
 * returns      Nu [1]; null as plateNusselt
 * range        Ra ≤ 1e12
 * source       churchillChu1975      check: Pr 0.69, Gr 2.63e9: 139.1349397 (an open heat-transfer library)
 */
export const cylinderNusselt = (air: Driven): number | null => churchillChu(air, 0.6, 0.559);

function churchillChu(air: Driven, still: number, prandtlAt: number): number | null {
  if (!allAbove0(air.prandtl) || !(air.rayleigh >= 0)) return null;
  const prandtlTerm = (1 + (prandtlAt / air.prandtl) ** (9 / 16)) ** (8 / 27);
  return answer((still + (0.387 * air.rayleigh ** (1 / 6)) / prandtlTerm) ** 2);
}

export const rayleighRelation: Relation<Readonly<Record<keyof Buoyancy, number>>> = {
  id: 'rayleigh',
  title: 'Rayleigh number of air at a warm surface',
  formula: {
    latex: String.raw`\mathrm{Ra}=\frac{g\beta\,|\Delta T|\,L^3}{\nu\alpha}`,
    plain: 'Ra = g β |ΔT| L³/(ν α)',
  },
  symbols: [
    input('expansion_1_K', 'β', 'expansion of air, one over its film temperature', '1/K'),
    input('difference_K', 'ΔT', 'surface over air', 'K'),
    input('length_m', 'L', 'height of a wall, or diameter of a cylinder', 'm'),
    input('nu_m2_s', 'ν', 'kinematic viscosity of air', 'm²/s'),
    input('diffusivity_m2_s', 'α', 'thermal diffusivity of air', 'm²/s'),
    output('Ra', 'Rayleigh number', '1'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'Incropera & DeWitt, example 9.2: wall of 0.71 m at 232 °C in 23 °C',
      seen: 'memory',
      inputs: { expansion_1_K: 0.0025, difference_K: 209, length_m: 0.71, nu_m2_s: 26.4e-6, diffusivity_m2_s: 38.3e-6 },
      printed: '1.813e9',
      within: { relative: 0.001, why: 'the example has g as 9.8 m/s²' },
    },
    {
      source: 'cover of 0.2 m at 90 °C in 20 °C, computed by an independent script',
      seen: 'computed',
      inputs: {
        expansion_1_K: 1 / 328.15,
        difference_K: 70,
        length_m: 0.2,
        nu_m2_s: 18.6e-6,
        diffusivity_m2_s: 26.4e-6,
      },
      printed: '34081557',
    },
  ],
  of: (air) => rayleigh(air),
};

const symbols = [
  input('rayleigh', 'Ra', 'Rayleigh number', '1'),
  input('prandtl', 'Pr', 'Prandtl number', '1'),
  output('Nu', 'Nusselt number, mean', '1'),
];
const range = [{ symbol: 'Ra', from: 0, to: 1e12, why: 'Ra up to 1e12' }];
const library = 'a figure of an open heat-transfer library for Pr 0.69, Gr 2.63e9';
const atGr = { rayleigh: 0.69 * 2.63e9, prandtl: 0.69 };

export const freePlateRelation: Relation<Readonly<Record<keyof Driven, number>>> = {
  id: 'free-convection-plate',
  title: 'Upright wall in still air',
  formula: {
    latex: String.raw`\mathrm{Nu}=\left\{0.825+\frac{0.387\,\mathrm{Ra}^{1/6}}{\left[1+(0.492/\mathrm{Pr})^{9/16}\right]^{8/27}}\right\}^2`,
    plain: 'Nu = {0.825 + 0.387 Ra^(1/6)/[1 + (0.492/Pr)^(9/16)]^(8/27)}²',
  },
  symbols,
  range,
  source: 'churchillChu1975',
  grade: 'V2',
  checks: [
    { source: library, seen: 'published', inputs: atGr, printed: '147.1618522' },
    {
      source: 'Incropera & DeWitt, example 9.2',
      seen: 'published',
      inputs: { rayleigh: 1.813e9, prandtl: 0.69 },
      printed: '147',
    },
    {
      source: 'cover of 0.2 m at 90 °C in 20 °C, computed by an independent script',
      seen: 'computed',
      inputs: { rayleigh: 34081557, prandtl: 0.705 },
      printed: '44.401649',
    },
  ],
  of: (air) => plateNusselt(air),
};

export const freeCylinderRelation: Relation<Readonly<Record<keyof Driven, number>>> = {
  id: 'free-convection-cylinder',
  title: 'Level tube in still air',
  formula: {
    latex: String.raw`\mathrm{Nu}=\left\{0.60+\frac{0.387\,\mathrm{Ra}^{1/6}}{\left[1+(0.559/\mathrm{Pr})^{9/16}\right]^{8/27}}\right\}^2`,
    plain: 'Nu = {0.60 + 0.387 Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27)}²',
  },
  symbols,
  range,
  source: 'churchillChu1975',
  grade: 'V2',
  checks: [{ source: library, seen: 'published', inputs: atGr, printed: '139.1349397' }],
  of: (air) => cylinderNusselt(air),
};
