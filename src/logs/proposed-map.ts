import type { Finding } from '../finding/finding.ts';
import type { Dimension } from '../quantity/quantity.ts';
import { unitNamed } from '../quantity/units.ts';
import { channelDimension, type ChannelKind, type ColumnMap } from '../trial/rig.ts';
import { cellsOf, plainName } from './cells.ts';
import { channelWords } from './channel-words.ts';
import { collector } from './collect.ts';
import { decodeLog } from './decode.ts';
import { firstLines } from './lines.ts';

/** What a column of a strange logger file may hold. A null is what the file does not say and a person has to. */
export interface ProposedColumn {
  readonly header: string;
  readonly is: ChannelKind | null;
  /** Name in the units table, as the file writes it. */
  readonly unit: string | null;
  /** Least and greatest reading among the first lines, as typed; null where it holds no numbers. */
  readonly range: readonly [number, number] | null;
}

export interface ProposedMap extends Pick<ColumnMap, 'delimiter' | 'decimal' | 'header' | 'unitsRow'> {
  /** Null where no column looks like a time. */
  readonly clock: { readonly column: string; readonly unit: ColumnMap['clock']['unit'] | null } | null;
  readonly columns: readonly ProposedColumn[];
}

/**
 * How a logger file may be read, from its first lines: cells, decimal mark, header, units and what each column is by its name.
 * Nothing is taken from the size of a number; two columns that could be the same thing are both left to a person. Common
 * practice, no source.
 */
export function proposedMap(file: string, bytes: Uint8Array): ProposedMap | readonly Finding[] {
  const found = collector();
  const decoded = decodeLog({ file, bytes, encoding: null }, found);
  if (decoded === null) return found.findings();
  const { text } = decoded;
  const lines = firstLines(text.bytes, looked).filter(({ from, to }) => to > from);
  const tables = marks.map((delimiter) => ({
    delimiter,
    rows: lines.map((line) => ({
      line: line.line,
      cells: cellsOf(text.bytes, line, delimiter.charCodeAt(0)).map((cell) => plainName(cell.text)),
    })),
  }));
  const best = tables.map((table) => ({ ...table, width: widthOf(table.rows) })).sort((a, b) => b.width - a.width)[0]!;
  const { delimiter, rows, width } = best;
  const decimal = decimalOf(rows, delimiter);
  const first = rows.findIndex(({ cells }) => cells.length === width && isReadings(cells, decimal));
  const heads = rows.slice(0, Math.max(first, 0)).filter(({ cells }) => cells.length === width);
  if (width < 2 || first < 1 || heads.length === 0) return [noTable(file)];
  const units = heads.length > 1 && isUnits(heads.at(-1)!.cells) ? heads.at(-1)! : null;
  const head = (units === null ? heads.at(-1) : heads.at(-2))!;
  const readings = rows.slice(first).filter(({ cells }) => cells.length === width);
  const columns = head.cells.map((header, at) =>
    columnOf(header, units?.cells[at], { decimal, cells: readings.map(({ cells }) => cells[at]!) }),
  );
  const clockAt = columns.findIndex(({ header }) => looksLikeTime(header));
  const clock =
    clockAt < 0
      ? null
      : { column: head.cells[clockAt]!, unit: clockUnit(columns[clockAt]!, readings[0]!.cells[clockAt]!) };
  return {
    ...{ delimiter, decimal, header: head.line, unitsRow: units?.line ?? null, clock },
    columns: unlikeOnes(columns.filter((_, at) => at !== clockAt && head.cells[at] !== '')),
  };
}

/** Lines that are looked at. */
const looked = 200;
const marks = ['\t', ';', ','] as const;

interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

/** How many cells most of the lines have. */
function widthOf(rows: readonly Row[]): number {
  const counts = new Map<number, number>();
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0] ?? 0;
}

const decimalOf = (rows: readonly Row[], delimiter: string): '.' | ',' => {
  const cells = rows.flatMap((row) => row.cells);
  const commas = cells.filter((cell) => /^[-+]?\d+,\d+$/.test(cell)).length;
  return delimiter !== ',' && commas > cells.filter((cell) => /^[-+]?\d+\.\d+$/.test(cell)).length ? ',' : '.';
};

const numberOf = (cell: string, decimal: '.' | ','): number | null =>
  /^[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[-+]?\d+)?$/i.test(cell)
    ? Number(decimal === ',' ? cell.replace(',', '.') : cell)
    : null;

const isReadings = (cells: readonly string[], decimal: '.' | ','): boolean =>
  cells.filter((cell) => numberOf(cell, decimal) !== null || /^\d+:\d\d/.test(cell)).length * 2 >=
    cells.filter((cell) => cell !== '').length && cells.some((cell) => numberOf(cell, decimal) !== null);

const bare = (cell: string): string => cell.replace(/^[[(](.*)[\])]$/u, '$1').trim();
const isUnits = (cells: readonly string[]): boolean => {
  const said = cells.map(bare).filter((cell) => cell !== '' && cell !== '-');
  return said.filter((cell) => unitNamed(cell) !== null).length * 2 > said.length;
};

function columnOf(
  header: string,
  unitCell: string | undefined,
  read: { readonly decimal: '.' | ','; readonly cells: readonly string[] },
): ProposedColumn {
  const numbers = read.cells.flatMap((cell) => numberOf(cell, read.decimal) ?? []);
  const [, inside] = /[[(]([^\])]+)[\])]\s*$/.exec(header) ?? [];
  const [, last] = /[\s_/,]([^\s_/,]+)$/.exec(header) ?? [];
  const is = channelWords(header);
  const reading = is === null || is === 'event' ? undefined : channelDimension[is];
  const said = [unitCell === undefined ? undefined : bare(unitCell), inside].find((word) => isUnit(word));
  // a bare word at the end, as in n_rpm, is a unit only where it is one of what the column is
  const unit = said ?? (reading !== undefined && isUnit(last, reading) ? last : undefined);
  const fits = reading === undefined || unit === undefined || isUnit(unit, reading);
  return {
    header,
    is: fits ? is : null,
    unit: unit ?? null,
    range:
      numbers.length === 0
        ? null
        : [numbers.reduce((a, b) => Math.min(a, b)), numbers.reduce((a, b) => Math.max(a, b))],
  };
}

/** T_sump is a temperature, t_s a time: a lone letter counts only where no other word follows but a unit of time. */
const looksLikeTime = (header: string): boolean =>
  /^(?:time|elapsed|clock|seconds?|timestamp)(?![a-z])/i.test(header) ||
  /^t(?:[\s_]*[[(]?(?:s|sec|min|h)[\])]?)?$/.test(header);

const isUnit = (word: string | undefined, of?: Dimension): word is string =>
  word !== undefined && word !== '' && unitNamed(word, of) !== null;

const clockUnit = ({ header, unit }: ProposedColumn, first: string): ColumnMap['clock']['unit'] | null =>
  /^\d+:\d\d:\d\d/.test(first)
    ? 'h:mm:ss'
    : unit === 's' || unit === 'min'
      ? unit
      : /[\s_]s$/.test(header)
        ? 's'
        : /[\s_]min$/.test(header)
          ? 'min'
          : null;

/** Two columns by one name of a channel: which of them is meant is not for a file to say. */
const unlikeOnes = (columns: readonly ProposedColumn[]): readonly ProposedColumn[] =>
  columns.map((column) =>
    column.is !== null && columns.filter(({ is }) => is === column.is).length > 1 ? { ...column, is: null } : column,
  );

const noTable = (file: string): Finding => ({
  code: 'log-no-table',
  level: 'error',
  place: { file, line: 1, column: 1 },
  says: `No table was found in the first ${looked.toFixed(0)} lines.`,
  why: 'A column map needs a line of names and lines of readings under it, parted by a tab, a semicolon or a comma.',
  write: 'Write the file anew from the logger as such a table, or write the map by hand (see the guide).',
});
