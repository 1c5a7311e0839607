import { unitNamed } from '../quantity/units.ts';
import type { ColumnMap } from '../trial/rig.ts';
import { cellsOf, plainName, type Cell } from './cells.ts';
import { dimensionOf } from './channels.ts';
import type { Collector } from './collect.ts';
import type { Fitted, Head } from './header.ts';
import { placeIn, type Line, type LogText } from './lines.ts';
import { readOddCell } from './odd-cell.ts';
import * as say from './texts.ts';

/** The units row below a header, declared or plain to see, checked against the units of the map; null when there is none. */
export function unitsRowAfter(
  given: {
    readonly text: LogText;
    readonly map: ColumnMap;
    readonly head: Omit<Head, 'unitsRow'>;
    readonly lines: readonly Line[];
  },
  found: Collector,
): Line | null {
  const { text, map, head } = given;
  const declared = given.lines.find((line) => line.line === map.unitsRow);
  const line = declared ?? given.lines[0];
  if (line === undefined) return null;
  const cells = cellsOf(text.bytes, line, map.delimiter.charCodeAt(0));
  const claims = head.fitted.filter((f) => f.unit !== null && bare(cells[f.number - 1]) !== '');
  if (declared === undefined && !looksLikeUnits(cells, head, map)) return null;
  checkClock(head, cells, { text, line, map }, found);
  for (const f of claims) checkUnit(f, cells[f.number - 1]!, { text, line, map }, found);
  if (declared === undefined) found.note(`units row found in line ${line.line}`);
  return line;
}

/** No reading in it, and most of what it says below the columns of the map is a unit. */
function looksLikeUnits(cells: readonly Cell[], head: Omit<Head, 'unitsRow'>, map: ColumnMap): boolean {
  const clock = bare(cells[head.clock.number - 1]);
  const said = head.fitted.filter((f) => f.unit !== null).map((f) => bare(cells[f.number - 1]));
  const words = [clock, ...said].filter((text) => text !== '');
  const known = words.filter((text) => unitNamed(text) !== null || text === 'h:mm:ss');
  return words.every((text) => !isReading(text, map)) && known.length > 0 && known.length * 2 >= words.length;
}

interface At {
  readonly text: LogText;
  readonly line: Line;
  readonly map: ColumnMap;
}

function checkClock(head: Omit<Head, 'unitsRow'>, cells: readonly Cell[], at: At, found: Collector): void {
  const cell = cells[head.clock.number - 1];
  const said = bare(cell);
  if (cell === undefined || said === '') return;
  const place = placeIn(at.text, at.line, cell.from, cell.to);
  const unit = at.map.clock.unit;
  const factor = unitNamed(said, 'time')?.factor;
  if (isReading(said, at.map)) found.add('error', () => say.unitsRowWrong(place, head.clock, said));
  else if (factor !== undefined && unit !== 'h:mm:ss' && factor !== unitNamed(unit, 'time')?.factor) {
    found.add('error', () => say.unitContradicted(place, head.clock, said, unit));
  }
}

function checkUnit(f: Fitted, cell: Cell, at: At, found: Collector): void {
  const place = placeIn(at.text, at.line, cell.from, cell.to);
  const said = bare(cell);
  if (isReading(said, at.map)) found.add('error', () => say.unitsRowWrong(place, f, said));
  if (f.unit === null || f.column.is === 'event' || said === f.column.unit || isReading(said, at.map)) return;
  const map = f.unit.name;
  const ofKind = unitNamed(said, dimensionOf[f.column.is]);
  if (ofKind === null && unitNamed(said) === null) found.add('warning', () => say.unitUnread(place, f, said, map));
  else if (ofKind?.factor !== f.unit.factor || ofKind.zero !== f.unit.zero) {
    found.add('error', () => say.unitContradicted(place, f, said, map));
  }
}

/** A unit without the brackets that loggers put round it. */
const bare = (cell: Cell | undefined): string =>
  plainName(cell?.text ?? '')
    .replace(/^[[(](.*)[\])]$/u, '$1')
    .trim();

const isReading = (cell: string, map: ColumnMap): boolean => readOddCell(cell, map).kind === 'number';
