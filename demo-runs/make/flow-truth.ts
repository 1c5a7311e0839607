import { bubbleAfter, type Grades, rawGrades, runningLevel_mm, swing_mm } from './law.ts';
import type { MadeRun } from './run.ts';
import { interval_s } from './recording.ts';
import { flowTimeline, walk } from './timeline.ts';

/** One step as it was in truth, while it is graded: the first ten seconds of the hold. */
export interface TrueStep {
  /** Counts from 1, up and then down. */
  readonly n: number;
  readonly wheel_rpm: number;
  readonly direction: 'up' | 'down';
  /** Logger time at which the hold begins. */
  readonly hold_s: number;
  /** Before they are held to the scale. */
  readonly grades: Grades;
  readonly level_mm: number;
  readonly swing_mm: number;
}

export const window_s = 10;
/** Grades of the demo hold at this temperature. */
const temp_C = 60;

type Flown = Pick<MadeRun, 'setUp' | 'spin' | 'plan'>;

/** Speed against logger time, holds and stop. */
export function flowCourse({ spin }: Pick<MadeRun, 'spin'>) {
  const { at, events, length_s } = walk(flowTimeline(spin.steps_rpm, { from: temp_C, to: temp_C }));
  const named = [...events].map(([row, name]) => ({ t_s: row * interval_s, name }));
  return {
    rpmAt: (t_s: number): number => at(Math.min(t_s, length_s)).wheel_rpm,
    holds_s: named.filter(({ name }) => name.startsWith('step')).map(({ t_s }) => t_s),
    stop_s: named.find(({ name }) => name === 'stop')!.t_s,
    length_s,
  };
}

export function trueSteps(made: Flown): readonly TrueStep[] {
  const { setUp, spin, plan } = made;
  const { holds_s } = flowCourse(made);
  const bubble = bubbleCourse(made);
  const speeds = [...spin.steps_rpm, ...spin.steps_rpm.slice(0, -1).reverse()];
  return speeds.map((wheel_rpm, i) => {
    const raw = rawGrades(setUp, { wheel_rpm, tilt_pct: plan.tilt_pct, temp_C });
    return {
      ...{ n: i + 1, wheel_rpm, hold_s: holds_s[i]! },
      direction: i < spin.steps_rpm.length ? 'up' : 'down',
      grades: { ...raw, bubble: Math.max(raw.bubble, bubble(holds_s[i]! + window_s / 2)) },
      level_mm: runningLevel_mm(setUp, wheel_rpm),
      swing_mm: swing_mm(wheel_rpm),
    };
  });
}

/** Bubble, held to the scale, at any second of the run: followed from the start because air lets itself be waited for. */
export function bubbleCourse(made: Pick<Flown, 'setUp' | 'spin'>): (t_s: number) => number {
  const { rpmAt, length_s } = flowCourse(made);
  const each_s = [0];
  for (let t_s = 1; t_s <= length_s; t_s++)
    each_s.push(bubbleAfter(made.setUp, each_s[t_s - 1]!, { wheel_rpm: rpmAt(t_s), temp_C }, 1));
  return (t_s) => each_s[Math.round(Math.min(length_s, t_s))]!;
}
