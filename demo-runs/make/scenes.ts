import { flash_s } from './film.ts';
import { bubbleCourse, flowCourse } from './flow-truth.ts';
import { type GradeKind, held04, heldAfter_mm, levelHalf_s, rawGrades, runningLevel_mm, swing_mm } from './law.ts';
import type { MadeRun } from './run.ts';
import { type Scene, slowed } from './window-scene.ts';

const turns = new WeakMap<object, Float64Array>();
const each_s = 0.05;

/** The invented axle at a moment of its log, as the window shows it. Nothing in it tells article, fill or oil in words. */
export function sceneAt(run: MadeRun, log_s: number): Scene {
  const { setUp, plan } = run;
  const { rpmAt, holds_s, stop_s } = flowCourse(run);
  const rpm = rpmAt(log_s);
  const temp_C = 60;
  const grades = rawGrades(setUp, { wheel_rpm: Math.max(rpm, 0.1), tilt_pct: plan.tilt_pct, temp_C });
  const shown = Object.fromEntries(
    Object.entries({ ...grades, bubble: bubbleCourse(run)(log_s) }).map(([kind, grade]) => [kind, held04(grade)]),
  ) as Record<GradeKind, number>;
  return {
    ...{ article: plan.article, tilt_pct: plan.tilt_pct, rpm, grades: shown },
    level_mm: log_s > stop_s ? settling_mm(run, log_s - stop_s) : runningLevel_mm(setUp, rpm),
    swing_mm: swing_mm(rpm),
    t_s: log_s + 37 * plan.order,
    turned_rad: turned_rad(run, log_s),
    flash: log_s >= flash_s && log_s < flash_s + 0.3,
    label: labelAt(log_s, { rpmAt, holds_s, stop_s }),
    clock: `film ${clock(log_s)}`,
  };
}

/** Coming back after the stop, as the log's level does. */
function settling_mm({ setUp, spin }: MadeRun, after_s: number): number {
  const low_mm = runningLevel_mm(setUp, spin.steps_rpm[0]!);
  const end_mm = setUp.level_mm - heldAfter_mm;
  return end_mm + (low_mm - end_mm) * 0.5 ** (after_s / levelHalf_s(setUp));
}

function turned_rad(run: MadeRun, log_s: number): number {
  let sums = turns.get(run);
  if (!sums) {
    const { rpmAt, length_s } = flowCourse(run);
    sums = new Float64Array(Math.ceil(length_s / each_s) + 2);
    for (let i = 1; i < sums.length; i++)
      sums[i] = sums[i - 1]! + (rpmAt((i - 0.5) * each_s) * 2 * Math.PI * each_s) / (60 * slowed);
    turns.set(run, sums);
  }
  const at = log_s / each_s;
  const i = Math.floor(at);
  return sums[i]! + (sums[i + 1]! - sums[i]!) * (at - i);
}

function labelAt(log_s: number, course: Pick<ReturnType<typeof flowCourse>, 'rpmAt' | 'holds_s' | 'stop_s'>): string {
  const { rpmAt, holds_s, stop_s } = course;
  if (log_s >= stop_s) return 'stopped';
  if (rpmAt(log_s) < 0.5) return 'at rest';
  const i = holds_s.findLastIndex((hold) => hold <= log_s + 8);
  if (i < 0) return 'at rest';
  const ending = i === holds_s.length - 1 && log_s > holds_s[i]! + 90;
  if (ending) return 'coming to rest';
  const name = `${Math.round(rpmAt(holds_s[i]!))} rpm ${i < (holds_s.length + 1) / 2 ? 'up' : 'down'}`;
  return log_s < holds_s[i]! ? `to ${name}` : name;
}

const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');
const clock = (s: number): string => `${two(s / 3600)}:${two((s / 60) % 60)}:${two(s % 60)}`;
