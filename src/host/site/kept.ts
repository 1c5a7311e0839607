import { createHash } from 'node:crypto';
import { copyFile, mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { SiteFrame } from '../../report/frame.ts';
import type { Page } from '../../report/page.ts';
import { pageFile } from './address.ts';
import type { BesideView } from './media-blocks.ts';
import { besideOf } from './media-blocks.ts';
import type { ClipMemo } from './place-media.ts';
import { everyBlock } from './shown.ts';

/** For preview: what each page and clip that now stands in the site was made of. Kept over rebuilds into the same folder. */
export interface PageMemo {
  readonly pages: Map<string, string>;
  readonly clips: ClipMemo;
}

/** Takes over from the site of before every page whose model did not change, nor what its pictures and clips came to. What is left has to be laid out. */
export async function takenOver(input: {
  readonly pages: readonly Page[];
  readonly frame: SiteFrame;
  readonly beside: BesideView;
  readonly memo: PageMemo['pages'];
  readonly before: string;
  readonly fresh: string;
}): Promise<{ readonly changed: readonly Page[]; readonly now: PageMemo['pages'] }> {
  const { pages, frame, beside, memo, before, fresh } = input;
  const around = JSON.stringify(frame);
  const madeOf = (page: Page): string =>
    hash(around + JSON.stringify([page, page.sections.flatMap(({ blocks }) => besideOf(everyBlock(blocks), beside))]));
  const now = new Map(pages.map((page) => [page.path, madeOf(page)]));
  const changed: Page[] = [];
  for (const page of pages) {
    const file = pageFile(page.path);
    const same = memo.get(page.path) === now.get(page.path);
    if (!same || !(await copied(join(before, file), join(fresh, file)))) changed.push(page);
  }
  return { changed, now };
}

const hash = (text: string): string => createHash('sha256').update(text).digest('hex');

/** A page that someone took away is laid out again. */
async function copied(from: string, to: string): Promise<boolean> {
  await mkdir(dirname(to), { recursive: true });
  return copyFile(from, to).then(
    () => true,
    () => false,
  );
}
