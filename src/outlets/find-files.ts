import { findPartFile } from '../report/find-page.ts';
import { findSeries } from '../report/find-figures.ts';
import { findTexts } from '../report/find-texts.ts';
import type { Page } from '../report/page.ts';
import type { View } from '../report/view.ts';
import type { FindPart } from '../trial/find.ts';
import type { TextFile } from './files.ts';

/**
 * What the page that finds asks of, one script file for each series and one (null) for the pages outside any: a page opened
 * from the disk may load a script, and nothing else. It is written from the pages, so that it tells no more than they do.
 */
export const findFile = (pages: readonly Page[], view: View | null): TextFile => ({
  path: findPartFile(view?.series.id ?? null),
  text: scriptOf({ texts: findTexts(pages), series: view === null ? null : findSeries(view) }),
});

const scriptOf = (part: FindPart): string =>
  `(self.dipmarkFind=self.dipmarkFind||[]).push(${JSON.stringify(part).replace(/[<\u2028\u2029]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)});\n`;
