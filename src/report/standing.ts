import { cellName } from '../ledger/ids.ts';
import type { Standing } from '../trial/compared.ts';
import { pageStamp } from './amended.ts';
import { besideId, besideTable } from './beside-table.ts';
import { campaignsSection } from './campaigns.ts';
import { articleSpan, cellDetail, quantityWords } from './cite.ts';
import { dependsSection } from './depends.ts';
import { costSection } from './cost.ts';
import { filmSection } from './film.ts';
import { factorialSection } from './factorial.ts';
import { nextTrialSection } from './next-trial.ts';
import type { Block, Page, Section } from './page.ts';
import { capital, link, listOf, prose, row, section, tableBlock } from './spans.ts';
import { speedSection } from './speed-chart.ts';
import { standingSplits } from './splits.ts';
import { surfaceSection } from './surface.ts';
import { standingChart } from './standing-chart.ts';
import { standingNotes } from './standing-notes.ts';
import { isLoss } from './supply.ts';
import { otherConditions } from './standing-table.ts';
import {
  mainStanding,
  reasonWords,
  standingAnchor,
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
    banners: pageStamp(view, ({ subject }) => subject.article !== undefined && subject.run === undefined),
    series: view.series.id,
    sections: [
      ...groupsOf(view).flatMap((standings, i) => [
        groupSection(view, standings, i === 0),
        i === 0 ? dependsSection(view) : null,
        factorialSection(view, standings[0]),
        standingSplits(view, standings[0]),
        surfaceSection(view, standings[0]),
        filmSection(view, standings[0]),
        costSection(view, standings[0]),
      ]),
      campaignsSection(view),
      nextTrialSection(view),
      speedSection(view),
      notRanked(view),
    ].filter((s) => s !== null),
  };
}

function groupSection(view: View, standings: readonly [Standing, ...Standing[]], first: boolean): Section {
  const [lead, ...others] = standings;
  const id = standingAnchor(lead);
  const whole = section(
    id,
    first ? null : standingTitle(view, lead),
    [
      first ? null : prose(...standingSentence(view, lead)),
      { kind: 'chart', chart: standingChart(view, lead, `${id}-chart`) },
      isLoss(lead.quantity) ? besideTable(view, lead, besideId(id)) : null,
      ...otherConditions(view, others, id),
    ],
    standingNotes(view, lead),
  );
  return first ? whole : { ...whole, inIndex: capital(whereWords(view, lead).replace(/^By /, '')) };
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
      ({ quantity, oil, campaign }) => `${quantity}-${oil}-${campaign ?? ''}`,
    ).values(),
  ] as unknown as readonly (readonly [Standing, ...Standing[]])[];
