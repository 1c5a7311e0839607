import { finiteOrNull, input, output, type Relation } from './relation.ts';
import { gravity_m_s2 } from './speeds.ts';

interface Drawn {
  readonly viscosity_Pa_s: number;
  readonly speed_m_s: number;
  readonly tension_N_m: number;
}

/**
 * Viscous against capillary force on a wall that leaves its oil.
 *
 *   Ca = η U/σ
 *
 * viscosity    [Pa·s], speed [m/s], surface tension σ [N/m]: about 0.030 for an oil (common practice)
 * returns      [1]; null for a tension that is not above 0
 * range        none
 * source       definition      check: 88.7 mPa·s at 50 mm/s and 30 mN/m: 0.14783333 (another program)
 */
export const capillaryNumber = (at: Drawn): number | null =>
  at.tension_N_m > 0 ? finiteOrNull((at.viscosity_Pa_s * at.speed_m_s) / at.tension_N_m) : null;

/** Length at which surface tension and weight are alike, l = √(σ/(ρ g)) [m]; null unless both are above 0. */
export const capillaryLength_m = (oil: { tension_N_m: number; density_kg_m3: number }): number | null =>
  oil.tension_N_m > 0 && oil.density_kg_m3 > 0
    ? finiteOrNull(Math.sqrt(oil.tension_N_m / (oil.density_kg_m3 * gravity_m_s2)))
    : null;

/**
 * Film that a wall draws out of its oil slowly, where surface tension holds it back.
 *
 *   h = 0.944 l Ca^(2/3)
 *
 * capillary length l [m], capillary number Ca [1]
 * returns      h [m]; null for a capillary number below 0
 * range        Ca under about 0.01: a ring gear has 0.2 to 70, so that this is a limit at a crawl and no law of an axle
 * source       landauLevich1942      check: 0.49491153 mm (computed by another program)
 */
export const drawnFilm_m = (at: { capillaryLength_m: number; capillary: number }): number | null =>
  at.capillary >= 0 && at.capillaryLength_m >= 0
    ? finiteOrNull(0.944 * at.capillaryLength_m * at.capillary ** (2 / 3))
    : null;

const script = 'computed by an independent script';
const tension = input('tension_N_m', 'σ', 'surface tension', 'N/m');
const drawn: Record<keyof Drawn, number> = { viscosity_Pa_s: 0.0887, speed_m_s: 0.05, tension_N_m: 0.03 };

export const capillaryNumberRelation: Relation<Readonly<Record<keyof Drawn, number>>> = {
  id: 'capillary-number',
  title: 'Capillary number of a wall leaving its oil',
  formula: { latex: String.raw`\mathrm{Ca}=\frac{\eta U}{\sigma}`, plain: 'Ca = η U/σ' },
  symbols: [
    input('viscosity_Pa_s', 'η', 'dynamic viscosity', 'Pa·s'),
    input('speed_m_s', 'U', 'speed of the wall', 'm/s'),
    tension,
    output('Ca', 'capillary number', '1'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [{ source: script, seen: 'computed', inputs: drawn, printed: '0.14783333' }],
  of: (at) => capillaryNumber(at),
};

export const capillaryLengthRelation: Relation<{ readonly tension_N_m: number; readonly density_kg_m3: number }> = {
  id: 'capillary-length',
  title: 'Capillary length of an oil',
  formula: { latex: String.raw`l=\sqrt{\frac{\sigma}{\rho g}}`, plain: 'l = √(σ/(ρ g))' },
  symbols: [tension, input('density_kg_m3', 'ρ', 'density', 'kg/m³'), output('l', 'capillary length', 'mm')],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'by hand: √(0.030 N/m/(870 · 9.80665 N/m³))',
      seen: 'computed',
      inputs: { tension_N_m: 0.03, density_kg_m3: 870 },
      printed: '1.8752',
    },
  ],
  of: (oil) => capillaryLength_m(oil),
};

export const drawnFilmRelation: Relation<{ readonly capillaryLength_m: number; readonly capillary: number }> = {
  id: 'film-drawn',
  title: 'Film drawn out of the oil by a slow wall',
  formula: { latex: String.raw`h=0.944\,l\,\mathrm{Ca}^{2/3}`, plain: 'h = 0.944 l Ca^(2/3)' },
  symbols: [
    input('capillaryLength_m', 'l', 'capillary length', 'm'),
    input('capillary', 'Ca', 'capillary number', '1'),
    output('h', 'thickness of the film', 'mm'),
  ],
  range: [{ symbol: 'Ca', from: null, to: 0.01, why: 'above it weight and not surface tension limits the film' }],
  source: 'landauLevich1942',
  grade: 'VC',
  checks: [
    {
      source: `l of 870 kg/m³ and 30 mN/m at Ca 0.14783333, ${script}`,
      seen: 'computed',
      inputs: { capillaryLength_m: Math.sqrt(0.03 / (870 * 9.80665)), capillary: (0.0887 * 0.05) / 0.03 },
      printed: '0.49491153',
    },
  ],
  of: (at) => drawnFilm_m(at),
};
