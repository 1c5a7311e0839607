import { markOf } from '../../charts/theme.ts';
import type { Block, Chart, MarginNote, Section, Span, Table } from '../../report/page.ts';
import type { Paper } from '../../report/paper.ts';
import type { Drawn } from '../pictures/draw.ts';
import { wordsToNodes } from './words.ts';

/** Plain data for the printer. Words of users are only ever data here, never markup. */
export interface Inline {
  readonly kind: 'text' | 'strong' | 'verdict' | 'code' | 'blank' | 'link' | 'inside' | 'mark';
  readonly text: string;
  /** Of a link: an address of the web; of a place inside: its label. */
  readonly to?: string;
  readonly mark?: MarkNode;
}

/** Outline of a mark inside −1…1; null is a circle. */
interface MarkNode {
  readonly colour: string;
  readonly hollow: boolean;
  readonly points: readonly (readonly [number, number])[] | null;
}

export type Node =
  | { readonly kind: 'prose' | 'name' | 'notice'; readonly text: readonly Inline[] }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Node[])[] }
  | { readonly kind: 'code' | 'formula'; readonly text: string }
  | { readonly kind: 'facts'; readonly rows: readonly { readonly name: string; readonly value: readonly Inline[] }[] }
  | {
      readonly kind: 'table';
      readonly caption: string | null;
      /** Null where a column is as wide as what stands in it. */
      readonly columns: readonly {
        readonly head: string;
        readonly align: 'text' | 'number' | 'wide';
        readonly share: number | null;
      }[];
      readonly rows: readonly { readonly cells: readonly (readonly Inline[])[]; readonly role: string | null }[];
    }
  | {
      readonly kind: 'chart';
      /** Over the whole width, and beside the margin. */
      readonly wide: string;
      readonly narrow: string;
      readonly alternative: string;
      readonly caption: readonly Inline[];
    };

interface SectionNode {
  readonly id: string;
  readonly heading: string | null;
  /** Beside the margin. */
  readonly lead: readonly Node[];
  readonly notes: readonly {
    readonly name: string;
    readonly text: readonly Inline[];
    readonly list: readonly (readonly Inline[])[];
  }[];
  /** Notes that are longer than what they stand beside go under it, in two columns: so many of them stand in the first. */
  readonly under: boolean;
  readonly first: number;
  /** Over the whole width. */
  readonly rest: readonly Node[];
}

export interface PaperNodes extends Omit<Paper, 'front' | 'standing' | 'chapters'> {
  readonly front: readonly { readonly name: string; readonly value: readonly Inline[] }[];
  readonly standing: readonly (readonly Inline[])[];
  readonly chapters: readonly {
    readonly id: string;
    readonly heading: string;
    readonly sections: readonly SectionNode[];
  }[];
}

/** A paper as plain data, with its drawings in it. */
export function nodesOf(paper: Paper, drawingOf: (chart: Chart) => Drawn): PaperNodes {
  const inside = new Set(paper.chapters.flatMap(({ id, sections }) => [id, ...sections.map((one) => one.id)]));
  const inline = (spans: readonly Span[]): Inline[] => spans.map((span) => inlineOf(span, inside));
  const with_ = { inline, drawingOf };
  return {
    ...paper,
    front: paper.front.map(({ name, value }) => ({ name, value: inline(value) })),
    standing: paper.standing.map(inline),
    chapters: paper.chapters.map(({ id, heading, sections }) => ({
      ...{ id, heading },
      sections: sections.map((one) => sectionNode(one, with_)),
    })),
  };
}

interface With {
  readonly inline: (spans: readonly Span[]) => Inline[];
  readonly drawingOf: (chart: Chart) => Drawn;
}

function sectionNode({ id, heading, blocks, margin }: Section, with_: With): SectionNode {
  const nodes = blocks.flatMap((block) => nodeOf(block, with_));
  const notes = margin.map(({ name, text, list = [] }: MarginNote) => ({
    ...{ name, text: with_.inline(text) },
    list: list.map(with_.inline),
  }));
  const first = nodes.findIndex(isWide);
  // a drawing that opens its section stands beside its notes
  const cut = first < 0 ? nodes.length : first === 0 && isSection(blocks[0]!) ? 1 : first;
  const lead = notes.length === 0 ? [] : nodes.slice(0, cut);
  const under = notes.length > 0 && (lead.length === 0 || linesOf(notes, inTheMargin) > linesOf(lead, beside) + 10);
  return {
    id,
    heading,
    lead: under ? [] : lead,
    notes,
    under,
    first: halfOf(notes),
    rest: under ? nodes : nodes.slice(lead.length),
  };
}

const isSection = (block: Block): boolean => block.kind === 'chart' && block.chart.data.kind === 'section';

/** Characters of a line in the margin and beside it, roughly. */
const inTheMargin = 34;
const beside = 78;

/** Lines that some text takes, roughly: names and addresses count with it. */
const linesOf = (things: readonly unknown[], width: number): number =>
  things.reduce<number>((sum, thing) => sum + Math.ceil(textOf(thing).length / width) + 1, 0);

/** How many of them make two columns as even as may be, in their order. */
function halfOf(notes: readonly unknown[]): number {
  const lines = notes.map((note) => linesOf([note], beside / 2));
  const over = (first: number): number =>
    Math.max(...[lines.slice(0, first), lines.slice(first)].map((side) => side.reduce((sum, n) => sum + n, 0)));
  return lines.reduce((best, _, i) => (over(i + 1) < over(best) ? i + 1 : best), 1);
}

const textOf = (thing: unknown): string =>
  typeof thing === 'string'
    ? thing
    : typeof thing !== 'object' || thing === null
      ? ''
      : Object.entries(thing)
          .filter(([key]) => key !== 'kind' && key !== 'to')
          .map(([, value]) => textOf(value))
          .join(' ');

/** Charts and tables of many columns take the margin's room too. */
const isWide = (node: Node): boolean => node.kind === 'chart' || (node.kind === 'table' && node.columns.length > 3);

function nodeOf(block: Block, with_: With): Node[] {
  const { inline, drawingOf } = with_;
  switch (block.kind) {
    case 'prose':
    case 'notice':
      return [{ kind: block.kind, text: inline(block.text) }];
    case 'words':
      return wordsToNodes(block.markdown);
    case 'list':
      return [
        { kind: 'list', ordered: false, items: block.items.map((text) => [{ kind: 'prose', text: inline(text) }]) },
      ];
    case 'table':
      return [tableNode(block.table, inline)];
    case 'chart': {
      const { chart } = block;
      return [
        { kind: 'chart', ...drawingOf(chart), alternative: chart.alternative, caption: inline(captionOf(chart)) },
        tableNode(chart.table, inline),
      ];
    }
    case 'formula':
      return [{ kind: 'formula', text: block.plain }];
    case 'code':
      return [{ kind: 'code', text: block.text }];
    case 'facts':
      return [{ kind: 'facts', rows: block.rows.map(({ name, value }) => ({ name, value: inline(value) })) }];
    case 'fold':
      return [
        { kind: 'name', text: [{ kind: 'text', text: block.summary }] },
        ...block.blocks.flatMap((inner) => nodeOf(inner, with_)),
      ];
    case 'pair':
      return block.sides.flatMap(({ title, blocks }): Node[] => [
        { kind: 'name', text: inline(title) },
        ...blocks.flatMap((inner) => nodeOf(inner, with_)),
      ]);
    // what moves, or works only in a browser, has no place on paper
    case 'stills':
    case 'clip':
    case 'two-clips':
    case 'grading':
    case 'stress':
    case 'own-axle':
    case 'find':
      return [];
  }
}

/** The name of a chart stands in its caption: on paper nobody hears it. */
const captionOf = ({ title, caption }: Chart): readonly Span[] => [
  `${title.charAt(0).toUpperCase()}${title.slice(1)}. `,
  ...caption,
];

const tableNode = ({ caption, columns, rows }: Table, inline: With['inline']): Node => {
  const cells = rows.map((row) => row.cells.map(inline));
  return {
    kind: 'table',
    caption,
    columns: columns.map(({ head, align }, i) => ({
      ...{ head, align },
      share:
        columns.length > roomy
          ? shareOf(
              head,
              cells.map((row) => plainOf(row[i] ?? [])),
            )
          : null,
    })),
    rows: rows.map(({ role }, i) => ({ cells: cells[i]!, role: role ?? null })),
  };
};

/** Up to so many columns each has the room that it asks for. */
const roomy = 4;

const sides = 2;

/** What a column asks for of a crowded table: its longest word, and more where its cells are long. */
function shareOf(head: string, cells: readonly string[]): number {
  const longestOf = (texts: readonly string[]): number =>
    Math.max(...texts.flatMap((text) => text.split(/[ \u2009]/)).map((word) => word.length));
  const whole = Math.max(...cells.map((text) => text.length), 1);
  // heads are half-bold, and a cell has its sides
  return Math.max(longestOf([head]) * 1.15 + sides, longestOf(cells) + sides, Math.sqrt(whole * 14), 4);
}

const plainOf = (text: readonly Inline[]): string => text.map((part) => part.text).join('');

function inlineOf(span: Span, inside: ReadonlySet<string>): Inline {
  if (typeof span === 'string') return { kind: 'text', text: span };
  if (span.kind === 'article') return { kind: 'mark', text: span.text, mark: markNode(span.mark) };
  if (span.kind === 'figure') return { kind: 'text', text: span.text };
  if (span.kind === 'link') {
    if (/^(?:https?|mailto):/i.test(span.to)) return { kind: 'link', text: span.text, to: span.to };
    const [, anchor = ''] = span.to.split('#');
    return inside.has(anchor) ? { kind: 'inside', text: span.text, to: anchor } : { kind: 'text', text: span.text };
  }
  return span;
}

function markNode(index: number): MarkNode {
  const { colour, shape, hollow } = markOf(index);
  const points = shape.includes('A')
    ? null
    : [...shape.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
  return { colour: colour.slice('var('.length, -1), hollow, points };
}
