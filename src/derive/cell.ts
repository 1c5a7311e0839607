import type { Series } from '../trial/book.ts';
import { nominalCell } from '../trial/cell.ts';
import type { Cell } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';

/** The cell a run belongs to, by its litres at 20 °C and its tilt. */
export function cellOf(input: {
  run: Run;
  plan: Plan | null;
  volume20_m3: number;
  tolerance: Pick<Series['tolerance'], 'fill_m3' | 'tilt_ratio'>;
}): Cell {
  const { article, oil, tilt_ratio } = input.run;
  return nominalCell({ article, oil, fill_m3: input.volume20_m3, tilt_ratio }, input);
}
