import { litres, rpm } from '../ledger/ids.ts';
import type { Plan, PlanCell } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';
import { articleSpan, litresWords, tiltWords } from './cite.ts';
import { wantedCards } from './cards.ts';
import { numberText, quantityText } from './digits.ts';
import { noteSection } from './note-fields.ts';
import type { Block, MarginNote, Page, PlanGridData, TableRow } from './page.ts';
import { nextOnPlan } from './next-trial.ts';
import { reachSection } from './plan-reach.ts';
import { notCounted } from './run-parts.ts';
import { capital, counts, facts, link, row, section, table } from './spans.ts';
import { derivedOf, groupBy, type View } from './view.ts';

interface Tally {
  readonly cell: PlanCell;
  readonly done: number;
  readonly setAside: number;
}

/** What was to be run, what was, and what is missing. */
export function planPage(view: View, plan: Plan): Page {
  const tallies = plan.cells.map((cell) => tally(view, cell));
  const missing = tallies.reduce((sum, t) => sum + Math.max(0, t.cell.wanted - t.done), 0);
  const wanted = plan.cells.reduce((sum, { wanted: n }) => sum + n, 0);
  return {
    kind: 'plan',
    path: `${view.base}plan/`,
    title:
      missing === 0
        ? 'The plan is run as it was written'
        : `${capital(counts(missing, 'planned run'))} ${missing === 1 ? 'is' : 'are'} missing`,
    description: `Plan sheet of ${view.series.title}: cells done, set aside and missing.`,
    whereabouts: [link(view.base, view.series.title), ' · plan sheet'],
    lead: [
      `${capital(counts(plan.cells.length, 'cell'))} and ${counts(wanted, 'run')} were planned, in ${plan.order === 'random' ? 'shuffled' : plan.order === 'latin' ? 'Latin-square' : 'fixed'} order${plan.seed === null ? '' : ` (seed ${String(plan.seed)})`}; one repeat is one ${plan.repeatUnit}.`,
    ],
    banners: [],
    series: view.series.id,
    sections: [
      section(
        'grid',
        null,
        [gridChart(view, tallies)],
        [
          {
            name: 'Varied on purpose.',
            text: [`${plan.factors.join(', ')}. A difference in anything else is a mismatch.`],
          },
          { name: 'Baseline again.', text: [`${plan.baselineRerun}.`] },
          cardsNote(view),
          view.held.runs === 0
            ? null
            : {
                name: 'Held back.',
                text: [`${capital(counts(view.held.runs, 'run is', 'runs are'))} held back and not counted here.`],
              },
        ],
      ),
      section('steps', 'Steps, temperatures, limits', [
        facts([
          ['Steps', [`${plan.steps_rad_s.map(rpm).join(', ')} ${view.speed}`]],
          [
            'Held',
            [
              `${quantityText(plan.hold_s, 's', 0)} each; the last ${quantityText(plan.steadyWindow_s, 's', 0)} are read`,
            ],
          ],
          ['Temperatures', [plan.temperatures_K.map((t_K) => quantityText(t_K, '°C', 0, view.withUs)).join(', ')]],
          ['Limits', [plan.limits_K.map((t_K) => quantityText(t_K, '°C', 0, view.withUs)).join(', ')]],
          ['A crossing holds for', [quantityText(plan.sustained_s, 's', 0)]],
          ['Longest heat-up', [quantityText(plan.maxTime_s, 'min', 0)]],
          plan.load === null
            ? null
            : [
                'Load',
                [
                  `${quantityText(plan.load.powerOut_W, 'kW', 1, view.withUs)} out at ${rpm(plan.load.outputSpeed_rad_s)} ${view.speed}`,
                ],
              ],
        ]),
      ]),
      reachSection(view),
      nextOnPlan(view),
      noteSection(view, plan),
    ].filter((s) => s !== null),
  };
}

/** For the house: what is still to be run has a card each. */
function cardsNote(view: View): MarginNote | null {
  const { length } = wantedCards(view, { all: false });
  if (!view.house || length === 0) return null;
  return {
    name: 'Run cards.',
    text: [link(`${view.base}cards/`, counts(length, 'card', 'cards')), ' to print, one a run that is still wanted.'],
  };
}

function gridChart(view: View, tallies: readonly Tally[]): Block {
  const trials = [...groupBy(tallies, ({ cell }) => cell.trial).keys()];
  const byThing = [...groupBy(tallies, ({ cell }) => label(cell))];
  const data: PlanGridData = {
    kind: 'plan-grid',
    columns: trials,
    rows: byThing.map(([name, list]) => ({
      label: name,
      cells: list.map(({ cell, done, setAside }) => ({ column: cell.trial, wanted: cell.wanted, done, setAside })),
    })),
  };
  return {
    kind: 'chart',
    chart: {
      id: 'plan-grid',
      title: 'Cells of the plan by kind of trial: done, set aside, missing',
      alternative: `A grid of ${counts(byThing.length, 'article and fill', 'articles and fills')} by ${trials.join(', ')}; each cell says how many runs were wanted, how many are done and how many are set aside. The table below holds the same numbers.`,
      caption: ['A run that is set aside does not count as done.'],
      data,
      table: table(
        'plan-table',
        ['trial', 'wide article and fill', 'oil', 'number wanted', 'number done', 'number set aside', 'number missing'],
        tallies.map((t) => tallyRow(view, t)),
      ),
    },
  };
}

function tallyRow(view: View, { cell, done, setAside }: Tally): TableRow {
  return row(
    cell.trial,
    [articleSpan(view, cell.article), `, ${litresWords(cell)}${tiltWords(cell)}`],
    cell.oil,
    numberText(cell.wanted, 0),
    numberText(done, 0),
    numberText(setAside, 0),
    numberText(Math.max(0, cell.wanted - done), 0),
  );
}

const label = (cell: PlanCell): string => `${cell.article}, ${litresWords(cell)}${tiltWords(cell)}, ${cell.oil}`;

function tally(view: View, cell: PlanCell): Tally {
  const own = view.runs.filter((run) => matches(view, run, cell));
  const out = own.filter((run) => notCounted(view, run) !== null && run.status !== 'draft').length;
  return { cell, done: own.filter((run) => notCounted(view, run) === null).length, setAside: out };
}

function matches(view: View, run: Run, cell: PlanCell): boolean {
  const derived = derivedOf(view, run.id)?.cell;
  return (
    run.trial === cell.trial &&
    run.article === cell.article &&
    run.oil === cell.oil &&
    derived !== undefined &&
    litres(derived.fill_m3) === litres(cell.fill_m3) &&
    Math.abs(derived.tilt_ratio - cell.tilt_ratio) <= view.series.tolerance.tilt_ratio
  );
}
