import type { Effect, Standing } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import type { NextTrial } from '../trial/next-trial.ts';
import type { NextInput } from './next-trial.ts';
import { atReferenceFill, placedCells, sameFill, sameLevel, sameTilt, type PlacedCell } from './plan-cells.ts';
import { doneOf, sameCell } from './plan-done.ts';

/** What the plan still wants in the table of a standing. */
export interface OpenCells {
  readonly plan: NextTrial['plan'];
  readonly wanted: readonly Cell[];
  /** Wanted, not run yet, and such that the baseline can be held against them: a difference more. */
  readonly fresh: readonly Cell[];
  /** Wanted and run already, but compared with nothing here. */
  readonly besides: readonly Cell[];
}

export function openOf(
  { trial, against, rows }: Standing,
  effects: readonly Effect[],
  { record: { plan, ...record }, runs }: Pick<NextInput, 'record' | 'runs'>,
): OpenCells {
  const { series } = record;
  const table = (plan === null ? [] : placedCells({ ...record, plan })).filter(
    ({ cell }) => cell.trial === trial && cell.oil === against.oil && sameTilt(cell, { ...cell, ...against }, series),
  );
  const open = table.filter(({ cell }) => doneOf(cell, runs.values(), series) < cell.wanted);
  const among = (cells: readonly Cell[], { cell }: PlacedCell): boolean =>
    cells.some((one) => sameCell(one, cell, series.tolerance));
  const apart = open.filter((one) => !among([against, ...effects.map(({ cell }) => cell)], one));
  const run = (one: PlacedCell): boolean =>
    among(
      rows.map(({ cell }) => cell),
      one,
    );
  const base = table.filter((one) => atReferenceFill(one, series));
  const paired = (one: PlacedCell): boolean =>
    one.ofBaseline || base.some((other) => sameFill(one.cell, other.cell, series) || sameLevel(one, other, series));
  const only = (list: readonly PlacedCell[]): Cell[] =>
    list.map(({ cell: { article, oil, fill_m3, tilt_ratio } }) => ({ article, oil, fill_m3, tilt_ratio }));
  return {
    plan: table.length === 0 ? 'none' : open.length > 0 ? 'open' : 'done',
    wanted: only(open),
    fresh: only(apart.filter((one) => !run(one) && paired(one))),
    besides: only(apart.filter(run)),
  };
}
