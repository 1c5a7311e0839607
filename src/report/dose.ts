import type { Figure } from '../ledger/figure.ts';
import { chargesOf, hasDose, type Charge } from '../ledger/doses.ts';
import type { Oil } from '../trial/oil.ts';
import type { Run } from '../trial/run.ts';
import { articleSpan, cited, citedValue, doubtOf, inCelsius, runFigures, toWorking } from './cite.ts';
import { numberText } from './digits.ts';
import type { Block, Section, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { capital, counts, fold, link, listed, prose, row, section, tableBlock } from './spans.ts';
import { derivedOf, type View } from './view.ts';

/** Hours of an oil by band of sump temperature: over the whole series, and charge by charge. */
export function doseSection(view: View, oil: Oil): Section | null {
  const figures = (view.figuresOf.get(oil.id) ?? []).filter(isDose).filter(({ at }) => at.charge === undefined);
  const [whole] = figures;
  if (whole === undefined) return null;
  const used = view.runs.filter((run) => run.oil === oil.id);
  const logged = used.filter((run) => hasDose(derivedOf(view, run.id)));
  const charges = chargesOf(logged, oil.id);
  return section(
    'thermal-dose',
    'How long it was how hot',
    [
      prose(
        cited(view, whole),
        ` of log in ${counts(logged.length, 'run')} of this series, on ${counts(charges.length, 'charge')} of oil. `,
        charges.length === 1
          ? 'One charge saw all of it.'
          : 'A charge is what went in at one refit of one article; no drop of oil saw the whole of this.',
      ),
      bandsTable(view, 'dose', whole, figures.slice(1)),
      charges.length < 2
        ? null
        : fold(
            'Charge by charge',
            tableBlock(
              'charges',
              ['wide charge', 'wide runs', 'number logged', 'hottest band', 'number there'],
              charges.map((charge) => chargeRow(view, oil, charge)),
            ),
          ),
    ],
    [
      {
        name: 'No life follows.',
        text: [
          'It is time at the sump probe, by band. How long an oil lasts depends on its hottest surfaces, on air, water and metal in it, and on what is left of its additives; none of these is logged.',
        ],
      },
      {
        name: 'What counts.',
        text: [
          'The whole log of each run, warming and cooling included, also where a note excludes a stretch or sets the run aside. Gaps in a log count as no time, nor does oil that stands warm between two runs.',
          ...withoutLog(view, used, logged),
        ],
      },
    ],
  );
}

/** On the sheet of a run, in short: how long the log is, and the hottest bands of it. */
export function doseNote(view: View, run: Run): Section | null {
  const [whole, ...bands] = runFigures(view, run.id, 'thermal-dose');
  if (whole === undefined) return null;
  const hottest = [...bands].reverse().slice(0, 3);
  const rest = bands.length - hottest.length;
  return section('thermal-dose', 'What its oil saw', [
    prose(
      'Of ',
      cited(view, whole),
      ' of log the sump was ',
      ...listed(hottest.map((band): Span[] => [cited(view, band), ` at ${bandWords(band)}`])),
      rest === 0 ? '. ' : `, and colder for the rest. `,
      ...(view.oils.has(run.oil)
        ? [`Over the series: `, link(`${view.base}oils/${run.oil}/#thermal-dose`, `oil sheet of ${run.oil}`), '.']
        : []),
    ),
  ]);
}

export const isDose = ({ quantity }: Figure): boolean => quantity === 'thermal-dose';

const bandsTable = (view: View, id: string, whole: Figure, bands: readonly Figure[]): Block =>
  tableBlock(
    id,
    ['sump', 'number time', 'number 95 %', 'bar share of the log', ''],
    bands.map((band) =>
      row(
        bandWords(band),
        citedValue(view, band),
        doubtOf(band),
        `${numberText(((band.value ?? NaN) / (whole.value ?? NaN)) * 100, 0)} %`,
        toWorking(view, band),
      ),
    ),
  );

/** The whole first, then its bands. Of one run its own figures stand; of several their sum. */
export function chargeFigures(view: View, oil: Oil, { id, runs: [only, ...others] }: Charge): readonly Figure[] {
  return only !== undefined && others.length === 0
    ? runFigures(view, only.id, 'thermal-dose')
    : (view.figuresOf.get(oil.id) ?? []).filter((figure) => isDose(figure) && figure.at.charge === id);
}

function chargeRow(view: View, oil: Oil, charge: Charge): ReturnType<typeof row> {
  const figures = chargeFigures(view, oil, charge);
  const [whole, hottest] = [figures[0], figures.at(-1)];
  return row(
    [articleSpan(view, charge.article), `, refit ${charge.refit}`],
    listed(charge.runs.map(({ id }) => [runLink(view, id)])),
    whole === undefined ? '' : citedValue(view, whole),
    hottest === undefined ? '' : bandWords(hottest),
    hottest === undefined ? '' : cited(view, hottest),
  );
}

const bandWords = ({ at }: Figure): string => inCelsius(at.band ?? 'all bands');

/** Runs that heated the oil, and of whose heat nothing is known. */
function withoutLog(view: View, used: readonly Run[], logged: readonly Run[]): Span[] {
  const missing = used.filter((run) => !logged.includes(run));
  if (missing.length === 0) return [];
  return [
    ` ${capital(counts(missing.length, 'run'))} without a sump that can be read ${missing.length === 1 ? 'is' : 'are'} not in it: `,
    ...listed(missing.map(({ id }) => [runLink(view, id)])),
    '.',
  ];
}
