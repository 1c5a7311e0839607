import { input, output, type Check, type Relation } from './relation.ts';

/**
 * Film between two rolling and sliding bodies. The speed is the mean of the two, not their sum; E′ follows
 * 2/E′ = (1 − ν1²)/E1 + (1 − ν2²)/E2. A ratio of two films of one axle is good to a few percent; one film alone ± 40 %.
 */
export type Contact = {
  readonly viscosity_Pa_s: number;
  readonly alpha_1_Pa: number;
  readonly speed_m_s: number;
  readonly E_Pa: number;
  readonly radius_m: number;
  readonly load_N: number;
};
export type PointContact = Contact & { readonly ellipticity: number };
export type LineContact = Contact & { readonly length_m: number };

/** What the viscosity, the pressure–viscosity coefficient, the speed and the load do to the least film of a point contact. */
export const filmExponents = { viscosity: 0.68, alpha: 0.49, speed: 0.68, load: -0.073 } as const;

const symbols = [
  input('viscosity_Pa_s', 'η0', 'dynamic viscosity at the temperature of the metal', 'mPa·s'),
  input('alpha_1_Pa', 'α', 'pressure–viscosity coefficient', '1/GPa'),
  input('speed_m_s', 'u', 'mean of the two surface speeds', 'm/s'),
  input('E_Pa', 'E′', 'effective modulus', 'MPa'),
  input('radius_m', 'Rx', 'effective radius along the motion', 'mm'),
  input('load_N', 'w', 'load', 'N'),
];
const ellipticity = input('ellipticity', 'k', 'ellipticity', '1');
const least = output('h', 'least film', 'µm');
const point = String.raw`U=\frac{\eta_0u}{E'R_x},\ G=\alpha E',\ W=\frac{w}{E'R_x^2}`;
const range: Relation['range'] = [
  { symbol: 'η0', from: 1e-3, to: 10, why: 'a liquid oil' },
  { symbol: 'k', from: 1, to: null, why: 'the long axis lies across the motion' },
];

/** U and G of a contact; null where one of its numbers is not above 0. */
function speedAndMaterial(of: Contact): { readonly U: number; readonly G: number } | null {
  const all = [of.viscosity_Pa_s, of.alpha_1_Pa, of.speed_m_s, of.E_Pa, of.radius_m, of.load_N];
  if (!all.every((x) => x > 0 && Number.isFinite(x))) return null;
  return { U: (of.viscosity_Pa_s * of.speed_m_s) / (of.E_Pa * of.radius_m), G: of.alpha_1_Pa * of.E_Pa };
}

const finite = (x: number): number | null => (Number.isFinite(x) && x > 0 ? x : null);

const ball = { viscosity_Pa_s: 0.04, alpha_1_Pa: 2.3e-8, speed_m_s: 6.25171, E_Pa: 219780200000, load_N: 4488.3 };
const raceOf = (radius_m: number) => ({ ...ball, radius_m, ellipticity: ellipticityOf(radius_m, 0.1651) });
const nasa = 'Hamrock and Anderson, NASA RP-1105 (1983), radial ball bearing';
const roller = {
  ...{ viscosity_Pa_s: 0.01, alpha_1_Pa: 2.2e-8, speed_m_s: 10.0608, E_Pa: 228022000000 },
  ...{ radius_m: 0.0064, load_N: 4800 },
};
const script = 'computed by an independent script';

/** The reference oil at four temperatures in one contact: viscosity, coefficient, least and central film. */
const warming: readonly (readonly [number, number, string, string])[] = [
  [0.039141443, 2.1368945e-8, '0.6377831', '0.8524037'],
  [0.015689471, 1.753762e-8, '0.3109178', '0.4160597'],
  [0.0079283921, 1.4677136e-8, '0.179137', '0.2396445'],
  [0.0054953235, 1.3140935e-8, '0.1322539', '0.176791'],
];
const warmed = (column: 2 | 3): Check<PointContact>[] =>
  warming.map((row) => ({
    source: `reference oil, ${script}`,
    seen: 'computed',
    inputs: {
      ...{ viscosity_Pa_s: row[0], alpha_1_Pa: row[1], speed_m_s: 5, E_Pa: 228e9 },
      ...{ radius_m: 0.015, load_N: 6000, ellipticity: 3 },
    },
    printed: row[column],
  }));

/** k = (Ry/Rx)^(2/π), of the radii across and along the motion. */
export const ellipticityOf = (along_m: number, across_m: number): number => (across_m / along_m) ** (2 / Math.PI);

export const pointFilmRelation: Relation<PointContact> = {
  id: 'film-point',
  title: 'Least film of a point contact',
  formula: {
    latex: String.raw`\frac{h}{R_x}=3.63\,U^{0.68}G^{0.49}W^{-0.073}(1-e^{-0.68k}),\quad ${point}`,
    plain: 'h/Rx = 3.63 U^0.68 G^0.49 W^−0.073 (1 − exp(−0.68 k)), U = η0·u/(E′·Rx), G = α·E′, W = w/(E′·Rx²)',
  },
  symbols: [...symbols, ellipticity, least],
  range,
  source: 'hamrockDowson',
  grade: 'V2',
  checks: [
    {
      source: `${nasa}, inner race`,
      seen: 'memory',
      inputs: raceOf(0.005109279),
      printed: '0.557',
      within: { relative: 0.002, why: 'the example rounds what it reckons with' },
    },
    { source: `${nasa}, outer race`, seen: 'memory', inputs: raceOf(0.007590721), printed: '0.665' },
    {
      source: 'Hamrock and Anderson, NASA RP-1105 (1983), cylindrical roller, as a very long point',
      seen: 'memory',
      inputs: { ...roller, ellipticity: 1e3 },
      printed: '0.32',
    },
    ...warmed(2),
  ],
  of: (of) => {
    const both = speedAndMaterial(of);
    if (both === null || !(of.ellipticity > 0)) return null;
    const W = of.load_N / (of.E_Pa * of.radius_m ** 2);
    const H = 3.63 * both.U ** 0.68 * both.G ** 0.49 * W ** -0.073 * (1 - Math.exp(-0.68 * of.ellipticity));
    return finite(H * of.radius_m);
  },
};

export const centralFilmRelation: Relation<PointContact> = {
  id: 'film-point-central',
  title: 'Film in the middle of a point contact',
  formula: {
    latex: String.raw`\frac{h}{R_x}=2.69\,U^{0.67}G^{0.53}W^{-0.067}(1-0.61\,e^{-0.73k}),\quad ${point}`,
    plain: 'h/Rx = 2.69 U^0.67 G^0.53 W^−0.067 (1 − 0.61 exp(−0.73 k))',
  },
  symbols: [...symbols, ellipticity, output('h', 'film in the middle', 'µm')],
  range,
  source: 'hamrockDowson',
  grade: 'V2',
  checks: [
    { source: script, seen: 'computed', inputs: raceOf(0.005109279), printed: '0.69479' },
    { source: script, seen: 'computed', inputs: raceOf(0.007590721), printed: '0.83268' },
    ...warmed(3),
  ],
  of: (of) => {
    const both = speedAndMaterial(of);
    if (both === null || !(of.ellipticity > 0)) return null;
    const W = of.load_N / (of.E_Pa * of.radius_m ** 2);
    const H = 2.69 * both.U ** 0.67 * both.G ** 0.53 * W ** -0.067 * (1 - 0.61 * Math.exp(-0.73 * of.ellipticity));
    return finite(H * of.radius_m);
  },
};

const length = input('length_m', 'l', 'length of the line', 'mm');
const line = String.raw`U=\frac{\eta_0u}{E'R_x},\ G=\alpha E',\ W=\frac{w}{E'R_xl}`;
function lineFilm(of: LineContact, [c, u, g, w]: readonly [number, number, number, number]): number | null {
  const both = speedAndMaterial(of);
  if (both === null || !(of.length_m > 0)) return null;
  const W = of.load_N / (of.E_Pa * of.radius_m * of.length_m);
  return finite(c * both.U ** u * both.G ** g * W ** w * of.radius_m);
}

export const lineFilmRelation: Relation<LineContact> = {
  id: 'film-line',
  title: 'Least film of a line contact',
  formula: {
    latex: String.raw`\frac{h}{R_x}=2.65\,U^{0.70}G^{0.54}W^{-0.13},\quad ${line}`,
    plain: 'h/Rx = 2.65 U^0.70 G^0.54 W^−0.13, W = w/(E′·Rx·l)',
  },
  symbols: [...symbols, length, least],
  range: [range[0]!],
  source: 'dowson1968',
  grade: 'V2',
  checks: [{ source: script, seen: 'computed', inputs: { ...roller, length_m: 0.016 }, printed: '0.39254478' }],
  of: (of) => lineFilm(of, [2.65, 0.7, 0.54, -0.13]),
};

export const lineFilmSecondRelation: Relation<LineContact> = {
  id: 'film-line-second',
  title: 'Least film of a line contact, second formula (unverified)',
  formula: {
    latex: String.raw`\frac{h}{R_x}=1.714\,W^{-0.128}U^{0.694}G^{0.568},\quad ${line}`,
    plain: 'h/Rx = 1.714 W^−0.128 U^0.694 G^0.568',
  },
  symbols: [...symbols, length, least],
  range: [range[0]!],
  source: 'panHamrock1989',
  grade: 'U',
  checks: [{ source: script, seen: 'computed', inputs: { ...roller, length_m: 0.016 }, printed: '0.36463673' }],
  of: (of) => lineFilm(of, [1.714, 0.694, 0.568, -0.128]),
};
