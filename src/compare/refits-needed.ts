import type { CauseTable, Part } from '../quantity/estimate.ts';
import { runsNeeded } from '../statistics/power.ts';
import { tQuantile } from '../statistics/student.ts';
import type { CellFigure, JudgedClause } from '../trial/compared.ts';

const chances = [0.8, 0.9] as const;
const most = 1000;

/**
 * Refits of each side that would tell a difference of the size that was found from the threshold. Where one refit's scatter was
 * measured, by Student's t without the centre; where it comes from causes, by what each run draws anew over what all runs share:
 *
 *   u²(n) = u_shared² + (n₁·v₁ + n₂·v₂)/n,   gap ≥ (z_coverage + z_chance)·u(n)
 *
 * A size that was found is not a size that is: it is planned for as if it were.
 *
 * sides    null for what is no difference of two cells
 * returns  empty where nothing is to be told apart; refits null where no thousand of them would do
 * source   sample size of two means, e-Handbook 7.2.2.2, with the normal distribution
 */
export function refitsNeeded(of: {
  readonly gap: number;
  readonly scatter: number | undefined;
  readonly sides: readonly CellFigure[] | null;
  readonly causes: CauseTable;
  readonly coverage: number;
}): JudgedClause['needed'] {
  const { gap, scatter, sides } = of;
  if (gap === 0) return [];
  if (scatter !== undefined)
    return chances.map((chance) => ({ chance, refits: runsNeeded({ s: scatter, difference: gap, chance }) }));
  const [own, base] = sides ?? [];
  if (own?.estimate == null || base?.estimate == null) return [];
  const isAnew = ({ cause }: Part): boolean => of.causes.get(cause)?.scope !== 'series' && of.causes.has(cause);
  const anew = (f: CellFigure): number =>
    f.runs.length * f.estimate!.parts.filter(isAnew).reduce((sum, { u }) => sum + u ** 2, 0);
  const [ofOwn, ofBase] = [anew(own), anew(base)];
  if (ofOwn + ofBase === 0) return [];
  const shared = sharedVariance(own.estimate.parts, base.estimate.parts, isAnew);
  const z = tQuantile((1 + of.coverage) / 2, Infinity);
  return chances.map((chance) => {
    const least = (gap / (z + tQuantile(chance, Infinity))) ** 2 - shared;
    const refits = least > 0 ? Math.max(1, Math.ceil((ofOwn + ofBase) / least)) : Infinity;
    return { chance, refits: refits <= most ? refits : null };
  });
}

/** Variance of a difference by the causes that more refits do not draw anew: what both sides share in one size falls out. */
function sharedVariance(own: readonly Part[], base: readonly Part[], isAnew: (p: Part) => boolean): number {
  const sums = new Map<string, number>();
  for (const [list, sign] of [
    [own, 1],
    [base, -1],
  ] as const)
    for (const part of list) if (!isAnew(part)) sums.set(part.cause, (sums.get(part.cause) ?? 0) + sign * part.u);
  return [...sums.values()].reduce((sum, u) => sum + u ** 2, 0);
}
