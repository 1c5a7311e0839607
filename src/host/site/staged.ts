import { existsSync } from 'node:fs';
import { mkdir, readFile, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { isAlive, owned, ownFolder } from '../disk/own-folder.ts';

/**
 * A fresh folder beside `out` that takes its place once it is filled; when that fails, it is gone and `out` is as it was.
 * What is carried over moves from the one to the other as they change places. What a killed build left is put right first.
 */
export async function staged<T>(
  folder: string,
  fill: (fresh: string, out: string) => Promise<T>,
  carried: readonly string[] = [],
): Promise<T> {
  const out = resolve(folder);
  await mkdir(dirname(out), { recursive: true });
  const other = await recovered(out);
  if (other !== null) throw new BuiltByAnother(folder, other);
  if (!(await isOurs(out))) throw new Error(`${out} holds something that is not a site of ours; it is left alone.`);
  const fresh = ownFolder(dirname(out), besideName(out));
  try {
    const filled = await fill(fresh, out);
    await putInPlace(fresh, out, carried);
    return filled;
  } catch (trouble) {
    await rm(fresh, { recursive: true, force: true });
    throw trouble;
  }
}

/** Two builds into one folder would take each other's place. */
export class BuiltByAnother extends Error {
  constructor(folder: string, other: number) {
    super(
      `Another build is at work on ${folder} (process ${String(other)}). Wait until it is done, or write another --out.`,
    );
  }
}

const besideName = (out: string): string => `.${basename(out)}-`;
const beforeOf = (fresh: string): string => `${fresh}-before`;
const listOf = (fresh: string): string => `${fresh}-carried`;

/**
 * Puts right what a build that was killed left beside `folder`: the site of before is put back where it had just been moved
 * away, and the rest is taken away. The process that is at work there, or null.
 */
export async function recovered(folder: string): Promise<number | null> {
  const out = resolve(folder);
  const left = owned(dirname(out), besideName(out)).filter((one) => one.process !== process.pid);
  const stems = new Set(
    left.filter((one) => !isAlive(one.process)).map(({ path }) => path.replace(/-(?:before|carried)$/, '')),
  );
  for (const fresh of stems) {
    if (existsSync(beforeOf(fresh)) && !existsSync(out)) {
      for (const path of await carriedBy(fresh))
        if (existsSync(join(fresh, path)) && !existsSync(join(beforeOf(fresh), path)))
          await rename(join(fresh, path), join(beforeOf(fresh), path));
      await rename(beforeOf(fresh), out);
    }
    for (const path of [fresh, beforeOf(fresh), listOf(fresh)]) await rm(path, { recursive: true, force: true });
  }
  return left.find((one) => isAlive(one.process))?.process ?? null;
}

const carriedBy = async (fresh: string): Promise<readonly string[]> =>
  existsSync(listOf(fresh)) ? (JSON.parse(await readFile(listOf(fresh), 'utf8')) as readonly string[]) : [];

async function putInPlace(fresh: string, out: string, carried: readonly string[]): Promise<void> {
  const before = beforeOf(fresh);
  // for whoever comes after a kill
  if (carried.length > 0) await writeFile(listOf(fresh), JSON.stringify(carried));
  const had = await rename(out, before).then(
    () => true,
    () => false,
  );
  const moved: string[] = [];
  try {
    for (const path of carried) {
      await mkdir(dirname(join(fresh, path)), { recursive: true });
      await rename(join(before, path), join(fresh, path));
      moved.push(path);
    }
    await rename(fresh, out);
  } catch (trouble) {
    for (const path of moved) await rename(join(fresh, path), join(before, path));
    if (had) await rename(before, out);
    throw trouble;
  } finally {
    await rm(listOf(fresh), { force: true });
  }
  await rm(before, { recursive: true, force: true });
}

/** Only a missing or empty folder, or one with our style sheet, is ever replaced; never a file. */
export async function isOurs(out: string): Promise<boolean> {
  const found = await readdir(out).catch((trouble: unknown) => (isMissing(trouble) ? [] : null));
  if (found === null || found.length === 0) return found !== null;
  return (await readdir(join(out, 'assets')).catch((): string[] => [])).includes('site.css');
}

const isMissing = (trouble: unknown): boolean =>
  trouble instanceof Error && 'code' in trouble && trouble.code === 'ENOENT';
