import { allAbove0, answer } from './answer.ts';
import { input, output, type Relation } from './relation.ts';

/** A wall between oil and air. */
export interface Wall {
  readonly area_m2: number;
  readonly inside_W_m2K: number;
  readonly thickness_m: number;
  readonly conductivity_W_mK: number;
  /** Air and radiation; with fins, per area of the plain wall: h η0 A/A_plain. */
  readonly outside_W_m2K: number;
}

/**
 * Where the resistance of a wall is: oil film, metal, air.
 *
 *   R_i = 1/(h_i A),  R_w = t/(k A),  R_o = 1/(h_o A)
 *
 * area         [m²], films [W/(m²·K)], thickness [m], conductivity [W/(m·K)]
 * returns      the three [K/W]; null unless area, films and conductivity are above 0 and the thickness is not below 0
 * range        a flat wall; h_i about 300 W/(m²·K) with splashed oil (common practice, no source)
 * source       incropera      check: 0.036 m², 300, 4 mm iron, 14: 0.0926, 0.0022, 1.984 K/W (computed by another program)
 */
export function wallResistances_K_W(
  wall: Wall,
): { readonly inside_K_W: number; readonly metal_K_W: number; readonly outside_K_W: number } | null {
  const { area_m2, inside_W_m2K, thickness_m, conductivity_W_mK, outside_W_m2K } = wall;
  if (!allAbove0(area_m2, inside_W_m2K, conductivity_W_mK, outside_W_m2K) || !(thickness_m >= 0)) return null;
  const of = {
    inside_K_W: 1 / inside_W_m2K / area_m2,
    metal_K_W: thickness_m / conductivity_W_mK / area_m2,
    outside_K_W: 1 / outside_W_m2K / area_m2,
  };
  return Object.values(of).every(Number.isFinite) ? of : null;
}

/** Heat through the wall a kelvin between oil and air, K = 1/(R_i + R_w + R_o) [W/K]; null as wallResistances_K_W. */
export function wall_W_K(wall: Wall): number | null {
  const of = wallResistances_K_W(wall);
  return of && answer(1 / (of.inside_K_W + of.metal_K_W + of.outside_K_W));
}

const script = 'computed by an independent script';
const cover = { area_m2: 0.036, inside_W_m2K: 300, thickness_m: 0.004, outside_W_m2K: 14 };

export const wallSeriesRelation: Relation<Readonly<Record<keyof Wall, number>>> = {
  id: 'wall-in-series',
  title: 'Heat through a wall: oil film, metal and air in series',
  formula: {
    latex: String.raw`K=\frac{A}{\frac1{h_i}+\frac tk+\frac1{h_o}}`,
    plain: 'K = A/(1/hi + t/k + 1/ho)',
  },
  symbols: [
    input('area_m2', 'A', 'surface of the wall', 'm²'),
    input('inside_W_m2K', 'hi', 'film coefficient of the oil, about 300', 'W/(m²·K)'),
    input('thickness_m', 't', 'thickness of the wall', 'm'),
    input('conductivity_W_mK', 'k', 'conductivity of the wall', 'W/(m·K)'),
    input('outside_W_m2K', 'ho', 'film coefficient outside, air and radiation', 'W/(m²·K)'),
    output('K', 'heat a kelvin', 'W/K'),
  ],
  range: [],
  source: 'incropera',
  grade: 'VC',
  checks: [
    { source: `iron, ${script}`, seen: 'computed', inputs: { ...cover, conductivity_W_mK: 50 }, printed: '0.48101395' },
    {
      source: `aluminium, ${script}`,
      seen: 'computed',
      inputs: { ...cover, conductivity_W_mK: 160 },
      printed: '0.48136770',
    },
  ],
  of: (wall) => wall_W_K(wall),
};
