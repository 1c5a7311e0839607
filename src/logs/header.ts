import type { Place } from '../finding/finding.ts';
import { nearest } from '../finding/nearest.ts';
import { unitNamed, type Unit } from '../quantity/units.ts';
import type { Column, ColumnMap } from '../trial/rig.ts';
import { cellsOf, plainName, type Cell } from './cells.ts';
import { dimensionOf } from './channels.ts';
import type { Collector } from './collect.ts';
import { firstLines, placeIn, textOf, type Line, type LogText } from './lines.ts';
import * as say from './texts.ts';
import { unitsRowAfter } from './units-row.ts';

/** A column of the map, found in the file. `number` counts from 1. */
export interface Fitted extends say.Named {
  readonly column: Column;
  /** Null for events. */
  readonly unit: Unit | null;
}

export interface Head {
  readonly line: Line;
  readonly names: readonly string[];
  readonly clock: say.Named;
  readonly fitted: readonly Fitted[];
  /** The first line after the header, and after the units row where there is one. */
  readonly unitsRow: Line | null;
}

/** How far down a header is looked for when it is not on its declared line. */
const deepestHeader = 60;

/** The header line, each column of the map in it, and the units row; null with findings when the rows cannot be read. */
export function readHead(
  given: { readonly text: LogText; readonly map: ColumnMap; readonly mapPlace: Place | null },
  found: Collector,
): Head | null {
  const { text, map } = given;
  const top = firstLines(text.bytes, Math.max(deepestHeader, map.header + 2));
  const line = headerLine(text, map, top, found);
  if (line === null) return null;
  const before = found.errors();
  const cells = namedCells(text, line, map);
  checkNames(text, line, cells, found);
  const clock = located(map.clock.column, { text, line, cells }, found);
  const fitted = map.columns.map((column): Fitted | null => {
    const at = located(column.header, { text, line, cells }, found);
    if (at === null || column.is === 'event') return at && { ...at, column, unit: null };
    const unit = column.unit === null ? null : unitNamed(column.unit, dimensionOf[column.is]);
    const place = given.mapPlace ?? placeIn(text, line);
    if (unit === null) found.add('error', () => say.unitMissing(place, column.header, column.unit));
    return { ...at, column, unit };
  });
  const all = fitted.filter((f) => f !== null);
  if (clock === null || found.errors() > before) return null;
  const head = { line, names: cells.map((cell) => cell.text), clock, fitted: all };
  const next = top.filter((l) => l.line > line.line && l.to > l.from);
  const unitsRow = unitsRowAfter({ text, map, head, lines: next }, found);
  return found.errors() > before ? null : { ...head, unitsRow };
}

function headerLine(text: LogText, map: ColumnMap, top: readonly Line[], found: Collector): Line | null {
  const wanted = [map.clock.column, ...map.columns.map((c) => c.header)];
  const missing = (line: Line): number => {
    const names = namedCells(text, line, map).map((cell) => plainName(cell.text));
    return wanted.filter((name) => !names.includes(plainName(name))).length;
  };
  const declared = top.find((line) => line.line === map.header);
  if (declared !== undefined && missing(declared) === 0) return declared;
  const elsewhere = top.find((line) => missing(line) === 0);
  if (elsewhere !== undefined) {
    found.note(`header found in line ${elsewhere.line}, declared in line ${map.header}`);
    return elsewhere;
  }
  if (declared !== undefined && missing(declared) <= wanted.length / 2) return declared;
  const at = declared ?? top.at(-1) ?? { line: 1, from: 0, to: 0 };
  const other =
    declared && [',', ';', '\t'].find((mark) => partsInto(text, declared, mark, wanted) * 2 > wanted.length);
  const first = top.slice(0, 5).map((line) => textOf(text.bytes, line.from, line.to));
  if (first.length === 0) found.add('error', () => say.tooShort(placeIn(text, at), 0, 1));
  else if (other !== undefined) found.add('error', () => say.delimiterDiffers(placeIn(text, at), map.delimiter, other));
  else found.add('error', () => say.headerNotFound(placeIn(text, at), wanted, first));
  return null;
}

const partsInto = (text: LogText, line: Line, mark: string, wanted: readonly string[]): number => {
  const names = cellsOf(text.bytes, line, mark.charCodeAt(0)).map((cell) => plainName(cell.text));
  return wanted.filter((name) => names.includes(plainName(name))).length;
};

/** The cells of a header; one empty cell at its end is a trailing delimiter, not a column. */
function namedCells(text: LogText, line: Line, map: ColumnMap): Cell[] {
  const cells = cellsOf(text.bytes, line, map.delimiter.charCodeAt(0));
  return cells.length > 1 && cells.at(-1)!.text === '' ? cells.slice(0, -1) : cells;
}

function checkNames(text: LogText, line: Line, cells: readonly Cell[], found: Collector): void {
  const first = new Map<string, say.Named>();
  for (const [at, cell] of cells.entries()) {
    const header = plainName(cell.text);
    const place = (): Place => placeIn(text, line, cell.from, cell.to);
    const named = { number: at + 1, header };
    const earlier = first.get(header);
    const before = at > 0 ? { number: at, header: cells[at - 1]!.text } : null;
    if (header === '') found.add('error', () => say.columnUnnamed(place(), at + 1, before));
    else if (earlier !== undefined) found.add('error', () => say.columnTwice(place(), earlier, named));
    else first.set(header, named);
  }
}

function located(
  wanted: string,
  head: { readonly text: LogText; readonly line: Line; readonly cells: readonly Cell[] },
  found: Collector,
): say.Named | null {
  const names = head.cells.map((cell) => cell.text);
  const exact = names.indexOf(wanted);
  const at = exact >= 0 ? exact : names.findIndex((name) => plainName(name) === plainName(wanted));
  if (at < 0) {
    found.add('error', () => say.columnMissing(placeIn(head.text, head.line), wanted, nearest(wanted, names)));
    return null;
  }
  if (exact < 0)
    found.note(
      `column ${at + 1} ${say.quoted(names[at]!)} taken for ${say.quoted(wanted)}: they differ in odd signs only`,
    );
  return { number: at + 1, header: names[at]! };
}
