import { allAbove0, answer } from './answer.ts';
import { input, output, type Relation } from './relation.ts';

/** CODATA 2018, exact by the definition of the kelvin. */
export const stefanBoltzmann_W_m2K4 = 5.670374419e-8;

interface Radiating {
  readonly emissivity: number;
  readonly surface_K: number;
  readonly ambient_K: number;
}

const radiates = (at: Radiating): boolean =>
  at.emissivity >= 0 && at.emissivity <= 1 && at.surface_K >= 0 && at.ambient_K >= 0;

/**
 * Heat radiated, per area and kelvin of the rise, by a surface within much larger surroundings.
 *
 *   h = ε σ (Ts + Ta) (Ts² + Ta²)
 *
 * emissivity   [1], surface, surroundings [K]: absolute temperatures
 * returns      h [W/(m²·K)]; null for an emissivity outside 0–1 or a temperature below 0 K
 * range        a grey surface that does not see itself; surroundings at the temperature of the air: no exhaust beside it
 * source       incropera      check: 0.9 at 90 °C in 20 °C: 7.2953163 W/(m²·K) (computed by another program)
 */
export function radiationCoefficient_W_m2K(at: Radiating): number | null {
  if (!radiates(at)) return null;
  const { emissivity, surface_K, ambient_K } = at;
  return answer(emissivity * stefanBoltzmann_W_m2K4 * (surface_K + ambient_K) * (surface_K ** 2 + ambient_K ** 2));
}

/** The same by the cube of the mean temperature, h = 0.23e-6 ε Tm³, which writes 4 σ as 0.23e-6; null as above. */
export function radiationByCube_W_m2K(at: Radiating): number | null {
  const mean_K = (at.surface_K + at.ambient_K) / 2;
  return radiates(at) ? answer(0.23e-6 * at.emissivity * mean_K ** 3) : null;
}

type Surface = Radiating & { readonly area_m2: number; readonly film_W_m2K: number };

/**
 * Heat from a surface by air and by radiation together.
 *
 *   Q = A [h (Ts − Ta) + ε σ (Ts⁴ − Ta⁴)]
 *
 * area         [m²], film coefficient h [W/(m²·K)], emissivity [1], surface, air and surroundings [K]
 * returns      Q [W], negative from a surface colder than the air; null for an area that is not above 0, a film below 0, and
 *              as the radiation
 * range        as the radiation
 * source       incropera      check: example 1.2, pipe of 70 mm at 200 °C: 998 W a metre
 */
export function surfaceHeat_W(at: Surface): number | null {
  const radiation_W_m2K = radiationCoefficient_W_m2K(at);
  if (radiation_W_m2K === null || !allAbove0(at.area_m2) || !(at.film_W_m2K >= 0)) return null;
  return answer(at.area_m2 * (at.film_W_m2K + radiation_W_m2K) * (at.surface_K - at.ambient_K));
}

const script = 'computed by an independent script';
const emissivity = input('emissivity', 'ε', 'emissivity, 0.9 painted or cast black, near 0.1 shiny', '1');
const surface = input('surface_K', 'Ts', 'surface temperature', 'K');
const ambient = input('ambient_K', 'Ta', 'air and surroundings', 'K');
const warm = { surface_K: 363.15, ambient_K: 293.15 };
type Inputs = Readonly<Record<keyof Radiating, number>>;

export const radiationRelation: Relation<Inputs> = {
  id: 'radiation-coefficient',
  title: 'Radiation as a film coefficient',
  formula: {
    latex: String.raw`h_r=\varepsilon\sigma\,(T_s+T_a)(T_s^2+T_a^2)`,
    plain: 'hr = ε σ (Ts + Ta)(Ts² + Ta²)',
  },
  symbols: [emissivity, surface, ambient, output('hr', 'film coefficient of radiation', 'W/(m²·K)')],
  range: [{ symbol: 'ε', from: 0, to: 1, why: 'an emissivity is between 0 and 1' }],
  source: 'incropera',
  grade: 'V2',
  checks: [
    { source: `dark casting, ${script}`, seen: 'computed', inputs: { ...warm, emissivity: 0.9 }, printed: '7.2953163' },
    {
      source: `bare aluminium, ${script}`,
      seen: 'computed',
      inputs: { ...warm, emissivity: 0.1 },
      printed: '0.8105907',
    },
  ],
  of: (at) => radiationCoefficient_W_m2K(at),
};

export const radiationByCubeRelation: Relation<Inputs> = {
  id: 'radiation-by-cube',
  title: 'Radiation by the cube of the mean temperature',
  formula: {
    latex: String.raw`h_r=0.23\cdot10^{-6}\,\varepsilon\,T_m^3,\quad T_m=\frac{T_s+T_a}{2}`,
    plain: 'hr = 0.23e-6 ε Tm³, Tm = (Ts + Ta)/2',
  },
  symbols: [emissivity, surface, ambient, output('hr', 'film coefficient of radiation', 'W/(m²·K)')],
  range: [{ symbol: 'ε', from: 0, to: 1, why: 'an emissivity is between 0 and 1' }],
  source: 'iso14179part2',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: { ...warm, emissivity: 0.9 }, printed: '7.3145493' }],
  of: (at) => radiationByCube_W_m2K(at),
};

export const surfaceHeatRelation: Relation<Readonly<Record<keyof Surface, number>>> = {
  id: 'surface-heat',
  title: 'Heat from a surface by air and by radiation',
  formula: {
    latex: String.raw`Q=A\left[h\,(T_s-T_a)+\varepsilon\sigma\,(T_s^4-T_a^4)\right]`,
    plain: 'Q = A [h (Ts − Ta) + ε σ (Ts⁴ − Ta⁴)]',
  },
  symbols: [
    input('area_m2', 'A', 'surface', 'm²'),
    input('film_W_m2K', 'h', 'film coefficient of the air', 'W/(m²·K)'),
    emissivity,
    surface,
    ambient,
    output('Q', 'heat from the surface', 'W'),
  ],
  range: [{ symbol: 'ε', from: 0, to: 1, why: 'an emissivity is between 0 and 1' }],
  source: 'incropera',
  grade: 'V2',
  checks: [
    {
      source: 'Incropera & DeWitt, 6th edition, example 1.2: pipe of 70 mm at 200 °C in 25 °C, a metre of it',
      seen: 'memory',
      inputs: { area_m2: Math.PI * 0.07, film_W_m2K: 15, emissivity: 0.8, surface_K: 473.15, ambient_K: 298.15 },
      printed: '998',
    },
    {
      source: 'the same example: what a square metre of it emits, 473 K',
      seen: 'memory',
      inputs: { area_m2: 1, film_W_m2K: 0, emissivity: 0.8, surface_K: 473, ambient_K: 0 },
      printed: '2.27e3',
    },
    {
      source: 'the same example: what falls on a square metre of it, 298 K',
      seen: 'memory',
      inputs: { area_m2: 1, film_W_m2K: 0, emissivity: 1, surface_K: 298, ambient_K: 0 },
      printed: '447',
      note: 'the example rounds 25 °C to 298 K',
    },
  ],
  of: (at) => surfaceHeat_W(at),
};
