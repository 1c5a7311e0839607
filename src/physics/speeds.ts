import { input, output, type Relation } from './relation.ts';

/** Tooth counts and the reduction in the hub or box behind the ring gear (1 where there is none); a rig sheet fits. */
export interface Teeth {
  readonly teethPinion: number;
  readonly teethRing: number;
  readonly hubReduction: number;
}

export const gravity_m_s2 = 9.80665;

/**
 * Ring gear speed from pinion speed, by tooth counts and not by a ratio of two decimals.
 *
 *   ω_ring = ω_pinion z_pinion/z_ring
 *
 * pinion       [rad/s]
 * returns      [rad/s]
 * range        none
 * source       definition      check: 2573.7 rpm through 3.73 is 690 rpm, the wheel at 60 mph with 690 turns a mile
 */
export const ringSpeed_rad_s = (at: { pinion_rad_s: number; teeth: Teeth }): number =>
  (at.pinion_rad_s * at.teeth.teethPinion) / at.teeth.teethRing;

/** Output (wheel) speed: ring gear speed through the hub reduction. */
export const outputSpeed_rad_s = (at: { pinion_rad_s: number; teeth: Teeth }): number =>
  ringSpeed_rad_s(at) / at.teeth.hubReduction;

/** Pinion turns a turn of the output. */
export const overallRatio = (teeth: Teeth): number => (teeth.teethRing / teeth.teethPinion) * teeth.hubReduction;

export const pinionSpeed_rad_s = (at: { output_rad_s: number; teeth: Teeth }): number =>
  at.output_rad_s * overallRatio(at.teeth);

/** Ring gear speed from the output shaft, for immersion and pitch-line figures. */
export const ringSpeedFromOutput_rad_s = (at: { output_rad_s: number; teeth: Teeth }): number =>
  at.output_rad_s * at.teeth.hubReduction;

/**
 * Road speed of a wheel that rolls.
 *
 *   v = ω r
 *
 * output       [rad/s], rolling radius [m]: the dynamic one; a tyre's nominal radius is about 3 % larger (common practice)
 * returns      v [m/s]
 * range        none
 * source       definition      check: 60 mph with 690 turns a mile is 690 rpm
 */
export const roadSpeed_m_s = (at: { output_rad_s: number; rollingRadius_m: number }): number =>
  at.output_rad_s * at.rollingRadius_m;

/** Wheel speed at a road speed; null for a radius of nothing. */
export const wheelSpeed_rad_s = (at: { road_m_s: number; rollingRadius_m: number }): number | null =>
  at.rollingRadius_m > 0 ? at.road_m_s / at.rollingRadius_m : null;

/** Rolling radius from turns counted over a distance: r = s/(2π N); null for no turns. */
export const rollingRadius_m = (at: { distance_m: number; turns: number }): number | null =>
  at.turns > 0 ? at.distance_m / (2 * Math.PI * at.turns) : null;

/** Speed of the ring gear's pitch line, U = ω R, at the outer pitch radius; mid-face is 12 to 18 % less. */
export const pitchLineSpeed_m_s = (at: { ring_rad_s: number; radius_m: number }): number => at.ring_rad_s * at.radius_m;

/**
 * Centrifugal ratio of the ring gear: above 1 oil can leave it upward, which is not to say that it does.
 *
 *   Fr = ω² R/g
 *
 * ring         [rad/s], radius [m]
 * returns      [1]
 * range        none
 * source       definition      check: R 0.111 m at 9.3993722 rad/s is 1
 */
export const centrifugalRatio = (at: { ring_rad_s: number; radius_m: number }): number =>
  (at.ring_rad_s ** 2 * at.radius_m) / gravity_m_s2;

/**
 * Reynolds number of the ring gear in its oil, face width as length.
 *
 *   Re = ω R b/ν
 *
 * ring         [rad/s], radius, face [m], nu [m²/s]
 * returns      [1]; null for a viscosity that is not above 0
 * range        none
 * source       definition      check: the same gear in 15.0 and 278.93613 mm²/s, 18.595742 times
 */
export const ringReynolds = (at: {
  ring_rad_s: number;
  radius_m: number;
  face_m: number;
  nu_m2_s: number;
}): number | null => (at.nu_m2_s > 0 ? (at.ring_rad_s * at.radius_m * at.face_m) / at.nu_m2_s : null);

const script = 'computed by an independent script';
const ring = input('ring_rad_s', 'ω', 'ring gear speed', 'rad/s');
const radius = input('radius_m', 'R', 'pitch radius of the ring gear', 'm');
const at100kmh_rad_s = 74.671446;

type Chain = {
  readonly road_m_s: number;
  readonly rollingRadius_m: number;
  readonly teethPinion: number;
  readonly teethRing: number;
  readonly hubReduction: number;
};
export const pinionAtRoadSpeedRelation: Relation<Chain> = {
  id: 'speed-chain',
  title: 'Pinion speed at a road speed',
  formula: {
    latex: String.raw`\omega_p=\frac{v}{r}\,\frac{z_r}{z_p}\,i_h`,
    plain: 'ω pinion = (v/r) (z ring/z pinion) i hub',
  },
  symbols: [
    input('road_m_s', 'v', 'road speed', 'm/s'),
    input('rollingRadius_m', 'r', 'rolling radius', 'm'),
    input('teethPinion', 'zp', 'teeth of the pinion', '1'),
    input('teethRing', 'zr', 'teeth of the ring gear', '1'),
    input('hubReduction', 'ih', 'reduction behind the ring gear', '1'),
    output('ωp', 'pinion speed', 'rad/s'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `100 km/h, ${script}`,
      seen: 'computed',
      inputs: { road_m_s: 100 / 3.6, rollingRadius_m: 0.372, teethPinion: 11, teethRing: 41, hubReduction: 1 },
      printed: '2657.7683',
      unit: 'rpm',
    },
    {
      source: '60 mph is a mile a minute: 690 turns a mile are 690 rpm, times 3.73',
      seen: 'computed',
      inputs: {
        road_m_s: 60 * 0.44704,
        rollingRadius_m: 1609.344 / (2 * Math.PI * 690),
        teethPinion: 100,
        teethRing: 373,
        hubReduction: 1,
      },
      printed: '2573.7',
      unit: 'rpm',
    },
  ],
  of({ road_m_s, rollingRadius_m: radius_m, ...teeth }) {
    const output_rad_s = wheelSpeed_rad_s({ road_m_s, rollingRadius_m: radius_m });
    return output_rad_s === null ? null : pinionSpeed_rad_s({ output_rad_s, teeth });
  },
};

type Gear = { readonly ring_rad_s: number; readonly radius_m: number };
export const pitchLineRelation: Relation<Gear> = {
  id: 'pitch-line-speed',
  title: 'Pitch-line speed',
  formula: { latex: String.raw`U=\omega R`, plain: 'U = ω R' },
  symbols: [ring, radius, output('U', 'pitch-line speed', 'm/s')],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    { source: script, seen: 'computed', inputs: { ring_rad_s: at100kmh_rad_s, radius_m: 0.111 }, printed: '8.2885305' },
  ],
  of: (at) => pitchLineSpeed_m_s(at),
};

export const centrifugalRatioRelation: Relation<Gear> = {
  id: 'centrifugal-ratio',
  title: 'Centrifugal ratio of the ring gear',
  formula: { latex: String.raw`\mathrm{Fr}=\frac{\omega^2R}{g}`, plain: 'Fr = ω² R/g' },
  symbols: [ring, radius, output('Fr', 'centrifugal ratio', '1')],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    { source: script, seen: 'computed', inputs: { ring_rad_s: at100kmh_rad_s, radius_m: 0.111 }, printed: '63.11192' },
    { source: script, seen: 'computed', inputs: { ring_rad_s: 9.3993722, radius_m: 0.111 }, printed: '1.000000' },
  ],
  of: (at) => centrifugalRatio(at),
};

type Flow = Gear & { readonly face_m: number; readonly nu_m2_s: number };
export const ringReynoldsRelation: Relation<Flow> = {
  id: 'ring-reynolds',
  title: 'Reynolds number of the ring gear in its oil',
  formula: { latex: String.raw`\mathrm{Re}=\frac{\omega R b}{\nu}`, plain: 'Re = ω R b/ν' },
  symbols: [
    ring,
    radius,
    input('face_m', 'b', 'face width', 'm'),
    input('nu_m2_s', 'ν', 'kinematic viscosity', 'm²/s'),
    output('Re', 'Reynolds number', '1'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'by hand: 100 rad/s · 0.1 m · 0.04 m/(10 mm²/s)',
      seen: 'computed',
      inputs: { ring_rad_s: 100, radius_m: 0.1, face_m: 0.04, nu_m2_s: 10e-6 },
      printed: '40000',
    },
  ],
  of: (at) => ringReynolds(at),
};
