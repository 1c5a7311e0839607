import type { SeriesInput } from '../report/input.ts';
import type { Page } from '../report/page.ts';
import { shownReaches } from '../report/amended.ts';
import { isShown } from '../report/share.ts';
import type { View } from '../report/view.ts';
import type { Book } from '../trial/book.ts';
import { citation } from './citation.ts';
import { dataPackage } from './data-package.ts';
import { dataset } from './dataset.ts';
import { feed, feedEntries, type FeedEntry } from './feed.ts';
import type { TextFile } from './files.ts';
import { findFile } from './find-files.ts';
import { flowFiles } from './flow-files.ts';
import { ledgerJson, type Superseded } from './ledger-json.ts';
import { sitemap } from './sitemap.ts';

/** Every text file beside the pages of one series. */
export const seriesFiles = (one: SeriesInput, view: View, pages: readonly Page[]): TextFile[] =>
  isShown(one)
    ? [
        { path: `series/${one.record.series.id}/ledger.json`, text: ledgerJson(one.ledger, supersededOf(view)) },
        ...dataPackage(view),
        citation(view),
        dataset(view),
        ...flowFiles(one),
        findFile(pages, view),
      ]
    : [];

/** What a series hands to the text files of the whole book: what its feed tells, and the pages that it has. */
export interface SeriesListed {
  readonly entries: readonly FeedEntry[];
  readonly pages: readonly Pick<Page, 'kind' | 'path'>[];
}

export const listedOf = (one: SeriesInput, view: View, pages: readonly Page[]): SeriesListed => ({
  entries: isShown(one) ? feedEntries(view) : [],
  pages: pages.map(({ kind, path }) => ({ kind, path })),
});

/** Text files that tell of the book as a whole. */
export const bookFiles = (book: Book, series: readonly SeriesListed[], outside: readonly Page[]): TextFile[] => [
  ...feed(
    book,
    series.flatMap(({ entries }) => entries),
  ),
  ...sitemap(book, [...outside, ...series.flatMap(({ pages }) => pages)]),
  findFile(outside, null),
];

/** Values that corrections put out of use: nothing that was published is deleted. */
const supersededOf = (view: View): Superseded[] =>
  shownReaches(view).flatMap(({ correction, figures }) =>
    figures.flatMap(({ id, before }) =>
      before === null
        ? []
        : [
            {
              id,
              correction: correction.id,
              until: correction.publishedOn,
              value: before.value,
              bound: before.bound,
              interval: before.interval,
              unit: before.unit,
            },
          ],
    ),
  );
