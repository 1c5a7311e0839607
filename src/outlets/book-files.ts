import type { SeriesInput } from '../report/input.ts';
import type { Page } from '../report/page.ts';
import { shownReaches } from '../report/amended.ts';
import { viewOf, type View } from '../report/view.ts';
import type { Book } from '../trial/book.ts';
import { citation } from './citation.ts';
import { dataPackage } from './data-package.ts';
import { dataset } from './dataset.ts';
import { feed, feedEntries } from './feed.ts';
import type { TextFile } from './files.ts';
import { findFiles } from './find-files.ts';
import { flowFiles } from './flow-files.ts';
import { ledgerJson, type Superseded } from './ledger-json.ts';
import { sitemap } from './sitemap.ts';

/** Every text file beside the pages of a book. */
export function bookFiles(book: Book, series: readonly SeriesInput[], pages: readonly Page[]): TextFile[] {
  const shown = series.filter((one) => one.audience === 'house' || one.record.series.shownTo === 'public');
  const views = shown.map(viewOf);
  return [
    ...shown.flatMap((one, i) => [
      { path: `series/${one.record.series.id}/ledger.json`, text: ledgerJson(one.ledger, supersededOf(views[i]!)) },
      ...dataPackage(views[i]!),
      citation(views[i]!),
      dataset(views[i]!),
      ...flowFiles(one),
    ]),
    ...feed(book, feedEntries(views)),
    ...sitemap(book, pages),
    ...findFiles(pages, series),
  ];
}

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
