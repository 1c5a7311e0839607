import { standardUncertainty } from '../quantity/estimate.ts';
import type { CellFigure, ComparedSeries, CoverBound } from '../trial/compared.ts';
import type { Cell, Given } from '../trial/derived.ts';
import { quantityKinds, shown, shownDifference } from '../trial/figures.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { figureId, sameCell, type Naming } from './ids.ts';
import { filesOfRuns } from './files.ts';
import type { SheetFigure } from './oils.ts';

/** Both parts of every split difference in final rise, and the share of the heat made where the whole is separated. */
export function splitFigures(record: SeriesRecord, compared: ComparedSeries, naming: Naming): SheetFigure[] {
  return compared.splits.flatMap((split): SheetFigure[] => {
    const shared = {
      subject: { cell: split.cell, against: split.against },
      file: record.series.file,
      files: filesOfRuns(record, split.runs),
      at: {},
      relation: 'log-mean-rise',
      method: 'compare/split',
      given: [split.cell, split.against].flatMap((cell) => givenOf(cell, compared.cells, naming)),
      notes: split.notes,
    };
    return [
      { ...shared, quantity: 'makes-less', estimate: split.byHeatMade, trials: split.trials?.byHeatMade ?? null },
      ...(split.cover === null ? [] : [coverFigure(split.cover, shared)]),
      { ...shared, quantity: 'sheds-more', estimate: split.byShed, trials: split.trials?.byShed ?? null },
      ...(split.share === null
        ? []
        : [
            {
              ...shared,
              quantity: 'makes-less-share' as const,
              estimate: split.share,
              trials: split.trials?.share ?? null,
            },
          ]),
    ];
  });
}

const coverFigure = (
  { low_K, high_K }: CoverBound,
  shared: Omit<SheetFigure, 'quantity' | 'estimate'>,
): SheetFigure => ({
  ...shared,
  quantity: 'cover-share-bound',
  estimate: null,
  band: { low: low_K, high: high_K },
  relation: 'cover-share',
  method: 'compare/cover-share',
});

const givenOf = (cell: Cell, cells: readonly CellFigure[], naming: Naming): Given[] =>
  (['final-rise', 'heat-made'] as const).flatMap((quantity) => {
    const found = cells.find((c) => c.quantity === quantity && sameCell(c.cell, cell));
    if (found?.estimate == null) return [];
    const kind = quantityKinds[quantity];
    return [
      {
        symbol: quantity === 'final-rise' ? 'ΔT' : 'Q',
        name: `${kind.name}, ${cell.article}`,
        value: shown(quantity, found.estimate.value),
        u: shownDifference(quantity, standardUncertainty(found.estimate)),
        unit: kind.unit,
        from: { kind: 'figure', id: figureId({ subject: { cell }, quantity, at: found.at }, naming) },
      },
    ];
  });
