import type { DrawnData } from '../../charts/picture.ts';
import type { Block, Chart, PlanGridData, Span, Table } from '../../report/page.ts';
import type { Drawn } from '../pictures/draw.ts';
import { formulaToHtml } from './formula.ts';
import type { BesideView, ClipFigure, StillFigure } from './media-blocks.ts';
import { clipFigure, gradingData, scriptData, stillFigure } from './media-blocks.ts';
import type { SpansOf, SpanView } from './spans.ts';
import { wordsToHtml } from './words.ts';

/** Blocks as the templates print them: addresses worked out, words and formulas set, pictures drawn. */
export type BlockView =
  | { readonly kind: 'prose'; readonly text: readonly SpanView[] }
  | { readonly kind: 'html'; readonly html: string }
  | { readonly kind: 'list'; readonly items: readonly (readonly SpanView[])[] }
  | { readonly kind: 'table'; readonly table: TableView }
  | { readonly kind: 'chart'; readonly chart: ChartView }
  | { readonly kind: 'formula'; readonly html: string; readonly plain: string }
  | { readonly kind: 'notice'; readonly code: string; readonly text: readonly SpanView[] }
  | { readonly kind: 'code'; readonly language: string | null; readonly text: string }
  | { readonly kind: 'facts'; readonly rows: readonly { readonly name: string; readonly value: readonly SpanView[] }[] }
  | { readonly kind: 'fold'; readonly summary: string; readonly blocks: readonly BlockView[] }
  | { readonly kind: 'pair'; readonly id: string; readonly sides: readonly SideView[] }
  | { readonly kind: 'stills'; readonly items: readonly StillFigure[] }
  | { readonly kind: 'clip'; readonly clip: ClipFigure }
  | { readonly kind: 'two-clips'; readonly id: string; readonly clips: readonly ClipFigure[]; readonly both: boolean }
  | { readonly kind: 'find'; readonly parts: readonly string[] }
  | { readonly kind: 'grading' | 'stress' | 'own-axle'; readonly data: string };

export interface SideView {
  readonly title: readonly SpanView[];
  readonly blocks: readonly BlockView[];
}

export interface TableView {
  readonly id: string;
  readonly caption: string | null;
  /** For the ear, on the box that a wide table is scrolled in. */
  readonly label: string;
  /** Too many columns for a phone: the table is scrolled in its box rather than squeezed. */
  readonly many: boolean;
  readonly columns: readonly { readonly head: string; readonly align: string; readonly unit: string | null }[];
  readonly rows: readonly {
    readonly role: string | null;
    readonly anchor: string | null;
    readonly cells: readonly {
      readonly align: string;
      /** Words alone, which most cells are, are printed without going through the spans. */
      readonly plain: string | null;
      readonly spans: readonly SpanView[];
      readonly bar: number | null;
      /** Short enough never to be broken: a run's name, a date, a verdict. */
      readonly short: boolean;
    }[];
  }[];
}

export interface ChartView {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  readonly pictures: Drawn | null;
  readonly grid: GridView | null;
  readonly caption: readonly SpanView[];
  readonly table: TableView;
}

/** Cells of the plan in words; the strokes of a tally are repeated as often as they count. */
export interface GridView {
  readonly columns: readonly string[];
  readonly rows: readonly {
    readonly label: string;
    readonly cells: readonly ({
      readonly words: string;
      readonly tally: readonly ('done' | 'void' | 'missing')[];
    } | null)[];
  }[];
}

export type PictureOf = (chart: Chart) => Drawn;

/** Languages that the highlighter sets; anything else is printed as it is. */
const highlighted = new Set(['yaml', 'json', 'csv', 'bash', 'markdown', 'javascript', 'typescript', 'html']);

/** Where a block stands and what it is made with. */
export interface BlocksAt {
  /** Address of the page. */
  readonly page: string;
  readonly spans: SpansOf;
  readonly pictureOf: PictureOf;
  readonly beside: BesideView;
  /** One of two columns. */
  readonly half?: true;
}

export function blockView(block: Block, at: BlocksAt): BlockView {
  const { page, spans, pictureOf, beside } = at;
  const inside = (blocks: readonly Block[], where: BlocksAt) => blocks.map((inner) => blockView(inner, where));
  switch (block.kind) {
    case 'prose':
    case 'notice':
      return { ...block, text: spans(block.text) };
    case 'words':
      return { kind: 'html', html: wordsToHtml(block.markdown, mapped(block.refs ?? {}, spans)) };
    case 'list':
      return { kind: 'list', items: block.items.map(spans) };
    case 'table':
      return { kind: 'table', table: tableView(block.table, spans) };
    case 'chart':
      return { kind: 'chart', chart: chartView(block.chart, spans, pictureOf) };
    case 'formula':
      return { kind: 'formula', html: formulaToHtml(block.latex), plain: block.plain };
    case 'code':
      return { kind: 'code', language: highlighted.has(block.language) ? block.language : null, text: block.text };
    case 'facts':
      return { kind: 'facts', rows: block.rows.map(({ name, value }) => ({ name, value: spans(value) })) };
    case 'fold':
      return { ...block, blocks: inside(block.blocks, at) };
    case 'pair':
      return {
        ...block,
        sides: block.sides.map(({ title, blocks }) => ({
          title: spans(title),
          blocks: inside(blocks, { ...at, half: true }),
        })),
      };
    case 'stills': {
      const sizes = at.half !== true && block.items.length === 1 ? '690px' : '480px';
      const where = { page, spans, beside, sizes: `(min-width: 760px) ${sizes}, 94vw` };
      return { kind: 'stills', items: block.items.map((still) => stillFigure(still, where)) };
    }
    case 'clip':
      return { kind: 'clip', clip: clipFigure(block.clip, page, beside) };
    case 'two-clips': {
      const clips = block.clips.map((clip) => clipFigure(clip, page, beside));
      return { kind: 'two-clips', id: block.id, clips, both: clips.every(({ clip }) => clip !== null) };
    }
    case 'stress':
      return { kind: 'stress', data: scriptData(block.stress) };
    case 'find':
      return block;
    case 'own-axle':
      return { kind: 'own-axle', data: scriptData(block.axle) };
    case 'grading':
      return { kind: 'grading', data: gradingData(block.grading, page, beside) };
  }
}

export const tableView = (table: Table, spans: SpansOf): TableView => ({
  id: table.id,
  caption: table.caption,
  label: table.caption ?? `Table: ${table.columns.map(({ head }) => head || 'link').join(', ')}`,
  many: table.columns.length > 4,
  columns: table.columns.map(({ head, align, unit }) => ({ head, align, unit: unit ?? null })),
  rows: table.rows.map((row) => ({
    role: row.role ?? null,
    anchor: row.anchor ?? null,
    cells: row.cells.map((cell, i) => ({
      align: table.columns[i]?.align ?? 'text',
      plain: cell.every((span) => typeof span === 'string') ? cell.join('') : null,
      spans: spans(cell),
      bar: table.columns[i]?.bar === true ? share(cell) : null,
      short: textOf(cell).length <= 13,
    })),
  })),
});

const mapped = (refs: Readonly<Record<string, readonly Span[]>>, spans: SpansOf) =>
  Object.fromEntries(Object.entries(refs).map(([href, of]) => [href, spans(of)]));

/** Length of a bar beside its number, out of 100. */
function share(cell: readonly Span[]): number | null {
  const value = Number.parseFloat(textOf(cell).replace('−', '-').replace('<', ''));
  return Number.isFinite(value) ? Math.min(100, Math.max(0, value)) : null;
}

const textOf = (cell: readonly Span[]): string =>
  cell.map((span) => (typeof span === 'string' ? span : span.text)).join('');

const chartView = (chart: Chart, spans: SpansOf, pictureOf: PictureOf): ChartView => ({
  // Pictures are named apart from sections: a page may well have both a section and a picture called "heat".
  id: `picture-${chart.id}`,
  kind: chart.data.kind,
  title: chart.title,
  pictures: isDrawn(chart) ? pictureOf(chart) : null,
  grid: chart.data.kind === 'plan-grid' ? gridView(chart.data) : null,
  caption: spans(chart.caption),
  table: tableView(chart.table, spans),
});

export const isDrawn = (chart: Chart): chart is Chart & { readonly data: DrawnData } => chart.data.kind !== 'plan-grid';

const gridView = (data: PlanGridData): GridView => ({
  columns: data.columns,
  rows: data.rows.map((row) => ({
    label: row.label,
    cells: data.columns.map((column) => {
      const cell = row.cells.find((each) => each.column === column);
      if (cell === undefined || cell.wanted + cell.done + cell.setAside === 0) return null;
      const missing = Math.max(0, cell.wanted - cell.done);
      const aside = cell.setAside === 0 ? '' : `, ${cell.setAside} set aside`;
      return {
        words: `${cell.done} of ${cell.wanted} done${aside}`,
        tally: [
          ...Array.from({ length: cell.done }, () => 'done' as const),
          ...Array.from({ length: cell.setAside }, () => 'void' as const),
          ...Array.from({ length: missing }, () => 'missing' as const),
        ],
      };
    }),
  })),
});
