import type { Part } from '../trial/part.ts';
import { hasAmends } from './amends.ts';
import { asksPath } from './asks-view.ts';
import { articleSpan } from './cite.ts';
import { claimsList } from './claims.ts';
import { claimsTitle } from './claim-words.ts';
import { claimsOf } from './claims-view.ts';
import { dateWords } from './dates.ts';
import { flowMenu } from './flow-menu.ts';
import { heatChart } from './heat-chart.ts';
import { noteSection } from './note-fields.ts';
import type { MarginNote, Page, Span } from './page.ts';
import { movedIn } from './part.ts';
import { partName, partPath, partsOf, statusWords } from './parts-view.ts';
import { notCounted } from './run-parts.ts';
import { capital, counts, facts, link, listOf, listed, prose, section } from './spans.ts';
import { standingChart } from './standing-chart.ts';
import { isLoss } from './supply.ts';
import { mainStanding, standingSentence, standingTitle } from './standing-words.ts';
import { besideId, besideTable } from './beside-table.ts';
import { besideTheLead, standingOneLine } from './series-words.ts';
import { sureNote } from './standing-notes.ts';
import { standingList } from './standing.ts';
import { quantityText } from './digits.ts';
import type { View } from './view.ts';

/** The front page of one series: what was asked, what was found, and where everything stands. */
export function seriesPage(view: View): Page {
  const { series } = view;
  const main = mainStanding(view);
  const list = standingList(view);
  const heat = heatChart(view);
  const claims = claimsList(view);
  return {
    kind: 'series',
    path: view.base,
    title: series.title,
    description: series.summary,
    whereabouts: [link('', view.input.book.name), ` · series · since ${dateWords(series.started)}`],
    lead: main === undefined ? [series.summary] : [...standingOneLine(view)],
    banners: [],
    series: series.id,
    sections: [
      section(
        'question',
        'What was asked',
        [prose(series.question), prose(series.summary)],
        [
          {
            name: 'Compared with.',
            text: [
              articleSpan(view, series.baseline.article),
              `, ${quantityText(series.baseline.fill_m3, 'L', 2, view.withUs)} of ${series.baseline.oil}.`,
            ],
          },
          { name: 'Conflicts of interest.', text: [`${capital(series.conflicts)}.`] },
          besideTheLead(view),
        ],
      ),
      main === undefined
        ? null
        : section(
            'picture',
            standingTitle(view, main),
            [
              { kind: 'chart', chart: standingChart(view, main, 'main-standing') },
              isLoss(main.quantity) ? besideTable(view, main, besideId('main-standing')) : null,
            ],
            [sureNote(view, main)],
          ),
      partsSection(view),
      list === null
        ? null
        : section('found', 'What was found', [prose(...(main ? standingSentence(view, main) : [])), list]),
      claims === null
        ? null
        : section(
            'claims',
            claimsTitle(claimsOf(view)),
            [claims],
            [
              {
                name: 'Who says so.',
                text: ['Each word follows from the rule of the claim and the interval of its runs; nobody types it.'],
              },
            ],
          ),
      heat === null
        ? null
        : section(
            'heat',
            'Heat made and shed',
            [heat],
            [
              {
                name: 'Not a cover alone.',
                text: ['Shed belongs to the whole axle: tubes, carrier and hubs give off heat too.'],
              },
            ],
          ),
      sheetsSection(view),
      section(
        'how-to-read',
        'How to read it',
        [
          listOf([
            ['A number that is a link leads to its working, down to the line of the raw file.'],
            ['± is half a 95 % interval. Not separated means that these runs cannot tell; it does not mean alike.'],
            ['Same litres and same level are two ways to be fair, and both are shown where both were run.'],
            [
              'The words stand under ',
              link('words/', 'Words'),
              ', the relations under ',
              link('method/', 'Method'),
              '.',
            ],
          ]),
        ],
        [heldNote(view)],
      ),
      section('terms', 'Licence and contact', [
        facts([
          ['Licence', [series.licence]],
          ['Corrections', [view.input.book.contact]],
          [
            'Data',
            [
              link(`${view.base}datapackage.json`, 'data package'),
              ' with a CSV of every table, ',
              link(`${view.base}ledger.json`, 'ledger.json'),
              ', ',
              link(`${view.base}CITATION.cff`, 'how to cite it'),
            ],
          ],
        ]),
      ]),
      noteSection(view, series),
    ].filter((s) => s !== null),
  };
}

/** The instalments, the newest first. */
function partsSection(view: View) {
  const parts = partsOf(view);
  if (parts.length === 0) return null;
  return section(
    'parts',
    `${capital(counts(parts.length, 'part'))} so far`,
    [
      listOf(
        [...parts]
          .reverse()
          .map((part): Span[] => [
            link(partPath(view, part), partName(part)),
            `, ${statusWords(part)}. ${part.summary}`,
            ...movedWords(view, part),
          ]),
      ),
    ],
    [
      {
        name: 'Asked.',
        text: ['Questions are carried from part to part: ', link(asksPath(view), 'asks'), '.'],
      },
    ],
  );
}

const movedWords = (view: View, part: Part): Span[] => {
  const n = movedIn(view, part).length;
  return n === 0
    ? []
    : [' ', link(`${partPath(view, part)}#then-and-now`, `${capital(counts(n, 'thing'))} said there moved since`), '.'];
};

function sheetsSection(view: View) {
  const { base } = view;
  const out = view.runs.filter((run) => notCounted(view, run) !== null).length;
  const claims = claimsOf(view).length;
  const sheet = (path: string, text: string): Span => link(`${base}${path}`, text);
  return section('sheets', 'The sheets', [
    facts([
      ['Standing', [sheet('standing/', 'All that was compared, by quantity and condition')]],
      claims === 0
        ? null
        : ['Claims', [sheet('claims/', counts(claims, 'claim')), ', each with its rule and its word']],
      flowMenu(view.input).grades
        ? [
            'Behind the window',
            [
              sheet('grades/', 'Grades'),
              ...(flowMenu(view.input).sideBySide ? [', ', sheet('side-by-side/', 'side by side')] : []),
              ...(flowMenu(view.input).grading ? [', ', sheet('grading/', 'grading (house only)')] : []),
            ],
          ]
        : null,
      [
        'Articles',
        listed(
          [...view.articles.keys()].map((id) => [articleSpan(view, id)]),
          ', ',
        ),
      ],
      view.oils.size === 0
        ? null
        : [
            'Oils',
            listed(
              [...view.oils].map(([id, oil]) => [sheet(`oils/${id}/`, `${id} ${oil.name}`)]),
              ', ',
            ),
          ],
      [
        'Rig and plan',
        [
          ...(view.rigShown ? [sheet('rig/', view.rig.name)] : []),
          ...(view.rigShown && view.plan ? [', '] : []),
          ...(view.plan ? [sheet('plan/', 'plan')] : []),
        ],
      ],
      [
        'Runs',
        [
          sheet('runs/', counts(view.runs.length, 'run')),
          out === 0 ? '' : `; ${counts(out, 'gives', 'give')} no figures`,
        ].filter((s) => s !== ''),
      ],
      [
        'Asked',
        [
          ...(view.input.record.questions.length === 0 ? [] : [sheet('asks/', 'Asks'), ', ']),
          sheet('not-looked-at/', 'not looked at'),
          ', ',
          sheet('usual-objections/', 'usual objections'),
          ...(hasAmends(view) ? [', ', sheet('amends/', 'amends')] : []),
        ],
      ],
      ['Figures', [sheet('ledger/', 'Ledger')]],
      ['Findings', [sheet('checks/', 'What the checks found')]],
    ]),
  ]);
}

export function heldNote(view: View): MarginNote | null {
  const { runs, notes, claims } = view.held;
  const all = runs + notes + claims;
  if (all === 0) return null;
  const counted = [
    { n: runs, what: 'run' },
    { n: claims, what: 'claim' },
    { n: notes, what: 'other note' },
  ].flatMap(({ n, what }) => (n === 0 ? [] : [counts(n, what)]));
  const words = [counted.slice(0, -1).join(', '), ...counted.slice(-1)].filter((part) => part !== '').join(' and ');
  return { name: 'Held back.', text: [`${capital(words)} ${all === 1 ? 'is' : 'are'} not shown to the public.`] };
}
