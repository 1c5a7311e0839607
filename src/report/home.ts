import { sectionDrawing } from './article-drawing.ts';
import { correctionLink, shownCorrections } from './amended.ts';
import { dateWords } from './dates.ts';
import type { Block, Page, Section, Span } from './page.ts';
import { isOut, partName, partPath, partsOf, statusWords } from './parts-view.ts';
import { claimStory } from './claims.ts';
import { link, listOf, prose, section } from './spans.ts';
import { besideTheLead, standingOneLine } from './series-words.ts';
import { articleSpan } from './cite.ts';
import type { View } from './view.ts';
import type { Book } from '../trial/book.ts';

/** What the front page says of a series: as the first one of the book, and as any other. */
export interface HomeShare {
  readonly title: string;
  readonly lead: readonly Span[];
  readonly first: Section;
  readonly other: Section;
}

export const homeShare = (view: View): HomeShare => ({
  title: view.series.title,
  lead: standingOneLine(view),
  first: seriesSection(view, true),
  other: seriesSection(view, false),
});

/** The front page of the book opens with the question that the reader came for, and what was found. */
export function homePage(book: Book, shares: readonly HomeShare[]): Page {
  const [first] = shares;
  return {
    kind: 'book',
    path: '',
    title: book.hook.trim() === '' ? book.name : book.hook,
    description: `${book.name}: ${shares.map(({ title }) => title).join(', ')}.`,
    whereabouts: [`${book.lab} · ${book.name}`],
    lead: first === undefined ? ['Nothing is published here yet.'] : first.lead,
    banners: [],
    series: null,
    sections: [
      ...shares.map((share, i) => (i === 0 ? share.first : share.other)),
      section('about', 'About these pages', [
        listOf([
          [link('find/', 'Find'), ' what was run, what came of it, and what was never tested.'],
          [link('guide/', 'How to read a page'), ', and how to start a book of your own.'],
          [link('method/', 'How figures are found'), ', with every relation, its source and its checks.'],
          [link('cautions/', 'What to mind at the rig'), ', and whose word counts.'],
          [link('words/', 'The words'), ', each with one meaning.'],
        ]),
      ]),
    ],
  };
}

/** The newest parts and the newest correction: a reader who comes back looks there first. */
function partsBlock(view: View): Block | null {
  const parts = partsOf(view).filter(isOut).reverse();
  const correction = shownCorrections(view).at(-1);
  const items = [
    ...parts
      .slice(0, 3)
      .map((part): Span[] => [link(partPath(view, part), partName(part)), `, ${statusWords(part)}. ${part.summary}`]),
    ...(correction === undefined
      ? []
      : [
          [
            `Corrected on ${dateWords(correction.publishedOn)}: `,
            correctionLink(view, correction.id),
            `. ${correction.what}`,
          ],
        ]),
  ];
  return items.length === 0 ? null : listOf(items);
}

function seriesSection(view: View, first: boolean): Section {
  const { series } = view;
  const baseline = view.articles.get(series.baseline.article);
  const story = claimStory(view);
  const toSeries: Span = link(view.base, series.title);
  const drawing = first && baseline ? sectionDrawing(view, baseline, `section-${series.id}`) : null;
  return section(
    series.id,
    series.title,
    [
      drawing,
      prose(series.question),
      first ? null : prose(...standingOneLine(view)),
      story === null ? null : prose(...story),
      partsBlock(view),
      prose(
        'Read ',
        toSeries,
        ', or go to the ',
        link(`${view.base}standing/`, 'standing'),
        ', the ',
        link(`${view.base}runs/`, 'runs'),
        ' or the ',
        link(`${view.base}ledger/`, 'ledger'),
        '.',
      ),
    ],
    [
      baseline
        ? {
            name: first && drawing !== null ? 'Drawn above.' : 'Compared with.',
            text: [articleSpan(view, baseline.id), ', the baseline of the series.'],
          }
        : null,
      besideTheLead(view),
    ],
  );
}
