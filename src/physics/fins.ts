import { allAbove0, answer } from './answer.ts';
import { scaledI, scaledK } from './bessel.ts';
import { input, output, type Relation } from './relation.ts';

interface Fin {
  readonly film_W_m2K: number;
  readonly conductivity_W_mK: number;
  readonly thickness_m: number;
  /** From the base to the tip. */
  readonly height_m: number;
}

/** How fast the rise dies away along a fin, m = √[2 h/(k t)] [1/m]; null unless film, conductivity and thickness are above 0. */
export const finDecay_1_m = (fin: Omit<Fin, 'height_m'>): number | null =>
  allAbove0(fin.film_W_m2K, fin.conductivity_W_mK, fin.thickness_m)
    ? answer(Math.sqrt((2 * fin.film_W_m2K) / fin.conductivity_W_mK / fin.thickness_m))
    : null;

/** Height with half of the thickness added for the heat from the tip [m]. */
export const finHeightWithTip_m = (fin: Pick<Fin, 'height_m' | 'thickness_m'>): number =>
  fin.height_m + fin.thickness_m / 2;

/**
 * Efficiency of a straight fin: what it sheds over what it would shed at the temperature of its base.
 *
 *   η = tanh(m Lc)/(m Lc),  m = √[2 h/(k t)],  Lc = L + t/2
 *
 * film         [W/(m²·K)], conductivity [W/(m·K)], thickness, height [m]
 * returns      η [1], 0 to 1; null unless all four are above 0
 * range        a fin thin against its height, the same film all over it
 * source       incropera      check: 20 × 4 mm, 160 W/(m·K), 25 W/(m²·K): 0.9875836 (computed by another program)
 */
export function straightFinEfficiency(fin: Fin): number | null {
  const decay_1_m = finDecay_1_m(fin);
  if (decay_1_m === null || !allAbove0(fin.height_m)) return null;
  const mL = decay_1_m * finHeightWithTip_m(fin);
  return mL > 0 ? answer(Math.tanh(mL) / mL) : null;
}

/**
 * Efficiency of a ring fin round a tube.
 *
 *   η = 2 a/(b² − a²) · [K1(a) I1(b) − I1(a) K1(b)]/[I0(a) K1(b) + K0(a) I1(b)],  a = m r,  b = m (r + Lc)
 *
 * as straightFinEfficiency, radius of the tube r [m]
 * returns      η [1], 0 to 1; null unless all five are above 0
 * range        as straightFinEfficiency
 * source       incropera      check: the cylinder of example 3.10: 0.9785522 (computed by another program); a chart reads 0.95
 */
export function ringFinEfficiency(fin: Fin & { readonly radius_m: number }): number | null {
  const decay_1_m = finDecay_1_m(fin);
  if (decay_1_m === null || !allAbove0(fin.height_m, fin.radius_m)) return null;
  const width = decay_1_m * finHeightWithTip_m(fin);
  const a = decay_1_m * fin.radius_m;
  const b = a + width;
  // I and K come without their growth, which is put back here as the ratio over the fin.
  const fall = Math.exp(-2 * width);
  const top = scaledK(1, a) * scaledI(1, b) - scaledI(1, a) * scaledK(1, b) * fall;
  const bottom = scaledI(0, a) * scaledK(1, b) * fall + scaledK(0, a) * scaledI(1, b);
  return answer(((2 * a) / (width * (a + b))) * (top / bottom));
}

interface FinnedWall {
  readonly fins: number;
  /** Of one fin, with its tip. */
  readonly finArea_m2: number;
  /** Between the fins. */
  readonly baseArea_m2: number;
  readonly efficiency: number;
  readonly film_W_m2K: number;
}

/**
 * What a wall with fins hands to the air, per kelvin of its base over the air.
 *
 *   K = h η0 A,  A = N Af + Ab,  η0 = 1 − (N Af/A)(1 − η)
 *
 * fins N, efficiency η  [1], areas [m²], film [W/(m²·K)]
 * returns      K [W/K]; null for a film or a surface that is not above 0, or an efficiency outside 0–1
 * range        the film of the wall without fins is an upper bound: air that stands between fins lowers it
 * source       incropera      check: example 3.10 with the efficiency of its chart: 690 W at 200 K
 */
export function finnedWall_W_K(wall: FinnedWall): number | null {
  const { fins, finArea_m2, baseArea_m2, efficiency, film_W_m2K } = wall;
  const inRange = fins >= 0 && finArea_m2 >= 0 && baseArea_m2 >= 0 && efficiency >= 0 && efficiency <= 1;
  if (!inRange || !allAbove0(film_W_m2K, fins * finArea_m2 + baseArea_m2)) return null;
  return answer(film_W_m2K * (fins * finArea_m2 * efficiency + baseArea_m2));
}

const film = input('film_W_m2K', 'h', 'film coefficient', 'W/(m²·K)');
const finSymbols = [
  film,
  input('conductivity_W_mK', 'k', 'conductivity of the fin', 'W/(m·K)'),
  input('thickness_m', 't', 'thickness of the fin', 'm'),
  input('height_m', 'L', 'height of the fin over its base', 'm'),
];
const efficiency = output('η', 'efficiency of the fin', '1');
const script = 'computed by an independent script';
const cylinder = { film_W_m2K: 50, conductivity_W_mK: 186, thickness_m: 0.006, height_m: 0.02, radius_m: 0.025 };

export const straightFinRelation: Relation<Readonly<Record<keyof Fin, number>>> = {
  id: 'fin-straight',
  title: 'Efficiency of a straight fin',
  formula: {
    latex: String.raw`\eta=\frac{\tanh(mL_c)}{mL_c},\quad m=\sqrt{\frac{2h}{kt}},\ L_c=L+\frac t2`,
    plain: 'η = tanh(m Lc)/(m Lc), m = √[2 h/(k t)], Lc = L + t/2',
  },
  symbols: [...finSymbols, efficiency],
  range: [],
  source: 'incropera',
  grade: 'VC',
  checks: [
    {
      source: `cast fin of a cover, 20 × 4 mm, ${script}`,
      seen: 'computed',
      inputs: { film_W_m2K: 25, conductivity_W_mK: 160, thickness_m: 0.004, height_m: 0.02 },
      printed: '0.9875836',
    },
    {
      source: 'circulated solution of the upright heat sink, fin of 24 × 1 mm',
      seen: 'published',
      inputs: { film_W_m2K: 4.83, conductivity_W_mK: 240, thickness_m: 0.001, height_m: 0.024 },
      printed: '0.992',
    },
  ],
  of: (fin) => straightFinEfficiency(fin),
};

export const ringFinRelation: Relation<Readonly<Record<keyof Fin | 'radius_m', number>>> = {
  id: 'fin-ring',
  title: 'Efficiency of a ring fin round a tube',
  formula: {
    latex: String.raw`\eta=\frac{2a}{b^2-a^2}\cdot\frac{K_1(a)I_1(b)-I_1(a)K_1(b)}{I_0(a)K_1(b)+K_0(a)I_1(b)},\quad a=mr,\ b=m(r+L_c)`,
    plain: 'η = 2 a/(b² − a²) · [K1(a) I1(b) − I1(a) K1(b)]/[I0(a) K1(b) + K0(a) I1(b)], a = m r, b = m (r + Lc)',
  },
  symbols: [...finSymbols, input('radius_m', 'r', 'outer radius of the tube', 'm'), efficiency],
  range: [],
  source: 'incropera',
  grade: 'VC',
  checks: [
    {
      source: `the finned cylinder of Incropera & DeWitt, example 3.10, ${script}`,
      seen: 'computed',
      inputs: cylinder,
      printed: '0.9785522',
      note: 'the book reads 0.95 off a chart',
    },
    {
      source: `deep thin fin, 60 × 1 mm, ${script}`,
      seen: 'computed',
      inputs: { film_W_m2K: 100, conductivity_W_mK: 20, thickness_m: 0.001, height_m: 0.06, radius_m: 0.02 },
      printed: '0.0807876904',
    },
  ],
  of: (fin) => ringFinEfficiency(fin),
};

export const finnedWallRelation: Relation<Readonly<Record<keyof FinnedWall, number>>> = {
  id: 'finned-wall',
  title: 'Heat from a wall with fins',
  formula: {
    latex: String.raw`K=h\,\eta_0A,\quad A=NA_f+A_b,\ \eta_0=1-\frac{NA_f}{A}(1-\eta)`,
    plain: 'K = h η0 A, A = N Af + Ab, η0 = 1 − (N Af/A)(1 − η)',
  },
  symbols: [
    input('fins', 'N', 'number of fins', '1'),
    input('finArea_m2', 'Af', 'surface of one fin', 'm²'),
    input('baseArea_m2', 'Ab', 'surface between the fins', 'm²'),
    input('efficiency', 'η', 'efficiency of the fin', '1'),
    film,
    output('K', 'heat a kelvin', 'W/K'),
  ],
  range: [],
  source: 'incropera',
  grade: 'VC',
  checks: [
    {
      source: 'Incropera & DeWitt, example 3.10: 690 W at 200 K, efficiency of its chart',
      seen: 'memory',
      inputs: { fins: 5, finArea_m2: 0.0105, baseArea_m2: 0.0716 - 5 * 0.0105, efficiency: 0.95, film_W_m2K: 50 },
      printed: '3.45',
    },
    {
      source: 'circulated solution of the upright heat sink: 34.2 W at 50 K',
      seen: 'published',
      inputs: { fins: 14, finArea_m2: 0.1235 / 14, baseArea_m2: 0.0191, efficiency: 0.992, film_W_m2K: 4.83 },
      printed: '0.684',
    },
    {
      source: `cover of 0.2 × 0.18 m with eight fins, ${script}`,
      seen: 'computed',
      inputs: {
        fins: 8,
        finArea_m2: 2 * 0.18 * 0.022,
        baseArea_m2: 0.2 * 0.18 - 8 * 0.004 * 0.18,
        efficiency: 0.9875836,
        film_W_m2K: 25,
      },
      printed: '2.320332',
    },
  ],
  of: (wall) => finnedWall_W_K(wall),
};
