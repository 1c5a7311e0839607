import { finiteOrNull, input, output, type Relation } from './relation.ts';

/** What a warm surface gives off to large surroundings: a painted casting more than free air takes, a machined one next to nothing. */

/** W/(m²·K⁴), exact since 2019 (CODATA). */
export const stefanBoltzmann = 5.670374419e-8;
const script = 'computed by an independent script';

const surface = input('surface_K', 'Ts', 'temperature of the surface', '°C');
const around = input('around_K', 'Ta', 'temperature of the surroundings', '°C');
const emissivity = input('emissivity', 'ε', 'emissivity: 0.9 painted or cast, 0.1 machined bright', '1');
const range: Relation['range'] = [{ symbol: 'ε', from: 0, to: 1, why: 'a share of what a black surface gives off' }];

export const blackBodyRelation: Relation<{ readonly surface_K: number; readonly emissivity: number }> = {
  id: 'radiated',
  title: 'What a surface gives off',
  formula: { latex: String.raw`E=\varepsilon\sigma T_s^4`, plain: 'E = ε·σ·Ts⁴' },
  symbols: [surface, emissivity, output('E', 'heat given off a surface', 'W/m²')],
  range,
  source: 'incroperaConvection',
  grade: 'V2',
  checks: [
    {
      source: 'pipe: Incropera and DeWitt, Example 1.2',
      seen: 'memory',
      inputs: { surface_K: 473.15, emissivity: 0.8 },
      printed: '2270',
      within: { relative: 0.002, why: 'the book reckons with 273' },
    },
    {
      source: 'pipe, what comes back from the room: Incropera and DeWitt, Example 1.2',
      seen: 'memory',
      inputs: { surface_K: 298.15, emissivity: 1 },
      printed: '447',
      within: { relative: 0.003, why: 'the book reckons with 273' },
    },
  ],
  of: ({ surface_K, emissivity: e }) =>
    surface_K > 0 && e >= 0 ? finiteOrNull(e * stefanBoltzmann * surface_K ** 4) : null,
};

type Radiating = { readonly surface_K: number; readonly around_K: number; readonly emissivity: number };
export const radiationRelation: Relation<Radiating> = {
  id: 'radiation',
  title: 'Radiation as a heat-transfer coefficient',
  formula: {
    latex: String.raw`h_r=\varepsilon\sigma(T_s+T_a)(T_s^2+T_a^2)`,
    plain: 'hr = ε·σ·(Ts + Ta)·(Ts² + Ta²)',
  },
  symbols: [surface, around, emissivity, output('hr', 'heat-transfer coefficient of radiation', 'W/(m²·K)')],
  range,
  source: 'incroperaConvection',
  grade: 'V2',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { surface_K: 363.15, around_K: 293.15, emissivity: 0.9 },
      printed: '7.295316',
    },
    {
      source: script,
      seen: 'computed',
      inputs: { surface_K: 363.15, around_K: 293.15, emissivity: 0.1 },
      printed: '0.8105907',
    },
  ],
  of: ({ surface_K: s, around_K: a, emissivity: e }) =>
    s > 0 && a > 0 && e >= 0 ? finiteOrNull(e * stefanBoltzmann * (s + a) * (s ** 2 + a ** 2)) : null,
};

export const radiationCubicRelation: Relation<Radiating> = {
  id: 'radiation-cubic',
  title: 'Radiation at the mean temperature',
  formula: {
    latex: String.raw`h_r=0.23\cdot10^{-6}\,\varepsilon T_m^3`,
    plain: 'hr = 0.23e−6·ε·Tm³, Tm the mean of both',
  },
  symbols: [surface, around, emissivity, output('hr', 'heat-transfer coefficient of radiation', 'W/(m²·K)')],
  range,
  source: 'isoTr14179of2',
  grade: 'VC',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { surface_K: 363.15, around_K: 293.15, emissivity: 0.9 },
      printed: '7.314549',
    },
  ],
  of: ({ surface_K: s, around_K: a, emissivity: e }) =>
    s > 0 && a > 0 && e >= 0 ? finiteOrNull(0.23e-6 * e * ((s + a) / 2) ** 3) : null,
};
