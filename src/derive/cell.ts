import type { Cell } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';

/**
 * The cell a run belongs to. The nominal fill is the plan's for the same article and oil when the litres at 20 °C come
 * within the tolerance of it; otherwise the litres themselves, to 0.05 L.
 */
export function cellOf(input: { run: Run; plan: Plan | null; volume20_m3: number; tolerance_m3: number }): Cell {
  const { run, plan, volume20_m3, tolerance_m3 } = input;
  const planned = (plan?.cells ?? [])
    .filter((c) => c.article === run.article && c.oil === run.oil)
    .map((c) => c.fill_m3)
    .sort((a, b) => Math.abs(a - volume20_m3) - Math.abs(b - volume20_m3))[0];
  const fill_m3 =
    planned !== undefined && Math.abs(planned - volume20_m3) <= tolerance_m3
      ? planned
      : Math.round(volume20_m3 / 5e-5) * 5e-5;
  return { article: run.article, oil: run.oil, fill_m3, tilt_ratio: run.tilt_ratio };
}
