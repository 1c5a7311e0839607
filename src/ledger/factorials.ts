import type { ComparedSeries } from '../trial/compared.ts';
import type { Given } from '../trial/derived.ts';
import { factorialNames, type Contrast, type Factorial } from '../trial/factorial.ts';
import { quantityKinds, shownDifference, type QuantityName } from '../trial/figures.ts';
import { standardUncertainty } from '../quantity/estimate.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { figureId, type FigureName, type Naming } from './ids.ts';
import { filesOfRuns } from './files.ts';
import type { SheetFigure } from './oils.ts';

/** Interaction of article and fill at the same litres, and what a quantity does with the level in each of two articles. */
export function factorialFigures(record: SeriesRecord, compared: ComparedSeries, naming: Naming): SheetFigure[] {
  return compared.factorials.flatMap((one): SheetFigure[] => [
    ...interactionOf(one, record, naming),
    ...slopesOf(one, record),
  ]);
}

function interactionOf(one: Factorial, record: SeriesRecord, naming: Naming): SheetFigure[] {
  const [square] = one.bases['same litres'].squares;
  if (square === undefined) return [];
  const { first, second, interaction } = square;
  return [
    {
      ...sheet(interaction, record),
      subject: { cell: first.own, against: first.base },
      quantity: factorialNames[one.quantity].interaction,
      at: one.at,
      method: 'compare/interaction',
      given: [second, first].map(({ effect }, i) =>
        given(`d${String(2 - i)}`, { ...effect, naming, name: one.quantity }),
      ),
    },
  ];
}

function slopesOf({ slopes, quantity, at }: Factorial, record: SeriesRecord): SheetFigure[] {
  if (slopes === null) return [];
  const of = (contrast: Contrast, subject: SheetFigure['subject']): SheetFigure => ({
    ...sheet(contrast, record),
    ...{ subject, at, given: [], quantity: factorialNames[quantity].slope, method: 'compare/by-level' },
  });
  const [own, base] = [slopes.own.cells[0]!.cell, slopes.base.cells[0]!.cell];
  return [
    of(slopes.own.slope, { cell: own }),
    of(slopes.base.slope, { cell: base }),
    of(slopes.apart, { cell: own, against: base }),
  ];
}

const sheet = ({ estimate, trials, runs, indicative }: Contrast, record: SeriesRecord) => ({
  estimate,
  trials,
  file: record.series.file,
  files: filesOfRuns(record, runs),
  relation: 'difference',
  notes: indicative.map((why) => `indicative: ${why}`),
});

function given(
  symbol: string,
  of: Pick<Factorial['bases']['same litres']['matched'][number]['effect'], 'cell' | 'against' | 'at' | 'estimate'> & {
    readonly naming: Naming;
    readonly name: QuantityName;
  },
): Given {
  const name: FigureName = { subject: { cell: of.cell, against: of.against }, quantity: of.name, at: of.at };
  return {
    symbol,
    name: `${quantityKinds[of.name].name}, ${of.cell.article} less ${of.against.article}`,
    value: shownDifference(of.name, of.estimate.value),
    u: shownDifference(of.name, standardUncertainty(of.estimate)),
    unit: quantityKinds[of.name].unit,
    from: { kind: 'figure', id: figureId(name, of.naming) },
  };
}
