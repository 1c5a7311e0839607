import { createHash } from 'node:crypto';
import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SourceFile } from '../../trial/series.ts';

/** Folders that are no part of a book, wherever they stand. */
const passedOver = new Set(['node_modules', '_site', 'dist', 'make']);

/** Extensions a book is read from; pictures and clips are known by name only. */
const read = /\.(md|csv|tsv|txt|log|dat|vtt)$/i;

/** Largest file that is read, bytes. */
const most = 400 * 1024 * 1024;

/**
 * Every note and logger file below a folder, by path with `/`. Links are not followed and device files not opened: reading
 * stays inside the book. Throws when the folder cannot be read.
 */
export function readFolder(folder: string): SourceFile[] {
  const found: SourceFile[] = [];
  const walk = (below: string): void => {
    for (const name of readdirSync(join(folder, below)).sort()) {
      if (name.startsWith('.') || name.startsWith('_site') || passedOver.has(name)) continue;
      const path = below === '' ? name : `${below}/${name}`;
      const stat = lstatSync(join(folder, path));
      if (stat.isDirectory()) walk(path);
      else if (stat.isFile() && stat.size <= most && (read.test(name) || underRuns(path))) {
        const bytes = readFileSync(join(folder, path));
        found.push({ path, bytes, sha256: createHash('sha256').update(bytes).digest('hex') });
      }
    }
  };
  walk('');
  return found;
}

/** A log may carry any name beside its run; pictures and films are left where they are. */
const underRuns = (path: string): boolean =>
  /\/runs\/[^/]+$/.test(path) && !/\.(jpe?g|png|webp|gif|heic|mp4|mov|mkv|avi|pdf)$/i.test(path);
