import { finiteOrNull, input, output, type Relation } from './relation.ts';

/**
 * Density of oil with air in it: entrained air lowers it.
 *
 *   ρ = ρo (1 − φ) + ρa φ
 *
 * oil, air     [kg/m³], φ air share by volume [1]
 * returns      ρ [kg/m³]
 * range        0 ≤ φ ≤ 1
 * source       definition      check: 822 kg/m³ with 5.1157125 % of air of 1 kg/m³ is 780 kg/m³
 */
export const aeratedDensity_kg_m3 = (of: { oil_kg_m3: number; air_kg_m3: number; airShare: number }): number =>
  of.oil_kg_m3 * (1 - of.airShare) + of.air_kg_m3 * of.airShare;

/**
 * Air share of a weighed sample, the same turned round.
 *
 *   φ = (ρo − ρ)/(ρo − ρa)
 *
 * oil at the temperature of the sample, air, sample [kg/m³]
 * returns      φ [1], below 0 when the sample is heavier than its oil; null unless the oil is heavier than air
 * range        0 ≤ φ ≤ 1
 * source       definition      check: 780 against 822 and 1 kg/m³: 0.051157125
 */
export const airShare = (of: { oil_kg_m3: number; air_kg_m3: number; sample_kg_m3: number }): number | null =>
  of.oil_kg_m3 > of.air_kg_m3 ? finiteOrNull((of.oil_kg_m3 - of.sample_kg_m3) / (of.oil_kg_m3 - of.air_kg_m3)) : null;

const oil = input('oil_kg_m3', 'ρo', 'density of the oil', 'kg/m³');
const air = input('air_kg_m3', 'ρa', 'density of the air', 'kg/m³');
const script = 'computed by an independent script';
const share = [{ symbol: 'φ', from: 0, to: 1, why: 'a share lies between nothing and all' }];

type Mixture = { readonly oil_kg_m3: number; readonly air_kg_m3: number; readonly airShare: number };
export const aeratedDensityRelation: Relation<Mixture> = {
  id: 'aerated-density',
  title: 'Density of oil with air in it',
  formula: { latex: String.raw`\rho=\rho_o(1-\varphi)+\rho_a\varphi`, plain: 'ρ = ρo (1 − φ) + ρa φ' },
  symbols: [oil, air, input('airShare', 'φ', 'air share by volume', '1'), output('ρ', 'density', 'kg/m³')],
  range: share,
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { oil_kg_m3: 822, air_kg_m3: 1, airShare: 0.051157125 },
      printed: '780.0000',
    },
  ],
  of: (mixture) => finiteOrNull(aeratedDensity_kg_m3(mixture)),
};

type Sample = { readonly oil_kg_m3: number; readonly air_kg_m3: number; readonly sample_kg_m3: number };
export const airShareRelation: Relation<Sample> = {
  id: 'air-share',
  title: 'Air share of a weighed sample',
  formula: { latex: String.raw`\varphi=\frac{\rho_o-\rho}{\rho_o-\rho_a}`, plain: 'φ = (ρo − ρ)/(ρo − ρa)' },
  symbols: [oil, air, input('sample_kg_m3', 'ρ', 'density of the sample', 'kg/m³'), output('φ', 'air share', '1')],
  range: share,
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { oil_kg_m3: 822, air_kg_m3: 1, sample_kg_m3: 780 },
      printed: '0.051157125',
    },
  ],
  of: (sample) => airShare(sample),
};
