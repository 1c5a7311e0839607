import { finiteOrNull, input, output, type Relation } from './relation.ts';

const at15_K = 288.15;
const at20_K = 293.15;

/**
 * Density of an oil with a constant expansion, as its note states it.
 *
 *   ρ = ρ15 [1 − β (T − 288.15)]
 *
 * density15    [kg/m³], expansion β [1/K], oil [K]
 * returns      ρ [kg/m³]
 * range        −20 °C to 120 °C
 * source       commonPractice      check: 0.65 kg/m³ a kelvin on 870 kg/m³ gives 821.25 at 90 °C, 0.1 % off ASTM D1250
 */
export const density_kg_m3 = (oil: { density15_kg_m3: number; expansion_1_K: number; oil_K: number }): number =>
  oil.density15_kg_m3 * (1 - oil.expansion_1_K * (oil.oil_K - at15_K));

/**
 * Density of a lubricating oil by volume correction factor.
 *
 *   α = 0.6278/ρ15,  VCF = exp[−α D (1 + 0.8 α D)],  D = T − 288.15,  ρ = ρ15 VCF
 *
 * density15    [kg/m³], oil [K]
 * returns      ρ [kg/m³]
 * range        800 to 1164 kg/m³ at 15 °C, −20 °C to 150 °C      (from memory: check before use)
 * source       astmD1250      check: 870 kg/m³ gives 822.2375 at 90 °C (computed by another program)
 */
export function densityByVcf_kg_m3(oil: { density15_kg_m3: number; oil_K: number }): number {
  const alphaD = (0.6278 / oil.density15_kg_m3) * (oil.oil_K - at15_K);
  return oil.density15_kg_m3 * Math.exp(-alphaD * (1 + 0.8 * alphaD));
}

/**
 * Litres of a weighed oil at a temperature.
 *
 *   V = m/ρ(T)
 *
 * mass         [kg]; otherwise as density_kg_m3
 * returns      V [m³]
 * range        as density_kg_m3
 * source       definition      check: common practice, no source
 */
export const volume_m3 = (oil: {
  mass_kg: number;
  density15_kg_m3: number;
  expansion_1_K: number;
  oil_K: number;
}): number => oil.mass_kg / density_kg_m3(oil);

/** The same at 20 °C, the temperature the book counts litres at. */
export const volumeAt20_m3 = (oil: { mass_kg: number; density15_kg_m3: number; expansion_1_K: number }): number =>
  volume_m3({ ...oil, oil_K: at20_K });

/** What a volume becomes when the same oil is warmer or cooler: V (1 − β D_from)/(1 − β D_to). */
export const volumeMoved_m3 = (oil: {
  volume_m3: number;
  expansion_1_K: number;
  from_K: number;
  to_K: number;
}): number =>
  (oil.volume_m3 * (1 - oil.expansion_1_K * (oil.from_K - at15_K))) / (1 - oil.expansion_1_K * (oil.to_K - at15_K));

const density15 = input('density15_kg_m3', 'ρ15', 'density at 15 °C', 'kg/m³');
const expansion = input('expansion_1_K', 'β', 'expansion', '1/K');
const oil = input('oil_K', 'T', 'oil temperature', 'K');
const mass = input('mass_kg', 'm', 'mass of oil', 'kg');
const tempRange: Relation['range'] = [
  { symbol: 'T', from: 253.15, to: 393.15, why: 'a constant expansion holds between −20 °C and 120 °C' },
];

type Linear = { readonly density15_kg_m3: number; readonly expansion_1_K: number; readonly oil_K: number };
export const densityRelation: Relation<Linear> = {
  id: 'density-linear',
  title: 'Density of an oil with a constant expansion',
  formula: { latex: String.raw`\rho=\rho_{15}\,[1-\beta\,(T-288.15)]`, plain: 'ρ = ρ15 [1 − β (T − 288.15 K)]' },
  symbols: [density15, expansion, oil, output('ρ', 'density', 'kg/m³')],
  range: tempRange,
  source: 'commonPractice',
  grade: 'VC',
  checks: [
    {
      source: 'ASTM D1250 lube-oil form at 90 °C, computed by an independent script',
      seen: 'computed',
      inputs: { density15_kg_m3: 870, expansion_1_K: 0.65 / 870, oil_K: 363.15 },
      printed: '822.2375',
      within: { relative: 0.0013, why: 'the linear rule of 0.65 kg/m³ a kelvin stands 0.12 % off at 90 °C' },
    },
  ],
  of: (given) => finiteOrNull(density_kg_m3(given)),
};

export const densityByVcfRelation: Relation<{ readonly density15_kg_m3: number; readonly oil_K: number }> = {
  id: 'density-vcf-lube',
  title: 'Density of a lubricating oil by volume correction factor',
  formula: {
    latex: String.raw`\rho=\rho_{15}\exp[-\alpha D(1+0.8\,\alpha D)],\quad \alpha=\frac{0.6278}{\rho_{15}},\ D=T-288.15`,
    plain: 'ρ = ρ15 exp[−α D (1 + 0.8 α D)], α = 0.6278/ρ15, D = T − 288.15 K',
  },
  symbols: [density15, oil, output('ρ', 'density', 'kg/m³')],
  range: [
    { symbol: 'ρ15', from: 800, to: 1164, why: 'lubricating oils of the tables (from memory)' },
    { symbol: 'T', from: 253.15, to: 423.15, why: 'temperatures of the tables (from memory)' },
  ],
  source: 'astmD1250',
  grade: 'VC',
  checks: [
    {
      source: 'computed by an independent script',
      seen: 'computed',
      inputs: { density15_kg_m3: 870, oil_K: 363.15 },
      printed: '822.2375',
      within: { relative: 1e-7, why: 'given to seven digits' },
    },
    ...(
      [
        [300, '884.1'],
        [340, '859.9'],
        [370, '841.8'],
        [400, '825.1'],
      ] as const
    ).map(([oil_K, printed]) => ({
      source: 'Incropera & DeWitt, Table A.5, engine oil',
      seen: 'memory' as const,
      inputs: { density15_kg_m3: 892.6, oil_K },
      printed,
      within: { relative: 0.006, why: 'another oil than the one the tables were made for' },
    })),
  ],
  of: (given) => finiteOrNull(densityByVcf_kg_m3(given)),
};

type Weighed = { readonly mass_kg: number; readonly density15_kg_m3: number; readonly expansion_1_K: number };
export const volumeAt20Relation: Relation<Weighed> = {
  id: 'volume-at-20',
  title: 'Litres at 20 °C from mass',
  formula: {
    latex: String.raw`V_{20}=\frac{m}{\rho_{15}\,[1-5\,\beta]}`,
    plain: 'V20 = m/(ρ15 [1 − β · 5 K])',
  },
  symbols: [mass, density15, expansion, output('V20', 'litres at 20 °C', 'm³')],
  range: [],
  source: 'definition',
  grade: 'VC',
  checks: [
    {
      source: 'ASTM D1250 lube-oil form: 1.740 kg of 870 kg/m³ at 20 °C, from the table of the reference oil (0.36 %)',
      seen: 'computed',
      inputs: { mass_kg: 1.74, density15_kg_m3: 870, expansion_1_K: 0.0007 },
      printed: '2.0072',
      unit: 'L',
      within: { relative: 0.0005, why: 'linear expansion against the volume correction factor over 5 K' },
    },
  ],
  of: (given) => finiteOrNull(volumeAt20_m3(given)),
};
