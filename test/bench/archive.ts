import { type ChildProcess, fork } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { makeArchive, runsOfOne, seriesName } from './archive-book.ts';
import type { Measure } from './book.ts';
import { slowestAnswer_ms } from './find.ts';

/** Books of so many series, twenty-five runs each: built cold, and built again after one note was saved, as preview does it. */
export async function archiveBench(sizes: readonly number[] = [10, 20, 40]): Promise<readonly Measure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'dipmark-archive-'));
  try {
    const measures: Measure[] = [];
    for (const series of sizes) measures.push(...(await measured(folder, series)));
    return measures;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measured(root: string, series: number): Promise<readonly Measure[]> {
  const [book, out] = [join(root, `book-${String(series)}`), join(root, `site-${String(series)}`)];
  makeArchive(book, series);
  const child = fork(fileURLToPath(new URL('./archive-child.ts', import.meta.url)), [book, out], {
    execArgv: ['--import', 'tsx'],
  });
  const first = await toldBy(child);
  const note = join(book, seriesName(1), 'runs', 'S-07.md');
  writeFileSync(note, `${readFileSync(note, 'utf8')}\nThe gasket was replaced afterwards.\n`);
  child.send('again');
  const again = await toldBy(child);
  child.send('end');
  const answer_ms = await slowestAnswer_ms(out);
  const name = `archive of ${String(series * runsOfOne.length)} runs`;
  return [
    { name: `${name}, cold`, value: Math.round(first.took_s), unit: 's' },
    { name: `${name}, peak memory`, value: Math.round(first.peak_MB), unit: 'MB' },
    { name: `${name}, after one changed note`, value: Number(again.took_s.toFixed(1)), unit: 's' },
    { name: `${name}, what Find asks, compressed`, value: Math.round(findBytes(out) / 1e3), unit: 'kB' },
    ...(answer_ms === null
      ? []
      : [{ name: `${name}, slowest answer of Find`, value: Math.round(answer_ms), unit: 'ms' }]),
  ];
}

export interface Told {
  readonly took_s: number;
  readonly peak_MB: number;
}

const toldBy = (child: ChildProcess): Promise<Told> =>
  new Promise((done, failed) => {
    const ended = (): void => {
      failed(new Error('the build ended before it was done'));
    };
    child.once('exit', ended);
    child.once('message', (told: Told) => {
      child.off('exit', ended);
      done(told);
    });
  });

const findBytes = (out: string): number =>
  ['book.js', ...readdirSync(join(out, 'find', 'series')).map((name) => join('series', name))]
    .map((name) => gzipSync(readFileSync(join(out, 'find', name))).length)
    .reduce((sum, bytes) => sum + bytes, 0);
