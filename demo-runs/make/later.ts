import { drawRun, type Drawn, type Making, setUpOf } from './draws.ts';
import { shaft_rad_s, spinPower_W } from './law.ts';
import type { RunPlan } from './order.ts';
import { makeRun, type MadeRun } from './run.ts';
import type { SpinSteps } from './timeline.ts';

/** The campaign of 2027: the gears were rebuilt, and turn a little harder. */
export const laterCampaign = {
  id: 'U-01',
  from: '2027-05-03',
  rigState: 'Q1-b',
  why: 'a thin cast bowl arrived, and the gears had been rebuilt in the winter',
} as const;

/** What the pressed bowl takes then, W at 290 rpm and 60 °C; it was 240.8 W. */
const again_W = 246.9;
const harder_Nm = (again_W - 240.787) / ((shaft_rad_s(290) * 41) / 9);
const near_W = 0.4;

const steps: SpinSteps = {
  ...{ lead_s: 90, hold_s: 120, warm_s: 0, even_s: 0, idle_rpm: 290 },
  steps_rpm: [60, 120, 200, 290, 390, 520],
  temps_C: [60],
};
const length_s = 858;

/** Article, day after the first midnight of the campaign, clock. */
const turns: readonly [string, number, string][] = [
  ['P0', 0, '09:30'],
  ['P5', 0, '13:20'],
  ['P0', 1, '09:15'],
  ['P5', 1, '13:05'],
  ['P5', 2, '09:25'],
  ['P0', 2, '13:10'],
];

/** `before`: runs of the series so far, whose order and refits go on. */
function plansAfter(before: readonly RunPlan[], firstDay: string): readonly RunPlan[] {
  const midnight_s = (Date.parse(laterCampaign.from) - Date.parse(firstDay)) / 1000;
  const refits = new Map<string, number>();
  for (const { article, refit } of before) refits.set(article, Math.max(refit, refits.get(article) ?? 0));
  return turns.map(([article, day, clock], i) => {
    const [hours, minutes] = clock.split(':').map(Number) as [number, number];
    const refit = (refits.get(article) ?? 0) + 1;
    refits.set(article, refit);
    return {
      ...{ id: `U-1${i + 1}`, trial: 'spin', article, oil: 'O1', fill_L: 2.4, tilt_pct: 0 },
      ...{ order: before.length + i + 1, refit, length_s, fromRun: null },
      start_s: midnight_s + day * 86_400 + hours * 3600 + minutes * 60,
    };
  });
}

/** The later runs of the series. Refits are drawn again until the baseline comes back as the story tells it. */
export function laterRuns(before: readonly RunPlan[], firstDay: string, first: Making): readonly MadeRun[] {
  const gear = { ...first.gear, constant_Nm: first.gear.constant_Nm + harder_Nm };
  const making: Making = { ...first, gear, spin: steps };
  const plans = plansAfter(before, firstDay);
  for (let draw = 1; ; draw++) {
    const drawn = plans.map((plan) => drawRun(plan, making, draw));
    if (making.quiet || Math.abs(baseline_W(plans, drawn, making) - again_W) < near_W)
      return plans.map((plan, i) => makeRun(plan, drawn[i]!, making, null));
  }
}

function baseline_W(plans: readonly RunPlan[], drawn: readonly Drawn[], { gear }: Making): number {
  const all = plans.flatMap((plan, i) =>
    plan.article === 'P0' ? [spinPower_W(setUpOf(plan, drawn[i]!, gear), { wheel_rpm: 290, temp_C: 60 })] : [],
  );
  return all.reduce((sum, watts) => sum + watts, 0) / all.length;
}
