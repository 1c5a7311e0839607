import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { readFolder, readMedia } from '../../src/host/disk/book.ts';
import { stillStore } from '../../src/host/pictures/stills.ts';
import { buildSite } from '../../src/host/site/build.ts';
import { shownMedia } from '../../src/host/site/shown.ts';
import { makeBook } from '../../src/pipeline.ts';

const places = [process.env['CHROMIUM'] ?? '', '/usr/bin/chromium', '/usr/bin/chromium-browser'];
export const chromiumPath = places.find((path) => path !== '' && existsSync(path));
if (chromiumPath === undefined) console.log('browser tests of film and grading skipped: no Chromium found');

export const series = 'series/hill-bowl/';
const sheets = ['runs/F-01/', 'runs/F-03/', 'side-by-side/F-01~F-02/', 'grading/'].map((path) => series + path);

/** The note as it lies in the demo, or changed for one test. */
export const noteOf = (run: string, change: (note: string) => string = (note) => note): string =>
  change(readFileSync(`demo-runs/hill-bowl/runs/${run}.md`, 'utf8'));

/** The demo's sheets with clips, with the clips themselves; notes that a test changes take the place of the demo's. */
export async function buildFlowSite(out: string, changed: ReadonlyMap<string, string> = new Map()): Promise<void> {
  const files = readFolder('demo-runs').map((file) => {
    const note = changed.get(file.path);
    return note === undefined ? file : { ...file, bytes: new TextEncoder().encode(note) };
  });
  const media = readMedia('demo-runs');
  const made = makeBook({ files, media, audience: 'house' });
  const pages = made.pages.filter(({ path }) => sheets.includes(path));
  const store = stillStore();
  try {
    const { shown } = await shownMedia({ folder: 'demo-runs', pages, media, store });
    await buildSite({ pages, files: made.files, frame: made.frame!, shown, out });
  } finally {
    store.close();
  }
}

export const onDisk = (out: string, path: string): string => pathToFileURL(join(out, series, path, 'index.html')).href;

/** A window of its own; `said` is what the browser complained of meanwhile. */
export async function inWindow(
  browser: Browser,
  options: BrowserContextOptions,
  use: (page: Page, said: readonly string[]) => Promise<void>,
): Promise<void> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  try {
    await use(page, said);
  } finally {
    await context.close();
  }
}

/** Waits until the first clip of the page can be sent anywhere. */
export const clipLoaded = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => [...document.querySelectorAll('video')].every(({ readyState }) => readyState >= 2));

/** Times of a captions file, s, as they stand on its time lines: read here by hand and not by the code that is tried. */
export const timesIn = (file: string): (readonly [number, number])[] =>
  [...readFileSync(file, 'utf8').matchAll(/^(\d\d):(\d\d):(\d\d\.\d{3}) --> (\d\d):(\d\d):(\d\d\.\d{3})/gm)].map(
    ([, h1, m1, s1, h2, m2, s2]) =>
      [Number(h1) * 3600 + Number(m1) * 60 + Number(s1), Number(h2) * 3600 + Number(m2) * 60 + Number(s2)] as const,
  );

/**
 * Log time of a clip time by hand: film time by the pieces of the note, less what the camera is ahead, which is the film time of
 * the `sync` event in the note less its time in the logger's file.
 */
export function byHand(run: string, note = noteOf(run)): (clip_s: number) => number {
  const log = readFileSync(`demo-runs/hill-bowl/runs/${run}.csv`, 'utf8');
  const seconds = (text: string): number => text.split(':').reduce((sum, part) => sum * 60 + Number(part), 0);
  const sync = seconds(/sync: (\S+)/.exec(note)![1]!);
  const event = Number(
    log
      .split('\n')
      .find((line) => /\bsync\b/.test(line))!
      .split(',')[0],
  );
  const pieces = [...note.matchAll(/\{ clip: (\S+), film: (\S+) \}/g)].map(([, clip, film]) => [
    seconds(clip!),
    seconds(film!),
  ]);
  return (clip_s) => {
    const [clip, film] = pieces.findLast(([from]) => from! <= clip_s)!;
    return clip_s - clip! + film! - (sync - event);
  };
}
