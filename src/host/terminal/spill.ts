import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import type { SumMemo } from '../disk/book.ts';
import { pageMemo } from '../site/build.ts';
import type { PageMemo } from '../site/kept.ts';
import { type Remembering, remembering } from './remember.ts';

/**
 * For preview of a book of many series: what was worked out of one of them lies on the disk until that series changes, since
 * all of it at once would not fit into memory. The folder is the command's own, and is taken away with it.
 */
export interface SeriesKept {
  readonly remember: Remembering;
  readonly pages: PageMemo;
  readonly sums: SumMemo;
}

interface OnDisk {
  readonly answers: ReadonlyMap<string, unknown>;
  readonly pages: PageMemo;
  readonly sums: SumMemo;
}

export function loaded(folder: string, series: string): SeriesKept {
  const file = fileOf(folder, series);
  if (!existsSync(file)) return { remember: remembering(), pages: pageMemo(), sums: new Map() };
  const { answers, pages, sums } = deserialize(readFileSync(file)) as OnDisk;
  return { remember: remembering(answers), pages, sums };
}

export function spilt(folder: string, series: string, kept: SeriesKept): void {
  const { remember, pages, sums } = kept;
  mkdirSync(folder, { recursive: true });
  // Pages that were not laid out this time are asked for nothing, and their answers are not wanted again.
  const onDisk: OnDisk = { answers: remember.asked(), pages, sums };
  writeFileSync(fileOf(folder, series), serialize(onDisk));
}

/** Of a build that was not put in place nothing is known: its pages are not those that stand there. */
export function forgotten(folder: string, series: string): void {
  rmSync(fileOf(folder, series), { force: true });
}

const fileOf = (folder: string, series: string): string =>
  join(folder, createHash('sha256').update(series).digest('hex'));
