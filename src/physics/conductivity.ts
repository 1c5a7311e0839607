import { finiteOrNull, input, output, type Relation } from './relation.ts';

/** How far the figure is carried: against one handbook oil it reads 9 to 11 % low. */
export const conductivityBand = 0.12;

/**
 * Thermal conductivity of a mineral oil.
 *
 *   k = 0.1172 (1 − 0.00054 t)/s,  s = ρ15/999,  t in °C
 *
 * density15    [kg/m³], oil [K]
 * returns      k [W/(m·K)], ± 12 %; null for a density that is not above 0
 * range        0 °C to 200 °C, mineral oils of 750 to 1000 kg/m³
 * source       cragoe1929      check: Incropera & DeWitt, Table A.5: 0.139 at 340 K, Cragoe 9 to 11 % below
 */
export const conductivity_W_mK = (oil: { density15_kg_m3: number; oil_K: number }): number | null =>
  oil.density15_kg_m3 > 0
    ? finiteOrNull((0.1172 * (1 - 0.00054 * (oil.oil_K - 273.15))) / (oil.density15_kg_m3 / 999))
    : null;

export const conductivityRelation: Relation<{ readonly density15_kg_m3: number; readonly oil_K: number }> = {
  id: 'conductivity-mineral-oil',
  title: 'Thermal conductivity of a mineral oil',
  formula: {
    latex: String.raw`k=\frac{0.1172\,(1-0.00054\,t)}{s},\quad s=\frac{\rho_{15}}{999}`,
    plain: 'k = 0.1172 (1 − 0.00054 t)/s, s = ρ15/999, t in °C',
  },
  symbols: [
    input('density15_kg_m3', 'ρ15', 'density at 15 °C', 'kg/m³'),
    input('oil_K', 'T', 'oil temperature', 'K'),
    output('k', 'thermal conductivity', 'W/(m·K)'),
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
        [20, '0.13325775'],
        [60, '0.13034795'],
        [100, '0.12743816'],
        [140, '0.12452837'],
      ] as const
    ).map(([oil_C, printed]) => ({
      source: 'computed by an independent script, s = 0.87',
      seen: 'computed' as const,
      inputs: { density15_kg_m3: 0.87 * 999, oil_K: oil_C + 273.15 },
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
      source: 'Incropera & DeWitt, Table A.5, engine oil',
      seen: 'memory' as const,
      inputs: { density15_kg_m3: 0.8934 * 999, oil_K },
      printed,
      within: { relative: conductivityBand, why: 'the relation is carried with ± 12 %; it reads 9 to 11 % low here' },
    })),
  ],
  of: (oil) => conductivity_W_mK(oil),
};
