import { realpathSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { isOurs } from '../site/staged.ts';

/**
 * Why a site may not be written there, in a sentence; null when it may. A site replaces its whole folder, so it never goes
 * over notes, over a folder above them, or over anything that is not a site of ours.
 */
export async function wrongOut(input: { folder: string; out: string; usual?: string }): Promise<string | null> {
  const folder = truly(input.folder);
  const out = truly(input.out);
  const instead = `Write  --out ${input.usual ?? '_site'}`;
  if (liesIn(folder, out))
    return `${input.out} holds the notes of the book, and the site would take its place. ${instead}.`;
  if (liesIn(out, folder) && !/^_(?:site|cards)/.test(relative(folder, out).split(sep)[0]!))
    return `${input.out} lies among the notes and would be read as a part of the book. ${instead}, or a folder outside the book.`;
  if (!(await isOurs(out)))
    return `${input.out} holds something that is not a site of ours; it is left alone. Write another --out, or empty it yourself.`;
  return null;
}

/** Links followed as far as the folder exists, so that no second name hides what it is. */
function truly(folder: string): string {
  const whole = resolve(folder);
  try {
    return realpathSync(whole);
  } catch {
    return dirname(whole) === whole ? whole : join(truly(dirname(whole)), basename(whole));
  }
}

function liesIn(inner: string, outer: string): boolean {
  const way = relative(outer, inner);
  return way === '' || (way.split(sep)[0] !== '..' && resolve(outer, way) !== way);
}
