import type { FindText } from '../trial/find.ts';
import type { Block, Page, PageKind, Span } from './page.ts';

/** Kinds that hold no words of their own: they list, work out or repeat what stands elsewhere. */
const passedOver: ReadonlySet<PageKind> = new Set([
  'working',
  'card',
  'cards',
  'ledger',
  'stress',
  'own-axle',
  'grading',
  'grades',
  'side-by-side',
  'find',
  'runs',
  'book',
]);

/** Words of pages, a stretch for each section. Only what stands on a page is found: what a build holds back is in none. */
export const findTexts = (pages: readonly Page[]): readonly FindText[] =>
  pages
    .filter(({ kind }) => !passedOver.has(kind))
    .flatMap((page) => (page.kind === 'run' ? runText(page) : textsOf(page)));

/** A run is found by its title and by what people wrote of it; cautions and findings stand on pages of their own. */
function runText(page: Page): FindText[] {
  const id = page.path.split('/').at(-2) ?? '';
  const own = page.sections.flatMap(({ blocks }) => blocks.flatMap(writtenIn));
  const banners = page.banners.map(({ text }) => plainOf(text));
  return [[page.path, `${id}: ${page.title}`, joined([page.description, ...banners, ...own])]];
}

/** Of sheets that are laid from figures: what people wrote. Its figures are found by their conditions. */
const writtenSections: Readonly<Partial<Record<PageKind, readonly string[]>>> = {
  series: ['note'],
  standing: [],
  article: ['note'],
  oil: ['note', 'samples'],
  rig: ['note'],
  plan: ['note'],
};

function textsOf(page: Page): FindText[] {
  const head: FindText = [page.path, page.title, joined([plainOf(page.lead), page.description])];
  return [
    head,
    ...page.sections.flatMap(({ id, heading, blocks }): FindText[] => {
      if (writtenSections[page.kind]?.includes(id) === false) return [];
      const words = joined(blocks.flatMap(wordsIn));
      if (words === '' && heading === null) return [];
      const title = heading === null ? page.title : `${page.title}: ${heading}`;
      return [[`${page.path}#${id}`, title, words]];
    }),
  ];
}

const writtenIn = (block: Block): readonly string[] => {
  switch (block.kind) {
    case 'words':
      return [block.markdown];
    case 'stills':
      return block.items.flatMap(({ caption, alternative }) => [plainOf(caption), alternative]);
    case 'clip':
      return block.clip.cues.map(({ text }) => text);
    case 'fold':
      return block.blocks.flatMap(writtenIn);
    default:
      return [];
  }
};

const wordsIn = (block: Block): readonly string[] => {
  switch (block.kind) {
    case 'prose':
    case 'notice':
      return [plainOf(block.text)];
    case 'list':
      return block.items.map(plainOf);
    case 'facts':
      return block.rows.flatMap(({ name, value }) => (isWords(plainOf(value)) ? [`${name} ${plainOf(value)}`] : []));
    case 'fold':
      return [block.summary, ...block.blocks.flatMap(wordsIn)];
    case 'pair':
      return block.sides.flatMap(({ title, blocks }) => [plainOf(title), ...blocks.flatMap(wordsIn)]);
    case 'table':
      return [
        block.table.caption ?? '',
        ...block.table.rows.flatMap(({ cells }) => cells.map(plainOf).filter(isWords)),
      ];
    case 'chart':
      return [plainOf(block.chart.caption)];
    case 'formula':
      return [block.plain];
    case 'code':
      return [block.text];
    default:
      return writtenIn(block);
  }
};

/** Figures are found by their conditions, not by their digits. */
const isWords = (text: string): boolean =>
  /\p{L}{3}/u.test(text) && text.replace(/[^\p{L}]/gu, '').length > 0.6 * text.replace(/\s/g, '').length;

const plainOf = (spans: readonly Span[]): string =>
  spans.map((span) => (typeof span === 'string' ? span : span.kind === 'blank' ? '' : span.text)).join('');

const joined = (parts: readonly string[]): string =>
  [...new Set(parts.map((part) => part.replace(/\s+/g, ' ').trim()))].filter((part) => part !== '').join(' · ');
