import { input, output, type Relation } from './relation.ts';
import { centrifugalRatio, gravity_m_s2, pitchLineSpeed_m_s } from './speeds.ts';
import { immersedHalfAngle_rad } from './wetted.ts';

/** Thickness of the film that a rising wall holds against its own weight, h = √(ν U/g) [m]. */
export const gravityFilm_m = (at: { nu_m2_s: number; speed_m_s: number }): number =>
  Math.sqrt((at.nu_m2_s * at.speed_m_s) / gravity_m_s2);

/**
 * Largest flow that a rising wall carries against gravity, a width of wall.
 *
 *   q = (2/3) U √(ν U/g)
 *
 * nu           [m²/s], speed of the wall [m/s]
 * returns      q [m²/s]
 * range        centrifugal ratio at most 1: above it oil is thrown off before it can run back, and nothing is held by weight;
 *              capillary number above about 0.1
 * source       deryagin1943      check: 15 mm²/s at 8.2885305 m/s: 0.019674801 m²/s (computed by another program)
 */
export const gravityFlow_m2_s = (at: { nu_m2_s: number; speed_m_s: number }): number =>
  (2 / 3) * at.speed_m_s * gravityFilm_m(at);

interface Dip {
  readonly radius_m: number;
  readonly immersion_m: number;
}

/** How long a point of the rim is in the oil, t = 2 θ R/U [s]; null for a gear at rest or without a radius. */
export function immersedTime_s(at: Dip & { speed_m_s: number }): number | null {
  const theta = immersedHalfAngle_rad(at);
  return theta === null || !(at.speed_m_s > 0) ? null : (2 * theta * at.radius_m) / at.speed_m_s;
}

/**
 * Flow that viscosity can set moving while a point of the rim is in the oil, a width of face.
 *
 *   q = 2 U √(ν t/π),  t = 2 θ R/U
 *
 * lengths      [m], nu [m²/s], speed of the rim [m/s]
 * returns      q [m²/s]; null as the time in the oil
 * range        a rim that is smooth and a layer that is thin against the dip
 * source       stokes1851      check: reference axle, 45 mm in at 8.2885305 m/s: 0.0057292466 m²/s (another program)
 */
export function boundaryLayerFlow_m2_s(at: Dip & { nu_m2_s: number; speed_m_s: number }): number | null {
  const t_s = immersedTime_s(at);
  return t_s === null ? null : 2 * at.speed_m_s * Math.sqrt((at.nu_m2_s * t_s) / Math.PI);
}

interface Pockets {
  readonly meanDiameter_m: number;
  readonly toothHeight_m: number;
  readonly face_m: number;
  readonly ring_rad_s: number;
  readonly fill: number;
}

/**
 * Flow carried in the gaps of the teeth: half of the ring of teeth is gap.
 *
 *   Q = f (π/2) Dm H b n,  n = ω/2π
 *
 * lengths      [m], ring [rad/s], fill f [1]
 * returns      Q [m³/s]
 * range        fill 0.1 to 0.6: how far the gaps fill is not known (common practice, no source)
 * source       commonPractice      check: 0.0014818548 m³/s with full gaps (computed by another program)
 */
export const toothPocketFlow_m3_s = (at: Pockets): number =>
  at.fill * (Math.PI / 2) * at.meanDiameter_m * at.toothHeight_m * at.face_m * (at.ring_rad_s / (2 * Math.PI));

/** How far the gaps of the teeth fill, from and to; common practice, no source. */
export const pocketFill = { low: 0.1, high: 0.6 } as const;

/** A ring gear turning in its oil. */
export interface TurningGear extends Dip {
  readonly ring_rad_s: number;
  readonly face_m: number;
  readonly toothHeight_m: number;
  readonly nu_m2_s: number;
}

/**
 * Oil that a ring gear carries out of the bath: an estimate, never a result of a trial.
 *
 *   Q = b q + Q_teeth(f),  q = min(q_gravity, q_layer) where Fr ≤ 1, q = q_layer where Fr > 1,  Dm = 2 R − H
 *
 * No more leaves than has been set moving in the oil, at any speed: the boundary layer is a limit throughout. Gravity is one
 * only up to Fr 1, while oil that stands on the rising side runs back by its weight; there it is nearly always the smaller,
 * for the two meet at Fr = 18 θ/π. Where it ends at Fr 1 the estimate therefore steps up, by √(18 θ/π) of the film: about
 * twice for a gear a quarter in. The step belongs to the estimate and not to the gear.
 *
 * lengths      [m], ring [rad/s], nu [m²/s], fill of the tooth gaps [1]
 * returns      Q [m³/s]; null for a gear that is not in the oil or wholly in it, or where a quantity is not above 0
 * range        fill 0.1 to 0.6, a factor of about three to five; films on smooth rims, not on teeth
 * source       commonPractice      check: by hand from the flows above
 */
export function carriedFlowAt_m3_s(at: TurningGear & { readonly fill: number }): number | null {
  const { ring_rad_s, radius_m, face_m, toothHeight_m, immersion_m, nu_m2_s } = at;
  const meanDiameter_m = 2 * radius_m - toothHeight_m;
  const all = [ring_rad_s, radius_m, face_m, toothHeight_m, immersion_m, nu_m2_s, meanDiameter_m];
  if (!all.every((value) => value > 0) || immersion_m >= 2 * radius_m) return null;
  const rim = { ...at, speed_m_s: pitchLineSpeed_m_s(at) };
  const layer_m2_s = boundaryLayerFlow_m2_s(rim);
  if (layer_m2_s === null) return null;
  const film_m2_s = centrifugalRatio(at) > 1 ? layer_m2_s : Math.min(layer_m2_s, gravityFlow_m2_s(rim));
  return film_m2_s * face_m + toothPocketFlow_m3_s({ ...at, meanDiameter_m });
}

/** The same with little and with much oil in the gaps of the teeth. */
export function carriedFlow_m3_s(at: TurningGear): { readonly low_m3_s: number; readonly high_m3_s: number } | null {
  const low_m3_s = carriedFlowAt_m3_s({ ...at, fill: pocketFill.low });
  const high_m3_s = carriedFlowAt_m3_s({ ...at, fill: pocketFill.high });
  return low_m3_s === null || high_m3_s === null ? null : { low_m3_s, high_m3_s };
}

const script = 'computed by an independent script';
const nu = input('nu_m2_s', 'ν', 'kinematic viscosity', 'm²/s');
const speed = input('speed_m_s', 'U', 'speed of the rim', 'm/s');
const radius = input('radius_m', 'R', 'outer radius of the ring gear', 'm');
const depth = input('immersion_m', 'h', 'immersion', 'm');
const ring = input('ring_rad_s', 'ω', 'ring gear speed', 'rad/s');
const face = input('face_m', 'b', 'face width', 'm');
const tooth = input('toothHeight_m', 'H', 'height of a tooth', 'm');
const fill = input('fill', 'f', 'fill of the tooth gaps', '1');

/** What a gear in its oil is given by, and the share of its gaps that is full. */
export const carryOver = {
  symbols: [ring, radius, face, tooth, depth, nu, fill],
  range: [{ symbol: 'f', from: pocketFill.low, to: pocketFill.high, why: 'common practice, no source' }],
};

export const carryGravityRelation: Relation<{ readonly nu_m2_s: number; readonly speed_m_s: number }> = {
  id: 'carry-gravity',
  title: 'Largest flow that a rim carries against gravity, up to centrifugal ratio 1',
  formula: { latex: String.raw`q=\tfrac23\,U\sqrt{\nu U/g}`, plain: 'q = (2/3) U √(ν U/g)' },
  symbols: [nu, speed, output('q', 'flow a width of face', 'm²/s')],
  range: [],
  source: 'deryagin1943',
  grade: 'V1',
  checks: [
    { source: script, seen: 'computed', inputs: { nu_m2_s: 15e-6, speed_m_s: 8.2885305 }, printed: '0.019674801' },
  ],
  of: (at) => gravityFlow_m2_s(at),
};

export const carryBoundaryLayerRelation: Relation<Readonly<Record<keyof Dip | 'nu_m2_s' | 'speed_m_s', number>>> = {
  id: 'carry-boundary-layer',
  title: 'Flow that a rim sets moving while it is in the oil',
  formula: {
    latex: String.raw`q=2U\sqrt{\nu t/\pi},\quad t=\frac{2R}{U}\arccos(1-h/R)`,
    plain: 'q = 2 U √(ν t/π), t = (2 R/U) arccos(1 − h/R)',
  },
  symbols: [nu, speed, radius, depth, output('q', 'flow a width of face', 'm²/s')],
  range: [],
  source: 'stokes1851',
  grade: 'VC',
  checks: [
    {
      source: `45 mm in, ${script}`,
      seen: 'computed',
      inputs: { nu_m2_s: 15e-6, speed_m_s: 8.2885305, radius_m: 0.111, immersion_m: 0.045 },
      printed: '0.0057292466',
    },
  ],
  of: (at) => boundaryLayerFlow_m2_s(at),
};

export const carryTeethRelation: Relation<Readonly<Record<keyof Pockets, number>>> = {
  id: 'carry-teeth',
  title: 'Flow carried in the gaps of the teeth',
  formula: {
    latex: String.raw`Q=f\,\frac{\pi}{2}D_mHb\,\frac{\omega}{2\pi}`,
    plain: 'Q = f (π/2) Dm H b ω/(2π)',
  },
  symbols: [
    input('meanDiameter_m', 'Dm', 'diameter at half the height of the teeth', 'm'),
    tooth,
    face,
    ring,
    fill,
    output('Q', 'flow', 'm³/s'),
  ],
  range: carryOver.range,
  source: 'commonPractice',
  grade: 'VC',
  checks: [
    {
      source: `full gaps, ${script}`,
      seen: 'computed',
      inputs: { meanDiameter_m: 0.21, toothHeight_m: 0.0108, face_m: 0.035, ring_rad_s: 74.671446, fill: 1 },
      printed: '1.4818548',
      unit: 'L/s',
    },
  ],
  of: (at) => toothPocketFlow_m3_s(at),
};

export const carriedFlowRelation: Relation<Readonly<Record<keyof TurningGear | 'fill', number>>> = {
  id: 'carried-flow',
  title: 'Oil that a ring gear carries out of the bath, an estimate',
  formula: {
    latex: String.raw`Q=b\,q+f\,\frac{\pi}{2}(2R-H)Hb\,\frac{\omega}{2\pi},\quad q=\begin{cases}\min(q_g,q_l)&\mathrm{Fr}\le1\\q_l&\mathrm{Fr}>1\end{cases}`,
    plain: 'Q = b q + f (π/2) (2 R − H) H b ω/(2π); q = min(q gravity, q layer) where Fr ≤ 1, q layer where Fr > 1',
  },
  symbols: [...carryOver.symbols, output('Q', 'flow carried', 'm³/s')],
  range: carryOver.range,
  source: 'commonPractice',
  grade: 'VC',
  checks: [
    {
      source: 'by hand at 100 km/h: 35 mm of 0.0057292466 m²/s and a tenth of 1.4818548 L/s · 211.2/210',
      seen: 'computed',
      inputs: { ...hot(74.671446), fill: 0.1 },
      printed: '0.34955589',
      unit: 'L/s',
    },
    {
      source: `at 9 rad/s, centrifugal ratio 0.92, where gravity is the limit: ${script}`,
      seen: 'computed',
      inputs: { ...hot(9), fill: 0.6 },
      printed: '0.13658981',
      unit: 'L/s',
    },
    {
      source: `at 12 rad/s, centrifugal ratio 1.63, where it is none: ${script}`,
      seen: 'computed',
      inputs: { ...hot(12), fill: 0.6 },
      printed: '0.22408620',
      unit: 'L/s',
    },
  ],
  of: (at) => carriedFlowAt_m3_s(at),
};

/** The reference axle in oil of 100 °C, 45 mm in. */
function hot(ring_rad_s: number): TurningGear {
  return { ring_rad_s, radius_m: 0.111, face_m: 0.035, toothHeight_m: 0.0108, immersion_m: 0.045, nu_m2_s: 15e-6 };
}
