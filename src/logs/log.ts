import type { Place, Reading } from '../finding/finding.ts';
import { toSI } from '../quantity/units.ts';
import type { Log } from '../trial/log.ts';
import type { ChannelKind, ColumnMap } from '../trial/rig.ts';
import type { Channel } from './channel.ts';
import type { ReadingKind } from './channels.ts';
import { settleClock } from './clock.ts';
import { collector, type Collector } from './collect.ts';
import { decodeLog } from './decode.ts';
import { readHead, type Head } from './header.ts';
import { judgeChannels } from './judge.ts';
import type { LogText } from './lines.ts';
import { readRows, type Table } from './rows.ts';
import { delimiterWord, tooShort } from './texts.ts';
import { judgeTogether } from './together.ts';

export interface LogInput {
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly sha256: string;
  readonly map: ColumnMap;
  /** Where the map stands in its note, for what is wrong with the map. */
  readonly mapPlace?: Place;
  /** Usable rows below which the log is refused; 2 unless said. */
  readonly minimumRows?: number;
}

/** A logger file → channels in SI on one rising clock. A log with an error is not read: no figure is made of half a file. */
export function readLog(input: LogInput): Reading<Log> {
  const found = collector();
  const log = read(input, found);
  const findings = found.findings();
  if (log === null || found.errors() > 0) return { ok: false, findings };
  return { ok: true, value: { ...log, findings, record: found.record() }, findings };
}

function read(input: LogInput, found: Collector): Omit<Log, 'findings' | 'record'> | null {
  const { file, sha256, map } = input;
  const decoded = decodeLog({ file, bytes: input.bytes, encoding: map.encoding }, found);
  if (decoded === null) return null;
  const { text } = decoded;
  const head = readHead({ text, map, mapPlace: input.mapPlace ?? null }, found);
  if (head === null) return null;
  found.note(
    `read with ${delimiterWord(map.delimiter)} between cells and "${map.decimal}" as decimal mark, as declared`,
  );
  const lineEnds = decoded.survey.lf + decoded.survey.crlf + decoded.survey.cr;
  const table = readRows({ text, map, head, lineEnds }, found);
  if (found.errors() > 0) return null;
  const rows = settleClock({ text, map, clock: head.clock, table }, found);
  if (found.errors() > 0) return null;
  const least = input.minimumRows ?? 2;
  if (rows < least) {
    found.add('error', () => tooShort({ file, line: head.line.line, column: 1 }, rows, least));
    return null;
  }
  const channels = channelsOf({ text, map, head, table, rows }, found);
  if (judgeChannels(channels, found) === 'unit in doubt') return null;
  judgeTogether(channels, found);
  const line = table.line.subarray(0, rows);
  const time_s = table.values[head.clock.number - 1]!.subarray(0, rows);
  return {
    ...{ file, sha256, rows, time_s, line },
    channels: new Map<ChannelKind, Float64Array>(channels.map((c) => [c.is, c.value])),
    events: eventsOf(table, time_s, line),
    columnOf: new Map(head.fitted.map((f) => [f.column.is, f.number])),
  };
}

/** Each column of the map that holds anything, in SI, in place. A column that is empty throughout was not fitted in this trial. */
function channelsOf(
  log: {
    readonly text: LogText;
    readonly map: ColumnMap;
    readonly head: Head;
    readonly table: Table;
    readonly rows: number;
  },
  found: Collector,
): Channel[] {
  const { text, map, head, table, rows } = log;
  const time_s = table.values[head.clock.number - 1]!.subarray(0, rows);
  const channels: Channel[] = [];
  const idle: string[] = [];
  for (const { column, unit, number, header } of head.fitted) {
    if (unit === null || column.is === 'event') continue;
    if (table.empty[number - 1]! === table.rows) {
      idle.push(column.is);
      continue;
    }
    const value = table.values[number - 1]!.subarray(0, rows);
    for (let row = 0; row < rows; row++) value[row] = column.sign * toSI(unit, value[row]!);
    const is: ReadingKind = column.is;
    const delimiter = map.delimiter.charCodeAt(0);
    channels.push({
      ...{ is, column, number, header, unit, value, time_s },
      line: table.line,
      start: table.start,
      text,
      delimiter,
    });
  }
  const known = new Set([head.clock.number, ...head.fitted.map((f) => f.number)]);
  const extra = head.names.filter((_, at) => !known.has(at + 1));
  if (extra.length > 0) found.note(`columns not in the map: ${extra.join(', ')}`);
  if (idle.length > 0) found.note(`empty throughout, so not fitted in this trial: ${idle.join(', ')}`);
  return channels;
}

/** Events on the common clock; one that stands in a row that was dropped goes with it. */
function eventsOf(table: Table, time_s: Float64Array, line: Int32Array): Log['events'] {
  const rowOf = new Map<number, number>();
  const wanted = new Set(table.events.map((event) => event.line));
  for (const [row, number] of line.entries()) if (wanted.has(number)) rowOf.set(number, row);
  return table.events.flatMap((event) => {
    const row = rowOf.get(event.line);
    return row === undefined ? [] : [{ time_s: time_s[row]!, line: event.line, text: event.text }];
  });
}
