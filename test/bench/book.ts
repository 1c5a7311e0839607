import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { readFolder } from '../../src/host/disk/book.ts';
import { drawChart } from '../../src/host/pictures/draw.ts';
import { stillStore } from '../../src/host/pictures/stills.ts';
import { isDrawn } from '../../src/host/site/blocks.ts';
import { chartsOf } from '../../src/host/site/build.ts';
import { rebuilder } from '../../src/host/terminal/rebuild.ts';
import { makeBook } from '../../src/pipeline.ts';

export interface Measure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
}

const demo = fileURLToPath(new URL('../../demo-runs', import.meta.url));

/** The demo book: built cold by the command, built again after a saved note as preview does it, and its charts drawn. */
export async function bookBench(): Promise<readonly Measure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'dipmark-bench-'));
  try {
    return [...(await cold(join(folder, 'cold'))), await afterOneNote(folder), await charts()];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** In a process of its own, as a user starts it; on its way out it tells its peak. */
async function cold(out: string): Promise<readonly Measure[]> {
  const command = fileURLToPath(new URL('../../dist/host/terminal/main.js', import.meta.url));
  const tellPeak = "process.on('exit',()=>process.stdout.write(String(process.resourceUsage().maxRSS)))";
  const begun = performance.now();
  const { stdout } = await promisify(execFile)(process.execPath, [
    ...['--import', `data:text/javascript,${encodeURIComponent(tellPeak)}`],
    ...[command, 'build', demo, '--out', out],
  ]);
  return [
    { name: 'demo build, cold', value: seconds(begun), unit: 's' },
    { name: 'demo build, peak memory', value: Math.round(Number(stdout) / 1024), unit: 'MB' },
  ];
}

/** Mean of five saves of one spin note, each with another mass of oil poured in. */
async function afterOneNote(folder: string): Promise<Measure> {
  const book = join(folder, 'book');
  cpSync(demo, book, { recursive: true });
  const store = stillStore();
  const tell = () => undefined;
  const rebuild = rebuilder({ folder: book, out: join(folder, 'site'), audience: 'house', tell, store });
  await rebuild();
  const note = join(book, 'hill-bowl', 'runs', 'S-07.md');
  const text = readFileSync(note, 'utf8');
  const saves = [1, 2, 3, 4, 5];
  const changed = saves.map((more) =>
    text.replace(/(mass-in: )(\d+)/, (_, key: string, g: string) => `${key}${Number(g) + more}`),
  );
  const begun = performance.now();
  for (const save of changed) {
    if (save === text) throw new Error('the note did not change');
    writeFileSync(note, save);
    await rebuild();
  }
  store.close();
  return { name: 'demo build after one changed note', value: seconds(begun, saves.length), unit: 's' };
}

/** Every chart of the demo once, for a wide page and a narrow one. */
async function charts(): Promise<Measure> {
  const { pages } = makeBook({ files: readFolder(demo), audience: 'house' });
  const drawn = chartsOf(pages).filter(isDrawn);
  const begun = performance.now();
  for (const chart of drawn) await drawChart(chart);
  const each = (performance.now() - begun) / drawn.length;
  return { name: 'a chart, wide and narrow', value: Number(each.toFixed(1)), unit: 'ms' };
}

const seconds = (begun: number, times = 1): number => Number(((performance.now() - begun) / 1000 / times).toFixed(2));
