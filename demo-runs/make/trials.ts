import {
  bearingRise_K,
  heldAfter_mm,
  levelHalf_s,
  type Load,
  housingStore_J_K,
  oilStore_J_K,
  powerIn_W,
  resting_W_K,
  runningLevel_mm,
  type SetUp,
  shaft_rad_s,
  shed_W_K,
  spinTorque_Nm,
  swing_mm,
  turning_W_K,
} from './law.ts';
import type { Stream } from './random.ts';
import { blank, interval_s, type Recording } from './recording.ts';
import { type Segment, walk } from './timeline.ts';

/** Surroundings of one run: true ambient at each logged row, true mean airflow. */
export interface Around {
  readonly ambient_C: Float64Array;
  readonly air_m_s: number;
  readonly tilt_pct: number;
  readonly wander: Stream;
}

export interface TrialOf {
  readonly setUp: SetUp;
  readonly around: Around;
}

/** Stepped trials: the heater keeps the sump near the timeline's temperature, so only skin and race follow by law. */
export function stepped(
  { setUp, around }: TrialOf,
  timeline: readonly Segment[],
  what: { torque: boolean; level: boolean; wander_K: number },
): Recording {
  const { at, length_s, events } = walk(timeline);
  const out = blank(length_s, events);
  const v = out.values;
  const wander = wandering(around.wander, what.wander_K);
  let skin_C = NaN;
  let race_C = NaN;
  let level_mm = setUp.level_mm;
  for (let row = 0; row < out.rows; row++) {
    const now = at(row * interval_s);
    const ambient_C = around.ambient_C[row]!;
    const sump_C = now.temp_C + wander();
    const ua = shed_W_K(setUp, around.air_m_s);
    const race = sump_C + bearingRise_K(setUp, now.wheel_rpm, around.tilt_pct);
    if (row === 0) {
      skin_C = (turning_W_K * sump_C + ua * ambient_C) / (turning_W_K + ua);
      race_C = race;
    }
    const inner_W_K = now.wheel_rpm < 1 ? resting_W_K : turning_W_K;
    v.n_in[row] = now.wheel_rpm * setUp.gear.ratio;
    v.n_out_l[row] = now.wheel_rpm;
    v.T_sump[row] = sump_C;
    v.T_skin[row] = skin_C;
    v.T_pb[row] = race_C;
    v.T_amb[row] = ambient_C;
    v.u_air[row] = around.air_m_s;
    if (what.torque) {
      v.tq_in[row] = spinTorque_Nm(setUp, { wheel_rpm: now.wheel_rpm, temp_C: sump_C });
      v.tq_out_l[row] = 0;
      v.tq_out_r[row] = 0;
    }
    if (what.level) v.lvl[row] = level_mm + around.wander.normal(swing_mm(now.wheel_rpm) / 2);
    skin_C += (interval_s * (inner_W_K * (sump_C - skin_C) - ua * (skin_C - ambient_C))) / housingStore_J_K(setUp);
    race_C += (interval_s * (race - race_C)) / 240;
    level_mm += levelStep_mm(setUp, level_mm, now.wheel_rpm);
  }
  return out;
}

/** While turning the level follows within seconds; after the stop it comes back with the oil's half-time, 1 mm short. */
function levelStep_mm(setUp: SetUp, level_mm: number, wheel_rpm: number): number {
  if (wheel_rpm >= 1) return (runningLevel_mm(setUp, wheel_rpm) - level_mm) * (1 - Math.exp(-interval_s / 8));
  const rest_mm = setUp.level_mm - heldAfter_mm;
  if (level_mm >= rest_mm) return 0;
  return (rest_mm - level_mm) * (1 - 0.5 ** (interval_s / levelHalf_s(setUp)));
}

/** A slow wander held inside three tenths of a kelvin, as a good heater does. */
function wandering(from: Stream, sd_K: number): () => number {
  let away_K = 0;
  return () => {
    const keep = Math.exp(-interval_s / 300);
    away_K = away_K * keep + from.normal(sd_K * Math.sqrt(1 - keep * keep));
    away_K = Math.max(-0.3, Math.min(0.3, away_K));
    return away_K;
  };
}

export interface Start {
  readonly sump_C: number;
  readonly skin_C: number;
  readonly race_C: number;
}

/** How a heat-up ends is how its cool-down begins. */
export interface LoadedEnd extends Start {
  readonly ambient_C: number;
}

/** Loaded heat-up, one step a second. Crossings are those of the true sump. */
export function heatUp(
  { setUp, around }: TrialOf,
  given: {
    length_s: number;
    load: Load;
    start: Start;
    limits_C: readonly number[];
    hubs_Nm: readonly [number, number];
  },
) {
  const { length_s, load, limits_C } = given;
  const out = blank(
    length_s,
    new Map([
      [0, 'load on'],
      [length_s / interval_s, 'load off'],
    ]),
  );
  const rise_K = bearingRise_K(setUp, load.wheel_rpm, around.tilt_pct);
  const ua = shed_W_K(setUp, around.air_m_s);
  const crossings = new Map<number, number>();
  let { sump_C, skin_C, race_C } = given.start;
  for (let t = 0; t <= length_s; t++) {
    const power_W = powerIn_W(setUp, load, sump_C);
    if (t % interval_s === 0) {
      const row = t / interval_s;
      fill(out, row, { wheel_rpm: load.wheel_rpm, ratio: setUp.gear.ratio, sump_C, skin_C, race_C, around });
      out.values.tq_in[row] = power_W / (shaft_rad_s(load.wheel_rpm) * setUp.gear.ratio);
      out.values.tq_out_l[row] = given.hubs_Nm[0];
      out.values.tq_out_r[row] = given.hubs_Nm[1];
    }
    const before_C = sump_C;
    const ambient_C = around.ambient_C[Math.floor(t / interval_s)]!;
    const across_W = turning_W_K * (sump_C - skin_C);
    race_C += (sump_C + rise_K - race_C) / 240;
    sump_C += (power_W - load.powerOut_W - across_W) / oilStore_J_K(setUp);
    skin_C += (across_W - ua * (skin_C - ambient_C)) / housingStore_J_K(setUp);
    for (const limit of limits_C)
      if (before_C < limit && sump_C >= limit && t < length_s && !crossings.has(limit))
        crossings.set(limit, t + (limit - before_C) / (sump_C - before_C));
  }
  const last_C = (of: 'T_sump' | 'T_skin' | 'T_pb' | 'T_amb'): number => out.values[of][out.rows - 1]!;
  const end = {
    sump_C: last_C('T_sump'),
    skin_C: last_C('T_skin'),
    race_C: last_C('T_pb'),
    ambient_C: last_C('T_amb'),
  };
  return { recording: out, crossings, end };
}

/** Gears still; no torque is read. */
export function coolDown({ setUp, around }: TrialOf, given: { length_s: number; start: LoadedEnd }): Recording {
  const out = blank(given.length_s, new Map([[0, 'stop']]));
  const ua = shed_W_K(setUp, around.air_m_s);
  let { sump_C, skin_C, race_C } = given.start;
  for (let t = 0; t <= given.length_s; t++) {
    if (t % interval_s === 0)
      fill(out, t / interval_s, { wheel_rpm: 0, ratio: setUp.gear.ratio, sump_C, skin_C, race_C, around });
    const ambient_C = around.ambient_C[Math.floor(t / interval_s)]!;
    const across_W = resting_W_K * (sump_C - skin_C);
    race_C += (sump_C - race_C) / 240;
    sump_C -= across_W / oilStore_J_K(setUp);
    skin_C += (across_W - ua * (skin_C - ambient_C)) / housingStore_J_K(setUp);
  }
  return out;
}

function fill(out: Recording, row: number, now: Start & { wheel_rpm: number; ratio: number; around: Around }): void {
  const v = out.values;
  v.n_in[row] = now.wheel_rpm * now.ratio;
  v.n_out_l[row] = now.wheel_rpm;
  v.T_sump[row] = now.sump_C;
  v.T_skin[row] = now.skin_C;
  v.T_pb[row] = now.race_C;
  v.T_amb[row] = now.around.ambient_C[row]!;
  v.u_air[row] = now.around.air_m_s;
}
