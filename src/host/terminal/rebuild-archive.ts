import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Audience } from '../../report/input.ts';
import { type Found } from '../disk/book.ts';
import { pageMemo } from '../site/build.ts';
import { type ArchiveBuilt, layArchive, manySeries } from './archive.ts';
import { bookNote, type Crew, type OneBuilt } from './one.ts';
import { forgotten } from './spill.ts';

/**
 * Builds a book of many series again and again: a series none of whose files changed is neither read nor made, and its pages
 * are taken over as they stand.
 */
export function archiveRebuilder(of: {
  readonly folder: string;
  readonly out: string;
  readonly audience: Audience;
  readonly tell: (what: string) => void;
  readonly spill: string;
  readonly crew: Crew;
}): (listed: readonly Found[]) => Promise<ArchiveBuilt> {
  const pages = pageMemo();
  let stands: ReadonlyMap<string, { readonly state: string; readonly built: OneBuilt }> = new Map();
  return async (listed) => {
    const folders = manySeries(listed) ?? [];
    const states = new Map(folders.map((series) => [series, stateOf(series, folders, listed)]));
    const same = new Map(
      [...stands].flatMap(([series, { state, built }]) =>
        states.get(series) === state && isThere(of.out, built) ? [[series, built] as const] : [],
      ),
    );
    const settle = (ones: ReadonlyMap<string, OneBuilt>): void => {
      stands = new Map([...ones].map(([series, built]) => [series, { state: states.get(series)!, built }]));
    };
    const forget = (): void => {
      for (const series of folders) if (!same.has(series)) forgotten(of.spill, series);
    };
    const built = await layArchive({ ...of, listed, kept: { same, pages, settle } }).catch((trouble: unknown) => {
      forget();
      throw trouble;
    });
    if (built.written === null) forget();
    return built;
  };
}

/** What a series is made of: its own files, the note of the book, and which other series there are. */
function stateOf(series: string, folders: readonly string[], listed: readonly Found[]): string {
  const own = listed.filter(({ path }) => path === bookNote || path.startsWith(`${series}/`));
  return JSON.stringify([folders, own]);
}

/** A series of which someone took a page away is laid out again. */
const isThere = (out: string, { written }: OneBuilt): boolean => written.every((file) => existsSync(join(out, file)));
