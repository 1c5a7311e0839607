import type { Window } from '../trial/derived.ts';
import type { Log } from '../trial/log.ts';

/** A stretch at one planned speed, rows [from, to). */
export interface Plateau {
  readonly step_rad_s: number;
  readonly rows: readonly [number, number];
}

/**
 * Stretches in which the output shaft stays at a planned step, whichever way it turns: within 1.5 % (at least 0.15 rad/s)
 * of it for at least `least_s`. A missing speed does not end a stretch, nor does one that is back within three seconds:
 * fast loggers see the scatter of an encoder.
 */
export function plateaus(input: {
  time_s: Float64Array;
  speed_rad_s: Float64Array;
  steps_rad_s: readonly number[];
  least_s: number;
}): Plateau[] {
  const { time_s, speed_rad_s, steps_rad_s, least_s } = input;
  const near = (w: number): number =>
    steps_rad_s.findIndex((step) => Math.abs(Math.abs(w) - step) <= Math.max(0.015 * step, 0.15));
  const back_s = 3;
  const found: Plateau[] = [];
  let from = 0;
  let now = -1;
  let left = -1;
  const close = (to: number): void => {
    if (now >= 0 && (time_s[to - 1] ?? 0) - time_s[from]! >= least_s)
      found.push({ step_rad_s: steps_rad_s[now]!, rows: [from, to] });
  };
  for (let i = 0; i < time_s.length; i++) {
    const w = speed_rad_s[i]!;
    const step = Number.isNaN(w) ? now : near(w);
    if (step === now) {
      left = -1;
      continue;
    }
    if (left < 0) left = i;
    const elsewhere = step >= 0 || now < 0;
    if (!elsewhere && time_s[i]! - time_s[left]! <= back_s) continue;
    close(left);
    from = elsewhere ? i : left;
    now = step;
    left = -1;
  }
  close(left < 0 ? time_s.length : left);
  return found;
}

/** The last `length_s` of a plateau, less its very last two readings (the speed may already be moving). */
export function lastPart(plateau: Plateau, time_s: Float64Array, length_s: number): readonly [number, number] {
  const to = Math.max(plateau.rows[0] + 1, plateau.rows[1] - 2);
  let from = to - 1;
  while (from > plateau.rows[0] && time_s[to - 1]! - time_s[from - 1]! <= length_s) from--;
  return [from, to];
}

export const windowOf = (input: {
  name: string;
  log: Log;
  rows: readonly [number, number];
  outputSpeed_rad_s: number;
  sump_K: number;
  steady: boolean;
}): Window => ({
  name: input.name,
  from_s: input.log.time_s[input.rows[0]]!,
  to_s: input.log.time_s[input.rows[1] - 1]!,
  fromLine: input.log.line[input.rows[0]]!,
  toLine: input.log.line[input.rows[1] - 1]!,
  outputSpeed_rad_s: input.outputSpeed_rad_s,
  sump_K: input.sump_K,
  readings: input.rows[1] - input.rows[0],
  steady: input.steady,
});
