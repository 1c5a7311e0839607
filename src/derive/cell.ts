import type { Series } from '../trial/book.ts';
import { campaignOf } from '../trial/campaign.ts';
import { nominalCell } from '../trial/cell.ts';
import type { Cell } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';

/** The cell a run belongs to, by its litres at 20 °C, its tilt and the campaign of its day. */
export function cellOf(input: {
  run: Run;
  plan: Plan | null;
  volume20_m3: number;
  tolerance: Pick<Series['tolerance'], 'fill_m3' | 'tilt_ratio'>;
  campaigns?: Series['campaigns'] | undefined;
}): Cell {
  const { article, oil, tilt_ratio, started } = input.run;
  const cell = nominalCell({ article, oil, fill_m3: input.volume20_m3, tilt_ratio }, input);
  const later = campaignOf(input.campaigns ?? [], started.slice(0, 10));
  return later === null ? cell : { ...cell, campaign: later.id };
}
