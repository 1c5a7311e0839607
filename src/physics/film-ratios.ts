import { filmExponents } from './film.ts';
import { input, output, type Relation } from './relation.ts';

/** What a film is to the roughness, to another film of the same axle, and to its own heat. */

const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);
const script = 'computed by an independent script';

export const filmRatioRelation: Relation<{ readonly viscosity_ratio: number; readonly alpha_ratio: number }> = {
  id: 'film-ratio',
  title: 'Film against that of another state of the same axle',
  formula: {
    latex: String.raw`\frac{h_2}{h_1}=\left(\frac{\eta_2}{\eta_1}\right)^{0.68}\left(\frac{\alpha_2}{\alpha_1}\right)^{0.49}`,
    plain: 'h2/h1 = (η2/η1)^0.68 (α2/α1)^0.49',
  },
  symbols: [
    input('viscosity_ratio', 'η2/η1', 'dynamic viscosity over that of the first', '1'),
    input('alpha_ratio', 'α2/α1', 'pressure–viscosity coefficient over that of the first', '1'),
    output('h2/h1', 'film over that of the first', '1'),
  ],
  range: [],
  source: 'hamrockDowson',
  grade: 'V2',
  checks: [
    {
      source: `reference oil at 120 against 60 °C: films 0.17913745 and 0.63778311 µm, ${script}`,
      seen: 'computed',
      inputs: { viscosity_ratio: 0.0079283921 / 0.039141443, alpha_ratio: 1.4677136e-8 / 2.1368945e-8 },
      printed: '0.2808752',
    },
  ],
  of: ({ viscosity_ratio, alpha_ratio }) =>
    viscosity_ratio > 0 && alpha_ratio > 0
      ? finite(viscosity_ratio ** filmExponents.viscosity * alpha_ratio ** filmExponents.alpha)
      : null,
};

export const lambdaRelation: Relation<{ readonly film_m: number; readonly Rq1_m: number; readonly Rq2_m: number }> = {
  id: 'film-lambda',
  title: 'Film over roughness',
  formula: { latex: String.raw`\Lambda=\frac{h}{\sqrt{R_{q1}^2+R_{q2}^2}}`, plain: 'Λ = h/√(Rq1² + Rq2²)' },
  symbols: [
    input('film_m', 'h', 'least film', 'µm'),
    input('Rq1_m', 'Rq1', 'roughness of the one, root mean square', 'µm'),
    input('Rq2_m', 'Rq2', 'roughness of the other', 'µm'),
    output('Λ', 'film over roughness', '1'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `reference oil at 60 °C, ${script}`,
      seen: 'computed',
      inputs: { film_m: 0.63778311e-6, Rq1_m: 0.5e-6, Rq2_m: 0.5e-6 },
      printed: '0.9019615',
    },
    {
      source: `reference oil at 140 °C, ${script}`,
      seen: 'computed',
      inputs: { film_m: 0.13225392e-6, Rq1_m: 0.5e-6, Rq2_m: 0.5e-6 },
      printed: '0.1870353',
    },
  ],
  of: ({ film_m, Rq1_m, Rq2_m }) =>
    film_m >= 0 && Math.hypot(Rq1_m, Rq2_m) > 0 ? finite(film_m / Math.hypot(Rq1_m, Rq2_m)) : null,
};

/** L = β·η0·u²/k: what the oil heats itself by in the inlet. */
export type FilmHeat = {
  readonly viscosity_Pa_s: number;
  readonly beta_1_K: number;
  readonly speed_m_s: number;
  readonly conductivity_W_mK: number;
  readonly slideRoll: number;
  readonly pressure_Pa: number;
  readonly E_Pa: number;
};

export const filmHeatRelation: Relation<FilmHeat> = {
  id: 'film-thermal',
  title: 'What the heat of the inlet takes off a film (unverified)',
  formula: {
    latex: String.raw`\varphi_T=\frac{1-13.2\,(p_H/E')\,L^{0.42}}{1+0.213\,(1+2.23\,S^{0.83})\,L^{0.64}},\quad L=\frac{\beta\eta_0u^2}{k}`,
    plain: 'φT = [1 − 13.2 (pH/E′) L^0.42]/[1 + 0.213 (1 + 2.23 S^0.83) L^0.64], L = β·η0·u²/k',
  },
  symbols: [
    input('viscosity_Pa_s', 'η0', 'dynamic viscosity', 'mPa·s'),
    input('beta_1_K', 'β', 'fall of ln viscosity with temperature', '1/K'),
    input('speed_m_s', 'u', 'mean of the two surface speeds', 'm/s'),
    input('conductivity_W_mK', 'k', 'thermal conductivity of the oil', 'W/(m·K)'),
    input('slideRoll', 'S', 'sliding over rolling', '1'),
    input('pressure_Pa', 'pH', 'largest contact pressure', 'MPa'),
    input('E_Pa', 'E′', 'effective modulus', 'MPa'),
    output('φT', 'share of the film that is left', '1'),
  ],
  range: [],
  source: 'gupta1992',
  grade: 'U',
  checks: [
    {
      source: `${script} from the recalled constants`,
      seen: 'computed',
      inputs: {
        ...{ viscosity_Pa_s: 0.0122, beta_1_K: 0.04, speed_m_s: 8, conductivity_W_mK: 0.13 },
        ...{ slideRoll: 0.4, pressure_Pa: 1.2e9, E_Pa: 228e9 },
      },
      printed: '0.8188353',
    },
  ],
  of: (of) => {
    const L = (of.beta_1_K * of.viscosity_Pa_s * of.speed_m_s ** 2) / of.conductivity_W_mK;
    if (!(L >= 0) || !(of.slideRoll >= 0) || !(of.E_Pa > 0)) return null;
    const above = 1 - 13.2 * (of.pressure_Pa / of.E_Pa) * L ** 0.42;
    return above > 0 ? finite(above / (1 + 0.213 * (1 + 2.23 * of.slideRoll ** 0.83) * L ** 0.64)) : null;
  },
};

export const oilLifeRelation: Relation<{ readonly oil_K: number; readonly reference_K: number }> = {
  id: 'oil-life-ratio',
  title: 'How the life of one oil goes with its temperature',
  formula: { latex: String.raw`\frac{L}{L_1}=2^{-(T-T_1)/10\,\mathrm{K}}`, plain: 'L/L1 = 2^(−(T − T1)/10 K)' },
  symbols: [
    input('oil_K', 'T', 'oil temperature', 'K'),
    input('reference_K', 'T1', 'oil temperature of the first', 'K'),
    output('L/L1', 'life over that of the first, within a factor of 1.5', '1'),
  ],
  range: [
    { symbol: 'T', from: 353.15, to: null, why: 'below some 80 °C other things set the life of an oil' },
    { symbol: 'T', from: null, to: 423.15, why: 'above 150 °C the rule was not seen' },
  ],
  source: 'turbineOil1986',
  grade: 'V1',
  checks: [
    {
      source: 'oxidation doubles with each 10 °C: turbine oils in test and service, ASTM STP (1986), abstract',
      seen: 'published',
      inputs: { oil_K: 393.15, reference_K: 363.15 },
      printed: '0.125',
    },
  ],
  of: ({ oil_K, reference_K }) => (oil_K > 0 && reference_K > 0 ? finite(2 ** (-(oil_K - reference_K) / 10)) : null),
};
