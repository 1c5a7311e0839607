import { effectiveDof, standardUncertainty, type CauseTable, type Estimate } from '../quantity/estimate.ts';
import { coverageFactor } from '../statistics/student.ts';
import type { Series } from '../trial/book.ts';
import type { AgainstMargin } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import { quantityKinds, type QuantityName } from '../trial/figures.ts';

/**
 * A difference held against the margin of the series by two one-sided tests: equal within the margin when the interval that
 * leaves the family level at either end lies inside ±margin; no worse when its worse end does. A margin that was declared
 * on or after the day of the first of these runs is none.
 *
 * source  two one-sided tests, Schuirmann, J. Pharmacokinetics and Biopharmaceutics 15 (1987) 657 (from memory)
 */
export function againstMargin(of: {
  readonly estimate: Estimate;
  readonly quantity: QuantityName;
  readonly runs: readonly DerivedRun[];
  readonly series: Pick<Series, 'margins' | 'familyLevel'>;
  readonly causes: CauseTable;
}): AgainstMargin | null {
  const { estimate, quantity, runs, series, causes } = of;
  const margin = series.margins?.by.get(quantity);
  const declared = series.margins?.declared;
  if (margin === undefined || declared === undefined) return null;
  if (runs.some(({ startedDay }) => startedDay <= declared)) return null;
  const half =
    coverageFactor(1 - 2 * series.familyLevel, effectiveDof(estimate, causes)) * standardUncertainty(estimate);
  const interval = [estimate.value - half, estimate.value + half] as const;
  const { lower } = quantityKinds[quantity];
  return {
    margin,
    interval,
    equal: -margin < interval[0] && interval[1] < margin,
    noWorse: lower === null ? null : interval[1] < margin,
  };
}
