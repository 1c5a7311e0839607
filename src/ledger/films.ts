import { writeNumber } from '../quantity/write.ts';
import { standardUncertainty } from '../quantity/estimate.ts';
import type { CellFigure, ComparedSeries } from '../trial/compared.ts';
import type { Cell, Given } from '../trial/derived.ts';
import { quantityKinds, shown, shownDifference } from '../trial/figures.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { figureId, sameCell, type Naming } from './ids.ts';
import { filesOfRuns } from './files.ts';
import type { SheetFigure } from './oils.ts';

/** Films against those of the baseline, each at its own running temperature: model estimates, as bands. */
export const filmFigures = (record: SeriesRecord, compared: ComparedSeries, naming: Naming): SheetFigure[] =>
  compared.films.map((film): SheetFigure => ({
    subject: { cell: film.cell, against: film.against },
    file: record.series.file,
    files: filesOfRuns(record, film.runs),
    quantity: 'film-ratio',
    at: { sump_K: 'own' },
    estimate: null,
    band: { low: film.low, high: film.high },
    relation: 'film-change',
    method: 'compare/film',
    given: [film.cell, film.against].flatMap((cell) => figureGiven(cell, 'final-temperature', compared.cells, naming)),
    notes: [
      `a kelvin more of its own temperature makes it ${writeNumber(Math.abs(film.perKelvin) * 100, 1)} % ${film.perKelvin < 0 ? 'thinner' : 'thicker'}`,
      ...new Set(film.outside),
      'one film alone is known to ± 40 % at most; this is the ratio of two on one axle',
    ],
  }));

/** A figure of a cell as what another one is made from. */
export function figureGiven(
  cell: Cell,
  quantity: 'final-temperature' | 'shed',
  cells: readonly CellFigure[],
  naming: Naming,
): Given[] {
  const found = cells.find((c) => c.quantity === quantity && sameCell(c.cell, cell))?.estimate;
  if (found == null) return [];
  return [
    {
      symbol: quantityKinds[quantity].symbol,
      name: `${quantityKinds[quantity].name} of ${cell.article}`,
      value: shown(quantity, found.value),
      u: shownDifference(quantity, standardUncertainty(found)),
      unit: quantityKinds[quantity].unit,
      from: { kind: 'figure', id: figureId({ subject: { cell }, quantity, at: {} }, naming) },
    },
  ];
}
