import { bearingViscousRelation } from './bearing-drag.ts';
import { chordChurning_Nm, hydraulicTorqueRelation } from './churning-others.ts';
import { churning, type Churned } from './churning.ts';
import { sealConstants_N, sealPowerRelation, sealTorqueRelation } from './seals.ts';

/**
 * What models let one expect of the loss of an axle without load, as a band. It stands behind a measured loss and predicts
 * none: laws of churning alone lie a factor of ten and more apart.
 */
export interface PowerBand {
  readonly low_W: number;
  readonly high_W: number;
}

/** How wide each part is taken at least. */
export const envelopeWidths = {
  /** Round the law with four regimes, either way: a factor of four in all, of the 3 to 5 that such estimates carry. */
  churning: 2,
  /** Drag of a bearing in its place: preload and how much oil it gets are not known better. */
  bearing: 0.5,
  /** Factor f0 of a tapered roller bearing in an oil bath. */
  f0: [3, 4],
} as const;

/**
 * The ring gear in its bath: from the least to the most that the laws give, and no narrower than a factor of two either way of
 * the one with four regimes. Two of the three laws are unverified.
 *
 * returns      low, high [W]; null where the gear does not dip, is under oil whole or stands still
 * source       changenet2011; the others as recalled
 */
export function churningBand(of: Churned): PowerBand | null {
  const primary = churning(of)?.power_W;
  if (primary === undefined) return null;
  const chord_Nm = chordChurning_Nm(of);
  const hydraulic_Nm = hydraulicTorqueRelation.of({
    ...{ shape: 1, dip_m: of.dip_m, otherDip_m: 0, width_m: of.width_m },
    pitchSpeed_m_s: of.speed_rad_s * of.radius_m,
  });
  const others = [chord_Nm, hydraulic_Nm].flatMap((T) => (T === null ? [] : [T * of.speed_rad_s]));
  return {
    low_W: Math.min(primary / envelopeWidths.churning, ...others),
    high_W: Math.max(primary * envelopeWidths.churning, ...others),
  };
}

export interface TurningBearing {
  readonly bore_m: number;
  readonly outside_m: number;
  /** What its preload alone asks to turn it; 0 where it is not known, and the estimate is then without preload. */
  readonly turning_Nm: number;
  readonly speed_rad_s: number;
  readonly nu_m2_s: number;
}

/**
 * One tapered roller bearing without outer load: the classical moment of the oil and the turning torque of the preload,
 * half less to half more.
 *
 *   P = (M0 + M_turn)·ω,  low: f0 3, less half;  high: f0 4, half more
 *
 * returns      low, high [W]; null where a length or the viscosity is not above 0
 * source       palmgren
 */
export function bearingBand(of: TurningBearing): PowerBand | null {
  const meanDiameter_m = (of.bore_m + of.outside_m) / 2;
  const [less, more] = envelopeWidths.f0.map((f0) =>
    bearingViscousRelation.of({ f0, meanDiameter_m, speed_rad_s: of.speed_rad_s, nu_m2_s: of.nu_m2_s }),
  );
  if (less == null || more == null || !(of.turning_Nm >= 0)) return null;
  return {
    low_W: (1 - envelopeWidths.bearing) * (less + of.turning_Nm) * of.speed_rad_s,
    high_W: (1 + envelopeWidths.bearing) * (more + of.turning_Nm) * of.speed_rad_s,
  };
}

/** One lip seal, from the least to the most of three unverified estimates: two rubbers of one report, and the other report. */
export function sealBand(of: {
  readonly shaft_m: number;
  readonly speed_rad_s: number;
  readonly oil_K: number;
  readonly nu40_m2_s: number;
}): PowerBand | null {
  const byRubber = Object.values(sealConstants_N).flatMap((constant_N) => {
    const T = sealTorqueRelation.of({ constant_N, shaft_m: of.shaft_m });
    return T === null ? [] : [T * of.speed_rad_s];
  });
  const byOil = sealPowerRelation.of(of);
  const all = [...byRubber, ...(byOil === null ? [] : [byOil])].filter((P) => Number.isFinite(P) && P >= 0);
  return all.length === 0 ? null : { low_W: Math.min(...all), high_W: Math.max(...all) };
}

/** Low ends with low ends and high with high: nothing says that one part is high where another is low. */
export const sumOfBands = (parts: readonly PowerBand[]): PowerBand => ({
  low_W: parts.reduce((sum, { low_W }) => sum + low_W, 0),
  high_W: parts.reduce((sum, { high_W }) => sum + high_W, 0),
});
