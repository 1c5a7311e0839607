import type { Series } from './book.ts';
import type { Cell } from './derived.ts';
import type { Plan } from './plan.ts';

/**
 * What was read, as the cell that is meant. The nominal fill is the plan's for the same article and oil when the litres at
 * 20 °C come within the tolerance of it; otherwise the litres themselves, to 0.05 L. So with the tilt: the plan's, or level,
 * when it is that near; otherwise as it was read.
 */
export function nominalCell(
  read: Cell,
  { plan, tolerance }: { plan: Plan | null; tolerance: Pick<Series['tolerance'], 'fill_m3' | 'tilt_ratio'> },
): Cell {
  const planned = (plan?.cells ?? [])
    .filter((c) => c.article === read.article && c.oil === read.oil)
    .map((c) => c.fill_m3)
    .sort((a, b) => Math.abs(a - read.fill_m3) - Math.abs(b - read.fill_m3))[0];
  const fill_m3 =
    planned !== undefined && Math.abs(planned - read.fill_m3) <= tolerance.fill_m3
      ? planned
      : Math.round(read.fill_m3 / 5e-5) * 5e-5;
  const off = (tilt: number): number => Math.abs(tilt - read.tilt_ratio);
  const meant = [0, ...(plan?.cells ?? []).map((c) => c.tilt_ratio)].reduce((a, b) => (off(b) < off(a) ? b : a));
  const tilt_ratio = off(meant) <= tolerance.tilt_ratio ? meant : read.tilt_ratio;
  return { article: read.article, oil: read.oil, fill_m3, tilt_ratio };
}
