import { churningPowerRelation, type Churned } from '../physics/churning.ts';
import { density_kg_m3 } from '../physics/density.ts';
import { bearingBand, churningBand, sealBand, sumOfBands, type PowerBand } from '../physics/loss-envelope.ts';
import { outsideRange } from '../physics/relation.ts';
import { pinionSpeed_rad_s, ringSpeedFromOutput_rad_s } from '../physics/speeds.ts';
import type { At, Given, Result, Step } from '../trial/derived.ts';
import type { ShaftKind } from '../trial/rig.ts';
import { nuAt } from './readings-of.ts';
import type { Oiled } from './similarity.ts';

/** Angles that no rig sheet asks for; the surface of the teeth hangs on them a little (common practice, no source). */
const taken = { pressureAngle_rad: (20 * Math.PI) / 180, helixAngle_rad: (30 * Math.PI) / 180 } as const;

export interface Bath extends Oiled {
  /** Level at rest and litres at 20 °C; null when the level is not known. */
  readonly level_z_m: number | null;
  readonly volume20_m3: number;
}

/** What stands in the way of any estimate, and what to write; null when nothing does. */
export function noEstimate({ rig, level_z_m }: Bath): string | null {
  const fields = [
    ...(rig.ringFace_m === null ? ['ring.face'] : []),
    ...(rig.toothHeight_m === null ? ['ring.tooth-height'] : []),
  ];
  if (fields.length > 0)
    return `No estimate by models of loss stands behind it: the rig sheet does not say ${fields.join(' and ')}. Write ${fields.length === 1 ? 'it' : 'them'} in ${rig.file}.`;
  if (level_z_m === null)
    return 'No estimate by models of loss stands behind it: its litres have no level in the table of the article.';
  const dip_m = rig.ringRadius_m + level_z_m;
  if (dip_m <= 0) return 'No estimate by models of loss stands behind it: at rest the ring gear does not dip.';
  if (dip_m > 2 * rig.ringRadius_m)
    return 'No estimate by models of loss stands behind it: at rest the ring gear is under oil whole.';
  return null;
}

/**
 * What models of churning, bearings and seals let one expect at every speed and temperature that spin power was measured at: a
 * band without a mark in it. Bearings and seals only as far as the rig sheet names them.
 */
export function lossEstimates(
  bath: Bath,
  states: readonly { readonly at: At; readonly speed_rad_s: number; readonly oil_K: number }[],
): Result[] {
  if (noEstimate(bath) !== null) return [];
  return states.flatMap(({ at, speed_rad_s, oil_K }): Result[] => {
    const found = partsAt(bath, speed_rad_s, oil_K);
    if (found === null) return [];
    const whole = sumOfBands(Object.values(found.parts));
    return [
      {
        quantity: 'loss-estimate',
        at,
        estimate: null,
        bound: null,
        band: { low: whole.low_W, high: whole.high_W },
        class: 'model estimate',
        relation: 'loss-envelope',
        method: 'spin/loss-envelope',
        notes: [...missing(bath), ...outsideRange(churningPowerRelation, found.churned).map(plainNote), unverified],
        given: givenOf(bath, found.churned),
        steps: Object.entries(found.parts).flatMap(([part, band]) => stepsOf(part, band)),
      },
    ];
  });
}

const unverified = 'an envelope of published laws, most of them unverified, and no result of this trial';

interface Parts {
  readonly churned: Churned;
  readonly parts: Readonly<Record<string, PowerBand>>;
}

function partsAt({ rig, oil, line, level_z_m, volume20_m3 }: Bath, output_rad_s: number, oil_K: number): Parts | null {
  const nu_m2_s = nuAt(line, oil_K);
  const speeds: Readonly<Record<ShaftKind, number>> = {
    pinion: pinionSpeed_rad_s({ output_rad_s, teeth: rig }),
    ring: ringSpeedFromOutput_rad_s({ output_rad_s, teeth: rig }),
    wheel: output_rad_s,
  };
  if (rig.ringFace_m === null || rig.toothHeight_m === null || level_z_m === null) return null;
  const churned: Churned = {
    ...taken,
    radius_m: rig.ringRadius_m,
    dip_m: rig.ringRadius_m + level_z_m,
    width_m: rig.ringFace_m,
    module_m: (2 * rig.ringRadius_m) / rig.teethRing,
    teeth: rig.teethRing,
    toothHeight_m: rig.toothHeight_m,
    volume_m3: volume20_m3,
    density_kg_m3: density_kg_m3({ ...oil, oil_K }),
    speed_rad_s: speeds.ring,
    nu_m2_s,
  };
  const churning = churningBand(churned);
  if (churning === null) return null;
  const bearings = rig.bearings.flatMap(
    (b) => bearingBand({ ...b, turning_Nm: b.turning_Nm ?? 0, speed_rad_s: speeds[b.at], nu_m2_s }) ?? [],
  );
  const seals = rig.seals.flatMap((s) => sealBand({ ...s, ...oil, speed_rad_s: speeds[s.at], oil_K }) ?? []);
  return {
    churned,
    parts: {
      churning,
      ...(bearings.length === 0 ? {} : { bearings: sumOfBands(bearings) }),
      ...(seals.length === 0 ? {} : { seals: sumOfBands(seals) }),
    },
  };
}

/** What is not in the band, and which field of the rig sheet would bring it in. */
export function missing({ rig }: Pick<Bath, 'rig'>): string[] {
  const left = [
    ...(rig.bearings.length === 0 ? ['bearings'] : []),
    ...(rig.seals.length === 0 ? ['seals'] : []),
  ] as const;
  const without = rig.bearings.filter(({ turning_Nm }) => turning_Nm === null).length;
  return [
    ...(left.length === 0
      ? []
      : [
          `${left.length === 2 ? 'of churning alone: ' : ''}${left.join(' and ')} left out, because ${rig.file} does not name them`,
        ]),
    ...(without === 0
      ? []
      : [
          `preload of ${without === rig.bearings.length ? 'the bearings' : 'some bearings'} left out, because ${rig.file} has no turning-torque of theirs`,
        ]),
  ];
}

const plainNote = (sentence: string): string => sentence.replace(/\.$/, '');

const names: Readonly<Record<string, string>> = {
  churning: 'Ring gear in its bath',
  bearings: 'Bearings of the rig sheet',
  seals: 'Lip seals of the rig sheet',
};

const stepsOf = (part: string, { low_W, high_W }: PowerBand): Step[] => [
  { says: `${names[part] ?? part}, low end`, formula: `P_low, ${part}`, value: low_W, unit: 'W' },
  { says: `${names[part] ?? part}, high end`, formula: `P_high, ${part}`, value: high_W, unit: 'W' },
];

const givenOf = ({ rig }: Bath, of: Churned): Given[] => {
  const note = (symbol: string, name: string, value_m: number, path: string): Given => ({
    symbol,
    name,
    value: value_m * 1e3,
    u: null,
    unit: 'mm',
    from: {
      kind: 'note',
      place: rig.places.get(path) ?? { file: rig.file, line: 1, column: 1 },
      typed: rig.typed.get(path) ?? '',
    },
  });
  const reckoned = (symbol: string, name: string, value: number, unit: string, text: string): Given => ({
    ...{ symbol, name, value, u: null, unit },
    from: { kind: 'constant', text },
  });
  return [
    note('D', 'diameter of the ring gear', 2 * of.radius_m, 'ring.diameter'),
    note('b', 'face of the ring gear', of.width_m, 'ring.face'),
    note('H', 'height of its teeth', of.toothHeight_m, 'ring.tooth-height'),
    reckoned('h', 'dip of the ring gear', of.dip_m * 1e3, 'mm', 'at rest, at 20 °C; not while it runs'),
    reckoned('V', 'oil in the housing', of.volume_m3 * 1e3, 'L', 'litres at 20 °C of this run'),
    reckoned('ν', 'kinematic viscosity', of.nu_m2_s * 1e6, 'mm²/s', 'line of the oil sheet at this temperature'),
    reckoned('ρ', 'density', of.density_kg_m3, 'kg/m³', 'oil sheet at this temperature'),
    reckoned('αn', 'pressure angle', 20, '°', 'taken; the rig sheet does not ask for it'),
    reckoned('β', 'spiral angle', 30, '°', 'taken; the rig sheet does not ask for it'),
  ];
};
