import { carriedFlow_m3_s, carriedFlowAt_m3_s, carryOver, type TurningGear } from './carry-over.ts';
import { input, output, type Relation } from './relation.ts';
import { gravity_m_s2, pitchLineSpeed_m_s } from './speeds.ts';

interface Jet {
  readonly density_kg_m3: number;
  readonly flow_m3_s: number;
  readonly speed_m_s: number;
}

/**
 * Shaft power spent on bringing returning oil to the speed of the gear again.
 *
 *   P = ρ Q U (U − u)
 *
 * density      [kg/m³], flow [m³/s], speeds [m/s]; u along the rim, positive with the rotation
 * returns      P [W]: from rest twice the kinetic power of the stream, for half is lost where it is picked up
 * range        none
 * source       derived      check: 820 kg/m³, 0.5 L/s at 8.2885305 m/s, 2 m/s back: 21.370298 W (another program)
 */
export const pickUpPower_W = (at: Jet & { readonly return_m_s: number }): number =>
  at.density_kg_m3 * at.flow_m3_s * at.speed_m_s * (at.speed_m_s - at.return_m_s);

/** Kinetic power of a stream, P = ρ Q U²/2 [W]. */
export const kineticPower_W = (at: Jet): number => (at.density_kg_m3 * at.flow_m3_s * at.speed_m_s ** 2) / 2;

/** Force on a flat wall that a stream strikes squarely, F = ρ Q U [N]: all of its momentum across the wall. */
export const flatWallForce_N = (at: Jet): number => at.density_kg_m3 * at.flow_m3_s * at.speed_m_s;

/**
 * How far oil that leaves the gear falls below its tangent.
 *
 *   Δy = g x²/(2 U² cos² a)
 *
 * speed        [m/s], distance x across [m], angle a over the horizontal [rad]
 * returns      [m]; null for a gear at rest
 * range        no drag: a fine drop loses speed to the air within the housing
 * source       definition      check: 60 mm at 8.2885305 m/s: 0.25694378 mm (computed by another program)
 */
export const flingDrop_m = (at: { speed_m_s: number; distance_m: number; angle_rad: number }): number | null =>
  at.speed_m_s > 0 ? (gravity_m_s2 * at.distance_m ** 2) / (2 * (at.speed_m_s * Math.cos(at.angle_rad)) ** 2) : null;

type OiledGear = TurningGear & { readonly density_kg_m3: number };

/**
 * The most that the shape of a cover can save, of what the ring gear throws, by the way it hands oil back: nothing has to be
 * picked up where all of it comes back at the speed of the gear. A model estimate and never a result of a trial; the width is
 * that of the tooth gaps. Oil that carrier, bolt heads, pinion and bearings move is not in it.
 *
 *   ΔP ≤ ρ Q U²,  since u ≤ U
 *
 * lengths      [m], ring [rad/s], nu [m²/s], density [kg/m³]
 * returns      band [W] over the fill of the tooth gaps; null as the carried flow, and for a density not above 0
 * range        that of the carried flow
 * source       derived      check: by hand from the flows of the reference axle
 */
export function jetPowerBand_W(at: OiledGear): { readonly low_W: number; readonly high_W: number } | null {
  const flow = carriedFlow_m3_s(at);
  if (flow === null || !(at.density_kg_m3 > 0)) return null;
  return { low_W: fromRest_W(at, flow.low_m3_s), high_W: fromRest_W(at, flow.high_m3_s) };
}

const fromRest_W = (at: OiledGear, flow_m3_s: number): number =>
  pickUpPower_W({ density_kg_m3: at.density_kg_m3, flow_m3_s, speed_m_s: pitchLineSpeed_m_s(at), return_m_s: 0 });

const script = 'computed by an independent script';
const density = input('density_kg_m3', 'ρ', 'density', 'kg/m³');
const flow = input('flow_m3_s', 'Q', 'flow', 'm³/s');
const speed = input('speed_m_s', 'U', 'speed of the gear', 'm/s');
const jet: Jet = { density_kg_m3: 820, flow_m3_s: 0.5e-3, speed_m_s: 8.2885305 };

export const pickUpPowerRelation: Relation<Readonly<Record<keyof Jet | 'return_m_s', number>>> = {
  id: 'pick-up-power',
  title: 'Power spent on picking oil up again',
  formula: { latex: String.raw`P=\rho QU(U-u)`, plain: 'P = ρ Q U (U − u)' },
  symbols: [
    density,
    flow,
    speed,
    input('return_m_s', 'u', 'speed of the returning oil along the rim, + with the rotation', 'm/s'),
    output('P', 'shaft power', 'W'),
  ],
  range: [],
  source: 'derived',
  grade: 'VC',
  checks: [
    { source: `from rest, ${script}`, seen: 'computed', inputs: { ...jet, return_m_s: 0 }, printed: '28.166893' },
    { source: script, seen: 'computed', inputs: { ...jet, return_m_s: 2 }, printed: '21.370298' },
  ],
  of: (at) => pickUpPower_W(at),
};

export const kineticPowerRelation: Relation<Readonly<Record<keyof Jet, number>>> = {
  id: 'kinetic-power',
  title: 'Kinetic power of a stream',
  formula: { latex: String.raw`P_k=\rho QU^2/2`, plain: 'Pk = ρ Q U²/2' },
  symbols: [density, flow, speed, output('Pk', 'kinetic power', 'W')],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [{ source: script, seen: 'computed', inputs: { ...jet }, printed: '14.083446' }],
  of: (at) => kineticPower_W(at),
};

export const flatWallForceRelation: Relation<Readonly<Record<keyof Jet, number>>> = {
  id: 'flat-wall-force',
  title: 'Force of a stream on a flat wall',
  formula: { latex: String.raw`F=\rho QU`, plain: 'F = ρ Q U' },
  symbols: [density, flow, speed, output('F', 'force across the wall', 'N')],
  range: [],
  source: 'derived',
  grade: 'VC',
  checks: [{ source: script, seen: 'computed', inputs: { ...jet }, printed: '3.3982975' }],
  of: (at) => flatWallForce_N(at),
};

export const flingDropRelation: Relation<Readonly<Record<'speed_m_s' | 'distance_m' | 'angle_rad', number>>> = {
  id: 'fling-drop',
  title: 'Fall of thrown oil below its tangent',
  formula: { latex: String.raw`\Delta y=\frac{gx^2}{2U^2\cos^2a}`, plain: 'Δy = g x²/(2 U² cos² a)' },
  symbols: [
    speed,
    input('distance_m', 'x', 'distance across', 'm'),
    input('angle_rad', 'a', 'angle over the horizontal', 'rad'),
    output('Δy', 'fall below the tangent', 'm'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: `without drag, ${script}`,
      seen: 'computed',
      inputs: { speed_m_s: 8.2885305, distance_m: 0.06, angle_rad: 0 },
      printed: '0.25694378',
      unit: 'mm',
    },
  ],
  of: (at) => flingDrop_m(at),
};

const hot: OiledGear = {
  ring_rad_s: 74.671446,
  radius_m: 0.111,
  face_m: 0.035,
  toothHeight_m: 0.0108,
  immersion_m: 0.045,
  nu_m2_s: 15e-6,
  density_kg_m3: 820,
};
export const jetPowerBandRelation: Relation<Readonly<Record<keyof OiledGear | 'fill', number>>> = {
  id: 'jet-power-band',
  title: 'The most that a cover can save of what the ring gear throws, an estimate',
  formula: { latex: String.raw`\Delta P\le\rho QU^2`, plain: 'ΔP ≤ ρ Q U², Q the oil carried out of the bath' },
  symbols: [...carryOver.symbols, density, output('ΔP', 'power in the thrown oil, at most', 'W')],
  range: carryOver.range,
  source: 'derived',
  grade: 'VC',
  checks: [
    {
      source: 'by hand at 100 km/h with a tenth of the gaps full: 820 · 0.34955589 L/s · (8.2885305 m/s)²',
      seen: 'computed',
      inputs: { ...hot, fill: 0.1 },
      printed: '19.6918',
    },
    {
      source: 'by hand at 100 km/h with six tenths of the gaps full: 820 · 1.0947172 L/s · (8.2885305 m/s)²',
      seen: 'computed',
      inputs: { ...hot, fill: 0.6 },
      printed: '61.6696',
    },
  ],
  of: (at) => {
    const flow_m3_s = carriedFlowAt_m3_s(at);
    return flow_m3_s === null || !(at.density_kg_m3 > 0) ? null : fromRest_W(at, flow_m3_s);
  },
};
