import type { Series } from '../trial/book.ts';
import type { Cell, DerivedRun } from '../trial/derived.ts';
import type { PlanCell, TrialKind } from '../trial/plan.ts';

/** Whether a run is one of a planned cell. The fill of a derived run is that of the plan where it comes near enough. */
export const isOfCell = (
  run: { readonly trial: TrialKind; readonly cell: Cell },
  planned: PlanCell,
  tolerance: Pick<Series['tolerance'], 'tilt_ratio'>,
): boolean => run.trial === planned.trial && sameCell(run.cell, planned, tolerance);

/** To a hundredth of a litre, as fills are spoken of. */
export const sameCell = (a: Cell, b: Cell, { tilt_ratio }: Pick<Series['tolerance'], 'tilt_ratio'>): boolean =>
  a.article === b.article &&
  a.oil === b.oil &&
  Math.abs(a.fill_m3 - b.fill_m3) < 5e-6 &&
  Math.abs(a.tilt_ratio - b.tilt_ratio) <= tilt_ratio;

/** Runs of a planned cell that count. What a later campaign runs again was not what the plan asked for, unless nothing else was. */
export function doneOf(planned: PlanCell, runs: Iterable<DerivedRun>, { tolerance }: Series): number {
  const done = [...runs].filter((run) => run.leftOut === null && isOfCell(run, planned, tolerance));
  return done.filter(({ cell }) => cell.campaign === undefined).length || done.length;
}
