import type { Planned } from '../../../src/compare/plan-cells.ts';
import type { Plan, PlanCell } from '../../../src/trial/plan.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { record } from './runs.ts';

export type PlannedRecord = SeriesRecord & { readonly plan: Plan };

/** "spin P1 3.59 O1 x3", "flow P0w 2.40 O1 12 %": trial, article, litres, oil, tilt, how often. */
export function cellOf(text: string): PlanCell {
  const [, trial, article, litres, oil, tilt, wanted] =
    /^(\S+) (\S+) (\S+) (\S+)(?: (\d+) %)?(?: x(\d+))?$/.exec(text) ?? [];
  return {
    trial: trial as PlanCell['trial'],
    ...{ article: article!, oil: oil!, fill_m3: Number(litres) / 1e3 },
    tilt_ratio: Number(tilt ?? 0) / 100,
    wanted: Number(wanted ?? 1),
  };
}

/** The good book with another plan; P2 and P3 are bowls like P0, and O2 is an oil like O1. P3 has no level table. */
export function planned(cells: readonly string[], more: Partial<Plan> = {}): PlannedRecord {
  const [P0, P1] = [record.articles.get('P0')!, record.articles.get('P1')!];
  const like = (id: string, levelTable = P1.levelTable) => [id, { ...P1, id, levelTable }] as const;
  return {
    ...record,
    runs: [],
    articles: new Map([...record.articles, ['P0', P0], like('P2'), like('P3', null)]),
    oils: new Map([...record.oils, ['O2', { ...record.oils.get('O1')!, id: 'O2' }]]),
    plan: { ...record.plan!, factors: ['article', 'fill', 'oil', 'tilt'], ...more, cells: cells.map(cellOf) },
  };
}

export const asPlanned: (of: PlannedRecord) => Planned = (of) => of;
