import type { Standing } from '../trial/compared.ts';
import type { NextRun, NextTrial } from '../trial/next-trial.ts';
import { articleSpan, cellDetail } from './cite.ts';
import { numberText, plusMinusText, displayUnit } from './digits.ts';
import type { Block, Section, Span, TableRow } from './page.ts';
import { capital, link, prose, row, section, tableBlock } from './spans.ts';
import { standingsInOrder, whereWords } from './standing-words.ts';
import { groupBy, type View } from './view.ts';

/** Runs of the main standing that are listed, the one that narrows most first. */
const listed = 5;

/**
 * Which run would narrow the standing most: the main one run by run, the others with their first. Null while runs are held
 * back, since what they did cannot be counted then.
 */
export function nextTrialSection(view: View): Section | null {
  const [main, ...others] = nextOf(view);
  if (main === undefined) return null;
  const { next, standing } = main;
  return section(
    'next-trial',
    'The next run',
    [
      prose(...nowSpans(view, main)),
      tableBlock(
        'next-runs',
        ['wide one more run of', 'plan', `number half width then, ${unitOf(standing)}`, 'number narrower by'],
        next.runs.slice(0, listed).map((run) => runRow(view, standing, run, next.now)),
        `Mean half width of the simultaneous intervals, ${lower(whereWords(view, standing))}`,
      ),
      others.length === 0 ? null : otherStandings(view, others),
    ],
    [
      {
        name: 'What it rests on.',
        text: [
          next.from === 'repeats'
            ? 'The scatter of a refit is taken as it was measured; one more run makes the mean firmer and adds a degree of freedom. The drift stays as it is.'
            : 'What each run draws anew, such as its refit and its airflow, shrinks with a second run; what the series shares does not. The factor of the interval stays as it is.',
        ],
      },
    ],
  );
}

/** The same on the plan sheet, a row a standing. */
export function nextOnPlan(view: View): Section | null {
  const all = nextOf(view);
  return all.length === 0
    ? null
    : section('next-run', 'The next run', [
        prose(
          'Of each standing, the run that would narrow its differences most. ',
          link(`${view.base}standing/#next-trial`, 'Run by run'),
        ),
        otherStandings(view, all),
      ]);
}

interface Shown {
  readonly standing: Standing;
  readonly next: NextTrial;
}

/** One standing a quantity and oil, its main condition, with what lies ahead of it. */
function nextOf(view: View): readonly Shown[] {
  if (view.held.runs > 0) return [];
  const leads = groupBy(
    standingsInOrder(view).filter(({ quantity }) => quantity !== 'spin-torque' && quantity !== 'final-temperature'),
    ({ quantity, oil }) => `${quantity}-${oil}`,
  );
  return [...leads.values()].flatMap(([standing]) => {
    const next = view.input.outlook.next.find((one) => one.standing === standing?.id);
    return standing === undefined || next === undefined ? [] : [{ standing, next }];
  });
}

function nowSpans(view: View, { standing, next }: Shown): Span[] {
  const wanted = next.runs.filter(({ kind }) => kind === 'planned');
  const further = narrowest(next);
  return [
    `${whereWords(view, standing)} the differences stand at ${width(standing, next.now)} on average. `,
    ...(next.plan === 'none'
      ? ['No plan says what is still to be run. ']
      : next.plan === 'done'
        ? ['The plan is run as it was written. ']
        : wanted.length === 0
          ? ['What the plan still wants adds nothing here. ']
          : [
              'Of what the plan still wants, ',
              ...cellOf(view, wanted[0]!),
              doesSpans(standing, wanted[0]!, next),
              ' ',
            ]),
    ...(next.largest === null
      ? []
      : [
          `${capital(next.largest.cause)} is the largest cause, ${numberText(next.largest.share * 100, 0)}\u202f% of the variance on average. `,
        ]),
    ...(further === undefined
      ? []
      : [
          next.plan === 'open' ? 'Beyond the plan, one more ' : 'One more ',
          ...cellOf(view, further),
          doesSpans(standing, further, next),
        ]),
  ];
}

const narrowest = ({ runs }: NextTrial): NextRun | undefined => runs.find(({ kind }) => kind === 'further');

const doesSpans = (standing: Standing, run: NextRun, { now }: NextTrial): string =>
  run.adds === null
    ? ` would bring them to ${width(standing, run.after)}, ${gain(run, now)} narrower.`
    : ` would add a difference that is not there yet, at ${width(standing, run.adds)}.`;

const cellOf = (view: View, { cell, baseline }: NextRun): Span[] => [
  articleSpan(view, cell.article),
  `, ${cellDetail(cell)}${baseline ? ', the baseline,' : ','}`,
];

function runRow(view: View, standing: Standing, run: NextRun, now: number): TableRow {
  const cells = row(
    [articleSpan(view, run.cell.article), `, ${cellDetail(run.cell)}`],
    run.kind === 'planned' ? (run.adds === null ? 'wanted' : 'wanted, not run yet') : 'beyond the plan',
    number(standing, run.after),
    run.adds === null ? gain(run, now) : `adds one of ${width(standing, run.adds)}`,
  );
  return run.baseline ? { ...cells, role: 'baseline' } : cells;
}

const otherStandings = (view: View, list: readonly Shown[]): Block =>
  tableBlock(
    'next-of-standings',
    ['wide standing', 'number half width now', 'wide the next run', 'number then', 'largest cause'],
    list.map(({ standing, next }) => {
      const run = next.runs.find(({ adds, kind }) => adds === null && kind === 'planned') ?? narrowest(next);
      return row(
        whereWords(view, standing),
        width(standing, next.now),
        run === undefined
          ? '—'
          : [
              articleSpan(view, run.cell.article),
              `, ${cellDetail(run.cell)}${run.kind === 'planned' ? ', wanted' : next.plan === 'open' ? ', beyond the plan' : ''}`,
            ],
        run === undefined ? '—' : width(standing, run.after),
        next.largest === null
          ? 'scatter of refits'
          : `${next.largest.cause}, ${numberText(next.largest.share * 100, 0)}\u202f%`,
      );
    }),
  );

const gain = ({ after }: NextRun, now: number): string => `${numberText((1 - after / now) * 100, 1)}\u202f%`;
const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
const unitOf = ({ quantity }: Standing): string => (displayUnit(quantity) === '°C' ? 'K' : displayUnit(quantity));
const width = (standing: Standing, half: number): string =>
  `${plusMinusText(standing.quantity, half)}\u202f${unitOf(standing)}`;
const number = ({ quantity }: Standing, half: number): string => plusMinusText(quantity, half).replace('± ', '');
