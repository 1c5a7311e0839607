import type { TrialKind } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';
import { articleSpan, cellDetail, cited, litresWords, tiltWords } from './cite.ts';
import { dateWords } from './dates.ts';
import type { Page, Section, Span } from './page.ts';
import { coolDownPage } from './run-cool-down.ts';
import { flowPage } from './run-flow.ts';
import { heatUpPage } from './run-heat-up.ts';
import { conditionsSection, rawFileNote } from './run-conditions.ts';
import { beforePower, givesSection, leadOf, notCounted, runPage } from './run-parts.ts';
import { spinPage } from './run-spin.ts';
import { mainPower } from './spin-figures.ts';
import { capital, counts, link, row, section, tableBlock } from './spans.ts';
import { besideCells, reachHead } from './supply.ts';
import { derivedOf, groupBy, type View } from './view.ts';

/** The list of all runs, and each run's own sheet. */
export function runPages(view: View): readonly Page[] {
  return [runsPage(view), ...view.runs.map((run) => (sheets[run.trial] ?? plainPage)(view, run))];
}

const sheets: Partial<Readonly<Record<TrialKind, (view: View, run: Run) => Page>>> = {
  flow: flowPage,
  spin: spinPage,
  'heat-up': heatUpPage,
  'cool-down': coolDownPage,
};

/** Soaks and checks: listed with what they gave, and no picture of their own. */
const plainPage = (view: View, run: Run): Page =>
  runPage(view, run, {
    lead: leadOf(view, run, () => [`A ${run.trial}; it is kept with its log.`]),
    sections: [
      givesSection(view, run, () => false, [beforePower(view, run), rawFileNote(view, run)]),
      conditionsSection(view, run),
    ],
  });

function runsPage(view: View): Page {
  const kinds = [...groupBy(view.runs, ({ trial }) => trial)];
  const out = view.runs.filter((run) => notCounted(view, run) !== null).length;
  return {
    kind: 'runs',
    path: `${view.base}runs/`,
    title: 'Runs',
    description: `All runs of ${view.series.title}.`,
    whereabouts: [link(view.base, view.series.title), ' · runs'],
    lead: [
      `${capital(counts(view.runs.length, 'run'))}, in the order they were run; ${out === 0 ? 'all of them count' : `${counts(out, 'of them gives', 'of them give')} no figures and ${out === 1 ? 'says' : 'say'} why`}.`,
      ...(view.held.runs === 0
        ? []
        : [` ${capital(counts(view.held.runs, 'run is', 'runs are'))} held back by the house.`]),
    ],
    banners: [],
    series: view.series.id,
    sections: kinds.map(([trial, runs]) => kindSection(view, trial, runs)),
  };
}

const kindSection = (view: View, trial: string, runs: readonly Run[]): Section =>
  section(trial, capital(trial), [
    tableBlock(
      `runs-${trial}`,
      runHeads(view, { loss: trial === 'spin' }),
      [...runs].sort((a, b) => a.order - b.order).map((run) => runRow(view, run, { loss: trial === 'spin' })),
    ),
  ]);

/** Where a main figure is a loss, Reach and bearing rise of its cell stand beside it. */
export interface RunList {
  readonly loss: boolean;
  /** All runs are of the article whose sheet it is. */
  readonly ofOne?: true;
}

export const runHeads = (view: View, { loss, ofOne }: RunList): readonly string[] => [
  'run',
  ...(ofOne ? ['date', 'fill'] : ['number order', 'date', 'wide article and fill', 'oil']),
  'status',
  'number main figure',
  ...(loss ? [reachHead(view), 'number pinion bearing above sump'] : []),
];

export function runRow(view: View, run: Run, { loss, ofOne }: RunList): ReturnType<typeof row> {
  const cell = derivedOf(view, run.id)?.cell;
  const cells = row(
    link(`${view.base}runs/${run.id}/`, run.id),
    ...(ofOne ? [] : [String(run.order)]),
    dateWords(run.started),
    ...(ofOne
      ? [cell ? `${litresWords(cell)} of ${run.oil}${tiltWords(cell)}` : run.oil]
      : [[articleSpan(view, run.article), ...(cell ? [`, ${cellDetail(cell)}`] : [])], run.oil]),
    statusWords(view, run),
    mainFigure(view, run),
    ...(loss ? (run.trial === 'spin' && cell !== undefined ? besideCells(view, cell) : ['', '']) : []),
  );
  return notCounted(view, run) === null ? cells : { ...cells, role: 'left-out' };
}

/** One figure for the list: the power at the reference, where it is heading, the level at the top step, the time constant. */
function mainFigure(view: View, run: Run): Span[] {
  const figures = view.figuresOf.get(run.id) ?? [];
  const wanted = {
    flow: 'running-level',
    spin: 'spin-power',
    'heat-up': 'final-temperature',
    'cool-down': 'time-constant',
    soak: '',
    check: '',
  }[run.trial];
  const own = figures.filter(({ quantity }) => quantity === wanted);
  const main = run.trial === 'spin' ? mainPower(view, own) : own.at(-1);
  return main === undefined ? [] : [cited(view, main)];
}

function statusWords(view: View, run: Run): string {
  if (run.status === 'set aside' && run.statusReason !== null) return `set aside: ${run.statusReason}`;
  const counted = run.status !== 'accepted' && run.status !== 'checked' ? null : notCounted(view, run);
  return counted === null ? run.status : `${run.status}, left out`;
}
