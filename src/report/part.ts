import type { Part } from '../trial/part.ts';
import { refSpan } from './amends.ts';
import { dateWords } from './dates.ts';
import type { Banner, Block, Page, Section, Span } from './page.ts';
import { refBlock, refSpans } from './part-refs.ts';
import {
  carriedTo,
  isOut,
  movedClaim,
  movedFigure,
  partLink,
  partName,
  partPath,
  partsOf,
  statusWords,
  type Followed,
  type ThenNow,
} from './parts-view.ts';
import { asksPath, questionLink } from './asks-view.ts';
import { figureWords } from './cite.ts';
import { capital, counts, link, listed, listOf, prose, row, section, tableBlock } from './spans.ts';
import { subjectOfId, type View } from './view.ts';

/** One instalment as it was written, its figures as they stood on its day, and beside them what moved since. */
export function partPage(view: View, part: Part): Page {
  const moved = movedIn(view, part);
  return {
    kind: 'part',
    path: partPath(view, part),
    title: partName(part),
    description: part.summary,
    whereabouts: [link(view.base, view.series.title), ` · part ${part.number.toFixed(0)} · ${statusWords(part)}`],
    lead: [part.summary],
    banners: bannersOf(view, part, moved),
    series: view.series.id,
    sections: [
      askedSection(view, part),
      section('words', null, wordBlocks(view, part), [pinnedNote(part)]),
      moved.length === 0 ? null : movedSection(view, part, moved),
      answersSection(view, part),
      aroundSection(view, part),
    ].filter((s) => s !== null),
  };
}

/** Each figure and each word once, in the order in which the part says them. */
export function movedIn(view: View, part: Part): ThenNow[] {
  const seen = new Set<string>();
  return part.refs.flatMap(({ scheme, target }): ThenNow[] => {
    if (seen.has(`${scheme}:${target}`)) return [];
    seen.add(`${scheme}:${target}`);
    if (scheme === 'claim') {
      const moved = movedClaim(view, part, target);
      return moved === null ? [] : [{ ...moved, what: `claim ${target}` }];
    }
    const moved = scheme === 'figure' ? movedFigure(view, part, target) : null;
    const figure = view.figureById.get(target);
    const name =
      figure === undefined ? target : `${subjectOfId(target).replace('~', ' less ')}: ${figureWords(figure)}`;
    return moved === null ? [] : [{ ...moved, what: name }];
  });
}

function bannersOf(view: View, part: Part, moved: readonly ThenNow[]): Banner[] {
  const rewritten = view.input.findings.some(
    ({ code, place }) => code === 'part-rewritten' && place.file === part.file,
  );
  return [
    ...(part.status === 'withdrawn' ? [{ code: 'withdrawn', text: [`Withdrawn: ${part.why ?? ''}`] }] : []),
    ...(isOut(part)
      ? []
      : [
          {
            code: 'draft',
            text: [
              part.status === 'out'
                ? 'Not pinned yet, and so not out: for the house only.'
                : 'A draft: for the house only.',
            ],
          },
        ]),
    ...(rewritten ? [{ code: 'amended', text: ['Words of this part were changed after it came out.'] }] : []),
    ...(moved.length === 0
      ? []
      : [
          {
            code: 'amended',
            text: [
              `${capital(counts(moved.length, 'thing'))} said here ${moved.length === 1 ? 'has' : 'have'} moved since: `,
              link(`${partPath(view, part)}#then-and-now`, 'then and now'),
              '.',
            ],
          },
        ]),
  ];
}

const pinnedNote = (part: Part) =>
  isOut(part)
    ? {
        name: 'Pinned.',
        text: [
          `Figures in these words stand as they were on ${dateWords(part.published!)}, and where today’s differ both are shown. Pictures and tables are drawn from today’s figures.`,
        ],
      }
    : null;

/** Words, and between them the pictures; what is not known to these readers stays the words of its link. */
export function wordBlocks(view: View, part: Part): Block[] {
  const byHref = new Map(part.refs.map((ref) => [ref.href, ref]));
  const refs: Record<string, readonly Span[]> = {};
  for (const ref of part.refs) {
    if (ref.scheme === 'chart' || ref.scheme === 'still') continue;
    refs[ref.href] = refSpans(view, part, ref) ?? [ref.words];
  }
  const pieces = part.body.split(/^[ \t]*(!\[[^\]\n]*\]\((?:chart|still):[^)\s]+\))[ \t]*$/m);
  return pieces.flatMap((piece, i): Block[] => {
    if (piece.trim() === '') return [];
    const ref = i % 2 === 1 ? byHref.get(/\(((?:chart|still):[^)\s]+)\)$/.exec(piece)?.[1] ?? '') : undefined;
    const block = ref === undefined ? null : refBlock(view, ref, i);
    return [block ?? { kind: 'words', markdown: piece, refs }];
  });
}

function movedSection(view: View, part: Part, moved: readonly ThenNow[]): Section {
  return section(
    'then-and-now',
    'Then and now',
    [
      tableBlock(
        'then-now',
        ['wide said of', 'number then', 'number now', 'wide why'],
        moved.map(({ what, then, now, why }) => row(what, then, now ?? 'not told', why)),
      ),
    ],
    [
      {
        name: 'Nothing is rewritten.',
        text: [
          `What Part ${part.number.toFixed(0)} said stays as it was; this table is made by the build, from the pins of that day and the ledger of today. `,
          link(`${view.base}amends/`, 'Amends'),
          ' has the whole of each correction.',
        ],
      },
    ],
  );
}

function askedSection(view: View, part: Part): Section | null {
  const asks = part.asks.flatMap((id) => view.input.record.questions.find((q) => q.id === id) ?? []);
  const carried = carriedTo(view, part).filter(({ question }) => !part.asks.includes(question.id));
  if (asks.length + carried.length === 0) return null;
  const open = ({ question, asked }: Followed): Span[] => [
    questionLink(view, question),
    ` ${question.text}`,
    ...(asked === null ? [] : [' (', partLink(view, asked), ')']),
  ];
  return section('asked', 'What is asked', [
    asks.length === 0 ? null : listOf(asks.map((q) => [questionLink(view, q), ` ${q.text}`])),
    carried.length === 0 ? null : prose('Open since earlier parts:'),
    carried.length === 0 ? null : listOf(carried.map(open)),
  ]);
}

function answersSection(view: View, part: Part): Section | null {
  if (part.answers.length === 0) return null;
  return section('answers', 'What it answers', [
    listOf(
      part.answers.map(({ question: id, by }): Span[] => {
        const asked = view.input.record.questions.find((q) => q.id === id);
        return [
          ...(asked === undefined ? [id] : [questionLink(view, asked), ` ${asked.text}`]),
          ...(by.length === 0
            ? []
            : [
                ' Answered by ',
                ...listed(
                  by.map((ref) => [refSpan(view, ref)]),
                  ', ',
                ),
                '.',
              ]),
        ];
      }),
    ),
  ]);
}

/** The part before and the part after, and what is still open. */
function aroundSection(view: View, part: Part): Section {
  const all = partsOf(view);
  const at = all.findIndex(({ id }) => id === part.id);
  const to = (label: string, other: Part | undefined): Span[][] =>
    other === undefined ? [] : [[`${label}: `, link(partPath(view, other), partName(other)), '.']];
  return section('around', 'Before and after', [
    listOf([
      ...to('Before', all[at - 1]),
      ...to('After', all[at + 1]),
      ['What was asked over the whole series, and what became of it: ', link(asksPath(view), 'asks'), '.'],
    ]),
  ]);
}
