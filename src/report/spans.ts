import type { Block, MarginNote, Section, Span, Table, TableColumn, TableRow } from './page.ts';

/** Small shapes that every page is laid from. */
export const link = (to: string, text: string): Span => ({ kind: 'link', to, text });
export const strong = (text: string): Span => ({ kind: 'strong', text });
export const verdict = (text: string): Span => ({ kind: 'verdict', text });
export const blank = (text: string): Span => ({ kind: 'blank', text });
export const code = (text: string): Span => ({ kind: 'code', text });

export const prose = (...text: readonly Span[]): Block => ({ kind: 'prose', text });
export const listOf = (items: readonly (readonly Span[])[]): Block => ({ kind: 'list', items });
export const fold = (summary: string, ...blocks: readonly Block[]): Block => ({ kind: 'fold', summary, blocks });
export const facts = (rows: readonly (readonly [string, readonly Span[]] | null)[]): Block => ({
  kind: 'facts',
  rows: rows.filter((row) => row !== null).map(([name, value]) => ({ name, value })),
});

export const section = (
  id: string,
  heading: string | null,
  blocks: readonly (Block | null)[],
  margin: readonly (MarginNote | null)[] = [],
): Section => ({
  id,
  heading,
  blocks: blocks.filter((block) => block !== null),
  margin: margin.filter((note) => note !== null),
});

/** A margin note made of short remarks: one is a sentence behind its name, several are a list. */
export const listNote = (name: string, remarks: readonly string[]): MarginNote => {
  const [only] = remarks;
  return only !== undefined && remarks.length === 1
    ? { name, text: [/[.!?]$/.test(only) ? capital(only) : `${capital(only)}.`] }
    : { name, text: [], list: remarks.map((remark) => [remark]) };
};

/** Columns in short: "wide figure", "number value", "bar share", "class". */
export function table(
  id: string,
  heads: readonly string[],
  rows: readonly TableRow[],
  caption: string | null = null,
): Table {
  return { id, caption, columns: heads.map(column), rows };
}

export const tableBlock = (...of: Parameters<typeof table>): Block => ({ kind: 'table', table: table(...of) });

export const row = (...cells: readonly (Span | readonly Span[])[]): TableRow => ({
  cells: cells.map((cell) => (isList(cell) ? cell : cell === '' ? [] : [cell])),
});

/** "a", "a and b", "a, b and c" */
export function listed(items: readonly (readonly Span[])[], last = ' and '): Span[] {
  return items.flatMap((item, i) => (i === 0 ? item : [i === items.length - 1 ? last : ', ', ...item]));
}

/** The words of a sentence without their links, for the tab, the description and the ear. */
export const plain = (spans: readonly Span[]): string =>
  spans.map((span) => (typeof span === 'string' ? span : span.text)).join('');

const counted = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');
export const countWord = (n: number): string => counted[n] ?? String(n);
export const counts = (n: number, one: string, many = `${one}s`): string => `${countWord(n)} ${n === 1 ? one : many}`;
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const isList = (cell: Span | readonly Span[]): cell is readonly Span[] => Array.isArray(cell);

function column(head: string): TableColumn {
  const [first = '', ...rest] = head.split(' ');
  if (first === 'number' || first === 'wide') return { head: rest.join(' '), align: first };
  if (first === 'bar') return { head: rest.join(' '), align: 'number', bar: true };
  return { head, align: 'text' };
}
