import { churnedSurface_m2, type Churned } from './churning.ts';
import { finiteOrNull, input, output, type Relation } from './relation.ts';

/** Other laws of churning and of discs, recalled: they show how far apart such laws lie. None is a default. */

const script = 'computed by an independent script from recalled constants';

/** Torque of a gear by the chord that dips, three branches of Reynolds number, N·m; null where the gear does not dip. */
export function chordChurning_Nm(of: Churned): number | null {
  const { radius_m: R, dip_m, speed_rad_s: omega, nu_m2_s } = of;
  if (!(R > 0 && dip_m > 0 && dip_m <= 2 * R && omega > 0 && nu_m2_s > 0)) return null;
  const chord_m = 2 * Math.sqrt(dip_m * (2 * R - dip_m));
  const Re = (omega * R * chord_m) / nu_m2_s;
  const C = Re < 2000 ? 20 / Re : Re < 1e5 ? 8.6e-4 * Re ** (1 / 3) : 5e8 / Re ** 2;
  return finiteOrNull(0.5 * of.density_kg_m3 * omega ** 2 * R ** 3 * churnedSurface_m2(of) * C);
}

type Bath = {
  readonly shape: number;
  readonly dip_m: number;
  readonly otherDip_m: number;
  readonly width_m: number;
  readonly pitchSpeed_m_s: number;
};
export const hydraulicTorqueRelation: Relation<Bath> = {
  id: 'churning-hydraulic-torque',
  title: 'Hydraulic torque of a gear stage in its bath (unverified)',
  formula: {
    latex: String.raw`T=C_{Sp}C_1e^{C_2v/v_0},\ C_1=0.063\frac{h_1+h_2}{h_0}+0.0128\left(\frac{b}{b_0}\right)^3,\ C_2=\frac{h_1+h_2}{80h_0}+0.2`,
    plain: 'T = CSp·C1·exp(C2·v/10), C1 = 0.063 (h1 + h2)/10 + 0.0128 (b/10)³, C2 = (h1 + h2)/800 + 0.2; mm, m/s, N·m',
  },
  symbols: [
    input('shape', 'CSp', 'shape of the splash', '1'),
    input('dip_m', 'h1', 'dip of the one gear', 'mm'),
    input('otherDip_m', 'h2', 'dip of the other', 'mm'),
    input('width_m', 'b', 'face width', 'mm'),
    input('pitchSpeed_m_s', 'v', 'speed at the pitch circle', 'm/s'),
    output('T', 'hydraulic torque', 'N·m'),
  ],
  range: [],
  source: 'isoTr14179of2',
  grade: 'U',
  checks: [
    {
      source: script,
      seen: 'computed',
      inputs: { shape: 1, dip_m: 0.045, otherDip_m: 0, width_m: 0.035, pitchSpeed_m_s: 8.2885305 },
      printed: '1.029251',
    },
  ],
  of: ({ shape, dip_m, otherDip_m, width_m, pitchSpeed_m_s }) => {
    if (!(dip_m >= 0 && otherDip_m >= 0 && width_m > 0 && pitchSpeed_m_s >= 0)) return null;
    const dips = (dip_m + otherDip_m) / 0.01;
    const C1 = 0.063 * dips + 0.0128 * (width_m / 0.01) ** 3;
    return finiteOrNull(shape * C1 * Math.exp(((dips / 80 + 0.2) * pitchSpeed_m_s) / 10));
  },
};

const disc = (
  row: Pick<Relation, 'id' | 'title' | 'formula' | 'range'>,
  of: (Re: number) => number,
  check: readonly [number, string],
): Relation<{ readonly Re: number }> => ({
  ...row,
  symbols: [input('Re', 'Re', 'Reynolds number, ω·R²/ν', '1'), output('C', 'coefficient of torque, both sides', '1')],
  source: 'karman1921',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: { Re: check[0] }, printed: check[1] }],
  of: ({ Re }) => (Re > 0 ? finiteOrNull(of(Re)) : null),
});
export const freeDiscLaminarRelation = disc(
  {
    id: 'disc-free-laminar',
    title: 'A disc turning free in oil, laminar',
    formula: { latex: String.raw`C=\frac{3.87}{Re^{0.5}}`, plain: 'C = 3.87/Re^0.5, T = ½ C ρ ω² R⁵' },
    range: [{ symbol: 'Re', from: null, to: 3e5, why: 'above some 300 000 the layer is turbulent' }],
  },
  (Re) => 3.87 / Math.sqrt(Re),
  [1e5, '0.012238015'],
);
export const freeDiscTurbulentRelation = disc(
  {
    id: 'disc-free-turbulent',
    title: 'A disc turning free in oil, turbulent',
    formula: { latex: String.raw`C=\frac{0.146}{Re^{0.2}}`, plain: 'C = 0.146/Re^0.2, T = ½ C ρ ω² R⁵' },
    range: [{ symbol: 'Re', from: 3e5, to: null, why: 'below some 300 000 the layer is laminar' }],
  },
  (Re) => 0.146 / Re ** 0.2,
  [1e6, '0.0092119772'],
);

export const enclosedDiscRelation: Relation<{ readonly Re: number; readonly gapRatio: number }> = {
  id: 'disc-enclosed',
  title: 'A disc close to walls (unverified)',
  formula: {
    latex: String.raw`C=\max\left(\frac{2\pi}{(s/R)Re},\frac{3.70(s/R)^{0.1}}{Re^{0.5}},\frac{0.080}{(s/R)^{1/6}Re^{0.25}},\frac{0.102(s/R)^{0.1}}{Re^{0.2}}\right)`,
    plain:
      'C is the largest of 2π/((s/R) Re), 3.70 (s/R)^0.1/Re^0.5, 0.080/((s/R)^(1/6) Re^0.25), 0.102 (s/R)^0.1/Re^0.2',
  },
  symbols: [
    input('Re', 'Re', 'Reynolds number, ω·R²/ν', '1'),
    input('gapRatio', 's/R', 'axial gap over radius', '1'),
    output('C', 'coefficient of torque, both sides', '1'),
  ],
  range: [],
  source: 'dailyNece1960',
  grade: 'U',
  checks: [{ source: script, seen: 'computed', inputs: { Re: 1e5, gapRatio: 0.1 }, printed: '0.0092939798' }],
  of: ({ Re, gapRatio }) =>
    Re > 0 && gapRatio > 0 ? finiteOrNull(Math.max(...enclosedRegimes({ Re, gapRatio }))) : null,
};

/** The four regimes in their order; the largest governs. */
export const enclosedRegimes = ({
  Re,
  gapRatio,
}: {
  readonly Re: number;
  readonly gapRatio: number;
}): readonly number[] => [
  (2 * Math.PI) / (gapRatio * Re),
  (3.7 * gapRatio ** 0.1) / Math.sqrt(Re),
  0.08 / (gapRatio ** (1 / 6) * Re ** 0.25),
  (0.102 * gapRatio ** 0.1) / Re ** 0.2,
];
