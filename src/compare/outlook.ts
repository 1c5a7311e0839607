import type { ComparedSeries } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Outlook } from '../trial/outlook.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { nextTrials } from './next-trial.ts';
import { seedOf } from './plan-order.ts';
import { planReach } from './plan-reach.ts';
import { runCards } from './run-cards.ts';

/** What lies ahead of a series as it stands now. */
export function outlookOf(of: {
  record: SeriesRecord;
  runs: ReadonlyMap<string, DerivedRun>;
  compared: Pick<ComparedSeries, 'standings' | 'cells' | 'causes'>;
}): Outlook {
  const { record, runs, compared } = of;
  const { plan } = record;
  return {
    reach: plan === null ? null : planReach({ ...record, plan }),
    next: nextTrials({ record, runs, compared }),
    cards: plan === null ? [] : runCards({ record: { ...record, plan }, runs }),
    seed: plan === null || plan.order !== 'random' ? null : seedOf(plan),
  };
}
