import { allAbove0, answer } from './answer.ts';
import { input, output, type Relation } from './relation.ts';

interface Moving {
  readonly air_m_s: number;
  readonly length_m: number;
  readonly nu_m2_s: number;
}

/** Reynolds number of air at a surface, Re = v L/ν [1]; null for air of no viscosity, a length of nothing or a speed below 0. */
export const airReynolds = (at: Moving): number | null =>
  allAbove0(at.length_m, at.nu_m2_s) && at.air_m_s >= 0 ? answer((at.air_m_s * at.length_m) / at.nu_m2_s) : null;

interface Film {
  readonly nusselt: number;
  readonly conductivity_W_mK: number;
  readonly length_m: number;
}

/**
 * Heat that a surface hands to the air by convection, per area and kelvin.
 *
 *   h = Nu k/L
 *
 * nusselt      [1], conductivity of the air [W/(m·K)], the length that Nu was made with [m]
 * returns      h [W/(m²·K)]; null for a length that is not above 0
 * range        that of Nu; laws differ by 15 to 20 % on a plain rod, by 40 % on a casting (common practice)
 * source       definition      check: Incropera & DeWitt, example 7.4: 96 W/(m²·K)
 */
export const filmCoefficient_W_m2K = (at: Film): number | null =>
  allAbove0(at.length_m) ? answer((at.nusselt * at.conductivity_W_mK) / at.length_m) : null;

export const airReynoldsRelation: Relation<Readonly<Record<keyof Moving, number>>> = {
  id: 'air-reynolds',
  title: 'Reynolds number of air at a surface',
  formula: { latex: String.raw`\mathrm{Re}=\frac{vL}{\nu}`, plain: 'Re = v L/ν' },
  symbols: [
    input('air_m_s', 'v', 'speed of the air at the axle', 'm/s'),
    input('length_m', 'L', 'diameter, or length along the air', 'm'),
    input('nu_m2_s', 'ν', 'kinematic viscosity of air', 'm²/s'),
    output('Re', 'Reynolds number', '1'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'Incropera & DeWitt, 6th edition, example 7.1',
      seen: 'memory',
      inputs: { air_m_s: 10, length_m: 0.5, nu_m2_s: 5.21e-4 },
      printed: '9597',
    },
  ],
  of: (at) => airReynolds(at),
};

export const filmCoefficientRelation: Relation<Readonly<Record<keyof Film, number>>> = {
  id: 'film-coefficient',
  title: 'Film coefficient from a Nusselt number',
  formula: { latex: String.raw`h=\frac{\mathrm{Nu}\,k}{L}`, plain: 'h = Nu k/L' },
  symbols: [
    input('nusselt', 'Nu', 'Nusselt number, mean', '1'),
    input('conductivity_W_mK', 'k', 'conductivity of air', 'W/(m·K)'),
    input('length_m', 'L', 'length that Nu was made with', 'm'),
    output('h', 'film coefficient', 'W/(m²·K)'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'Incropera & DeWitt, example 7.4, 40.6 of a rod of 12.7 mm',
      seen: 'published',
      inputs: { nusselt: 40.6, conductivity_W_mK: 0.03, length_m: 0.0127 },
      printed: '96',
    },
    {
      source: 'Incropera & DeWitt, example 7.4, Hilpert’s 37.3 of the same rod',
      seen: 'memory',
      inputs: { nusselt: 37.3, conductivity_W_mK: 0.03, length_m: 0.0127 },
      printed: '88',
    },
    {
      source: 'Incropera & DeWitt, example 9.2, wall of 0.71 m',
      seen: 'memory',
      inputs: { nusselt: 147, conductivity_W_mK: 0.0338, length_m: 0.71 },
      printed: '7.0',
    },
    {
      source: 'Incropera & DeWitt, 6th edition, example 7.1',
      seen: 'memory',
      inputs: { nusselt: 57.4, conductivity_W_mK: 0.0364, length_m: 0.5 },
      printed: '4.18',
    },
    {
      source: 'cover of 0.2 m at 90 °C in 20 °C, computed by an independent script',
      seen: 'computed',
      inputs: { nusselt: 44.401649, conductivity_W_mK: 0.0284, length_m: 0.2 },
      printed: '6.305034',
    },
  ],
  of: (at) => filmCoefficient_W_m2K(at),
};
