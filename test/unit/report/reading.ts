import type { Block, Page, Span, Table } from '../../../src/report/page.ts';

/** Everything that a reader would see of a page, as spans and as texts. */
export function spansOf(page: Page): Span[] {
  return [
    page.title,
    page.description,
    ...page.whereabouts,
    ...page.lead,
    ...page.banners.flatMap(({ text }) => text),
    ...page.sections.flatMap((section) => [
      section.heading ?? '',
      ...section.blocks.flatMap(blockSpans),
      ...section.margin.flatMap(({ name, text, list }) => [name, ...text, ...(list ?? []).flat()]),
    ]),
  ];
}

export const textOf = (span: Span): string => (typeof span === 'string' ? span : span.text);
export const textsOf = (page: Page): string => spansOf(page).map(textOf).join('\n');

export const tablesOf = (page: Page): Table[] => page.sections.flatMap(({ blocks }) => blocks.flatMap(blockTables));

const blockTables = (block: Block): Table[] =>
  block.kind === 'table'
    ? [block.table]
    : block.kind === 'chart'
      ? [block.chart.table]
      : block.kind === 'fold'
        ? block.blocks.flatMap(blockTables)
        : [];

const tableSpans = ({ caption, columns, rows }: Table): Span[] => [
  caption ?? '',
  ...columns.map(({ head }) => head),
  ...rows.flatMap(({ cells }) => cells.flat()),
];

function blockSpans(block: Block): Span[] {
  switch (block.kind) {
    case 'prose':
    case 'notice':
      return [...block.text];
    case 'words':
      return [block.markdown];
    case 'list':
      return block.items.flat();
    case 'table':
      return tableSpans(block.table);
    case 'chart': {
      const { title, alternative, caption, data, table } = block.chart;
      return [title, alternative, ...caption, JSON.stringify(data), ...tableSpans(table)];
    }
    case 'formula':
      return [block.plain, block.latex];
    case 'code':
      return [block.text];
    case 'facts':
      return block.rows.flatMap(({ name, value }) => [name, ...value]);
    case 'fold':
      return [block.summary, ...block.blocks.flatMap(blockSpans)];
    case 'pair':
    case 'stills':
    case 'clip':
    case 'two-clips':
    case 'grading':
      return [];
  }
}
