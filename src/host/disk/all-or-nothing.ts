import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

export interface NewFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes new files below a folder; nothing that is there is touched. When one cannot be written, those that were are taken away
 * again, and so are the folders that were made for them.
 */
export function writeAllNew(folder: string, files: readonly NewFile[]): void {
  const made: string[] = [];
  try {
    for (const { path, content } of files) {
      const to = join(folder, path);
      const first = mkdirSync(dirname(to), { recursive: true });
      if (first !== undefined) made.push(first);
      // a file that is there already is not ours to take away
      writeFileSync(to, '', { flag: 'wx' });
      made.push(to);
      writeFileSync(to, content);
    }
  } catch (trouble) {
    for (const path of made.reverse()) rmSync(path, { recursive: true, force: true });
    throw trouble;
  }
}
