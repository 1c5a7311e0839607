import { pageStamp } from './amended.ts';
import { litres } from '../ledger/ids.ts';
import type { Article } from '../trial/article.ts';
import type { Effect } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import { levelChart, sectionDrawing } from './article-drawing.ts';
import { articleSpan, articleWords, cellDetail, citedValue, doubtOf, figureWords, cited } from './cite.ts';
import { quantityText } from './digits.ts';
import { noteSection } from './note-fields.ts';
import type { Block, MarginNote, Page, Section, Span, TableRow } from './page.ts';
import { pairsWith, sheetName } from './pairs.ts';
import { runHeads, runRow } from './runs.ts';
import { capital, facts, fold, link, listOf, listed, prose, row, section, tableBlock, verdict } from './spans.ts';
import { articleSplits } from './splits.ts';
import { besideTheLoss, isLoss } from './supply.ts';
import { rankOf } from './figure-order.ts';
import { effectFigure, isMain } from './standing-words.ts';
import type { View } from './view.ts';

/** One thing that is compared: what it is, where oil stands in it, and what it changes. */
export function articlePage(view: View, article: Article): Page {
  const effects = view.input.compared.effects.filter(
    ({ cell, against }) => cell.article === article.id && view.articles.has(against.article),
  );
  return {
    kind: 'article',
    path: `${view.base}articles/${article.id}/`,
    title: articleWords(view, article.id),
    description: `Article sheet of ${articleWords(view, article.id)} in ${view.series.title}.`,
    whereabouts: [link(view.base, view.series.title), ` · article sheet · ${spaced(article.role)}`],
    lead: articleLead(view, article, effects),
    banners: pageStamp(
      view,
      ({ subject }) => subject.article === article.id || subject.against?.article === article.id,
    ),
    series: view.series.id,
    sections: [
      section(
        'picture',
        null,
        [sectionDrawing(view, article, 'section')],
        [obtainedNote(article), limitNote(view, article)],
      ),
      article.differences.length === 0
        ? null
        : section(
            'differences',
            'What this copy changes',
            [listOf(article.differences.map((text) => [text]))],
            [standsIn(view, article)],
          ),
      effectsSection(view, effects),
      articleSplits(view, effects),
      article.levelTable === null
        ? null
        : section('level', 'Where the oil stands', [levelChart(view, article)], [adviceNote(article)]),
      runsSection(view, article),
      factsSection(view, article),
      noteSection(view, article),
    ].filter((s) => s !== null),
  };
}

function articleLead(view: View, article: Article, effects: readonly Effect[]): readonly Span[] {
  if (article.id === view.series.baseline.article)
    return ['All others are compared with it: it is the baseline of the series.'];
  if (article.role === 'window_copy')
    return ['A copy with a window, for watching the oil. It is not for heat, and no loss is compared with it.'];
  const reference = litres(view.series.baseline.fill_m3);
  const main = effects.filter((e) => isHeadline(view, e) && litres(e.against.fill_m3) === reference);
  const clauses = ['spin-power', 'final-rise'].flatMap((quantity) =>
    headline(
      view,
      main.filter((e) => e.quantity === quantity),
    ),
  );
  return clauses.length === 0
    ? ['It was not compared with the baseline under the main condition of the series.']
    : clauses;
}

/** "Spin power at 290 wheel rpm, sump 60 °C differs from that of P0 pressed bowl by −29.4 ± 8.4 W with 2.40 L (separated). " */
function headline(view: View, effects: readonly Effect[]): Span[] {
  const [first] = effects;
  if (first === undefined) return [];
  return [
    `${capital(figureWords({ quantity: first.quantity, at: effectFigure(view, first)?.at ?? {} }))} differs from that of `,
    articleSpan(view, first.against.article),
    ' by ',
    ...listed(
      effects.map((effect): Span[] => {
        const figure = effectFigure(view, effect);
        return [
          ...(figure ? [cited(view, figure)] : []),
          ` with ${cellDetail(effect.cell)} (`,
          verdict(effect.separated ? 'separated' : 'not separated'),
          ')',
        ];
      }),
    ),
    '. ',
  ];
}

/** At the main condition, level, with the baseline's oil, against the baseline itself. */
const isHeadline = (view: View, effect: Effect): boolean =>
  isMain(view, effect) &&
  effect.cell.oil === view.series.baseline.oil &&
  effect.against.article === view.series.baseline.article &&
  effect.against.oil === view.series.baseline.oil &&
  effect.cell.tilt_ratio === 0 &&
  effect.against.tilt_ratio === 0;

function effectsSection(view: View, effects: readonly Effect[]): Section | null {
  if (effects.length === 0) return null;
  const ordered = [...effects]
    .filter(({ quantity }) => quantity !== 'spin-torque')
    .sort((a, b) => rankOf(a.quantity) - rankOf(b.quantity) || byConditions(a.at, b.at) || fillOrder(a) - fillOrder(b));
  const main = ordered.filter((e) => isHeadline(view, e));
  const rest = ordered.filter((e) => !main.includes(e));
  const tilted = rest.filter((e) => e.cell.tilt_ratio !== 0 || e.against.tilt_ratio !== 0);
  const oiled = rest.filter(
    (e) => !tilted.includes(e) && (e.cell.oil !== view.series.baseline.oil || e.against.oil !== e.cell.oil),
  );
  const stepped = rest.filter((e) => !tilted.includes(e) && !oiled.includes(e));
  const more = [
    ['effects-stepped', 'At other speeds, temperatures and limits', stepped],
    ['effects-oiled', 'With another oil', oiled],
    ['effects-tilted', 'Tilted', tilted],
  ] as const;
  const of = (id: string, list: readonly Effect[]): Block =>
    tableBlock(
      id,
      ['wide difference', 'with', 'against', 'number value', 'number 95 %', 'word', 'basis'],
      list.flatMap((effect) => effectRow(view, effect)),
    );
  const losses = main.filter(({ quantity }) => isLoss(quantity));
  return section(
    'effects',
    'What it changes',
    [
      prose('Each row is this article less what it is compared with.'),
      main.length === 0 ? null : of('effects-main', main),
      ...more.map(([id, heading, list]) => (list.length === 0 ? null : fold(heading, of(id, list)))),
    ],
    losses.length === 0 ? [] : [besideTheLoss(view, losses[0]!.cell, true)],
  );
}

function effectRow(view: View, effect: Effect): TableRow[] {
  const figure = effectFigure(view, effect);
  if (figure === undefined) return [];
  return [
    row(
      figureWords(figure),
      withWords(view, effect.cell),
      `${effect.against.article} ${withWords(view, effect.against)}`,
      citedValue(view, figure),
      doubtOf(figure),
      verdict(effect.separated ? 'separated' : 'not separated'),
      effect.basis,
    ),
  ];
}

/** Warmer after colder, faster after slower; own temperature last. */
const byConditions = (a: Effect['at'], b: Effect['at']): number =>
  temperature(a) - temperature(b) ||
  (a.outputSpeed_rad_s ?? 0) - (b.outputSpeed_rad_s ?? 0) ||
  (a.limit_K ?? 0) - (b.limit_K ?? 0);
const temperature = ({ sump_K }: Effect['at']): number => (sump_K === 'own' ? 1e9 : (sump_K ?? 0));
const fillOrder = ({ cell }: Effect): number => cell.fill_m3;

/** The oil is named where it is not the baseline's. */
const withWords = (view: View, cell: Cell): string =>
  `${cellDetail(cell)}${cell.oil === view.series.baseline.oil ? '' : `, ${cell.oil}`}`;

function runsSection(view: View, article: Article): Section {
  const pairs = pairsWith(view, article.id);
  const runs = view.runs.filter((run) => run.article === article.id).sort((a, b) => a.order - b.order);
  return section('runs', 'Runs', [
    runs.length === 0
      ? prose('None that can be shown.')
      : tableBlock(
          'article-runs',
          runHeads(view, { loss: true, ofOne: true }),
          runs.map((run) => runRow(view, run, { loss: true, ofOne: true })),
        ),
    pairs.length === 0
      ? null
      : prose(
          'Behind the window, side by side: ',
          ...listed(
            pairs.map(({ left, right, path }) => [link(path, `${sheetName(left)} and ${sheetName(right)}`)]),
            ', ',
          ),
          '.',
        ),
  ]);
}

const factsSection = (view: View, article: Article): Section =>
  section('facts', 'What it is', [
    facts([
      ['Kind', [spaced(article.kind)]],
      ['Inside', [spaced(article.insideShape)]],
      ['Material', [spaced(article.material)]],
      article.wall_m === null ? null : ['Wall', [quantityText(article.wall_m, 'mm', 1, view.withUs)]],
      article.mass_kg === null ? null : ['Mass', [quantityText(article.mass_kg, 'kg', 2, view.withUs)]],
      article.heatCapacity_J_K === null
        ? null
        : ['Heat capacity', [quantityText(article.heatCapacity_J_K, 'kJ/K', 2, view.withUs)]],
      article.maxSump_K === null
        ? null
        : ['Stated sump limit', [quantityText(article.maxSump_K, '°C', 0, view.withUs)]],
      ['Condition', [spaced(article.condition)]],
    ]),
  ]);

const obtainedNote = (article: Article): MarginNote => ({
  name: 'One of how many.',
  text: [
    `${article.samples === 1 ? 'One sample' : `${String(article.samples)} samples`}, ${spaced(article.obtained)}, ${spaced(article.condition)}.`,
  ],
});

const limitNote = (view: View, article: Article): MarginNote | null =>
  article.maxSump_K === null
    ? null
    : {
        name: 'Stated limit.',
        text: [`Its maker states a sump of ${quantityText(article.maxSump_K, '°C', 0, view.withUs)} at the highest.`],
      };

const adviceNote = (article: Article): MarginNote | null =>
  article.makerFillAdvice === null
    ? null
    : { name: 'Fill advice.', text: [`As it came with the part: ${article.makerFillAdvice}.`] };

const standsIn = (view: View, article: Article): MarginNote => ({
  name: 'Stands in for.',
  text:
    article.standsInFor.length === 0
      ? ['Nothing named.']
      : listed(article.standsInFor.map((id) => [articleSpan(view, id)])),
});

export const spaced = (word: string): string => word.replaceAll('_', ' ');
