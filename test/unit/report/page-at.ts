import { seriesPages } from '../../../src/report/pages.ts';
import type { Block, Page, Section, Span } from '../../../src/report/page.ts';
import { input, type Variation } from './fixture.ts';
import { blocksOf, spansOf, textOf } from './reading.ts';

/** Pages of the fixture, looked up by address below the series; narrow and no-break spaces read as plain ones. */
export function pagesOf(variation: Variation = {}) {
  const pages = seriesPages(input(variation));
  const at = (path: string): Page | undefined => pages.find((page) => page.path === `series/pan/${path}`);
  const page = (path: string): Page => {
    const found = at(path);
    if (found === undefined) throw new Error(`no page at ${path}`);
    return found;
  };
  return { pages, at, page };
}

export const plainSpaces = (text: string): string => text.replace(/[\u00a0\u202f\u2009]/g, ' ');
export const joined = (spans: readonly Span[]): string => plainSpaces(spans.map(textOf).join(''));
export const leadOf = (page: Page): string => joined(page.lead);

export const sectionOf = (page: Page, id: string): Section => {
  const found = page.sections.find((section) => section.id === id);
  if (found === undefined) throw new Error(`no section ${id} on ${page.path}`);
  return found;
};
/** All words of one section, margin and folds too. */
export const wordsIn = (page: Page, id: string): string =>
  plainSpaces(
    spansOf({ ...page, sections: [sectionOf(page, id)], lead: [] })
      .map(textOf)
      .join(''),
  );
export const marginOf = (page: Page, id: string, name: string): string | undefined => {
  const note = sectionOf(page, id).margin.find((each) => each.name === name);
  return note && joined(note.text);
};

/** A table as lines of cells. */
export function rowsOf(page: Page, id: string): string[][] {
  const tables = blocksOf(page).flatMap((block) =>
    block.kind === 'table' ? [block.table] : block.kind === 'chart' ? [block.chart.table] : [],
  );
  const table = tables.find((each) => each.id === id);
  if (table === undefined) throw new Error(`no table ${id} on ${page.path}`);
  return table.rows.map(({ cells }) => cells.map(joined));
}
export const headsOf = (page: Page, id: string): string[] => {
  const block = blocksOf(page).find((each) => each.kind === 'table' && each.table.id === id);
  return block?.kind === 'table' ? block.table.columns.map(({ head }) => plainSpaces(head)) : [];
};
export const firstOf = <K extends Block['kind']>(page: Page, kind: K): Extract<Block, { kind: K }> | undefined =>
  blocksOf(page).find((block): block is Extract<Block, { kind: K }> => block.kind === kind);
