import { densityByVcf_kg_m3 } from './density.ts';
import { finiteOrNull, input, output, type Relation } from './relation.ts';

const at15_K = 288.15;

/**
 * How much more room an oil takes than at 15 °C.
 *
 *   V/V15 − 1 = ρ15/ρ(T) − 1
 *
 * density15    [kg/m³], oil [K]
 * returns      [1]; null for a density that is not above 0
 * range        that of the volume correction factor
 * source       astmD1250      check: 870 kg/m³ at 90 °C: 5.8088448 % (computed by another program)
 */
export const volumeGrowth = (oil: { density15_kg_m3: number; oil_K: number }): number | null =>
  oil.density15_kg_m3 > 0 ? finiteOrNull(oil.density15_kg_m3 / densityByVcf_kg_m3(oil) - 1) : null;

/**
 * How much more room there is in a housing than at 15 °C: it grows by three times its length.
 *
 *   V/V15 − 1 = 3 a (T − 288.15)
 *
 * expansion a  [1/K] of length: iron 1.15e-5 (common practice, no source), housing [K]
 * returns      [1]
 * range        none
 * source       commonPractice      check: 75 K on iron: 0.26 %
 */
export const housingGrowth = (housing: { expansion_1_K: number; housing_K: number }): number | null =>
  finiteOrNull(3 * housing.expansion_1_K * (housing.housing_K - at15_K));

export const volumeGrowthRelation: Relation<{ readonly density15_kg_m3: number; readonly oil_K: number }> = {
  id: 'volume-growth',
  title: 'Growth of an oil against 15 °C',
  formula: {
    latex: String.raw`\frac{V}{V_{15}}-1=\frac{\rho_{15}}{\rho(T)}-1`,
    plain: 'V/V15 − 1 = ρ15/ρ(T) − 1, ρ by volume correction factor',
  },
  symbols: [
    input('density15_kg_m3', 'ρ15', 'density at 15 °C', 'kg/m³'),
    input('oil_K', 'T', 'oil temperature', 'K'),
    output('V/V15 − 1', 'growth of the volume', '%'),
  ],
  range: [
    { symbol: 'ρ15', from: 800, to: 1164, why: 'lubricating oils of the tables (from memory)' },
    { symbol: 'T', from: 253.15, to: 423.15, why: 'temperatures of the tables (from memory)' },
  ],
  source: 'astmD1250',
  grade: 'VC',
  checks: (
    [
      [-20, '-2.44'],
      [20, '0.36'],
      [60, '3.39'],
      [90, '5.8088448'],
      [140, '10.15'],
    ] as const
  ).map(([oil_C, printed]) => ({
    source: 'reference oil, computed by an independent script',
    seen: 'computed',
    inputs: { density15_kg_m3: 870, oil_K: oil_C + 273.15 },
    printed,
  })),
  of: (oil) => volumeGrowth(oil),
};

export const housingGrowthRelation: Relation<{ readonly expansion_1_K: number; readonly housing_K: number }> = {
  id: 'housing-growth',
  title: 'Growth of the room in a housing against 15 °C',
  formula: { latex: String.raw`\frac{V}{V_{15}}-1=3a\,(T-288.15)`, plain: 'V/V15 − 1 = 3 a (T − 288.15 K)' },
  symbols: [
    input('expansion_1_K', 'a', 'expansion of length of the housing', '1/K'),
    input('housing_K', 'T', 'temperature of the housing', 'K'),
    output('V/V15 − 1', 'growth of the volume', '%'),
  ],
  range: [],
  source: 'commonPractice',
  grade: 'VC',
  checks: [
    {
      source: 'by hand: 3 · 1.15e-5 1/K · 75 K',
      seen: 'computed',
      inputs: { expansion_1_K: 1.15e-5, housing_K: 363.15 },
      printed: '0.26',
    },
  ],
  of: (housing) => housingGrowth(housing),
};
