import type { Reading } from '../../../src/finding/finding.ts';
import { readLog } from '../../../src/logs/log.ts';
import type { Log } from '../../../src/trial/log.ts';
import type { ChannelKind, Column, ColumnMap } from '../../../src/trial/rig.ts';

export const column = (header: string, is: ChannelKind, unit: string | null, more: Partial<Column> = {}): Column => ({
  ...{ header, is, unit, sign: 1, instrument: null, plausible: null, maxStep: null, stuck_s: null },
  ...more,
});

export const plainMap: ColumnMap = {
  ...{
    id: 'plain',
    delimiter: ',',
    decimal: '.',
    thousands: null,
    header: 1,
    unitsRow: null,
    encoding: null,
    missing: [],
  },
  clock: { column: 't', unit: 's' },
  columns: [column('n', 'pinion-speed', 'rpm'), column('T', 'sump', '°C')],
};

export const withColumn = (at: number, more: Partial<Column>): ColumnMap => ({
  ...plainMap,
  columns: plainMap.columns.map((c, i) => (i === at ? { ...c, ...more } : c)),
});

/** Rows of clock, pinion speed and sump at 1 Hz, each reading its own. */
export const steadyRows = (count: number, from = 0): string[] =>
  Array.from({ length: count }, (_, i) => `${from + i},${100 + ((from + i) % 7)}.5,${40 + ((from + i) % 5) / 10}`);

export const sheet = (rows: readonly string[], end = '\n'): string => ['t,n,T', ...rows].join(end) + end;

export const read = (content: string | Uint8Array, map: ColumnMap = plainMap): Reading<Log> =>
  readLog({
    file: 'a.csv',
    bytes: typeof content === 'string' ? new TextEncoder().encode(content) : content,
    sha256: '',
    map,
  });

/** What a reading came to, short: `error code line:column` a finding. */
export const foundIn = (reading: Reading<Log>): string[] =>
  reading.findings.map((f) => `${f.level} ${f.code} ${f.place.line}:${f.place.column}`);

export const recordOf = (reading: Reading<Log>): string =>
  reading.ok ? reading.value.record.join('; ') : '(not read)';
export const channelOf = (reading: Reading<Log>, is: ChannelKind): number[] =>
  reading.ok ? [...(reading.value.channels.get(is) ?? [])] : [];
