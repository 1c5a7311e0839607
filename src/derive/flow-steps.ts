import { estimate, type Cause } from '../quantity/estimate.ts';
import type { Result, Window } from '../trial/derived.ts';
import type { StepName } from '../trial/flow.ts';
import type { Plan } from '../trial/plan.ts';
import { calibration, gather, readingScatter, type Contribution } from './causes.ts';
import { logSource, outputSpeed, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';
import { lastPart, plateaus, windowOf } from './windows.ts';

/** A hold of a flow trial with what its readings say; rows of the log, last not included. */
export interface Hold {
  readonly step: StepName;
  readonly name: string;
  readonly rows: readonly [number, number];
  /** The last part of the hold, whose readings are averaged. */
  readonly window: readonly [number, number];
  readonly sump_K: number | null;
  readonly level: ReturnType<typeof meanOf> | null;
  readonly steady: boolean;
}

/** The level may still move this fast in a step that counts as steady: 1 mm in 10 s (our rule). */
const steadySlope_m_s = 1e-4;

/**
 * Every planned speed in the order it was run: up when it is come to from a lower one or from rest, down from a higher one.
 * A speed that is held again after a stumble keeps its way.
 */
export function holdsOf(reading: Reading, plan: Plan): readonly Hold[] {
  const { log } = reading;
  const speed = outputSpeed(reading);
  if (speed === null) return [];
  const level = reading.channel('level');
  const sump = reading.channel('sump');
  let before = { speed: -Infinity, direction: 'up' as StepName['direction'] };
  return plateaus({
    time_s: log.time_s,
    speed_rad_s: speed,
    steps_rad_s: plan.steps_rad_s,
    least_s: Math.min(45, plan.hold_s / 2),
  }).map(({ step_rad_s, rows }): Hold => {
    const window = lastPart({ step_rad_s, rows }, log.time_s, Math.min(plan.steadyWindow_s, 60));
    const same = step_rad_s === before.speed;
    const direction = same ? before.direction : step_rad_s > before.speed ? 'up' : 'down';
    before = { speed: step_rad_s, direction };
    const z = level === null ? null : meanOf(level.subarray(...window));
    const t = sump === null ? NaN : meanOf(sump.subarray(...window)).mean;
    return {
      step: { outputSpeed_rad_s: step_rad_s, direction },
      name: `${Math.round((step_rad_s * 30) / Math.PI)} rpm ${direction}`,
      rows,
      window,
      sump_K: Number.isNaN(t) ? null : t,
      level: z === null || z.n < 5 ? null : z,
      steady: level === null || Math.abs(slope(log.time_s, level, window)) <= steadySlope_m_s,
    };
  });
}

/** Each speed and way once, as it was first held: a second hold of it would stand under the same name. */
export function heldOnce(holds: readonly Hold[]): { readonly once: readonly Hold[]; readonly again: readonly Hold[] } {
  const isFirst = (hold: Hold, i: number): boolean => holds.findIndex(({ name }) => name === hold.name) === i;
  return { once: holds.filter(isFirst), again: holds.filter((hold, i) => !isFirst(hold, i)) };
}

/** Least-squares slope of a channel over rows, a second; 0 for fewer than three readings. */
function slope(time_s: Float64Array, values: Float64Array, [from, to]: readonly [number, number]): number {
  const rows = Array.from({ length: to - from }, (_, i) => from + i).filter((i) => !Number.isNaN(values[i]!));
  if (rows.length < 3) return 0;
  const mean = (of: (i: number) => number): number => rows.reduce((sum, i) => sum + of(i), 0) / rows.length;
  const [t, v] = [mean((i) => time_s[i]!), mean((i) => values[i]!)];
  const across = rows.reduce((sum, i) => sum + (time_s[i]! - t) ** 2, 0);
  return across === 0 ? 0 : rows.reduce((sum, i) => sum + (time_s[i]! - t) * (values[i]! - v), 0) / across;
}

export const windowsOf = (reading: Reading, holds: readonly Hold[]): Window[] =>
  holds.map((hold) =>
    windowOf({
      name: hold.name,
      log: reading.log,
      rows: hold.window,
      outputSpeed_rad_s: hold.step.outputSpeed_rad_s,
      sump_K: hold.sump_K ?? NaN,
      steady: hold.steady,
    }),
  );

export const atStep = ({ outputSpeed_rad_s, direction }: StepName): Result['at'] => ({
  outputSpeed_rad_s,
  ...(direction === 'down' ? { direction } : {}),
});

/**
 * Running level and swing of each hold, and the gap between the way up and the way down at one speed: air let in at speed
 * leaves slowly, so the two are never averaged.
 */
export function levelResults(reading: Reading, holds: readonly Hold[]): { results: Result[]; causes: Cause[] } {
  const rule = reading.instrument('level');
  const results: Result[] = [];
  const causes: Cause[] = [];
  const scatter = (hold: Hold, u: number): Contribution =>
    readingScatter({ run: reading.run.id, what: `level at ${hold.name}`, u, dof: hold.level?.dof ?? 1 });
  const given = (hold: Hold): Result['given'] => [
    {
      symbol: hold.step.direction === 'up' ? 'z' : 'z down',
      name: `level readings of the hold at ${hold.name}, mean`,
      value: (hold.level?.mean ?? NaN) * 1e3,
      u: (hold.level?.u ?? NaN) * 1e3,
      unit: 'mm',
      from: logSource(reading.log, 'level', hold.window),
    },
  ];
  const tell = (result: Omit<Result, 'bound' | 'class' | 'steps'>, found: { causes: readonly Cause[] }): void => {
    causes.push(...found.causes);
    results.push({ bound: null, class: 'measured', steps: [], ...result });
  };
  for (const hold of holds) {
    if (hold.level === null) continue;
    const { mean, s, u, dof } = hold.level;
    const notes = hold.steady ? [] : ['not steady: the level still moved faster than 1 mm in 10 s'];
    const level = gather([
      { of: rule && calibration(rule, mean), sensitivity: 1 },
      { of: scatter(hold, u), sensitivity: 1 },
    ]);
    tell(
      {
        quantity: 'running-level',
        at: atStep(hold.step),
        estimate: estimate(mean, level.parts),
        relation: 'mean-of-readings',
        method: 'flow/running-level',
        notes: [
          `way ${hold.step.direction}; air carried in the oil raises the level, oil in flight lowers it`,
          ...notes,
        ],
        given: given(hold),
      },
      level,
    );
    const swing = gather([
      {
        of: readingScatter({
          run: reading.run.id,
          what: `swing at ${hold.name}`,
          u: (2 * s) / Math.sqrt(2 * Math.max(1, dof)),
          dof,
        }),
        sensitivity: 1,
      },
    ]);
    tell(
      {
        quantity: 'level-swing',
        at: atStep(hold.step),
        estimate: estimate(2 * s, swing.parts),
        relation: 'swing-of-readings',
        method: 'flow/level-swing',
        notes,
        given: given(hold),
      },
      swing,
    );
  }
  for (const down of holds.filter(({ step }) => step.direction === 'down')) {
    const up = holds.find(
      ({ step }) => step.direction === 'up' && step.outputSpeed_rad_s === down.step.outputSpeed_rad_s,
    );
    if (up?.level == null || down.level === null) continue;
    // One glass, read the same way twice: its calibration cancels.
    const gap = gather([
      { of: scatter(up, up.level.u), sensitivity: 1 },
      { of: scatter(down, down.level.u), sensitivity: -1 },
    ]);
    tell(
      {
        quantity: 'level-gap',
        at: { outputSpeed_rad_s: down.step.outputSpeed_rad_s },
        estimate: estimate(up.level.mean - down.level.mean, gap.parts),
        relation: 'up-less-down',
        method: 'flow/level-gap',
        notes: [],
        given: [...given(up), ...given(down)],
      },
      gap,
    );
  }
  return { results, causes };
}
