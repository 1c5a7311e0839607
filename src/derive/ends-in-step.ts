import type { Finding } from '../finding/finding.ts';
import { writeNumber } from '../quantity/write.ts';
import type { Plan } from '../trial/plan.ts';
import { rowPlace } from './faults.ts';
import { meanOf } from './readings-of.ts';
import { outputSpeed, type Reading } from './reading.ts';
import * as texts from './texts.ts';
import { plateaus, type Plateau } from './windows.ts';

/** What a hold may lack before it is told: a fast logger never ends on the same reading. Common practice, no source. */
const short_s = 1;

/**
 * A stepped run whose log ends where no run would: in a step that was held shorter than the others, on the way up to the next, or
 * before a step that every other temperature has. The file may be cut off at a whole line, near enough to its end for the times of
 * the note to agree. Told once.
 */
export function endsInStep(reading: Reading, plan: Plan): readonly Finding[] {
  const speed = outputSpeed(reading);
  const { log, run } = reading;
  if (speed === null || log.rows === 0 || (run.trial !== 'spin' && run.trial !== 'flow')) return [];
  const held = (least_s: number): Plateau[] =>
    plateaus({ time_s: log.time_s, speed_rad_s: speed, steps_rad_s: plan.steps_rad_s, least_s });
  const whole = held(plan.hold_s / 2);
  const [first, last] = [whole[0], held(0).at(-1)];
  if (first === undefined || last === undefined) return [];
  const length_s = ({ rows: [from, to] }: Plateau): number => log.time_s[to - 1]! - log.time_s[from]!;
  const says = ((): string | null => {
    if (last.rows[1] === log.rows) {
      const between = whole.filter(({ rows: [from, to] }) => from > 0 && to < log.rows);
      const usual_s = Math.min(plan.hold_s, ...between.map(length_s));
      if (usual_s - length_s(last) >= short_s)
        return `${rpm(last.step_rad_s)} rpm is held for ${writeNumber(length_s(last), 0)} s and no longer, and ${between.length > 0 ? 'every other step' : 'by the plan'} for ${writeNumber(usual_s, 0)} s or more`;
    } else if (Math.abs(speed[log.rows - 1]!) > 1.05 * whole.at(-1)!.step_rad_s)
      return `the speed is on its way up from ${rpm(whole.at(-1)!.step_rad_s)} rpm`;
    return run.trial === 'spin' ? missingAtLast(reading, plan, whole) : null;
  })();
  return says === null
    ? []
    : [texts.endsInStep({ place: rowPlace(log, log.rows - 1, 'pinion-speed'), run: run.id, says })];
}

/** Steps that each other temperature of the run has, and the one that it ends at does not. */
function missingAtLast(reading: Reading, plan: Plan, whole: readonly Plateau[]): string | null {
  const sump = reading.channel('sump');
  if (sump === null) return null;
  const stepsAt = new Map<number, Set<number>>();
  let last = NaN;
  for (const { rows, step_rad_s } of whole) {
    const { mean } = meanOf(sump.subarray(...rows));
    const near_K = plan.temperatures_K.find((t) => Math.abs(t - mean) <= 3);
    if (near_K === undefined) continue;
    stepsAt.set(near_K, (stepsAt.get(near_K) ?? new Set()).add(step_rad_s));
    last = near_K;
  }
  const others = [...stepsAt].filter(([t]) => t !== last);
  const missing = plan.steps_rad_s.filter(
    (step) =>
      stepsAt.get(last)?.has(step) === false && others.length > 0 && others.every(([, steps]) => steps.has(step)),
  );
  if (missing.length === 0) return null;
  const celsius = (t_K: number): string => writeNumber(t_K - 273.15, 0);
  return `${missing.map(rpm).join(', ')} rpm ${missing.length === 1 ? 'is' : 'are'} missing at ${celsius(last)} °C, and held at ${others.map(([t]) => celsius(t)).join(', ')} °C`;
}

const rpm = (step_rad_s: number): string => writeNumber((step_rad_s * 30) / Math.PI, 0);
