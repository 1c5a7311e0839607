import { finiteOrNull, input, output, type Relation } from './relation.ts';

/**
 * Specific heat of a mineral oil.
 *
 *   cp = (1685 + 3.4 t)/√s,  s = ρ15/999,  t in °C
 *
 * density15    [kg/m³], oil [K]
 * returns      cp [J/(kg·K)], ± 5 %
 * range        0 °C to 200 °C, mineral oils of 750 to 1000 kg/m³
 * source       cragoe1929      check: Incropera & DeWitt, Table A.5: 2076 at 340 K, Cragoe 2 to 4 % below
 */
export const specificHeat_J_kgK = (oil: { density15_kg_m3: number; oil_K: number }): number =>
  (1685 + 3.4 * (oil.oil_K - 273.15)) / Math.sqrt(oil.density15_kg_m3 / 999);

const handbook = 'Incropera & DeWitt, Table A.5, engine oil';

export const specificHeatRelation: Relation<{ readonly density15_kg_m3: number; readonly oil_K: number }> = {
  id: 'specific-heat-mineral-oil',
  title: 'Specific heat of a mineral oil',
  formula: {
    latex: String.raw`c_p=\frac{1685+3.4\,t}{\sqrt{s}},\quad s=\frac{\rho_{15}}{999}`,
    plain: 'cp = (1685 + 3.4 t)/√s, s = ρ15/999, t in °C',
  },
  symbols: [
    input('density15_kg_m3', 'ρ15', 'density at 15 °C', 'kg/m³'),
    input('oil_K', 'T', 'oil temperature', 'K'),
    output('cp', 'specific heat', 'J/(kg·K)'),
  ],
  range: [
    { symbol: 'ρ15', from: 750, to: 1000, why: 'mineral oils (from memory)' },
    { symbol: 'T', from: 273.15, to: 473.15, why: '0 °C to 200 °C (from memory)' },
  ],
  source: 'cragoe1929',
  grade: 'VC',
  checks: [
    ...(
      [
        [20, '1879.4133'],
        [60, '2025.2206'],
        [100, '2171.0279'],
        [140, '2316.8352'],
      ] as const
    ).map(([oil_C, printed]) => ({
      source: 'computed by an independent script, s = 0.87',
      seen: 'computed' as const,
      inputs: { density15_kg_m3: 0.87 * 999, oil_K: oil_C + 273.15 },
      printed,
    })),
    ...(
      [
        [300, '1909'],
        [340, '2076'],
        [370, '2206'],
        [400, '2337'],
      ] as const
    ).map(([oil_K, printed]) => ({
      source: handbook,
      seen: 'memory' as const,
      inputs: { density15_kg_m3: 892.6, oil_K },
      printed,
      within: { relative: 0.05, why: 'the relation is carried with ± 5 %' },
    })),
  ],
  of: (oil) => finiteOrNull(specificHeat_J_kgK(oil)),
};
