import { difference, effectiveDof, standardUncertainty, type CauseTable, type Estimate } from '../quantity/estimate.ts';
import { beyondDunnett, dunnett } from '../statistics/dunnett.ts';
import { tukeyKramer } from '../statistics/tukey.ts';
import type { Series } from '../trial/book.ts';
import { cellKey } from './group.ts';
import type { Celled } from './repeated.ts';

/** Factors that a whole table shares, so that it errs no oftener than the series allows. */

type Row = Celled['cells'][number];

/**
 * Dunnett factor of one candidate among its rivals against their baseline. What the baseline alone adds to a difference is
 * what the candidates share, as its runs are where the scatter is measured.
 */
export const againstBaseline = (of: OneOfFamily): number => dunnett(familyOf(of));

/** Whether a difference of so many standard uncertainties lies beyond that factor, without looking for the factor itself. */
export const beyondBaseline = (of: OneOfFamily, times: number): boolean => beyondDunnett({ ...familyOf(of), times });

interface OneOfFamily {
  readonly row: Row;
  readonly base: Row;
  readonly rivals: readonly Row[];
  readonly celled: Celled;
  readonly series: Series;
  readonly dof: number;
}

function familyOf(of: OneOfFamily): Parameters<typeof dunnett>[0] {
  const { base, rivals, celled, series } = of;
  const dof = pooledDof(celled) ?? printedDof.findLast((entry) => entry <= of.dof) ?? 2;
  const shared = rivals.filter((r) => r !== base).map((r) => sharedWithBaseline(r.estimate, base.estimate));
  return { dof, coverage: 1 - series.familyLevel, shared };
}

/** Share of the variance of a difference that is the baseline's own; in steps of a fiftieth downward, so that few are asked for. */
function sharedWithBaseline(row: Estimate, base: Estimate): number {
  const ofRow = new Set(row.parts.map(({ cause }) => cause));
  const own = base.parts.filter(({ cause }) => !ofRow.has(cause)).reduce((sum, { u }) => sum + u ** 2, 0);
  const all = standardUncertainty(difference(row, base)) ** 2;
  return all === 0 ? 0 : Math.floor((own / all) * 50) / 50;
}

/** Whether two rows of a table are separated, all pairs of it taken together. */
export function apart(
  of: { ranked: readonly Row[]; family: number; celled: Celled; causes: CauseTable; series: Series },
  a: string,
  b: string,
): boolean {
  const { ranked, family, celled, causes, series } = of;
  const estimateOf = (key: string) => ranked.find((r) => cellKey(r.cell) === key)!.estimate;
  const d = difference(estimateOf(a), estimateOf(b));
  const wide = familyFactor({ size: family, dof: effectiveDof(d, causes), celled, series });
  return Math.abs(d.value) > wide * standardUncertainty(d);
}

/**
 * Tukey–Kramer factor of the family. Degrees of freedom are those of the pooled scatter where there is one, otherwise the
 * effective ones of the pair, cut to the next lower entry of the usual printed tables: never too narrow.
 */
function familyFactor(of: { size: number; dof: number; celled: Celled; series: Series }): number {
  const dof = pooledDof(of.celled) ?? printedDof.findLast((entry) => entry <= of.dof) ?? 2;
  return tukeyKramer({ groups: of.size, dof, coverage: 1 - of.series.familyLevel });
}

/** Those of the scatter of refits; null where it comes from causes, or where days widen it with fewer degrees of their own. */
const pooledDof = ({ repeatability, days }: Celled): number | null =>
  repeatability === null || days?.separated === true ? null : repeatability.dof;

const printedDof = [2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 24, 30, 40, 60, 120, Infinity];
