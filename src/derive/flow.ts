import type { Cause } from '../quantity/estimate.ts';
import type { Finding } from '../finding/finding.ts';
import type { FlowRun, FlowStep, Result, Window } from '../trial/derived.ts';
import type { LevelTable } from '../trial/article.ts';
import type { LogLogLine } from '../physics/viscosity.ts';
import type { Oil } from '../trial/oil.ts';
import type { Plan } from '../trial/plan.ts';
import { deriveAir } from './air.ts';
import { tiedClips } from './clip-clock.ts';
import { heldOnce, holdsOf, levelResults, windowsOf, type Hold } from './flow-steps.ts';
import { rowPlace } from './faults.ts';
import { gradeResults, sorted, stepGrades } from './grades.ts';
import type { LevelDerived } from './level.ts';
import type { Reading } from './reading.ts';
import { deriveSettle } from './settle.ts';
import { besideThePicture } from './similarity.ts';
import * as texts from './texts-flow.ts';
import { hotRise } from './tilted.ts';

export interface FlowDerived {
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
  readonly windows: readonly Window[];
  readonly findings: readonly Finding[];
  readonly flow: FlowRun;
  /** Mean running level of each step on the way up, m. */
  readonly runningLevel_z_m: ReadonlyMap<number, number>;
}

/**
 * A flow trial behind a window: steps with their levels, grades put to them through the tied clips, the level after the
 * stop, air where something was weighed, and the numbers that say how far this picture carries. The way down stands beside
 * the way up and is never averaged with it.
 */
export function deriveFlow(input: {
  reading: Reading;
  plan: Plan;
  oil: Oil;
  line: LogLogLine | null;
  table: LevelTable | null;
  level: LevelDerived;
  /** Height of the tip of the sump probe; null when it is not on the rig sheet. */
  tip_z_m: number | null;
}): FlowDerived {
  const { reading, plan, oil, line, table, level, tip_z_m } = input;
  const { run, rig } = reading;
  const { once: holds, again } = heldOnce(holdsOf(reading, plan));
  const levels = levelResults(reading, holds);
  const clips = tiedClips(run, reading.log);
  const graded = sorted(reading, holds, clips.clips);
  const air = deriveAir({ reading, oil, table });
  const settle = deriveSettle(reading, air.untold);
  const warm = hotRise({ reading, oil, table, volume20_m3: level.volume20_m3 });
  // A probe above the level reads mist: no viscosity is looked up with it.
  const wet = holds.filter((hold) => !probeAbove(hold, tip_z_m));
  const numbers = line === null ? { results: [], causes: [] } : besideThePicture(reading, wet, { rig, oil, line });
  const steps = holds.map((hold) =>
    stepOf(reading, hold, { tip_z_m, observations: graded.of.get(hold) ?? [], anyGraded: run.observations.length > 0 }),
  );
  const grades = holds.flatMap((hold, i): Result[] => {
    const step = steps[i]!;
    return step.grades === null ? [] : gradeResults(run, hold, step.grades, step.observations);
  });
  const parts = [levels, clips, air, settle, warm, numbers];
  return {
    results: [...parts.flatMap(({ results }) => results), ...grades],
    causes: parts.flatMap(({ causes }) => causes),
    windows: windowsOf(reading, holds),
    findings: [...clips.findings, ...graded.findings, ...again.map((hold) => heldAgain(reading, hold))],
    flow: { steps, clips: clips.clips, settled: settle.settled, standsFor: null },
    runningLevel_z_m: new Map(
      holds.flatMap(({ step, level: z }) =>
        step.direction === 'up' && z !== null ? [[step.outputSpeed_rad_s, z.mean] as const] : [],
      ),
    ),
  };
}

const heldAgain = ({ log, run }: Reading, { name, rows }: Hold): Finding =>
  texts.stepHeldAgain({
    place: rowPlace(log, rows[0], 'pinion-speed'),
    run: run.id,
    step: name,
    from: log.time_s[rows[0]]!,
    to: log.time_s[rows[1] - 1]!,
  });

const probeAbove = ({ level }: Hold, tip_z_m: number | null): boolean =>
  level !== null && tip_z_m !== null && level.mean < tip_z_m;

function stepOf(
  { log }: Reading,
  hold: Hold,
  of: { tip_z_m: number | null; observations: FlowStep['observations']; anyGraded: boolean },
): FlowStep {
  return {
    step: hold.step,
    name: hold.name,
    from_s: log.time_s[hold.rows[0]]!,
    to_s: log.time_s[hold.rows[1] - 1]!,
    sump_K: hold.sump_K,
    level_z_m: hold.level?.mean ?? null,
    swing_m: hold.level === null ? null : 2 * hold.level.s,
    steady: hold.steady,
    probeAbove: probeAbove(hold, of.tip_z_m),
    grades: of.anyGraded ? stepGrades(of.observations) : null,
    observations: of.observations,
  };
}
