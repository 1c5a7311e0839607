import type { Series } from '../trial/book.ts';
import type { Cell, DerivedRun } from '../trial/derived.ts';
import type { Effect } from '../trial/compared.ts';
import type { Plan } from '../trial/plan.ts';
import type { QuantityName } from '../trial/figures.ts';
import { conditionsDiffer, meanKnown } from './conditions.ts';
import * as texts from './texts.ts';

/** What two cells may be compared on, or every reason why not. */
export type Pairing =
  { readonly ok: true; readonly basis: Effect['basis'] } | { readonly ok: false; readonly reasons: readonly string[] };

/**
 * A difference that the plan names as its factor is the subject, not a mismatch; but only one thing may be the subject.
 * Two articles need the same litres or the same level within the tolerance of the series.
 */
export function pairing(input: {
  cell: Cell;
  against: Cell;
  runs: readonly DerivedRun[];
  againstRuns: readonly DerivedRun[];
  quantity: QuantityName;
  series: Series;
  plan: Pick<Plan, 'factors'> | null;
}): Pairing {
  const { cell, against, runs, againstRuns, series, plan } = input;
  const { tolerance } = series;
  const factor = (name: string): boolean => plan?.factors.includes(name) ?? false;
  const reasons = conditionsDiffer(input);
  const level = (list: readonly DerivedRun[]): number | null => meanKnown(list.map((r) => r.conditions.level_z_m));
  const [z, z0] = [level(runs), level(againstRuns)];
  const sameLitres = Math.abs(cell.fill_m3 - against.fill_m3) <= tolerance.fill_m3;
  const sameLevel = z !== null && z0 !== null && Math.abs(z - z0) <= tolerance.level_m;
  const changed = [
    cell.article !== against.article ? 'article' : '',
    cell.oil !== against.oil ? 'oil' : '',
    cell.tilt_ratio !== against.tilt_ratio ? 'tilt' : '',
    cell.article === against.article && !sameLitres ? 'fill' : '',
  ].filter((c) => c !== '');
  if (changed.length > 1) reasons.push(texts.severalChanged(changed));
  for (const c of changed) if (!factor(c)) reasons.push(texts.notAFactor(c));
  if (changed.includes('article') && !sameLitres && !sameLevel)
    reasons.push(
      texts.neitherBasis({
        litres: cell.fill_m3 - against.fill_m3,
        level_m: z === null || z0 === null ? null : z - z0,
      }),
    );
  if (reasons.length > 0) return { ok: false, reasons };
  if (changed[0] === 'oil') return { ok: true, basis: 'oil is the subject' };
  if (changed[0] === 'tilt') return { ok: true, basis: 'tilt is the subject' };
  if (changed[0] === 'fill') return { ok: true, basis: 'fill is the subject' };
  return {
    ok: true,
    basis: sameLitres && sameLevel ? 'same litres and level' : sameLitres ? 'same litres' : 'same level',
  };
}
