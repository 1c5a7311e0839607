import { cellName } from '../ledger/ids.ts';
import type { Standing, StandingRow } from '../trial/compared.ts';
import { articleSpan, cellDetail, cellFigures, cited, quantityWords } from './cite.ts';
import { dependsSection } from './depends.ts';
import { factorialSection } from './factorial.ts';
import { nextTrialSection } from './next-trial.ts';
import type { Block, Page, Section, Span } from './page.ts';
import { capital, link, listed, listOf, prose, row, section, tableBlock } from './spans.ts';
import { speedSection } from './speed-chart.ts';
import { standingSplits } from './splits.ts';
import { standingChart } from './standing-chart.ts';
import { standingNotes } from './standing-notes.ts';
import { bearingSpans, isLoss, reachHead, reachSpans } from './supply.ts';
import { otherConditions } from './standing-table.ts';
import {
  mainStanding,
  reasonWords,
  shownRows,
  standingSentence,
  standingsInOrder,
  standingTitle,
  whereWords,
} from './standing-words.ts';
import { groupBy, type View } from './view.ts';

/** Every standing of the series on one page: the main condition first and whole, its other conditions folded beneath. */
export function standingPage(view: View): Page {
  const main = mainStanding(view);
  return {
    kind: 'standing',
    path: `${view.base}standing/`,
    title: main === undefined ? 'Nothing stands side by side yet' : standingTitle(view, main),
    description: `Articles of ${view.series.title} side by side with the baseline, with intervals and groups.`,
    whereabouts: [
      link(view.base, view.series.title),
      main === undefined ? ' · standing' : ` · standing · ${quantityWords(main.quantity)}`,
    ],
    lead:
      main === undefined
        ? ['No two cells were run under conditions that match, or none was run often enough.']
        : standingSentence(view, main),
    banners: [],
    series: view.series.id,
    sections: [
      ...groupsOf(view).flatMap((standings, i) => [
        groupSection(view, standings, i === 0),
        i === 0 ? dependsSection(view) : null,
        factorialSection(view, standings[0]),
        standingSplits(view, standings[0]),
      ]),
      nextTrialSection(view),
      speedSection(view),
      notRanked(view),
    ].filter((s) => s !== null),
  };
}

export const standingAnchor = (standing: Standing): string => `${standing.quantity}-${standing.oil}`.toLowerCase();

function groupSection(view: View, standings: readonly [Standing, ...Standing[]], first: boolean): Section {
  const [lead, ...others] = standings;
  const id = standingAnchor(lead);
  const whole = section(
    id,
    first ? null : standingTitle(view, lead),
    [
      first ? null : prose(...standingSentence(view, lead)),
      { kind: 'chart', chart: standingChart(view, lead, `${id}-chart`) },
      isLoss(lead.quantity) ? lossNotice(view, lead) : null,
      ...otherConditions(view, others, id),
    ],
    standingNotes(view, lead),
  );
  return first ? whole : { ...whole, inIndex: capital(whereWords(view, lead).replace(/^By /, '')) };
}

/** Less loss may mean less oil at the pinion: the two are read together, value by value. */
export function lossNotice(view: View, standing: Standing): Block {
  const rows = shownRows(view, standing);
  const name = ({ cell }: StandingRow): string => `${cell.article} ${cellDetail(cell)}: `;
  const rises = rows.flatMap((of): Span[][] => {
    const spans = riseSpans(view, of);
    return spans.length === 0 ? [] : [[name(of), ...spans]];
  });
  return {
    kind: 'notice',
    code: 'beside-the-loss',
    text: [
      `Read with it. ${reachHead(view)}, `,
      ...listed(rows.map((of) => [name(of), ...reachSpans(view, of.cell)])),
      '. Pinion bearing above sump, ',
      ...(rises.length > 0 ? listed(rises) : ['not measured under these conditions']),
      '.',
    ],
  };
}

/** The rise of the baseline, and of the others how far they stand from it; their own values stand in the table. */
function riseSpans(view: View, of: StandingRow): Span[] {
  const [change] = of.effect ? cellFigures(view, of.cell, 'bearing-rise', of.effect.against) : [];
  if (change) return [cited(view, change)];
  const own = bearingSpans(view, of).filter((span) => typeof span !== 'string');
  return own.length === 0 ? [] : [...own, of.baseline ? ' (the others less this)' : ' in all'];
}

/** Pairs that were not compared, each once, with the condition that stood in the way. */
function notRanked(view: View): Section | null {
  const refusals = view.input.compared.refusals.filter(
    ({ cell, against }) => view.articles.has(cell.article) && view.articles.has(against.article),
  );
  if (refusals.length === 0) return null;
  const pairs = [...groupBy(refusals, ({ cell, against }) => `${cellName(cell)}|${cellName(against)}`).values()];
  return section('not-ranked', 'Not ranked', [
    prose('No difference is formed between these; the reason stands beside each.'),
    tableBlock(
      'not-ranked-table',
      ['wide article and fill', 'against', 'wide reason', 'wide quantities'],
      pairs.map((list) => {
        const { cell, against, reasons } = list[0]!;
        return row(
          [articleSpan(view, cell.article), `, ${cellDetail(cell)}, ${cell.oil}`],
          `${against.article}, ${cellDetail(against)}, ${against.oil}`,
          reasons.map(reasonWords).join('; '),
          [...new Set(list.map(({ quantity }) => quantityWords(quantity)))].join(', '),
        );
      }),
    ),
  ]);
}

/** The standings that a series page names: those of the baseline's oil that answer a question of the trade. */
export const standingList = (view: View): Block | null => {
  const leads = groupsOf(view)
    .map(([lead]) => lead)
    .filter(({ quantity, oil }) => oil === view.series.baseline.oil && headlines.includes(quantity));
  if (leads.length === 0) return null;
  return listOf(
    leads.map((lead) => [link(`${view.base}standing/#${standingAnchor(lead)}`, standingTitle(view, lead)), '.']),
  );
};

const headlines: readonly string[] = [
  'spin-power',
  'final-rise',
  'limit-crossing',
  'heat-made',
  'shed',
  'bearing-rise',
];

/** One group a quantity and oil. Spin torque is spin power over speed, and final temperature is final rise over ambient: the ledger holds them. */
const groupsOf = (view: View): readonly (readonly [Standing, ...Standing[]])[] =>
  [
    ...groupBy(
      standingsInOrder(view).filter(({ quantity }) => quantity !== 'spin-torque' && quantity !== 'final-temperature'),
      ({ quantity, oil }) => `${quantity}-${oil}`,
    ).values(),
  ] as unknown as readonly (readonly [Standing, ...Standing[]])[];
