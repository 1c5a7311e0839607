import type { CauseTable, Estimate } from '../quantity/estimate.ts';
import { shownDifference, type QuantityName } from '../trial/figures.ts';
import type { BudgetRow } from './ledger.ts';

/** Largest first. Scatter of refits of several cells is one line, calibration of one instrument another. */
export function budgetOf(quantity: QuantityName, e: Estimate, causes: CauseTable): BudgetRow[] {
  const variance = e.parts.reduce((sum, p) => sum + p.u ** 2, 0);
  return e.parts
    .map((p): BudgetRow => {
      const cause = causes.get(p.cause);
      return {
        cause: p.cause,
        name: cause?.name ?? p.cause,
        u: Math.abs(shownDifference(quantity, p.u)),
        share: variance === 0 ? 0 : p.u ** 2 / variance,
        dof: cause?.dof ?? Infinity,
        scope: cause?.scope ?? 'run',
      };
    })
    .sort((a, b) => b.share - a.share || (a.cause < b.cause ? -1 : 1));
}
