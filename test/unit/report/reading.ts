import type { Block, ClipView, GradingView, Page, Span, Table } from '../../../src/report/page.ts';

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
        : block.kind === 'pair'
          ? block.sides.flatMap(({ blocks }) => blocks.flatMap(blockTables))
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
    case 'find':
      return [];
    case 'code':
      return [block.text];
    case 'facts':
      return block.rows.flatMap(({ name, value }) => [name, ...value]);
    case 'fold':
      return [block.summary, ...block.blocks.flatMap(blockSpans)];
    case 'pair':
      return block.sides.flatMap(({ title, blocks }) => [...title, ...blocks.flatMap(blockSpans)]);
    case 'stills':
      return block.items.flatMap(({ alternative, caption }) => [alternative, ...caption]);
    case 'clip':
      return clipSpans(block.clip);
    case 'two-clips':
      return block.clips.flatMap(clipSpans);
    case 'stress':
      return [
        ...block.stress.choices.map(({ text }) => text),
        ...block.stress.claims,
        ...block.stress.steps.map(({ text }) => text),
        JSON.stringify(block.stress.input),
      ];
    case 'own-axle':
      return block.axle.fields.flatMap(({ label, hint, choices = [] }) => [label, hint, ...choices.map((c) => c.text)]);
    case 'grading':
      return gradingSpans(block.grading);
  }
}

const clipSpans = ({ title, cues, steps }: ClipView): Span[] => [
  title,
  ...cues.map(({ text }) => text),
  ...steps.map(({ name }) => name),
];

const gradingSpans = ({ clips, scales, views }: GradingView): Span[] => [
  ...clips.flatMap(({ code, steps }) => [code, ...steps.map(({ name }) => name)]),
  ...scales.flatMap(({ name, of, anchors }) => [name, of, ...anchors]),
  ...views,
];

/** Every block of a page, those inside folds and pairs too. */
export const blocksOf = (page: Page): Block[] => page.sections.flatMap(({ blocks }) => blocks.flatMap(within));

const within = (block: Block): Block[] => [
  block,
  ...(block.kind === 'fold'
    ? block.blocks.flatMap(within)
    : block.kind === 'pair'
      ? block.sides.flatMap(({ blocks }) => blocks.flatMap(within))
      : []),
];
