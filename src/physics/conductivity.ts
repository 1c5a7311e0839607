import { input, output, type Relation } from './relation.ts';

/** Conductivity of an oil. Carry ± 12 %. */
export const conductivityRelation: Relation<{ readonly oil_K: number; readonly density15_kg_m3: number }> = {
  id: 'oil-conductivity',
  title: 'Thermal conductivity of an oil',
  formula: {
    latex: String.raw`k=\frac{0.1172\,(1-0.00054\,t)}{\rho_{15}/999}`,
    plain: 'k = 0.1172 (1 − 0.00054 t)/(ρ15/999), t in °C, k in W/(m·K)',
  },
  symbols: [
    input('oil_K', 'T', 'oil temperature', 'K'),
    input('density15_kg_m3', 'ρ15', 'density at 15 °C', 'kg/m³'),
    output('k', 'thermal conductivity', 'W/(m·K)'),
  ],
  range: [
    { symbol: 'T', from: 253.15, to: 473.15, why: 'recalled for petroleum oils between −20 and 200 °C' },
    { symbol: 'ρ15', from: 700, to: 1000, why: 'a petroleum oil' },
  ],
  source: 'cragoe1929',
  grade: 'VC',
  checks: [
    ...(
      [
        [20, '0.13325775'],
        [60, '0.13034795'],
        [100, '0.12743816'],
        [140, '0.12452837'],
      ] as const
    ).map(([t_C, printed]) => ({
      source: 'computed by an independent script from the recalled constants',
      seen: 'computed' as const,
      inputs: { oil_K: t_C + 273.15, density15_kg_m3: 0.87 * 999 },
      printed,
    })),
    ...(
      [
        [300, '0.145'],
        [340, '0.139'],
        [370, '0.137'],
        [400, '0.134'],
      ] as const
    ).map(([oil_K, printed]) => ({
      source: 'engine oil: Incropera and DeWitt, Table A.5',
      seen: 'memory' as const,
      inputs: { oil_K, density15_kg_m3: 0.8934 * 999 },
      printed,
      within: { relative: 0.12, why: 'the relation is 9 to 11 % low against this table; hence ± 12 %' },
    })),
  ],
  of: ({ oil_K, density15_kg_m3 }) =>
    oil_K > 0 && density15_kg_m3 > 0 && Number.isFinite(oil_K / density15_kg_m3)
      ? (0.1172 * (1 - 0.00054 * (oil_K - 273.15))) / (density15_kg_m3 / 999)
      : null,
};
