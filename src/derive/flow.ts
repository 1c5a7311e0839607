import { estimate, type Cause } from '../quantity/estimate.ts';
import type { Result, Window } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import { calibration, gather, readingScatter } from './causes.ts';
import { logSource, outputSpeed, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';
import { lastPart, plateaus, windowOf } from './windows.ts';

export interface FlowDerived {
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
  readonly windows: readonly Window[];
  /** Mean running level of each step on the way up, m. */
  readonly runningLevel_z_m: ReadonlyMap<number, number>;
}

/**
 * Running level at each step on the way up: mean of the level readings of the last part of the hold. Steps on the way down
 * are listed as windows and not mixed in: up and down differ.
 */
export function deriveFlow(reading: Reading, plan: Plan): FlowDerived {
  const { log, run } = reading;
  const speed = outputSpeed(reading);
  const level = reading.channel('level');
  const sump = reading.channel('sump');
  const none = { results: [], causes: [], windows: [], runningLevel_z_m: new Map<number, number>() };
  if (speed === null || level === null) return none;
  const rule = reading.instrument('level');
  const results: Result[] = [];
  const windows: Window[] = [];
  const causes: Cause[] = [];
  const running = new Map<number, number>();
  let highest = -Infinity;
  for (const plateau of plateaus({
    time_s: log.time_s,
    speed_rad_s: speed,
    steps_rad_s: plan.steps_rad_s,
    least_s: Math.min(45, plan.hold_s / 2),
  })) {
    const rows = lastPart(plateau, log.time_s, Math.min(plan.steadyWindow_s, 60));
    const z = meanOf(level.subarray(...rows));
    if (z.n < 5) continue;
    const step = plateau.step_rad_s;
    const up = step > highest;
    highest = Math.max(highest, step);
    const t = sump === null ? NaN : meanOf(sump.subarray(...rows)).mean;
    const name = `${Math.round((step * 30) / Math.PI)} rpm ${up ? 'up' : 'down'}`;
    windows.push(windowOf({ name, log, rows, outputSpeed_rad_s: step, sump_K: t, steady: true }));
    if (!up) continue;
    running.set(step, z.mean);
    const found = gather([
      { of: rule && calibration(rule, z.mean), sensitivity: 1 },
      { of: readingScatter({ run: run.id, what: `level at ${name}`, u: z.u, dof: z.dof }), sensitivity: 1 },
    ]);
    causes.push(...found.causes);
    results.push({
      quantity: 'running-level',
      at: { outputSpeed_rad_s: step },
      estimate: estimate(z.mean, found.parts),
      bound: null,
      class: 'measured',
      relation: 'mean-of-readings',
      method: 'flow/running-level',
      notes: ['way up; air carried in the oil raises the level, oil in flight lowers it'],
      given: [
        {
          symbol: 'z',
          name: 'level readings of the hold, mean',
          value: z.mean * 1e3,
          u: z.u * 1e3,
          unit: 'mm',
          from: logSource(log, 'level', rows),
        },
      ],
      steps: [],
    });
  }
  return { results, causes, windows, runningLevel_z_m: running };
}
