import { sampleChanges, type SampleChange } from '../compare/samples.ts';
import { words } from '../compare/texts-samples.ts';
import { chargesOf, hasDose } from '../ledger/doses.ts';
import type { Oil } from '../trial/oil.ts';
import { oilProperties, type OilSample, type SampleResult } from '../trial/sample.ts';
import { cited, citedValue, figureNamed } from './cite.ts';
import { dateWords } from './dates.ts';
import { quantityText, typedText } from './digits.ts';
import { chargeFigures } from './dose.ts';
import type { Block, Section, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { capital, listNote, prose, row, section, strong, tableBlock, verdict } from './spans.ts';
import { derivedOf, groupBy, type View } from './view.ts';

/** What laboratories found in the oil before and after, and what of the change their methods can show. */
export function samplesSection(view: View, oil: Oil): Section | null {
  if (oil.samples.length === 0) return null;
  const changes = groupBy(sampleChanges(oil), ({ sample }) => sample.id);
  const twins = new Set([...changes.values()].flat().map(({ twin }) => twin?.id));
  const alone = oil.samples.filter(({ id, point }) => point === 'unused' && !twins.has(id));
  return section(
    'samples',
    'Samples before and after',
    [
      ...[...changes.values()].flatMap((list) => usedBlocks(view, oil, list)),
      ...alone.flatMap((sample) => unusedBlocks(sample)),
    ],
    [
      {
        name: 'What counts as changed.',
        text: [
          'A change beyond the repeatability of its method, held against an unused sample of the same batch by the same method. A data sheet is never the before. Within the repeatability nothing was shown, which is not the same as nothing having changed.',
        ],
      },
      listNote('What it cannot part.', [
        'Shear, oxidation and metal from break-in may move one number together; a change has no cause in it.',
        'A repeatability is stated for one operator, one apparatus and a short time between.',
      ]),
    ],
  );
}

function usedBlocks(view: View, oil: Oil, changes: readonly SampleChange[]): Block[] {
  const [{ sample, twin }] = changes as [SampleChange, ...SampleChange[]];
  return [
    prose(
      strong(sample.id),
      `, ${drawnWords(sample)}`,
      ...seenSpans(view, oil, sample),
      twin === null
        ? `. No unused sample of batch ${sample.batch} stands beside it.`
        : `. Held against ${twin.id}, unused, of batch ${twin.batch}, drawn ${dateWords(twin.takenOn)}.`,
    ),
    tableBlock(
      `sample-${sample.id}`,
      ['wide property, by method', 'result', 'number unused', 'number used', 'number change', 'number repeatability'],
      changes.map((change) => changeRow(view, oil, change)),
    ),
  ];
}

function changeRow(view: View, oil: Oil, change: SampleChange): ReturnType<typeof row> {
  const { sample, after, before, repeatability, word } = change;
  const { unit, change: quantity } = oilProperties[after.property];
  const figure = figureNamed(view, { subject: { oil: oil.id }, quantity, at: { sample: sample.id } });
  return row(
    propertyWords(after),
    word === words.changed ? verdict(word) : word,
    before === null ? '—' : valueText(before),
    valueText(after),
    figure === undefined ? '—' : citedValue(view, figure),
    repeatability === null ? '—' : typedText(repeatability, finer(after.step, before?.step, repeatability), unit),
  );
}

const unusedBlocks = (sample: OilSample): Block[] => [
  prose(strong(sample.id), `, ${drawnWords(sample)}. Nothing stands beside it yet.`),
  tableBlock(
    `sample-${sample.id}`,
    ['wide property, by method', 'number unused'],
    sample.results.map((result) => row(propertyWords(result), valueText(result))),
  ),
];

/** "Iron, mg/kg, by ASTM D5185" */
const propertyWords = ({ property, method }: SampleResult): string => {
  const { name, unit } = oilProperties[property];
  return `${capital(name)}${unit === '1' ? '' : `, ${unit}`}, by ${method.replaceAll(' ', '\u00a0')}`;
};

const valueText = ({ property, value, step }: SampleResult): string =>
  typedText(value, step, oilProperties[property].unit);

/** A limit is written to the place of the values, or to its own first digit where it is smaller. */
const finer = (after: number, before = after, limit: number): number =>
  Math.min(after, before, 10 ** Math.floor(Math.log10(limit)));

/** "drawn from the middle of the drain, 100 mL at 60 °C, 6 March 2026" */
const drawnWords = ({ point, volume_m3, temperature_K, takenOn }: OilSample): string =>
  [
    pointWords[point],
    [
      ...(volume_m3 === null ? [] : [quantityText(volume_m3, 'mL', 0)]),
      ...(temperature_K === null ? [] : [`at ${quantityText(temperature_K, '°C', 0)}`]),
    ].join(' '),
    dateWords(takenOn),
  ]
    .filter((part) => part !== '')
    .join(', ');

const pointWords: Readonly<Record<OilSample['point'], string>> = {
  'drain-mid': 'drawn from the middle of the drain',
  syringe: 'drawn by syringe',
  unused: 'unused, from the drum',
};

/** The run it was drawn after or before, and what its charge had seen by then, where the notes tell. */
function seenSpans(view: View, oil: Oil, { afterRun, beforeRun }: OilSample): Span[] {
  if (afterRun === null) return beforeRun === null ? [] : [', before ', runLink(view, beforeRun)];
  const logged = view.runs.filter((run) => run.oil === oil.id && hasDose(derivedOf(view, run.id)));
  const charge = chargesOf(logged, oil.id).find(({ runs }) => runs.some(({ id }) => id === afterRun));
  const [whole] = charge?.runs.at(-1)?.id === afterRun ? chargeFigures(view, oil, charge) : [];
  return [
    ', after ',
    runLink(view, afterRun),
    ...(whole === undefined ? [] : ['; its charge had seen ', cited(view, whole), ' of log']),
  ];
}
