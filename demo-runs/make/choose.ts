import { type Drawn, drawRun, type Making, setUpOf } from './draws.ts';
import type { RunPlan } from './order.ts';
import { still } from './random.ts';
import { heatUp } from './trials.ts';
import { asTold, type DrawnRun, hillLoad, type Verdict, verdicts } from './verdicts.ts';

export interface Choice {
  /** How many draws were made, the one taken included. */
  readonly draws: number;
  readonly drawn: ReadonlyMap<string, Drawn>;
  readonly verdicts: readonly Verdict[];
}

export function chooseDraw(plans: readonly RunPlan[], making: Making, select: boolean): Choice {
  for (let draw = 1; ; draw++) {
    const drawn = new Map(plans.map((plan) => [plan.id, drawRun(plan, making, draw)]));
    const found = verdicts(plans.map((plan) => drawnRun(plan, drawn, making)));
    if (making.quiet || !select || asTold(found)) return { draws: draw, drawn, verdicts: found };
  }
}

function drawnRun(plan: RunPlan, drawn: ReadonlyMap<string, Drawn>, making: Making): DrawnRun {
  const own = drawn.get(plan.id)!;
  const setUp = setUpOf(plan, own, making.gear);
  const timed = plan.trial === 'heat-up' && plan.article === 'P0' && plan.tilt_pct === 0;
  return { plan, setUp, air_m_s: own.air_m_s, to95_s: timed ? to95_s(setUp, own.air_m_s) : null };
}

const to95_s = (setUp: DrawnRun['setUp'], air_m_s: number): number | null => {
  const length_s = 9000;
  const ambient_C = new Float64Array(length_s / 2 + 1).fill(21);
  const around = { ambient_C, air_m_s, tilt_pct: 0, wander: still };
  const start = { sump_C: 21, skin_C: 21, race_C: 21 };
  const { crossings } = heatUp({ setUp, around }, { length_s, load: hillLoad, start, limits_C: [95], hubs_Nm: [0, 0] });
  return crossings.get(95) ?? null;
};
