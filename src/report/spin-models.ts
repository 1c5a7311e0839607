import type { Figure } from '../ledger/figure.ts';
import { besideRange, literatureExponents, type LiteratureExponents } from '../physics/churning-exponents.ts';
import { sources } from '../physics/sources.ts';
import type { FittedExponents } from '../trial/exponents.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { Run } from '../trial/run.ts';
import { cited, citedValue, figureNamed, inCelsius, runFigures } from './cite.ts';
import { exactText, numberText } from './digits.ts';
import type { Block, Section, SpeedData, TableRow } from './page.ts';
import { mainPower, speedOf, steppedTable } from './spin-figures.ts';
import { capital, fold, link, listNote, listOf, prose, row, section, tableBlock } from './spans.ts';
import { derivedOf, type View } from './view.ts';

const beside: readonly QuantityName[] = [
  ...(['viscosity', 'reynolds', 'loss-estimate', 'speed-exponent', 'viscosity-exponent'] as const),
  ...(['speed-exponent-above', 'viscosity-exponent-above'] as const),
];

/** Figures that stand in sections of their own and not in the table of the run. */
export const besideFigures = (view: View, run: Run): readonly Figure[] =>
  beside.flatMap((quantity) => runFigures(view, run.id, quantity));

/** What models let one expect at the main temperature, to lie behind the measured curve. */
export function expectedBand(view: View, run: Run): NonNullable<SpeedData['band']> | null {
  const sump = mainPower(view, runFigures(view, run.id, 'spin-power'))?.at.sump;
  const points = runFigures(view, run.id, 'loss-estimate')
    .filter(({ at }) => at.sump === sump)
    .flatMap(({ at, interval: [low, high] }) => {
      const x = speedOf(at);
      return x === null || low === null || high === null ? [] : [{ x, low, high }];
    })
    .sort((a, b) => a.x - b.x);
  return sump === undefined || points.length < 2
    ? null
    : { label: `what models let one expect at ${inCelsius(sump)}`, points };
}

/** The loss beside models of it: the band, and exponents beside those of the literature. */
export function modelsSection(view: View, run: Run): Section | null {
  const derived = derivedOf(view, run.id);
  if (derived === undefined || derived.leftOut !== null) return null;
  const estimates = runFigures(view, run.id, 'loss-estimate');
  const why = view.rigShown ? (derived.noLossEstimate ?? null) : null;
  const exponents = exponentsTable(view, run, derived.exponents ?? []);
  if (estimates.length === 0 && why === null && exponents.length === 0) return null;
  const [first] = estimates;
  const outside = outsideOf(estimates);
  return section(
    'models-of-loss',
    'Models of loss beside it',
    [
      ...exponents,
      ...(why === null ? [] : [prose(why)]),
      ...(estimates.length === 0
        ? []
        : [
            fold(
              'What models let one expect, in watts',
              ...steppedTable(
                view,
                estimates,
                'loss-estimate',
                'Model estimates: each is a band, and no number inside it is likelier than another.',
                citedValue,
              ),
              ...(outside.length === 0
                ? []
                : [
                    prose('Outside what the law with four regimes was measured on:'),
                    listOf(outside.map((note) => [note])),
                  ]),
            ),
          ]),
    ],
    [
      first === undefined
        ? null
        : {
            name: 'An estimate, no result.',
            text: [
              'The band reaches from the least to the most that published laws give for the ring gear in its bath, bearings half less to half more, and lip seals. Most of the laws are unverified. ',
              link('method/#loss-envelope', 'How it is made'),
            ],
          },
      first === undefined || leftOut(first) === '' ? null : { name: 'Left out.', text: [`${leftOut(first)}.`] },
      exponents.length === 0
        ? null
        : {
            name: 'Exponents.',
            text: [
              'Those of the literature are of churning alone; a fit of the whole loss has bearings and seals in it, and need not lie inside. V1: seen in one place; U: unverified.',
            ],
            list: literatureExponents.map((law) => [sourceWords(law)]),
          },
    ],
  );
}

const leftOut = ({ notes }: Figure): string => capital(notes.filter((note) => note.includes('left out')).join('; '));

const fitted: Readonly<Record<FittedExponents['of'], string>> = {
  whole: 'whole spin power',
  'above a constant': 'above a constant torque',
};

function exponentsTable(view: View, run: Run, fits: readonly FittedExponents[]): Block[] {
  if (fits.length === 0) return [];
  return [
    tableBlock(
      'exponents',
      [
        'wide exponent of',
        'number fitted',
        'number condition number',
        ...literatureExponents.map(({ name, grade }) => `wide ${name} (grade ${grade})`),
      ],
      fits.flatMap((fit) => (['speed', 'viscosity'] as const).map((what) => exponentRow(view, run, fit, what))),
      'The powers to which spin power goes with speed and with viscosity, beside those of the literature for churning. Above a condition number of ten nothing is told.',
    ),
  ];
}

function exponentRow(view: View, run: Run, fit: FittedExponents, what: 'speed' | 'viscosity'): TableRow {
  const figure = figureNamed(view, { subject: { run: run.id }, quantity: fit[what], at: {} });
  const interval = figure?.interval ?? [null, null];
  return row(
    `${what}, ${fitted[fit.of]}`,
    figure === undefined ? 'not told' : cited(view, figure),
    numberText(fit.condition, fit.condition < 10 ? 1 : 0),
    ...literatureExponents.map((law) => {
      const word = besideRange({ interval, condition: fit.condition, range: law[what] });
      return `${exactText(law[what][0])} to ${exactText(law[what][1])}: ${word}`;
    }),
  );
}

const sourceWords = ({ name, from, also }: LiteratureExponents): string => {
  const named = from.map((key) => {
    const { authors, year, title, seen } = sources[key];
    return seen === 'memory' || authors === null ? title : `${authors} ${String(year)}`;
  });
  return `${name}: ${[...named, ...(also === null ? [] : [also])].join('; ')}`;
};

/** What of several figures lies outside the range of its relation, once each. */
const outsideOf = (figures: readonly Figure[]): readonly string[] => [
  ...new Set(figures.flatMap(({ notes }) => notes.filter((note) => note.includes('the range:')))),
];

/** Viscosity and Reynolds number of every window, in small. */
export function oilSection(view: View, run: Run): Section | null {
  const nu = runFigures(view, run.id, 'viscosity').filter(({ at }) => speedOf(at) !== null);
  const Re = runFigures(view, run.id, 'reynolds').filter(({ at }) => speedOf(at) !== null);
  if (nu.length === 0) return null;
  const outside = outsideOf([...nu, ...Re]);
  return section(
    'oil-in-the-windows',
    'The oil it ran in',
    [
      fold(
        'Viscosity and Reynolds number at every step',
        ...steppedTable(view, nu, 'viscosity', 'Kinematic viscosity at the sump of each window.', cited),
        ...(Re.length === 0
          ? [prose('No Reynolds number: the rig sheet does not say the face of the ring gear, ring.face.')]
          : steppedTable(view, Re, 'reynolds', 'Reynolds number of the ring gear there.', cited)),
      ),
    ],
    [
      { name: 'Its ±.', text: ['Of the temperature alone.'] },
      outside.length === 0 ? null : listNote('Range.', outside),
    ],
  );
}
