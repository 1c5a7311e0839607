import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { inOrder } from '../../finding/finding.ts';
import { makeBook, type Made, type Remember } from '../../pipeline.ts';
import type { Audience } from '../../report/input.ts';
import { readFolder, readMedia, type SumMemo } from '../disk/book.ts';
import type { StillStore } from '../pictures/stills.ts';
import { shownMedia, type ShownMedia } from '../site/shown.ts';

/** A book with its pictures decoded and its clips found. */
export interface MadeWhole extends Made {
  readonly shown: ShownMedia;
}

/**
 * Reads a folder, runs the pipeline and decodes the stills that its pages show, so that check, build and preview find the
 * same; a sentence when the folder is no book at all.
 */
export async function madeFrom(input: {
  folder: string;
  audience: Audience;
  tell: (what: string) => void;
  store: StillStore;
  sums?: SumMemo;
  remember?: Remember;
}): Promise<MadeWhole | string> {
  const { folder, audience, tell, store, sums, remember } = input;
  const wrong = notABook(folder);
  if (wrong !== null) return wrong;
  tell('reading files');
  const media = readMedia(folder, sums);
  const files = readFolder(folder);
  const made = makeBook({ files, media, audience, tell, ...(remember === undefined ? {} : { remember }) });
  const { shown, findings } = await shownMedia({
    folder,
    pages: made.pages,
    media,
    store,
    tell: (done, all) => {
      tell(`${done} of ${all}  stills`);
    },
  });
  return { ...made, shown, findings: inOrder([...made.findings, ...findings]) };
}

/** Why a folder cannot be read as a book, in a sentence; null when it can. */
export function notABook(folder: string): string | null {
  if (!existsSync(folder) || !statSync(folder).isDirectory()) return `There is no folder ${folder}.`;
  return existsSync(join(folder, 'book.md'))
    ? null
    : `${folder} is no book: it has no book.md. Name the folder that holds book.md, or write one (see the guide).`;
}
