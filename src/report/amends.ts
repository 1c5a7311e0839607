import type { Figure } from '../ledger/figure.ts';
import { workingPath } from '../ledger/ids.ts';
import type { Correction, Objection } from '../trial/amendment.ts';
import type { Reach } from '../trial/reach.ts';
import type { Report } from '../trial/report.ts';
import { amendsPath, reportsReached, shownCorrections, shownReaches } from './amended.ts';
import { claimPath, claimsOf } from './claims-view.ts';
import { figureWords, subjectSpans } from './cite.ts';
import { dateWords } from './dates.ts';
import { numberText, wholeOf } from './digits.ts';
import type { Block, Page, Section, Span, TableRow } from './page.ts';
import { questionLink } from './asks-view.ts';
import { partPath, partsOf } from './parts-view.ts';
import { runLink } from './run-parts.ts';
import {
  capital,
  counts,
  facts,
  fold,
  link,
  listed,
  plain,
  row,
  section,
  strong,
  tableBlock,
  verdict,
} from './spans.ts';
import type { View } from './view.ts';

export const shownObjections = (view: View): readonly Objection[] =>
  view.input.record.objections.filter(({ shownTo }) => view.house || shownTo === 'public');

export const hasAmends = (view: View): boolean => shownCorrections(view).length + shownObjections(view).length > 0;

/** Corrections with what they reached, and objections with their answers. Nothing is deleted: what was, stands beside what is. */
export function amendsPage(view: View): Page {
  const corrections = shownCorrections(view);
  const objections = shownObjections(view);
  const reaches = new Map(shownReaches(view).map((reach) => [reach.correction.id, reach]));
  return {
    kind: 'amends',
    path: amendsPath(view),
    title: titleOf(corrections, [...reaches.values()]),
    description: `Corrections of ${view.series.title}, what they reached, and objections with their answers.`,
    whereabouts: [link(view.base, view.series.title), ' · amends'],
    lead: [
      'What was wrong, since when, who found it and what it moved. Old values stay readable, raw files stay as they are, and every page that a correction reached says so by itself.',
    ],
    banners: [],
    series: view.series.id,
    sections: [
      ...[...corrections].reverse().map((c) => correctionSection(view, c, reaches.get(c.id))),
      ...objections.map((o) => objectionSection(view, o)),
    ],
  };
}

function titleOf(corrections: readonly Correction[], reaches: readonly Reach<Figure>[]): string {
  const changed = reaches.flatMap(({ claims }) => claims);
  const [first] = changed;
  if (corrections.length === 0) return 'No correction so far';
  if (first === undefined) return `${capital(counts(corrections.length, 'correction'))}, and no claim changed its word`;
  const more = changed.length > 1 ? `, and ${counts(changed.length - 1, 'more word')} changed` : '';
  return `${capital(counts(corrections.length, 'correction'))}: ${first.id} was ${first.before} and is ${first.after}${more}`;
}

function correctionSection(view: View, c: Correction, reach: Reach<Figure> | undefined): Section {
  return {
    ...section(
      c.id,
      c.what,
      [
        facts([
          ['Kind', [kindWords[c.kind]]],
          ['Wrong since', [dateWords(c.since)]],
          ['Found', [`${dateWords(c.foundOn)}, by a ${c.foundBy}`]],
          ['Published', [dateWords(c.publishedOn)]],
          ['Cause', [c.cause]],
          c.rule === null ? null : ['From now on', [c.rule]],
          c.changes.length === 0
            ? null
            : ['Read otherwise', listed(c.changes.map((change) => changeSpans(view, change)))],
          ...(reach === undefined ? [] : reachFacts(view, reach)),
        ]),
        c.body.trim() === '' ? null : { kind: 'words', markdown: c.body },
        ...(reach === undefined ? [] : reachBlocks(view, c, reach)),
      ],
      [
        {
          name: 'How it is worked out.',
          text: [
            'The series was reduced and compared once as it was read before, and once as it is read now; what differs is what the correction reached. Nobody lists it by hand.',
          ],
        },
      ],
    ),
    inIndex: c.id,
  };
}

const kindWords: Readonly<Record<Correction['kind'], string>> = {
  input: 'input: something was read or typed wrong',
  calibration: 'calibration: an instrument read wrong',
  method: 'method: figures are worked out otherwise',
  identity: 'identity: something was taken for something else',
  text: 'text: words were wrong, figures were not',
};

function changeSpans(view: View, change: Correction['changes'][number]): Span[] {
  const whose: Span[] =
    change.run !== null
      ? [runLink(view, change.run)]
      : [`instrument ${change.kind === 'channel' ? change.instrument! : ''}`];
  return change.kind === 'field'
    ? [...whose, `, ${change.field}: ${change.write}`]
    : [...whose, `, ${change.channel ?? 'every channel'}: ${change.typed.replace(/^-|(?<= )-/, '−')}`];
}

/** A paper that a client holds does not change by itself: whoever issued it is told here. */
const reportWords = ({ id, client, version, status }: Report): Span[] => [
  strong(id),
  `, issue ${numberText(version, 0)} for ${client}${status === 'draft' ? ', still a draft' : ': a new issue is owed'}`,
];

function reachFacts(view: View, reach: Reach<Figure>) {
  const { claims, runs, figures, intervals } = reach;
  const held = claimsOf(view);
  const reports = reportsReached(view, reach);
  const words = claims.flatMap(({ id, before, after }): Span[][] => {
    const one = held.find(({ claim }) => claim.id === id);
    return one === undefined ? [] : [[link(claimPath(view, one), id), ': ', verdict(before), ' → ', verdict(after)]];
  });
  return [
    ['Claims that changed their word', words.length === 0 ? ['none'] : listed(words)],
    [
      'Runs reached',
      runs.length === 0
        ? ['none']
        : listed(
            runs.map((run) => [runLink(view, run)]),
            ', ',
          ),
    ],
    ...(reports.length === 0 ? [] : [['Client copies reached', listed(reports.map(reportWords))] as const]),
    [
      'Figures that moved',
      [
        `${numberText(figures.length, 0)}${intervals.length === 0 ? '' : `; the intervals of ${numberText(intervals.length, 0)} others moved, and their values did not, since they share a cause with what was corrected`}`,
      ],
    ],
  ] as const;
}

/** The figures that a reader knows and sees move first; the rest in a fold. */
function reachBlocks(view: View, c: Correction, { figures }: Reach<Figure>): Block[] {
  if (figures.length === 0) return [];
  const main = figures.filter((moved) => {
    const [then, now] = thenNow(view, moved);
    return headline.has((moved.after ?? moved.before)!.quantity) && then !== now;
  });
  const rest = figures.filter((figure) => !main.includes(figure));
  const of = (id: string, list: typeof figures): Block =>
    tableBlock(
      id,
      ['wide figure', `number until ${dateWords(c.publishedOn)}`, 'number from then on'],
      list.map((moved) => movedRow(view, moved)),
    );
  return [
    ...(main.length === 0 ? [] : [of(`${c.id}-moved`, main)]),
    ...(rest.length === 0 ? [] : [fold(counts(rest.length, 'more figure'), of(`${c.id}-moved-more`, rest))]),
  ];
}

const headline: ReadonlySet<string> = new Set([
  'final-rise',
  'final-temperature',
  'heat-made',
  'shed',
  'spin-power',
  'bearing-rise',
]);

type Moved = Reach<Figure>['figures'][number];

function movedRow(view: View, { id, before, after }: Moved): TableRow {
  const figure = (after ?? before)!;
  const [then, text] = thenNow(view, { id, before, after });
  const { page, anchor } = workingPath({ id }, view.series.id);
  return row(
    [...subjectSpans(view, figure), `: ${figureWords(figure)}`],
    then,
    view.figureById.has(id) ? { kind: 'figure', to: `${page}#${anchor}`, text, id } : text,
  );
}

/** A figure as it read before, and as it reads. */
function thenNow(view: View, { id, before, after }: Moved): readonly [string, string] {
  const now = view.figureById.get(id) ?? after;
  return [
    before === null ? '—' : wholeOf(before, view.withUs),
    now === null ? 'no longer told' : wholeOf(now, view.withUs),
  ];
}

function objectionSection(view: View, o: Objection): Section {
  return {
    ...section(o.id, `“${o.text}”`, [
      facts([
        ['From', [`a ${o.fromRole}, ${dateWords(o.received)}`]],
        o.about.length === 0
          ? null
          : [
              'About',
              listed(
                o.about.map((id) => [refSpan(view, id)]),
                ', ',
              ),
            ],
        ['State', [stateWords[o.state]]],
        o.answer === null ? null : ['Answer', [o.answer]],
        o.by.length === 0
          ? null
          : [
              'Answered by',
              listed(
                o.by.map((id) => [refSpan(view, id)]),
                ', ',
              ),
            ],
      ]),
      o.body.trim() === '' ? null : { kind: 'words', markdown: o.body },
      o.reply === null ? null : { kind: 'notice', code: 'reply', text: [strong('As it came: '), o.reply] },
    ]),
    inIndex: `${o.id}: ${stateWords[o.state]}`,
  };
}

const stateWords: Readonly<Record<Objection['state'], string>> = {
  open: 'open',
  answered: 'answered',
  'led-to-test': 'led to a test',
  'led-to-correction': 'led to a correction',
};

/** An id of the series as a link to where it stands; what is no id, or is held back, stays a word. */
export function refSpan(view: View, id: string): Span {
  const claim = claimsOf(view).find((held) => held.claim.id === id);
  if (claim !== undefined) return link(claimPath(view, claim), id);
  if (view.runs.some((run) => run.id === id)) return runLink(view, id);
  const article = view.articles.get(id);
  if (article !== undefined) return link(`${view.base}articles/${id}/`, `${id} ${article.name}`);
  if (view.oils.has(id)) return link(`${view.base}oils/${id}/`, id);
  if ([...shownCorrections(view), ...shownObjections(view)].some((one) => one.id === id))
    return link(`${amendsPath(view)}#${id}`, id);
  const part = partsOf(view).find((one) => one.id === id);
  if (part !== undefined) return link(partPath(view, part), `Part ${numberText(part.number, 0)}`);
  const question = view.input.record.questions.find((one) => one.id === id);
  if (question !== undefined) return questionLink(view, question);
  const figure = view.figureById.get(id);
  if (figure === undefined) return id;
  const { page, anchor } = workingPath(figure, view.series.id);
  return { kind: 'figure', to: `${page}#${anchor}`, text: `${plain([id])}: ${wholeOf(figure, view.withUs)}`, id };
}
