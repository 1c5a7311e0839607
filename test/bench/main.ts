import { cpus, loadavg } from 'node:os';
import { archiveBench } from './archive.ts';
import { axleBench } from './axle.ts';
import { bookBench } from './book.ts';
import type { Measure } from './book.ts';
import { compareBench } from './compare.ts';
import { copyBench } from './copy.ts';
import { killsBench } from './kills.ts';
import { intakeBench } from './intake.ts';

/** What must hold; a figure without one is only told. */
const targets: Readonly<Record<string, { readonly most?: number; readonly least?: number }>> = {
  'demo build, cold': { most: 10 },
  'demo build, peak memory': { most: 600 },
  'demo build after one changed note': { most: 2 },
  'trials and stress table, cold build': { most: 5 },
  'a switch of the stress table, slowest': { most: 50 },
  'own axle in a browser, slowest change': { most: 16 },
  'client copy, set and drawn': { most: 4 },
  'client copy, peak memory': { most: 1000 },
  'log intake, peak memory': { most: 250 },
  'log intake against csv-parse': { least: 2 },
  'mixed sites': { most: 0 },
  'lost inputs': { most: 0 },
  leftovers: { most: 0 },
  'archive of 1000 runs, cold': { most: 120 },
  'archive of 1000 runs, peak memory': { most: 1500 },
  'archive of 1000 runs, after one changed note': { most: 4 },
  'archive of 1000 runs, what Find asks, compressed': { most: 1500 },
  'archive of 1000 runs, slowest answer of Find': { most: 100 },
};

const busy = loadavg()[0]!;
console.log(
  `node ${process.version}, ${cpus().length} processors, ${busy.toFixed(1)} programs waiting for them at the start.`,
);
console.log('Times are those of the clock: on a machine that does other work they are too long, never too short.\n');

const measures: readonly Measure[] = [
  ...(await bookBench()),
  ...compareBench(),
  ...copyBench(),
  ...(await axleBench()),
  ...(await intakeBench()),
  ...(process.argv.includes('--kills') ? await killsBench(200) : []),
  ...(process.argv.includes('--archive') ? await archiveBench() : []),
];
for (const { name, value, unit } of measures) {
  const target = targets[name];
  console.log(
    [name.padEnd(40), `${value}`.padStart(9), unit.padEnd(8), target === undefined ? '' : said(target, value)].join(
      ' ',
    ),
  );
}

function said({ most = Infinity, least = -Infinity }: { most?: number; least?: number }, value: number): string {
  const wanted = most < Infinity ? `at most ${most}` : `at least ${least}`;
  return `${wanted.padEnd(14)} ${value <= most && value >= least ? 'met' : 'MISSED'}`;
}
