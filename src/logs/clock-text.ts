import type { ColumnMap } from '../trial/rig.ts';
import { cellsOf } from './cells.ts';
import { lineEnd, type LogText } from './lines.ts';
import { readOddCell, type Refusal } from './odd-cell.ts';
import type { Table } from './rows.ts';
import type { Named } from './texts.ts';

/** The rows of one log and the column of its clock. */
export interface Timed {
  readonly text: LogText;
  readonly map: ColumnMap;
  readonly clock: Named;
  readonly table: Table;
}

export type ClockReading =
  | { readonly kind: 'time'; readonly time: number }
  | { readonly kind: 'missing' }
  | { readonly kind: 'date' }
  | { readonly kind: 'form' }
  | { readonly kind: 'refused'; readonly why: Refusal };

/** The clock of one row in the declared form: elapsed s or min, or the time of day h:mm:ss in seconds. */
export function readClock(asFound: string, map: ColumnMap): ClockReading {
  const text = asFound.trim();
  const ofDay = /^(\d{1,3}):([0-5]\d):([0-5]\d)(?:[.,](\d+))?$/u.exec(text);
  const daily = map.clock.unit === 'h:mm:ss';
  if (ofDay !== null && daily) {
    const [, h, min, s, part] = ofDay;
    return { kind: 'time', time: Number(h) * 3600 + Number(min) * 60 + Number(`${s}.${part ?? '0'}`) };
  }
  if (/\d[/-]\d+[/-]\d|^\d+\.\d+\.\d/u.test(text)) return { kind: 'date' };
  const number = readOddCell(asFound, map);
  if (number.kind === 'missing') return { kind: 'missing' };
  if (ofDay !== null || /^\d+:\d\d/u.test(text) || (daily && number.kind === 'number')) return { kind: 'form' };
  return number.kind === 'number' ? { kind: 'time', time: number.value } : { kind: 'refused', why: number.why };
}

/** What the clock of a row says, for a finding. */
export function clockText(log: Timed, row: number): string {
  const { bytes } = log.text;
  const from = log.table.start[row]!;
  const line = { line: log.table.line[row]!, from, to: lineEnd(bytes, from) };
  return cellsOf(bytes, line, log.map.delimiter.charCodeAt(0))[log.clock.number - 1]?.text ?? '';
}
