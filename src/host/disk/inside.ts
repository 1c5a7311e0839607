import { lstatSync, realpathSync } from 'node:fs';
import { join, sep } from 'node:path';

/** Where a file of the book lies on the disk; null when it is not there, is a link, or lies outside by a link above it. */
export function placeInBook(folder: string, path: string): string | null {
  const place = join(folder, path);
  try {
    if (!lstatSync(place).isFile()) return null;
    return realpathSync(place).startsWith(realpathSync(folder) + sep) ? place : null;
  } catch {
    return null;
  }
}
