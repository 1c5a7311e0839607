import type { Standing } from '../trial/compared.ts';
import { besideId, besideTable } from './beside-table.ts';
import { figureWords, subjectSpans } from './cite.ts';
import { claimSection } from './claim-section.ts';
import { claimCharts } from './claims-chart.ts';
import { claimsOf, clauseFigure } from './claims-view.ts';
import type { Section } from './page.ts';
import type { Chapter } from './paper.ts';
import { runHeads, runRow } from './runs.ts';
import { capital, prose, section, tableBlock } from './spans.ts';
import { speedSection } from './speed-chart.ts';
import { standingSplits } from './splits.ts';
import { standingChart } from './standing-chart.ts';
import { standingNotes } from './standing-notes.ts';
import { shownRows, standingAnchor, standingSentence, standingsInOrder, standingTitle } from './standing-words.ts';
import { isLoss } from './supply.ts';
import { groupBy, type View } from './view.ts';
import { budgetBlocks } from './working.ts';

/** Each claim whole, what was run, and what turns with speed. */
export function resultsChapter(view: View): Chapter {
  const held = claimsOf(view);
  const charts = claimCharts(view, held);
  return {
    id: 'results',
    heading: 'Results',
    sections: [
      charts.length === 0 ? null : section('claims-drawn', 'What was asked and what was found', charts),
      ...held.map((one) => claimSection(view, one)),
      speedSection(view),
      ...[...groupBy(view.runs, ({ trial }) => trial)].map(([trial, runs]): Section =>
        section(`runs-${trial}`, `Runs: ${trial}`, [
          tableBlock(
            `runs-${trial}-table`,
            runHeads(view, { loss: trial === 'spin' }),
            [...runs].sort((a, b) => a.order - b.order).map((run) => runRow(view, run, { loss: trial === 'spin' })),
          ),
        ]),
      ),
    ].filter((one) => one !== null),
  };
}

/** One table a quantity, at the main condition; what stands beside a loss stands under it. */
export function standingChapter(view: View): Chapter {
  const groups = groupBy(
    standingsInOrder(view).filter(({ quantity }) => told.has(quantity)),
    ({ quantity, oil, campaign }) => `${quantity} ${oil} ${campaign ?? ''}`,
  );
  const leads = [...groups.values()].map(([lead]) => lead!).filter((lead) => compares(view, lead));
  return {
    id: 'standing',
    heading: 'Standing',
    sections: leads.flatMap((lead) => {
      const id = standingAnchor(lead);
      return [
        section(
          id,
          standingTitle(view, lead),
          [
            prose(...standingSentence(view, lead)),
            { kind: 'chart', chart: standingChart(view, lead, `${id}-chart`) },
            isLoss(lead.quantity) ? besideTable(view, lead, besideId(id)) : null,
          ],
          standingNotes(view, lead),
        ),
        ...[standingSplits(view, lead)].flatMap((one) =>
          one === null ? [] : [{ ...one, heading: one.inIndex ?? one.heading }],
        ),
      ];
    }),
  };
}

/** Torque is power over speed and a final temperature its rise over ambient: they stand in the ledger. */
const told: ReadonlySet<string> = new Set([
  'spin-power',
  'final-rise',
  'heat-made',
  'shed',
  'store',
  'limit-crossing',
  'bearing-rise',
]);

const compares = (view: View, standing: Standing): boolean =>
  shownRows(view, standing).some(({ effect }) => effect !== null);

/** Where the doubt of each figure comes from that a claim is judged by, cause by cause. */
export function doubtChapter(view: View): Chapter {
  const figures = [
    ...new Map(
      claimsOf(view)
        .flatMap(({ judged }) => judged.clauses)
        .flatMap(({ clause }) => clauseFigure(view, clause) ?? [])
        .map((figure) => [figure.id, figure]),
    ).values(),
  ];
  return {
    id: 'doubt',
    heading: 'Where the doubt comes from',
    sections: figures.map((figure, i) =>
      section(`doubt-${String(i + 1)}`, capital(figureWords(figure)), [
        prose('Of ', ...subjectSpans(view, figure), '.'),
        ...budgetBlocks(figure, view.input.ledger.workings.get(figure.id)).filter(({ kind }) => kind !== 'fold'),
        prose('Smaller causes stand in its working, which the lab keeps.'),
      ]),
    ),
  };
}
