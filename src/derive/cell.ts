import type { Series } from '../trial/book.ts';
import type { Cell } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';

/**
 * The cell a run belongs to. The nominal fill is the plan's for the same article and oil when the litres at 20 °C come
 * within the tolerance of it; otherwise the litres themselves, to 0.05 L. So with the tilt: the plan's, or level, when it is
 * that near; otherwise as it was read.
 */
export function cellOf(input: {
  run: Run;
  plan: Plan | null;
  volume20_m3: number;
  tolerance: Pick<Series['tolerance'], 'fill_m3' | 'tilt_ratio'>;
}): Cell {
  const { run, plan, volume20_m3, tolerance } = input;
  const planned = (plan?.cells ?? [])
    .filter((c) => c.article === run.article && c.oil === run.oil)
    .map((c) => c.fill_m3)
    .sort((a, b) => Math.abs(a - volume20_m3) - Math.abs(b - volume20_m3))[0];
  const fill_m3 =
    planned !== undefined && Math.abs(planned - volume20_m3) <= tolerance.fill_m3
      ? planned
      : Math.round(volume20_m3 / 5e-5) * 5e-5;
  const off = (tilt: number): number => Math.abs(tilt - run.tilt_ratio);
  const meant = [0, ...(plan?.cells ?? []).map((c) => c.tilt_ratio)].reduce((a, b) => (off(b) < off(a) ? b : a));
  const tilt_ratio = off(meant) <= tolerance.tilt_ratio ? meant : run.tilt_ratio;
  return { article: run.article, oil: run.oil, fill_m3, tilt_ratio };
}
