import { createHash } from 'node:crypto';
import { closeSync, constants, lstatSync, openSync, readdirSync, readFileSync, readSync } from 'node:fs';
import { join } from 'node:path';
import type { MediaFile, SourceFile } from '../../trial/series.ts';

/** Folders that are no part of a book, wherever they stand. */
const passedOver = new Set(['node_modules', '_site', 'dist', 'make']);

/** Extensions a book is read from. */
const read = /\.(md|csv|tsv|txt|log|dat|vtt|pins)$/i;

/** Pictures and clips, of kinds that are shown and of kinds that are only named in a finding. */
const media =
  /\.(jpe?g|png|webp|gif|svgz?|heic|heif|avif|jxl|tiff?|bmp|psd|webm|mp4|m4v|mov|mkv|avi|ogv|mpe?g|mts|wmv|3gp|pdf)$/i;

/** Largest file that is read, bytes. */
const most = 400 * 1024 * 1024;
/** Beginning of a picture or clip that is read, and the size up to which the whole is summed, bytes. */
const headBytes = 256 * 1024;
const mostSummed = 64 * 1024 * 1024;

/**
 * Every note and logger file below a folder, by path with `/`; or those of its listed files. Links are not followed and
 * device files not opened: reading stays inside the book. Throws when the folder cannot be read.
 */
export function readFolder(folder: string, listed: readonly Found[] = filesBelow(folder)): SourceFile[] {
  return listed
    .filter(({ path, size }) => size <= most && !isMedia(path) && (read.test(path) || underRuns(path)))
    .map(({ path }) => {
      const bytes = readFileSync(join(folder, path));
      return { path, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
    });
}

/** Sums of files that did not change since they were last read, by path, size and time: for preview. */
export type SumMemo = Map<string, string>;

/** Every picture and clip below a folder: its beginning and its sum, never the whole of it at once. */
export const readMedia = (
  folder: string,
  known: SumMemo = new Map(),
  listed: readonly Found[] = filesBelow(folder),
): MediaFile[] => listed.filter(({ path }) => isMedia(path)).flatMap((file) => mediaFile(folder, file, known) ?? []);

/** A file as it is listed, before anything of it is read. */
export interface Found {
  readonly path: string;
  readonly size: number;
  readonly changed_ms: number;
}

/** Plain files in order of their names; no links, no devices. */
export function filesBelow(folder: string, start = ''): Found[] {
  const found: Found[] = [];
  const walk = (below: string): void => {
    for (const name of readdirSync(join(folder, below)).sort()) {
      if (name.startsWith('.') || /^_(?:site|cards)/.test(name) || passedOver.has(name)) continue;
      const path = below === '' ? name : `${below}/${name}`;
      const stat = lstatSync(join(folder, path));
      if (stat.isDirectory()) walk(path);
      else if (stat.isFile()) found.push({ path, size: stat.size, changed_ms: stat.mtimeMs });
    }
  };
  walk(start);
  return found;
}

/** Whatever lies in `pictures/` was meant as one, so that a finding can say what it is. */
const isMedia = (path: string): boolean => media.test(path) || (/\/pictures\/[^/]+$/.test(path) && !read.test(path));

/** A log may carry any name beside its run. */
const underRuns = (path: string): boolean => /\/runs\/[^/]+$/.test(path);

function mediaFile(folder: string, { path, size, changed_ms }: Found, known: SumMemo): MediaFile | null {
  const file = openOnly(join(folder, path));
  if (file === null) return null;
  try {
    const head = Buffer.alloc(Math.min(size, headBytes));
    const got = head.length === 0 ? 0 : readSync(file, head, 0, head.length, 0);
    const key = `${path} ${size} ${changed_ms}`;
    const sha256 = size > mostSummed ? null : (known.get(key) ?? sumOf(file));
    if (sha256 !== null) known.set(key, sha256);
    return { path, size, head: head.subarray(0, got), sha256 };
  } finally {
    closeSync(file);
  }
}

/** A file that turned into a link or went away since the folder was listed is not there. */
function openOnly(place: string): number | null {
  try {
    return openSync(place, constants.O_RDONLY | constants.O_NOFOLLOW);
  } catch (trouble) {
    if (trouble instanceof Error && 'code' in trouble && (trouble.code === 'ELOOP' || trouble.code === 'ENOENT'))
      return null;
    throw trouble;
  }
}

/** Read piece by piece, so that a film never stands in memory. */
function sumOf(file: number): string {
  const sum = createHash('sha256');
  const piece = Buffer.alloc(1024 * 1024);
  for (let at = 0, got = 1; got > 0; at += got) {
    got = readSync(file, piece, 0, piece.length, at);
    sum.update(piece.subarray(0, got));
  }
  return sum.digest('hex');
}
