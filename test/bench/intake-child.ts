import { createReadStream, createWriteStream, readFileSync } from 'node:fs';
import { once } from 'node:events';
import { finished } from 'node:stream/promises';
import { CsvError, parse } from 'csv-parse';
import { readLog } from '../../src/logs/log.ts';
import type { ChannelKind, Column, ColumnMap } from '../../src/trial/rig.ts';

const names = ['t_s', 'n_in', 'tq_in', 'n_out', 'tq_l', 'tq_r', 'T_sump', 'T_skin', 'T_pb', 'T_amb', 'u_air', 'note'];
const sump = names.indexOf('T_sump');

async function write(file: string, rows: number): Promise<void> {
  const out = createWriteStream(file);
  const wave = (at: number, period: number): number => Math.sin(at / period) + ((at * 7919) % 101) / 400;
  out.write(`${names.join(',')}\n`);
  for (let at = 0; at < rows; at++) {
    const cells = [
      (at / 100).toFixed(2),
      ...[(1321 + wave(at, 900)).toFixed(3), (158.2 + wave(at, 700)).toFixed(4), (290 + wave(at, 900) / 5).toFixed(4)],
      ...[(361 + wave(at, 500)).toFixed(4), (362 + wave(at, 510)).toFixed(4)],
      ...[(70 + 20 * wave(at, 90_000)).toFixed(4), (60 + 15 * wave(at, 91_000)).toFixed(4)],
      ...[
        (76 + 20 * wave(at, 92_000)).toFixed(4),
        (21 + wave(at, 50_000)).toFixed(4),
        (4 + wave(at, 300) / 20).toFixed(4),
      ],
      at % 1000 === 0 ? '"second look, ""steady"""' : '"-"',
    ];
    if (!out.write(`${cells.join(',')}\n`)) await once(out, 'drain');
  }
  out.end();
  await finished(out);
}

const column = (header: string, is: ChannelKind, unit: string): Column => ({
  ...{ header, is, unit, sign: 1, instrument: null, plausible: null, maxStep: null, stuck_s: null },
});
const map: ColumnMap = {
  ...{
    id: 'bench',
    delimiter: ',',
    decimal: '.',
    thousands: null,
    header: 1,
    unitsRow: null,
    encoding: null,
    missing: [],
  },
  clock: { column: 't_s', unit: 's' },
  columns: [
    column('n_in', 'pinion-speed', 'rpm'),
    column('tq_in', 'torque-in', 'N·m'),
    column('n_out', 'output-speed', 'rpm'),
    column('tq_l', 'torque-out-left', 'N·m'),
    column('tq_r', 'torque-out-right', 'N·m'),
    column('T_sump', 'sump', '°C'),
    column('T_skin', 'skin', '°C'),
    column('T_pb', 'pinion-bearing', '°C'),
    column('T_amb', 'ambient', '°C'),
    column('u_air', 'airflow', 'm/s'),
  ],
};

function ours(file: string): number {
  const read = readLog({ file, bytes: readFileSync(file), sha256: '', map });
  if (!read.ok) throw new Error(JSON.stringify(read.findings[0]));
  return read.value.channels.get('sump')!.reduce((sum, value) => sum + value, 0);
}

/** Strict and streaming into numeric columns; the last one is text. */
async function strictRead(file: string): Promise<number> {
  const columns: number[][] = names.slice(0, -1).map(() => []);
  const parser = createReadStream(file).pipe(parse({ from_line: 2 }));
  for await (const row of parser as AsyncIterable<string[]>) {
    for (const [at, held] of columns.entries()) {
      const value = Number(row[at]);
      if (Number.isNaN(value)) throw new CsvError('CSV_INVALID_ARGUMENT', 'not a number');
      held.push(value);
    }
  }
  return columns[sump]!.reduce((sum, value) => sum + (value + 273.15), 0);
}

const [task, file = '', rows = '0'] = process.argv.slice(2);
if (task === 'write') await write(file, Number(rows));
const begun = performance.now();
const used = process.cpuUsage();
const sum = task === 'ours' ? ours(file) : task === 'csv-parse' ? await strictRead(file) : 0;
const time_s = (performance.now() - begun) / 1000;
const spent = process.cpuUsage(used);
const processor_s = (spent.user + spent.system) / 1e6;
process.stdout.write(JSON.stringify({ time_s, processor_s, peak_MB: process.resourceUsage().maxRSS / 1024, sum }));
