import type { ComparedSeries } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { agreementFigures } from './agreements.ts';
import { costFigures } from './costs.ts';
import { doseFigures } from './doses.ts';
import { factorialFigures } from './factorials.ts';
import { filmFigures } from './films.ts';
import type { Naming } from './ids.ts';
import { oilFigures, type SheetFigure } from './oils.ts';
import { sampleFigures } from './samples.ts';
import { speedFigures } from './speeds.ts';
import { surfaceFigures } from './surfaces.ts';
import { splitFigures } from './splits.ts';

/** Every figure that is neither of one run nor of one cell nor a plain difference. */
export const sheetFigures = (of: {
  readonly record: SeriesRecord;
  readonly runs: ReadonlyMap<string, DerivedRun>;
  readonly compared: ComparedSeries;
  readonly naming: Naming;
  readonly rigShown: boolean;
}): SheetFigure[] => {
  const { record, runs, compared, naming, rigShown } = of;
  return [
    ...oilFigures(record),
    ...doseFigures(record, runs, naming),
    ...sampleFigures(record),
    ...(rigShown ? speedFigures(record) : []),
    ...agreementFigures(record, compared.agreements),
    ...splitFigures(record, compared, naming),
    ...factorialFigures(record, compared, naming),
    ...filmFigures(record, compared, naming),
    ...costFigures(record, compared),
    ...surfaceFigures(record, compared, naming),
  ];
};
