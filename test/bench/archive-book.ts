import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { withoutSamples } from '../scenario/demo.ts';

const demo = fileURLToPath(new URL('../../demo-runs', import.meta.url));

/** Spin of six cells with the baseline coming back, seven heat-ups, one cool-down, two flow trials without a film. */
export const runsOfOne = [
  ...['S-01', 'S-02', 'S-05', 'S-07', 'S-08', 'S-09', 'S-10', 'S-12', 'S-15', 'S-16', 'S-17', 'S-18', 'S-21', 'S-22'],
  ...['S-29', 'H-01', 'H-02', 'H-04', 'H-06', 'H-09', 'H-10', 'H-12', 'C-01', 'F-03', 'F-04'],
];

/**
 * A book of many series on the disk: each has `runs` of the demo's first campaign under an id, a year and a torque of its
 * own, so that no two of them have one log in common. The same call gives the same bytes.
 */
export function makeArchive(folder: string, series: number, runs: readonly string[] = runsOfOne): void {
  mkdirSync(folder, { recursive: true });
  cpSync(join(demo, 'book.md'), join(folder, 'book.md'));
  for (let n = 1; n <= series; n++) makeSeries(folder, n, runs);
}

/** Of the one numbered `n`, from 1. */
export const seriesName = (n: number): string => `bowls-${String(n).padStart(3, '0')}`;

function makeSeries(folder: string, n: number, runs: readonly string[]): void {
  const from = join(demo, 'hill-bowl');
  const to = join(folder, seriesName(n));
  for (const below of ['articles', 'oils', 'runs', 'pictures']) mkdirSync(join(to, below), { recursive: true });
  const note = (path: string, change: (text: string) => string = (text) => text): void => {
    writeFileSync(join(to, path), ofAnotherYear(change(readFileSync(join(from, path), 'utf8')), n % 10));
  };
  note('series.md', (text) =>
    text
      .replace('id: hill-bowl', `id: ${seriesName(n)}`)
      .replace('title: The Hill Bowl Series', `title: Bowls, series ${String(n)}`)
      .replace(/^campaigns:\n(?: .*\n)*/m, ''),
  );
  for (const path of ['rig.md', 'plan.md', 'claims.md']) note(path);
  for (const name of readdirSync(join(from, 'articles'))) if (name !== 'P5.md') note(join('articles', name));
  for (const name of readdirSync(join(from, 'oils'))) note(join('oils', name), withoutSamples);
  const factor = 1 + 0.02 * share(n);
  for (const run of runs) {
    note(join('runs', `${run}.md`));
    const log = readFileSync(join(from, 'runs', `${run}.csv`), 'utf8');
    writeFileSync(join(to, 'runs', `${run}.csv`), withTorque(log, factor));
  }
  for (const name of readdirSync(join(from, 'pictures')))
    if (runs.some((run) => name.startsWith(`${run}-`)))
      cpSync(join(from, 'pictures', name), join(to, 'pictures', name));
}

const ofAnotherYear = (text: string, years: number): string =>
  text.replace(/\b(20\d\d)(?=-\d\d-\d\d)/g, (year) => String(Number(year) - years));

/** Between -1 and 1, the same for the same number: a step of the golden section. */
const share = (n: number): number => 2 * ((n * 0.6180339887498949) % 1) - 1;

/** Input torque is the third column of the demo's logs. */
const withTorque = (log: string, factor: number): string =>
  log.replace(/^(\d[^,\n]*,[^,\n]*,)(-?\d+\.\d+)/gm, (_, before: string, torque: string) => {
    const digits = torque.length - torque.indexOf('.') - 1;
    return `${before}${(Number(torque) * factor).toFixed(digits)}`;
  });
