import { densityByVcf_kg_m3 } from './density.ts';
import { finiteOrNull, input, output, type Relation } from './relation.ts';
import { logLogLine, viscosityAt_m2_s } from './viscosity.ts';

interface OilAt {
  readonly nu40_m2_s: number;
  readonly nu100_m2_s: number;
  readonly density15_kg_m3: number;
  readonly oil_K: number;
}

/**
 * Dynamic viscosity of an oil at a temperature: what films, drops and bubbles feel.
 *
 *   η = ρ(T) ν(T)
 *
 * nu40, nu100  [m²/s], density15 [kg/m³], oil [K]
 * returns      η [Pa·s]; null where the viscosity line has no answer
 * range        that of the two: ν by ASTM D341, ρ by ASTM D1250
 * source       definition      check: reference oil at 90 °C, 15.689471 mPa·s (computed by another program)
 */
export function dynamicViscosity_Pa_s({ nu40_m2_s, nu100_m2_s, density15_kg_m3, oil_K }: OilAt): number | null {
  const line = logLogLine({ nu40_m2_s, nu100_m2_s });
  const nu_m2_s = line && viscosityAt_m2_s({ line, oil_K });
  if (nu_m2_s === null || !(density15_kg_m3 > 0)) return null;
  return finiteOrNull(nu_m2_s * densityByVcf_kg_m3({ density15_kg_m3, oil_K }));
}

export const dynamicViscosityRelation: Relation<Readonly<Record<keyof OilAt, number>>> = {
  id: 'dynamic-viscosity',
  title: 'Dynamic viscosity of an oil at a temperature',
  formula: { latex: String.raw`\eta=\rho(T)\,\nu(T)`, plain: 'η = ρ(T) ν(T), ν by ASTM D341, ρ by ASTM D1250' },
  symbols: [
    input('nu40_m2_s', 'ν40', 'kinematic viscosity at 40 °C', 'm²/s'),
    input('nu100_m2_s', 'ν100', 'kinematic viscosity at 100 °C', 'm²/s'),
    input('density15_kg_m3', 'ρ15', 'density at 15 °C', 'kg/m³'),
    input('oil_K', 'T', 'oil temperature', 'K'),
    output('η', 'dynamic viscosity', 'Pa·s'),
  ],
  range: [
    {
      symbol: 'T',
      from: 273.15,
      to: 423.15,
      why: 'below 0 °C a multigrade leaves the line, above 150 °C the tables end',
    },
    { symbol: 'ρ15', from: 800, to: 1164, why: 'lubricating oils of the tables (from memory)' },
  ],
  source: 'definition',
  grade: 'VC',
  checks: (
    [
      [60, '39.141443'],
      [90, '15.689471'],
      [120, '7.9283921'],
      [140, '5.4953235'],
    ] as const
  ).map(([oil_C, printed]) => ({
    source: 'reference oil, computed by an independent script',
    seen: 'computed',
    inputs: { nu40_m2_s: 102e-6, nu100_m2_s: 15e-6, density15_kg_m3: 870, oil_K: oil_C + 273.15 },
    printed,
    unit: 'mPa·s',
  })),
  of: (oil) => dynamicViscosity_Pa_s(oil),
};
