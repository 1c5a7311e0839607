import { input, output, type Relation } from './relation.ts';

/**
 * Half of the arc that a wheel has in the oil.
 *
 *   θ = arccos(1 − h/R),  h held between 0 and 2R
 *
 * radius, immersion  [m]
 * returns            θ [rad]: π/2 half in, π wholly in; null for a radius that is not above 0
 * range              none
 * source             definition      check: h = R gives π/2
 */
export function immersedHalfAngle_rad(at: { radius_m: number; immersion_m: number }): number | null {
  if (!(at.radius_m > 0) || Number.isNaN(at.immersion_m)) return null;
  return Math.acos(1 - Math.min(Math.max(at.immersion_m / at.radius_m, 0), 2));
}

/** Area of one face that is in the oil, A = R² (θ − sin θ cos θ) [m²]; null as the half angle. */
export function immersedFace_m2(at: { radius_m: number; immersion_m: number }): number | null {
  const theta = immersedHalfAngle_rad(at);
  return theta === null ? null : at.radius_m ** 2 * (theta - Math.sin(theta) * Math.cos(theta));
}

/** A gear wheel: its teeth's depth, pressure angle and helix or spiral angle. */
export interface Wheel {
  readonly radius_m: number;
  readonly face_m: number;
  readonly teeth: number;
  readonly toothDepth_m: number;
  readonly pressureAngle_rad: number;
  readonly spiralAngle_rad: number;
}

/**
 * Surface of a gear wheel that is in the oil: both faces, the band of its rim, the flanks of its teeth.
 *
 *   S = R² (2θ − sin 2θ) + 2 R b θ + 2 z θ H b/(π cos α cos β)
 *
 * lengths [m], angles [rad]
 * returns      S [m²]; null as the half angle
 * range        a wheel whose faces are flat
 * source       definition      check: reference axle, 45 mm in: 0.029817426 m² (computed by another program)
 */
export function wettedSurface_m2(at: { wheel: Wheel; immersion_m: number }): number | null {
  const { radius_m, face_m, teeth, toothDepth_m, pressureAngle_rad, spiralAngle_rad } = at.wheel;
  const theta = immersedHalfAngle_rad({ radius_m, immersion_m: at.immersion_m });
  if (theta === null) return null;
  const faces = radius_m ** 2 * (2 * theta - Math.sin(2 * theta));
  const band = 2 * radius_m * face_m * theta;
  const flanks =
    (2 * teeth * theta * toothDepth_m * face_m) / (Math.PI * Math.cos(pressureAngle_rad) * Math.cos(spiralAngle_rad));
  return faces + band + flanks;
}

const script = 'computed by an independent script';
type Dip = { readonly radius_m: number; readonly immersion_m: number };
const radius = input('radius_m', 'R', 'outer radius', 'm');
const depth = input('immersion_m', 'h', 'immersion', 'm');

export const halfAngleRelation: Relation<Dip> = {
  id: 'immersed-half-angle',
  title: 'Half of the immersed arc',
  formula: { latex: String.raw`\theta=\arccos(1-h/R)`, plain: 'θ = arccos(1 − h/R)' },
  symbols: [radius, depth, output('θ', 'half of the immersed arc', 'rad')],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `half in the oil, ${script}`,
      seen: 'computed',
      inputs: { radius_m: 0.111, immersion_m: 0.111 },
      printed: '1.5707963',
    },
    { source: script, seen: 'computed', inputs: { radius_m: 0.111, immersion_m: 0.045 }, printed: '0.93403499' },
  ],
  of: (at) => immersedHalfAngle_rad(at),
};

export const immersedFaceRelation: Relation<Dip> = {
  id: 'immersed-face',
  title: 'Area of one face in the oil',
  formula: { latex: String.raw`A=R^2(\theta-\sin\theta\cos\theta)`, plain: 'A = R² (θ − sin θ cos θ)' },
  symbols: [radius, depth, output('A', 'area of one face in the oil', 'm²')],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `half in the oil, ${script}`,
      seen: 'computed',
      inputs: { radius_m: 0.111, immersion_m: 0.111 },
      printed: '0.019353782',
    },
  ],
  of: (at) => immersedFace_m2(at),
};
