import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { makeBook, type Made, type Remember } from '../../pipeline.ts';
import type { Audience } from '../../report/input.ts';
import { readFolder } from '../disk/book.ts';

/** Reads a folder and runs the pipeline; a sentence when the folder is no book at all. */
export function madeFrom(input: {
  folder: string;
  audience: Audience;
  tell: (what: string) => void;
  remember?: Remember;
}): Made | string {
  const { folder, audience, tell, remember } = input;
  if (!existsSync(folder) || !statSync(folder).isDirectory()) return `There is no folder ${folder}.`;
  if (!existsSync(join(folder, 'book.md')))
    return `${folder} is no book: it has no book.md. Name the folder that holds book.md, or write one (see the guide).`;
  tell('reading files');
  return makeBook({ files: readFolder(folder), audience, tell, ...(remember === undefined ? {} : { remember }) });
}
