import type { Clause } from '../trial/claim.ts';
import type { JudgedClause } from '../trial/compared.ts';
import { claimSection } from './claim-section.ts';
import {
  askedText,
  claimsTitle,
  clauseWords,
  indicativeWords,
  lateWords,
  otherWords,
  pairWords,
  putBy,
} from './claim-words.ts';
import { claimCharts } from './claims-chart.ts';
import { claimPath, claimsOf, claimsPath, clauseFigure, type HeldClaim } from './claims-view.ts';
import { citedValue, doubtOf } from './cite.ts';
import { dateWords } from './dates.ts';
import { numberText } from './digits.ts';
import type { Block, MarginNote, Page, Section, Span, TableRow } from './page.ts';
import { capital, code, counts, countWord, link, listed, plain, row, section, tableBlock, verdict } from './spans.ts';
import { besideTheCells, isLoss } from './supply.ts';
import type { View } from './view.ts';

/** What was said of this series, and what its runs say of that. The words are computed; a page types none. */
export function claimsPage(view: View): Page {
  const held = claimsOf(view);
  const charts = claimCharts(view, held);
  return {
    kind: 'claims',
    path: claimsPath(view),
    title: claimsTitle(held),
    description: `Claims of ${view.series.title}, each with its rule, its date, and the word that its runs give it.`,
    whereabouts: [link(view.base, view.series.title), ' · claims'],
    lead: leadOf(held),
    banners: [],
    series: view.series.id,
    // Names of sections hold a low line, which no id of a claim does.
    sections: [
      section('all_claims', null, [claimsTable(view, held)], [wordsNote(held), lossNote(view, held)]),
      ...(charts.length === 0 ? [] : [section('claims_drawn', 'What was asked and what was found', charts)]),
      ...held.map((one) => claimSection(view, one)),
      ...ownWords(view),
    ],
  };
}

/** Words under the fields of `claims.md`. The fields are not repeated: a claim that is held back stands among them. */
function ownWords(view: View): Section[] {
  const note = view.input.record.claimsNote;
  if (note === null || note.body.trim() === '') return [];
  const words: Block = { kind: 'words', markdown: note.body.trim() };
  return [section('the_note', 'The note', [words], [{ name: 'Note.', text: [code(note.file)] }])];
}

function leadOf(held: readonly HeldClaim[]): Span[] {
  const others = held.length > 1 ? otherWords(held) : [];
  const late = held.filter(({ judged }) => judged.late).length;
  return [
    'Each claim is a sentence with a rule and a day. Its word follows from the rule and the interval of the runs; nobody types it.',
    ...(others.length === 0 ? [] : [' Of the others, ', ...listed(others), '.']),
    late === 0
      ? ' All were put before the first run that they rest on.'
      : ` ${capital(countWord(late))} ${late === 1 ? 'was' : 'were'} put after the data and ${late === 1 ? 'says' : 'say'} so.`,
  ];
}

/** A claim that says several things has a row for each under its own. */
function claimsTable(view: View, held: readonly HeldClaim[]): Block {
  const pairWordsOf = (clause: Clause): string => pairWords(view, clause);
  const clauseWordsOf = (clause: Clause): string => clauseWords(view, clause);
  return tableBlock(
    'claims_table',
    ['wide claim', 'word', 'number found', 'number 95 %', 'asked', 'put'],
    held.flatMap((one): TableRow[] => {
      const { claim, judged } = one;
      const [only] = judged.clauses;
      const sentence: Span[] = [link(claimPath(view, one), claim.id), ` ${claim.sentence}`];
      const inShort = alike(claim.clauses) ? pairWordsOf : clauseWordsOf;
      const day = dateWords(claim.made).replaceAll(' ', '\u00a0');
      const put: Span[] = [
        `${putBy(one)}, ${day}`,
        ...(judged.late ? [', ', verdict(lateWords)] : []),
        ...(judged.indicative.length > 0 ? [', ', verdict(indicativeWords)] : []),
      ];
      if (only !== undefined && judged.clauses.length === 1)
        return [row(sentence, wordSpans(only), ...figureCells(view, only), put)];
      return [
        row(sentence, verdict(judged.word), '', '', '', put),
        ...judged.clauses.map((clause) =>
          row(`– ${inShort(clause.clause)}`, wordSpans(clause), ...figureCells(view, clause), ''),
        ),
      ];
    }),
  );
}

/** Clauses about one quantity under one condition need not name it each time: the sentence does. */
const alike = (clauses: readonly Clause[]): boolean =>
  new Set(clauses.map(({ quantity, at }) => JSON.stringify([quantity, at]))).size === 1;

function figureCells(view: View, { clause }: JudgedClause): readonly Span[][] {
  const figure = clauseFigure(view, clause);
  return [
    figure === undefined ? ['—'] : [citedValue(view, figure)],
    figure === undefined ? ['—'] : [doubtOf(figure)],
    [askedText(clause)],
  ];
}

const wordSpans = ({ word, inFamily }: JudgedClause): Span[] => [
  verdict(word),
  ...(inFamily === null ? [] : [' (as one of a family: ', verdict(inFamily), ')']),
];

const wordsNote = (held: readonly HeldClaim[]): MarginNote => ({
  name: 'The words.',
  text: [
    ...familyWords(held),
    'A claim of several parts is ',
    verdict('shown'),
    ' only where all of them are. ',
    link('words/#claims', 'What each word means'),
    '.',
  ],
});

/** Several claims that were made before their data are judged together as well, so that one in many is not shown by chance. */
function familyWords(held: readonly HeldClaim[]): string[] {
  const early = held.filter(({ judged }) => !judged.late);
  if (early.length < 2) return [];
  const fall = early.filter(({ judged }) => judged.clauses.some(({ inFamily }) => inFamily !== null)).length;
  return [
    `${capital(counts(early.length, 'claim'))} put before the data are also judged together (Holm): ${fall === 0 ? 'every word stands. ' : `${numberText(fall, 0)} would say less, as stands beside the word. `}`,
  ];
}

/** Reach and bearing rise of every cell that a claim about loss names. */
function lossNote(view: View, held: readonly HeldClaim[]): MarginNote | null {
  const clauses = held.flatMap(({ judged }) => judged.clauses).filter(({ clause }) => isLoss(clause.quantity));
  return besideTheCells(
    view,
    clauses.flatMap(({ clause }) => [clause.against, clause.subject]),
  );
}

/** The claims of a series with their words, for its front page. */
export const claimsList = (view: View): Block | null => {
  const held = claimsOf(view);
  if (held.length === 0) return null;
  return {
    kind: 'list',
    items: held.map((one) => [
      link(claimPath(view, one), one.claim.sentence.replace(/[.\s]+$/, '')),
      ': ',
      verdict(one.judged.word),
      ...(one.judged.late ? [' (', verdict(lateWords), ')'] : []),
      '.',
    ]),
  };
};

/**
 * "Before the runs the supplier said: P1 settles at least 5 K lower than P0. The runs say: shown." The first claim in the
 * order of the house that was put before its data and can be told.
 */
export function claimStory(view: View): Span[] | null {
  const held = claimsOf(view);
  const told = held.find(({ judged }) => !judged.late && judged.word !== 'cannot tell');
  if (told === undefined) return null;
  return [
    `Before the runs ${putBy(told)} said: `,
    link(claimPath(view, told), told.claim.sentence.replace(/[.\s]+$/, '')),
    '. By its rule that is ',
    verdict(told.judged.word),
    `. ${claimsTitle(held)}.`,
  ].filter((span) => plain([span]) !== '');
}
