import type { Block, ClipView, MarginNote, Page, Span, Table } from '../../src/report/page.ts';

/** Every text of a page as a reader meets it: titles, prose, tables, captions, alternatives, margin. */
export const wordsOf = (page: Page): string[] => [
  page.title,
  page.description,
  ...[page.whereabouts, page.lead, ...page.banners.map((b) => b.text)].map(said),
  ...page.sections.flatMap((s) => [s.heading ?? '', ...s.blocks.flatMap(ofBlock), ...s.margin.flatMap(ofMargin)]),
];

export const said = (spans: readonly Span[]): string => spans.map((s) => (typeof s === 'string' ? s : s.text)).join('');

const ofMargin = (note: MarginNote): string[] => [note.name, said(note.text), ...(note.list ?? []).map(said)];
const ofTable = (t: Table): string[] => [
  t.caption ?? '',
  ...t.columns.map((c) => `${c.head} ${c.unit ?? ''}`),
  ...t.rows.flatMap((r) => r.cells.map(said)),
];

function ofBlock(block: Block): string[] {
  switch (block.kind) {
    case 'prose':
    case 'notice':
      return [said(block.text)];
    case 'words':
      return [block.markdown];
    case 'list':
      return block.items.map(said);
    case 'table':
      return ofTable(block.table);
    case 'chart':
      return [block.chart.title, block.chart.alternative, said(block.chart.caption), ...ofTable(block.chart.table)];
    case 'formula':
      return [block.plain];
    case 'code':
      return [block.text];
    case 'facts':
      return block.rows.flatMap((r) => [r.name, said(r.value)]);
    case 'fold':
      return [block.summary, ...block.blocks.flatMap(ofBlock)];
    case 'pair':
      return block.sides.flatMap(({ title, blocks }) => [said(title), ...blocks.flatMap(ofBlock)]);
    case 'stills':
      return block.items.flatMap(({ alternative, caption }) => [alternative, said(caption)]);
    case 'find':
      return [];
    case 'clip':
      return ofClip(block.clip);
    case 'two-clips':
      return block.clips.flatMap(ofClip);
    case 'stress':
      return [...block.stress.choices.map(({ text }) => text), ...block.stress.steps.map(({ text }) => text)];
    case 'own-axle':
      return block.axle.fields.flatMap(({ label, hint, choices = [] }) => [label, hint, ...choices.map((c) => c.text)]);
    case 'grading':
      return [
        ...block.grading.clips.map(({ code }) => code),
        ...block.grading.scales.flatMap(({ name, of, anchors }) => [name, of, ...anchors]),
        ...block.grading.views,
      ];
  }
}

const ofClip = ({ title, cues, steps }: ClipView): string[] => [
  title,
  ...cues.map(({ text }) => text),
  ...steps.map(({ name }) => name),
];
