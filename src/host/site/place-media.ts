import { constants } from 'node:fs';
import { copyFile, link, lstat, mkdir, unlink } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { insideSite } from './address.ts';
import type { ShownMedia } from './shown.ts';

/** For preview: the state of each clip that now stands in the site. Kept over rebuilds into the same folder. */
export type ClipMemo = Map<string, string>;

/**
 * Puts the made stills and the users' clips into a fresh site. What is already ours is given a second name where the disk can
 * do that. A user's clip is copied, once: whatever is later done to a site never reaches the raw file; a clip that stands
 * unchanged in the site of before is taken over from there.
 */
export async function placeMedia(
  { stills, clips }: ShownMedia,
  into: { readonly fresh: string; readonly before?: string; readonly memo?: ClipMemo },
): Promise<void> {
  const { fresh, before, memo } = into;
  const at = (address: string) => join(fresh, insideSite(address));
  for (const [address, made] of stills)
    for (const { width, webp, jpeg } of made?.sizes ?? []) {
      await placed(webp, at(`${address}-${width}.webp`));
      await placed(jpeg, at(`${address}-${width}.jpg`));
    }
  for (const [address, { place, state }] of clips) {
    const same = before !== undefined && memo?.get(address) === state;
    if (same && (await placed(join(before, address), at(address)).then(yes, no))) continue;
    await copied(place, at(address));
    memo?.set(address, state);
  }
}

const yes = () => true;
const no = () => false;

/** A copy that shares nothing with its source, or its blocks only until one of the two is written to. */
async function copied(from: string, to: string): Promise<void> {
  const held = `${to}.held`;
  await placed(from, held);
  await copyFile(held, to, constants.COPYFILE_EXCL | constants.COPYFILE_FICLONE);
  await unlink(held);
}

async function placed(from: string, to: string): Promise<void> {
  await mkdir(dirname(to), { recursive: true });
  await link(from, to).catch(() => copyFile(from, to, constants.COPYFILE_EXCL));
  // A file that was swapped for a link since it was looked at is not published.
  if ((await lstat(to)).isFile()) return;
  await unlink(to);
  throw new Error(`${from} became a link while the site was built.`);
}
