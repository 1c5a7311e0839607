import type { CellFigure } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import { correctionsOf } from './corrected.ts';
import { cellKey, type Group } from './group.ts';
import type { Celled } from './repeated.ts';
import * as texts from './texts.ts';

/** Figures of the cells of one group: means of their runs, or what their runs are bounded by. */
export function cellFigures(group: Group, celled: Celled): CellFigure[] {
  const { quantity, at } = group;
  const known = [...celled.cells, ...(celled.again ?? [])].map((c): CellFigure => ({
    cell: c.cell,
    quantity,
    at,
    estimate: c.estimate,
    bound: null,
    runs: c.runs.map((r) => r.run.run),
    corrections: correctionsOf(c.runs),
    ...(c.moved === undefined ? {} : { moved: c.moved }),
    notes: celled.notes,
    unranked: celled.unranked,
    indicative: celled.indicative,
  }));
  return [
    ...known,
    ...boundedCells(group).map((b): CellFigure => ({
      cell: b.cell,
      quantity,
      at,
      estimate: null,
      bound: { side: b.side, at: b.at },
      runs: b.runs,
      notes: [texts.notReached(b.at / 60)],
      unranked: celled.unranked,
      indicative: celled.indicative,
    })),
  ];
}

/** Cells with a run that only bounds the quantity: what holds for all such runs of the cell. */
export function boundedCells(
  group: Group,
): { readonly cell: Cell; readonly side: 'above' | 'below'; readonly at: number; readonly runs: string[] }[] {
  const byCell = new Map<string, (typeof group.bounded)[number][]>();
  for (const b of group.bounded) byCell.set(cellKey(b.run.cell), [...(byCell.get(cellKey(b.run.cell)) ?? []), b]);
  return [...byCell.values()].map((list) => {
    const { side, run } = list[0]!;
    const ends = list.map((b) => b.at);
    return {
      cell: run.cell,
      side,
      at: side === 'above' ? Math.min(...ends) : Math.max(...ends),
      runs: list.map((b) => b.run.run),
    };
  });
}
