import { allAbove0, answer } from './answer.ts';
import { input, output, type Relation } from './relation.ts';

/** Nusselt number of the gap, with its width as length, where the gap is the optimum. */
const nusseltAtOptimum = 1.307;

interface Gap {
  /** Along the fins, upright. */
  readonly length_m: number;
  readonly rayleigh: number;
}

/**
 * Gap between upright fins at which a wall hands most heat to still air; closer than that the air stands.
 *
 *   S = 2.714 L/Ra^¼,  Ra with L
 *
 * length of the fins, upright [m], rayleigh with that length [1]
 * returns      S [m]; null unless length and Ra are above 0
 * range        upright fins of one temperature in still air
 * source       barCohen1984      check: circulated solution of the upright heat sink, 0.18 m: 7.5 mm
 */
export const optimumFinGap_m = (at: Gap): number | null =>
  allAbove0(at.length_m, at.rayleigh) ? answer((2.714 * at.length_m) / at.rayleigh ** 0.25) : null;

/** Film coefficient in the optimum gap, h = 1.307 k/S [W/(m²·K)]; null unless conductivity and gap are above 0. */
export const optimumGapFilm_W_m2K = (at: { conductivity_W_mK: number; gap_m: number }): number | null =>
  allAbove0(at.conductivity_W_mK, at.gap_m) ? answer((nusseltAtOptimum * at.conductivity_W_mK) / at.gap_m) : null;

export const optimumFinGapRelation: Relation<Readonly<Record<keyof Gap, number>>> = {
  id: 'fin-gap',
  title: 'Optimum gap between upright fins in still air',
  formula: { latex: String.raw`S=\frac{2.714\,L}{\mathrm{Ra}_L^{1/4}}`, plain: 'S = 2.714 L/Ra^(1/4)' },
  symbols: [
    input('length_m', 'L', 'length of the fins, upright', 'm'),
    input('rayleigh', 'Ra', 'Rayleigh number with that length', '1'),
    output('S', 'gap between fins', 'm'),
  ],
  range: [],
  source: 'barCohen1984',
  grade: 'V1',
  checks: [
    {
      source: 'circulated solution of the upright heat sink, fins of 0.18 m',
      seen: 'published',
      inputs: { length_m: 0.18, rayleigh: 1.8e7 },
      printed: '7.5',
      unit: 'mm',
    },
  ],
  of: (at) => optimumFinGap_m(at),
};

export const optimumGapFilmRelation: Relation<{ readonly conductivity_W_mK: number; readonly gap_m: number }> = {
  id: 'fin-gap-film',
  title: 'Film coefficient in the optimum gap',
  formula: { latex: String.raw`h=\frac{1.307\,k}{S}`, plain: 'h = 1.307 k/S' },
  symbols: [
    input('conductivity_W_mK', 'k', 'conductivity of air', 'W/(m·K)'),
    input('gap_m', 'S', 'optimum gap between fins', 'm'),
    output('h', 'film coefficient', 'W/(m²·K)'),
  ],
  range: [],
  source: 'barCohen1984',
  grade: 'V1',
  checks: [
    {
      source: 'circulated solution of the upright heat sink; conductivity of air at 55 °C from a handbook',
      seen: 'published',
      inputs: { conductivity_W_mK: 0.0284, gap_m: 0.0075 },
      printed: '4.83',
      within: { relative: 0.03, why: 'its gap is printed to two digits, its conductivity not at all' },
    },
  ],
  of: (at) => optimumGapFilm_W_m2K(at),
};
