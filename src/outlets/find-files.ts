import { findPartFile } from '../report/find-page.ts';
import { findSeries } from '../report/find-figures.ts';
import { findTexts } from '../report/find-texts.ts';
import type { SeriesInput } from '../report/input.ts';
import type { Page } from '../report/page.ts';
import { viewOf } from '../report/view.ts';
import type { FindPart } from '../trial/find.ts';
import type { TextFile } from './files.ts';

/**
 * What the page that finds asks of, one script file for each series and one for the pages outside any: a page opened from
 * the disk may load a script, and nothing else. It is written from the pages, so that it tells no more than they do.
 */
export const findFiles = (pages: readonly Page[], series: readonly SeriesInput[]): readonly TextFile[] => [
  {
    path: findPartFile(null),
    text: scriptOf({ texts: findTexts(pages.filter((page) => page.series === null)), series: null }),
  },
  ...series
    .map(viewOf)
    .filter((view) => view.house || view.series.shownTo === 'public')
    .map((view) => ({
      path: findPartFile(view.series.id),
      text: scriptOf({
        texts: findTexts(pages.filter((page) => page.series === view.series.id)),
        series: findSeries(view),
      }),
    })),
];

const scriptOf = (part: FindPart): string =>
  `(self.dipmarkFind=self.dipmarkFind||[]).push(${JSON.stringify(part).replace(/[<\u2028\u2029]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)});\n`;
