import { finiteOrNull, input, output, type Relation } from './relation.ts';

const mm2_s = 1e-6;

/** Upper end of the band of ν100 in mm²/s, then L = aY² + bY + c and H = dY² + eY + f. */
const bands: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [3.8, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077],
  [4.4, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183],
  [5.0, 2.5, -7.2143, 13.812, 0.82143, 1.5679, 0.119],
  [6.4, 0.101, 16.635, -45.469, 0.04985, 9.1613, -18.557],
  [7.0, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656],
  [7.7, 0.01191, 21.475, -72.87, 0.79762, -0.7321, 14.61],
  [9.0, 0.41858, 16.1558, -56.04, 0.05794, 10.5156, -28.24],
  [12, 0.88779, 7.5527, -16.6, 0.26665, 6.7015, -10.81],
  [15, 0.7672, 10.7972, -38.18, 0.20073, 8.4658, -22.49],
  [18, 0.97305, 5.3135, -2.2, 0.28889, 5.9741, -4.93],
  [22, 0.97256, 5.25, -0.98, 0.24504, 7.416, -16.73],
  [28, 0.91413, 7.4759, -21.82, 0.20323, 9.1267, -34.23],
  [40, 0.87031, 9.7157, -50.77, 0.18411, 10.1015, -46.75],
  [55, 0.84703, 12.6752, -133.31, 0.17029, 11.4866, -80.62],
  [70, 0.85921, 11.1009, -83.19, 0.1713, 11.368, -76.94],
  [Infinity, 0.8353, 14.67, -216, 0.1684, 11.85, -97],
];

/** Viscosity at 40 °C of the two reference oils with the same ν100: index 0 (L) and index 100 (H). */
export interface ReferenceOils {
  readonly L_m2_s: number;
  readonly H_m2_s: number;
}

/**
 * The reference oils of the index, by quadratic in ν100.
 *
 *   L = a Y² + b Y + c,  H = d Y² + e Y + f,  Y = ν100 in mm²/s
 *
 * nu100        [m²/s]
 * returns      L, H [m²/s]; null below 2 mm²/s, where the index is not defined
 * range        ν100 ≥ 2 mm²/s; to 70 the quadratics stand for Table 1 within 0.12 %, above it they are the standard's own
 * source       iso2909; astmD2270 above 70      check: Table 1, row 15.0, L 296.5, H 149.7
 */
export function referenceOils(oil: { nu100_m2_s: number }): ReferenceOils | null {
  const Y = oil.nu100_m2_s / mm2_s;
  // 2.0 mm²/s as 2e-6 m²/s comes back as 2 − 2e-16
  if (!(Y >= 2 * (1 - 1e-12)) || Y === Infinity) return null;
  const [, a, b, c, d, e, f] = bands.find(([to]) => Y <= to)!;
  return { L_m2_s: (a * Y ** 2 + b * Y + c) * mm2_s, H_m2_s: (d * Y ** 2 + e * Y + f) * mm2_s };
}

/**
 * Viscosity index to and including 100 (procedure A).
 *
 *   VI = 100 (L − U)/(L − H),  U = ν40
 *
 * all          [m²/s]
 * returns      VI [1], not rounded
 * range        U ≥ H
 * source       astmD2270      check: example 5.1.4: 73.30, L 119.94, H 69.48 give 92.43
 */
export const indexByProcedureA = (oil: { nu40_m2_s: number; L_m2_s: number; H_m2_s: number }): number =>
  (100 * (oil.L_m2_s - oil.nu40_m2_s)) / (oil.L_m2_s - oil.H_m2_s);

/**
 * Viscosity index of 100 and above (procedure B).
 *
 *   N = (log H − log U)/log Y,  VI = (10^N − 1)/0.00715 + 100,  Y = ν100 in mm²/s
 *
 * all          [m²/s]
 * returns      VI [1], not rounded
 * range        U ≤ H
 * source       astmD2270      check: example 6.1.4 (1): 22.83, 5.05, H 28.97 give 156.37
 */
export const indexByProcedureB = (oil: { nu40_m2_s: number; nu100_m2_s: number; H_m2_s: number }): number => {
  const N = Math.log10(oil.H_m2_s / oil.nu40_m2_s) / Math.log10(oil.nu100_m2_s / mm2_s);
  return (10 ** N - 1) / 0.00715 + 100;
};

/** Viscosity index, not rounded, by the procedure that applies; null where it is not defined. */
export function viscosityIndex(oil: { nu40_m2_s: number; nu100_m2_s: number }): number | null {
  const reference = referenceOils(oil);
  if (reference === null || !(oil.nu40_m2_s > oil.nu100_m2_s) || oil.nu40_m2_s === Infinity) return null;
  return finiteOrNull(
    oil.nu40_m2_s < reference.H_m2_s
      ? indexByProcedureB({ ...oil, H_m2_s: reference.H_m2_s })
      : indexByProcedureA({ ...oil, ...reference }),
  );
}

/** As the standard reports it: a whole number, a half to the even one. */
export function reportedIndex(index: number): number {
  const floor = Math.floor(index);
  if (index - floor === 0.5) return floor % 2 === 0 ? floor : floor + 1;
  return Math.round(index);
}

const nu40 = input('nu40_m2_s', 'U', 'kinematic viscosity at 40 °C', 'm²/s');
const nu100 = input('nu100_m2_s', 'Y', 'kinematic viscosity at 100 °C', 'm²/s');
const low = input('L_m2_s', 'L', 'viscosity at 40 °C of the reference oil of index 0', 'm²/s');
const high = input('H_m2_s', 'H', 'viscosity at 40 °C of the reference oil of index 100', 'm²/s');
const index = output('VI', 'viscosity index', '1');
const compact = { relative: 0.002, why: 'L and H by quadratics, 0.12 % off Table 1 at most' };

export const viscosityIndexRelation: Relation<{ readonly nu40_m2_s: number; readonly nu100_m2_s: number }> = {
  id: 'viscosity-index',
  title: 'Viscosity index from the two viscosities',
  formula: {
    latex: String.raw`L=aY^2+bY+c,\quad H=dY^2+eY+f,\quad \mathrm{VI}=\begin{cases}100\,\frac{L-U}{L-H}&U\ge H\\ \frac{10^{N}-1}{0.00715}+100&U<H\end{cases}`,
    plain: 'L = aY² + bY + c, H = dY² + eY + f by band of Y; procedure A where U ≥ H, procedure B where U < H',
  },
  symbols: [nu40, nu100, index],
  range: [{ symbol: 'Y', from: 2e-6, to: null, why: 'the index is defined from 2 mm²/s at 100 °C' }],
  source: 'iso2909',
  grade: 'VC',
  checks: [
    {
      source: 'ASTM D2270, example 5.1.4',
      seen: 'published',
      inputs: { nu40_m2_s: 73.3e-6, nu100_m2_s: 8.86e-6 },
      printed: '92.43',
      within: compact,
    },
    {
      source: 'ASTM D2270, example 6.1.4 (1), H not rounded, as an open chemistry library tests it',
      seen: 'published',
      inputs: { nu40_m2_s: 22.83e-6, nu100_m2_s: 5.05e-6 },
      printed: '156.42348293',
      within: compact,
    },
    {
      source: 'ASTM D2270, example 6.1.4 (2): 53.47 and 7.80 mm²/s',
      seen: 'published',
      inputs: { nu40_m2_s: 53.47e-6, nu100_m2_s: 7.8e-6 },
      printed: '111.30',
      within: compact,
    },
    {
      source: 'ASTM D2270 above 70 mm²/s, as an open chemistry library tests it',
      seen: 'published',
      inputs: { nu40_m2_s: 1000e-6, nu100_m2_s: 100e-6 },
      printed: '192.99754281',
    },
  ],
  of: (oil) => viscosityIndex(oil),
};

type ByA = { readonly nu40_m2_s: number; readonly L_m2_s: number; readonly H_m2_s: number };
export const procedureARelation: Relation<ByA> = {
  id: 'viscosity-index-procedure-a',
  title: 'Viscosity index to 100, reference oils given',
  formula: { latex: String.raw`\mathrm{VI}=100\,\frac{L-U}{L-H}`, plain: 'VI = 100 (L − U)/(L − H)' },
  symbols: [nu40, low, high, index],
  range: [{ symbol: 'VI', from: null, to: 100, why: 'above 100 procedure B applies' }],
  source: 'astmD2270',
  grade: 'V2',
  checks: [
    {
      source: 'ASTM D2270, example 5.1.4',
      seen: 'published',
      inputs: { nu40_m2_s: 73.3e-6, L_m2_s: 119.94e-6, H_m2_s: 69.48e-6 },
      printed: '92.43',
    },
  ],
  of: (oil) => finiteOrNull(indexByProcedureA(oil)),
};

type ByB = { readonly nu40_m2_s: number; readonly nu100_m2_s: number; readonly H_m2_s: number };
const example = (mm2s: { U: number; Y: number; H: number }): ByB => ({
  nu40_m2_s: mm2s.U * mm2_s,
  nu100_m2_s: mm2s.Y * mm2_s,
  H_m2_s: mm2s.H * mm2_s,
});
const roundedN = { relative: 1e-4, why: 'the examples round N and its antilog on the way' };
export const procedureBRelation: Relation<ByB> = {
  id: 'viscosity-index-procedure-b',
  title: 'Viscosity index from 100, reference oil given',
  formula: {
    latex: String.raw`N=\frac{\log H-\log U}{\log Y},\quad \mathrm{VI}=\frac{10^{N}-1}{0.00715}+100`,
    plain: 'N = (log H − log U)/log Y, VI = (10^N − 1)/0.00715 + 100',
  },
  symbols: [nu40, nu100, high, index],
  range: [{ symbol: 'VI', from: 100, to: null, why: 'below 100 procedure A applies' }],
  source: 'astmD2270',
  grade: 'V2',
  checks: [
    {
      source: 'ASTM D2270, example 6.1.4 (1)',
      seen: 'published',
      inputs: example({ U: 22.83, Y: 5.05, H: 28.97 }),
      printed: '156.37',
      within: roundedN,
    },
    {
      source: 'ASTM D2270, example 6.1.4 (2)',
      seen: 'published',
      inputs: example({ U: 53.47, Y: 7.8, H: 57.31 }),
      printed: '111.30',
      within: roundedN,
    },
    {
      source: 'example 6.1.4 (1) with H 28.975, as an open chemistry library tests it',
      seen: 'published',
      inputs: example({ U: 22.83, Y: 5.05, H: 28.975 }),
      printed: '156.42348293',
    },
    {
      source: 'Table 1 row 15.0, computed by an independent script',
      seen: 'computed',
      inputs: example({ U: 102, Y: 15, H: 149.7 }),
      printed: '153.9462',
    },
  ],
  of: (oil) => (oil.nu40_m2_s > 0 ? finiteOrNull(indexByProcedureB(oil)) : null),
};
