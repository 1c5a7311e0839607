import type { RunPlan } from './order.ts';
import type { Gear, SetUp } from './law.ts';
import { density_kg_m3, lawOf, oilLaws } from './law.ts';
import { levelAt_mm, levelTable } from './levels.ts';
import type { Calibration } from './instruments.ts';
import { interval_s } from './recording.ts';
import { still, type Stream, stream } from './random.ts';
import type { SpinSteps } from './timeline.ts';

/** What one run has of its own, drawn once. */
export interface Drawn {
  readonly refit_Nm: number;
  readonly air_m_s: number;
  readonly massRead_g: number;
  readonly massTrue_g: number;
  readonly pourRead_C: number;
  readonly level_mm: number;
  readonly ruleLeft_mm: number;
  readonly ruleRight_mm: number;
  readonly ambientStart_C: number;
  readonly sumpStart_C: number;
  readonly skinStart_C: number;
  readonly zeroBefore_Nm: number;
  readonly zeroAfter_Nm: number;
}

export interface Making {
  readonly seed: number;
  readonly quiet: boolean;
  readonly calibration: Calibration;
  readonly gear: Gear;
  readonly spin: SpinSteps;
}

/** Which draw of the refits and airflows is taken; the rest of a run does not move with it. */
export function drawRun(run: RunPlan, making: Making, draw: number): Drawn {
  const from = making.quiet ? still : stream(making.seed, run.order, 1);
  const again = making.quiet ? still : stream(making.seed, run.order, 2, draw);
  const oil = oilLaws[run.oil]!;
  const scale = making.quiet ? 0 : making.calibration['oil-scale']!;
  const rule = making.quiet ? 0 : making.calibration['level-rule']!;
  const wanted_g = run.fill_L * density_kg_m3(oil, 20);
  const massRead_g = making.quiet ? wanted_g : Math.round(wanted_g + clamp(from.normal(1.5), 3));
  const massTrue_g = massRead_g - scale + from.even(-0.5, 0.5);
  const level_mm = levelAt_mm(levelTable(run.article), massTrue_g / density_kg_m3(oil, 20));
  const zeroStep = run.trial === 'spin' ? 0.03 : 0.3;
  const zeroBefore_Nm = from.even(-zeroStep / 2, zeroStep);
  const ambientStart_C = run.id === 'H-09' || making.quiet ? 21 : 21 + from.even(-0.5, 0.6);
  const sumpStart_C = ambientStart_C + clamp(from.normal(0.15), 0.3);
  return {
    refit_Nm: again.normal(0.035),
    air_m_s: trueAir_m_s(run, again),
    massRead_g,
    massTrue_g,
    pourRead_C: making.quiet ? 20 : 20.5 + from.even(-0.8, 0.9),
    level_mm,
    ruleLeft_mm: level_mm + rule + clamp(from.normal(0.3), 0.6),
    ruleRight_mm: level_mm + rule + clamp(from.normal(0.3), 0.6),
    ambientStart_C,
    sumpStart_C,
    skinStart_C: sumpStart_C + clamp(from.normal(0.1), 0.25),
    zeroBefore_Nm: making.quiet ? 0 : zeroBefore_Nm,
    zeroAfter_Nm: making.quiet ? 0 : zeroBefore_Nm + from.even(-zeroStep, zeroStep),
  };
}

function trueAir_m_s(run: RunPlan, from: Stream): number {
  const own = from.normal(1);
  if (run.trial === 'heat-up') return 4 + 0.05 * own;
  if (run.trial === 'cool-down') return 0.3 + 0.015 * own;
  return Math.max(0.02, 0.05 + 0.01 * own);
}

export const setUpOf = (
  run: { article: string; oil: string },
  drawn: Pick<Drawn, 'level_mm' | 'massTrue_g' | 'refit_Nm'>,
  gear: Gear,
): SetUp => ({
  ...{ gear, oil: oilLaws[run.oil]!, article: lawOf(run.article) },
  level_mm: drawn.level_mm,
  oilMass_kg: drawn.massTrue_g / 1000,
  refit_Nm: drawn.refit_Nm,
});

/** A walk of 0.5 K an hour, drawn again until it stays inside 1.2 K of its start. */
export function ambientWalk_C(start_C: number, rows: number, from: Stream): Float64Array {
  const sd_K = 0.5 * Math.sqrt(interval_s / 3600);
  for (;;) {
    const walk = new Float64Array(rows);
    let now_C = start_C;
    for (let row = 0; row < rows; row++) {
      walk[row] = now_C;
      now_C += from.normal(sd_K);
    }
    if (walk.every((t) => Math.abs(t - start_C) < 1.2)) return walk;
  }
}

const clamp = (value: number, limit: number): number => Math.max(-limit, Math.min(limit, value));
