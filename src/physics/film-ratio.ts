import { finiteOrNull, input, output, type Relation } from './relation.ts';

interface Rough {
  readonly film_m: number;
  readonly roughness1_m: number;
  readonly roughness2_m: number;
}

/**
 * Film over roughness.
 *
 *   Λ = h/√(Rq1² + Rq2²)
 *
 * film, roughness Rq of both surfaces [m]; Rq is about 1.25 Ra, and running in halves it (common practice)
 * returns      Λ [1], ± 40 % at best on an axle; null for surfaces without roughness and for a film below 0
 * range        none; below 1 is no prediction of failure
 * source       commonPractice      check: 0.63778311 µm over twice 0.5 µm is 0.90196152 (another program)
 */
export function lambdaRatio(at: Rough): number | null {
  const roughness_m = Math.hypot(at.roughness1_m, at.roughness2_m);
  return roughness_m > 0 && at.film_m >= 0 ? finiteOrNull(at.film_m / roughness_m) : null;
}

/** Which of the three a film ratio stands for; limits 1 and 3 are common practice, no source. */
export const filmRegime = (lambda: number): 'boundary' | 'mixed' | 'full' =>
  lambda < 1 ? 'boundary' : lambda <= 3 ? 'mixed' : 'full';

interface Change {
  readonly viscosity1_Pa_s: number;
  readonly viscosity2_Pa_s: number;
  readonly alpha1_1_Pa: number;
  readonly alpha2_1_Pa: number;
}

/**
 * How the film of one contact changes with its oil: far better known than the film itself.
 *
 *   h2/h1 = (η2/η1)^0.68 (α2/α1)^0.49
 *
 * viscosities  [Pa·s], alpha [1/Pa]; contact, speed and load the same
 * returns      [1], good to a few percent; null where a quantity is not above 0
 * range        none
 * source       hamrockDowson      check: half the viscosity costs 38 % of the film
 */
export function filmChange(of: Change): number | null {
  const ratios = [of.viscosity2_Pa_s / of.viscosity1_Pa_s, of.alpha2_1_Pa / of.alpha1_1_Pa] as const;
  const given = [of.viscosity1_Pa_s, of.viscosity2_Pa_s, of.alpha1_1_Pa, of.alpha2_1_Pa];
  return given.every((value) => value > 0) ? finiteOrNull(ratios[0] ** 0.68 * ratios[1] ** 0.49) : null;
}

interface Heated {
  readonly viscosity_Pa_s: number;
  readonly thinning_1_K: number;
  readonly speed_m_s: number;
  readonly oilConductivity_W_mK: number;
  readonly slideRoll: number;
  readonly hertz_Pa: number;
  readonly modulus_Pa: number;
}

/** Heat made in the inlet against heat led away, L = β η u²/k [1]; null for no conductivity. */
export const inletHeating = (at: Heated): number | null =>
  at.oilConductivity_W_mK > 0
    ? finiteOrNull((at.thinning_1_K * at.viscosity_Pa_s * at.speed_m_s ** 2) / at.oilConductivity_W_mK)
    : null;

/**
 * Share of the film that is left when the inlet heats itself, unverified.
 *
 *   φ = [1 − 13.2 (p/E') L^0.42]/[1 + 0.213 (1 + 2.23 S^0.83) L^0.64],  L = β η u²/k
 *
 * viscosity    [Pa·s], thinning β with temperature [1/K], mean speed [m/s], conductivity of the oil [W/(m·K)], slide-roll S [1],
 *              pressure p and modulus E' [Pa]
 * returns      φ [1]; null where nothing above 0 comes out
 * range        none stated
 * source       gupta1992      check: 0.81883527 (computed by another program)
 */
export function thermalFilmShare(at: Heated): number | null {
  const L = inletHeating(at);
  if (L === null || !(at.modulus_Pa > 0)) return null;
  const share =
    (1 - 13.2 * (at.hertz_Pa / at.modulus_Pa) * L ** 0.42) /
    (1 + 0.213 * (1 + 2.23 * at.slideRoll ** 0.83) * L ** 0.64);
  return share > 0 ? finiteOrNull(share) : null;
}

const script = 'computed by an independent script';
const rough = (film_m: number): Record<keyof Rough, number> => ({ film_m, roughness1_m: 0.5e-6, roughness2_m: 0.5e-6 });

export const lambdaRelation: Relation<Readonly<Record<keyof Rough, number>>> = {
  id: 'film-lambda',
  title: 'Film over roughness',
  formula: {
    latex: String.raw`\Lambda=\frac{h}{\sqrt{R_{q1}^2+R_{q2}^2}}`,
    plain: 'Λ = h/√(Rq1² + Rq2²); below 1 boundary, 1 to 3 mixed, above 3 full film',
  },
  symbols: [
    input('film_m', 'h', 'least film thickness', 'm'),
    input('roughness1_m', 'Rq1', 'roughness Rq of the first surface', 'm'),
    input('roughness2_m', 'Rq2', 'roughness Rq of the second surface', 'm'),
    output('Λ', 'film over roughness', '1'),
  ],
  range: [],
  source: 'commonPractice',
  grade: 'VC',
  checks: (
    [
      [60, 0.63778311, '0.90196152'],
      [90, 0.31091776, '0.43970411'],
      [120, 0.17913745, '0.25333861'],
      [140, 0.13225392, '0.18703529'],
    ] as const
  ).map(([oil_C, film_um, printed]) => ({
    source: `axle contact in the reference oil at ${oil_C} °C, ${script}`,
    seen: 'computed',
    inputs: rough(film_um * 1e-6),
    printed,
    within: { relative: 1e-6, why: 'the film is printed to eight digits' },
  })),
  of: (at) => lambdaRatio(at),
};

export const filmChangeRelation: Relation<Readonly<Record<keyof Change, number>>> = {
  id: 'film-change',
  title: 'Change of a film with its oil',
  formula: {
    latex: String.raw`\frac{h_2}{h_1}=\left(\frac{\eta_2}{\eta_1}\right)^{0.68}\left(\frac{\alpha_2}{\alpha_1}\right)^{0.49}`,
    plain: 'h2/h1 = (η2/η1)^0.68 (α2/α1)^0.49',
  },
  symbols: [
    input('viscosity1_Pa_s', 'η1', 'dynamic viscosity before', 'Pa·s'),
    input('viscosity2_Pa_s', 'η2', 'dynamic viscosity after', 'Pa·s'),
    input('alpha1_1_Pa', 'α1', 'pressure–viscosity coefficient before', '1/Pa'),
    input('alpha2_1_Pa', 'α2', 'pressure–viscosity coefficient after', '1/Pa'),
    output('h2/h1', 'film after over film before', '1'),
  ],
  range: [],
  source: 'hamrockDowson',
  grade: 'V2',
  checks: [
    {
      source: 'half the viscosity costs 38 % of the film, by hand',
      seen: 'computed',
      inputs: { viscosity1_Pa_s: 0.02, viscosity2_Pa_s: 0.01, alpha1_1_Pa: 2e-8, alpha2_1_Pa: 2e-8 },
      printed: '0.62',
    },
    {
      source: `0.13225392 over 0.63778311 µm, reference oil from 60 to 140 °C, ${script}`,
      seen: 'computed',
      inputs: {
        viscosity1_Pa_s: 0.039141443,
        viscosity2_Pa_s: 0.0054953235,
        alpha1_1_Pa: 2.1368945e-8,
        alpha2_1_Pa: 1.3140935e-8,
      },
      printed: '0.207365',
    },
  ],
  of: (oils) => filmChange(oils),
};

export const thermalFilmRelation: Relation<Readonly<Record<keyof Heated, number>>> = {
  id: 'film-thermal',
  title: 'Share of a film that is left when its inlet heats up, unverified',
  formula: {
    latex: String.raw`\varphi=\frac{1-13.2\,(p/E')\,L^{0.42}}{1+0.213\,(1+2.23\,S^{0.83})\,L^{0.64}},\quad L=\frac{\beta\eta u^2}{k}`,
    plain: "φ = [1 − 13.2 (p/E') L^0.42]/[1 + 0.213 (1 + 2.23 S^0.83) L^0.64], L = β η u²/k",
  },
  symbols: [
    input('viscosity_Pa_s', 'η', 'dynamic viscosity', 'Pa·s'),
    input('thinning_1_K', 'β', 'thinning with temperature', '1/K'),
    input('speed_m_s', 'u', 'mean speed of the two surfaces', 'm/s'),
    input('oilConductivity_W_mK', 'k', 'thermal conductivity of the oil', 'W/(m·K)'),
    input('slideRoll', 'S', 'slide-roll ratio', '1'),
    input('hertz_Pa', 'p', 'greatest pressure in the contact', 'Pa'),
    input('modulus_Pa', "E'", 'modulus of the pair', 'Pa'),
    output('φ', 'share of the film that is left', '1'),
  ],
  range: [],
  source: 'gupta1992',
  grade: 'U',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: {
        viscosity_Pa_s: 0.0122,
        thinning_1_K: 0.04,
        speed_m_s: 8,
        oilConductivity_W_mK: 0.13,
        slideRoll: 0.4,
        hertz_Pa: 1.2e9,
        modulus_Pa: 228e9,
      },
      printed: '0.81883527',
    },
  ],
  of: (at) => thermalFilmShare(at),
};
