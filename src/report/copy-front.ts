import { methodVersions } from '../trial/method.ts';
import type { Report } from '../trial/report.ts';
import { articlePage } from './article.ts';
import { sectionDrawing } from './article-drawing.ts';
import { ruleSpans, saysSpans } from './claim-words.ts';
import { claimsOf, clauseFigure } from './claims-view.ts';
import { articleWords, cited } from './cite.ts';
import type { LeftOut } from './copy-view.ts';
import { withheldWords } from './copy-view.ts';
import { quantityText, numberText } from './digits.ts';
import { methodText } from './method-text.ts';
import { oilPage } from './oil.ts';
import type { Section, Span } from './page.ts';
import type { Chapter } from './paper.ts';
import { rigPage } from './rig.ts';
import { standingOneLine, besideTheLead } from './series-words.ts';
import { capital, counts, facts, listed, listOf, prose, row, section, strong, tableBlock, verdict } from './spans.ts';
import type { View } from './view.ts';

/** What was asked, what came of it with the rule behind each word, and what stands where. */
export function summaryChapter(view: View, report: Report, left: LeftOut): Chapter {
  const held = claimsOf(view);
  return {
    id: 'summary',
    heading: 'Summary',
    sections: [
      report.body.trim() === ''
        ? null
        : section('asked', 'What was asked', [{ kind: 'words', markdown: report.body.trim() }]),
      section('found', 'What was found', [prose(...standingOneLine(view))], [besideTheLead(view)]),
      held.length + left.claims.length === 0
        ? null
        : section(
            'verdicts',
            'Claims, with the rule behind each word',
            [
              tableBlock(
                'verdicts-table',
                ['claim', 'word', 'number found', 'wide what it says, and by which rule'],
                held.flatMap(({ claim, judged }) =>
                  judged.clauses.map(({ clause, word }) => {
                    const figure = clauseFigure(view, clause);
                    return row(strong(claim.id), verdict(word), figure === undefined ? '—' : cited(view, figure), [
                      ...saysSpans(view, clause),
                      ' ',
                      ...ruleSpans(view, clause),
                    ]);
                  }),
                ),
              ),
              left.claims.length === 0
                ? null
                : prose(
                    `Not told here, since the word ${withheldWords}: `,
                    ...listed(left.claims.map((id) => [strong(id)])),
                    '.',
                  ),
            ],
            [
              {
                name: 'Whose words.',
                text: [
                  'A word follows from its rule and the interval of the runs; nobody types it. A claim of several parts is ',
                  verdict('shown'),
                  ' only where all of them are.',
                ],
              },
            ],
          ),
    ].filter((one) => one !== null),
  };
}

/** Articles, oils and the rig. Of an article under another name no drawing is given and no words of its sheet. */
export function testedChapter(view: View, report: Report): Chapter {
  const articles = [...view.articles.values()].filter(({ id }) => report.articles.includes(id));
  const used = new Set(view.runs.map(({ oil }) => oil));
  return {
    id: 'tested',
    heading: 'What was tested',
    sections: [
      ...articles.map((article): Section => {
        const own = articlePage(view, article).sections.find(({ id }) => id === 'facts');
        const another = report.aliases.has(article.id);
        return section(
          `article-${article.id}`,
          articleWords(view, article.id),
          [another ? null : sectionDrawing(view, article, `drawing-${article.id}`), ...(own?.blocks ?? [])],
          [
            {
              name: 'One of how many.',
              text: [
                `${article.samples === 1 ? 'One sample' : `${numberText(article.samples, 0)} samples`}, ${article.obtained.replaceAll('_', ' ')}. Results hold for what was tested.`,
              ],
            },
            another
              ? { name: 'Another name.', text: ['Its own name, its drawing and the words of its sheet are kept back.'] }
              : null,
          ],
        );
      }),
      ...[...view.oils.values()]
        .filter(({ id }) => used.has(id))
        .map((oil): Section => {
          const page = oilPage(view, oil);
          const own = page.sections.find(({ id }) => id === 'facts')!;
          return { ...own, id: `oil-${oil.id}`, heading: page.title };
        }),
      ...rigSections(view),
    ],
  };
}

const rigSections = (view: View): Section[] =>
  rigPage(view).sections.flatMap((one) =>
    ['geometry', 'boundary', 'instruments', 'states'].includes(one.id)
      ? [
          {
            ...one,
            id: `rig-${one.id}`,
            heading: one.id === 'geometry' ? `${view.rig.name}: gears and heights` : one.heading,
          },
        ]
      : [],
  );

/** Method in words, what had to match, and every departure from it. */
export function methodChapter(view: View): Chapter {
  return {
    id: 'method',
    heading: 'Method and deviations',
    sections: [
      matchSection(view),
      ...methodText
        .filter(({ id }) => trialsOf(view).some((trial) => (textFor[trial] ?? []).includes(id)))
        .map((one) => ({ ...one, blocks: one.blocks.filter(({ kind }) => kind !== 'code') })),
      deviationsSection(view),
    ],
  };
}

const trialsOf = (view: View): readonly string[] => ['any', ...new Set(view.runs.map(({ trial }) => trial))];
const textFor: Readonly<Record<string, readonly string[]>> = {
  any: ['files', 'levels', 'uncertainty', 'comparing'],
  flow: ['flow'],
  spin: ['spin'],
  'heat-up': ['heat-up'],
  'cool-down': ['cool-down'],
};

function matchSection(view: View): Section {
  const { tolerance, reference, method, coverage } = view.series;
  return section('matched', 'What two runs had to share', [
    prose(
      `Runs are compared at the conditions of the series and only where these agree: level within ${quantityText(tolerance.level_m, 'mm', 1)} or litres within ${quantityText(tolerance.fill_m3, 'L', 2)}, ambient within ${quantityText(tolerance.ambient_K, 'K', 1)}, airflow within ${quantityText(tolerance.airflow_m_s, 'm/s', 2)}, speed within ${numberText(tolerance.outputSpeed_ratio * 100, 1)} %, and rig state and rotation alike.`,
    ),
    facts([
      reference.airflow_m_s === null ? null : ['Airflow of reference', [quantityText(reference.airflow_m_s, 'm/s', 1)]],
      ['Coverage', [`${numberText(coverage * 100, 0)} % of every interval, unless it says otherwise`]],
      ['Method', [`version ${method}: ${methodVersions.find(({ version }) => version === method)?.what ?? ''}`]],
    ]),
  ]);
}

/** What was left out of the logs, runs that do not count, and what the checks found on those that do. */
function deviationsSection(view: View): Section {
  const left = view.runs.flatMap(({ id, exclude }) =>
    exclude.map(({ from_s, to_s, channels, reason }): Span[] => [
      strong(id),
      `: ${quantityText(from_s, 's', 0)} to ${quantityText(to_s, 's', 0)} of ${channels.length === 0 ? 'all channels' : channels.join(', ')} not used, ${reason}.`,
    ]),
  );
  const aside = view.runs.flatMap(({ id, status, statusReason }): Span[][] =>
    status === 'accepted' || status === 'checked'
      ? []
      : [[strong(id), `: ${status}${statusReason === null ? '' : `, ${statusReason}`}.`]],
  );
  const open = view.findings.flatMap(({ about, says, level }): Span[][] =>
    about?.run === undefined || level === 'notice' ? [] : [[strong(about.run), `: ${says}`]],
  );
  const lists = [
    ['Left out of the logs', left],
    ['Runs of which no figure is made', aside],
    ['Found by the checks, and open', open],
  ] as const;
  const some = lists.filter(([, items]) => items.length > 0);
  return section('deviations', 'Deviations', [
    some.length === 0
      ? prose('None is recorded.')
      : prose(capital(`${counts(left.length + aside.length + open.length, 'entry', 'entries')}.`)),
    ...some.flatMap(([name, items]) => [prose(strong(name)), listOf(items)]),
  ]);
}
