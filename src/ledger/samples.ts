import { sampleChanges, type SampleChange } from '../compare/samples.ts';
import { changeNotes } from '../compare/texts-samples.ts';
import type { Given } from '../trial/derived.ts';
import { quantityKinds, shown } from '../trial/figures.ts';
import type { Oil } from '../trial/oil.ts';
import { oilProperties, type OilSample, type SampleResult } from '../trial/sample.ts';
import type { SeriesRecord } from '../trial/series.ts';
import type { SheetFigure } from './oils.ts';

/** What changed from the unused sample of a batch to a used one, property by property. */
export const sampleFigures = (record: SeriesRecord): SheetFigure[] =>
  [...record.oils.values()].flatMap((oil) => sampleChanges(oil).flatMap((change) => figureOf(oil, change)));

function figureOf(oil: Oil, of: SampleChange): SheetFigure[] {
  const { sample, after, twin, before, change, repeatability, causes } = of;
  if (change === null || before === null || twin === null || repeatability === null) return [];
  const quantity = oilProperties[after.property].change;
  const kind = quantityKinds[quantity];
  return [
    {
      subject: { oil: oil.id },
      file: oil.file,
      quantity,
      at: { sample: sample.id },
      estimate: change,
      relation: 'sample-change',
      method: 'samples/after-less-unused',
      notes: changeNotes(of),
      given: [
        givenOf(oil, sample, after, 'y'),
        givenOf(oil, twin, before, 'y0'),
        {
          symbol: 'r',
          name: 'repeatability of the method for two results',
          value: shown(quantity, repeatability),
          u: null,
          unit: kind.unit,
          from: fromNote(oil, `${after.path}.repeatability`),
        },
      ],
      causes,
    },
  ];
}

const givenOf = (
  oil: Oil,
  sample: OilSample,
  { property, value, method, path }: SampleResult,
  symbol: string,
): Given => {
  const { name, change } = oilProperties[property];
  return {
    symbol,
    name: `${name} of ${sample.id}, by ${method}`,
    value: shown(change, value),
    u: null,
    unit: quantityKinds[change].unit,
    from: fromNote(oil, `${path}.value`),
  };
};

const fromNote = (oil: Oil, path: string): Given['from'] => ({
  kind: 'note',
  place: oil.places.get(path) ?? { file: oil.file, line: 1, column: 1 },
  typed: oil.typed.get(path) ?? '',
});
