import { join } from 'node:path';
import type { Finding } from '../../finding/finding.ts';
import type { Audience } from '../../report/input.ts';
import { filesBelow, type SumMemo } from '../disk/book.ts';
import type { StillStore } from '../pictures/stills.ts';
import { buildSite, pageMemo, pictureMemo } from '../site/build.ts';
import { manySeries } from './archive.ts';
import { crewFor } from './crew.ts';
import { madeFrom, notABook } from './make.ts';
import type { Crew } from './one.ts';
import { archiveRebuilder } from './rebuild-archive.ts';
import { remembering } from './remember.ts';
import { counted } from './say.ts';

export interface Rebuilt {
  /** Pages and files that now stand in the site; null when nothing was written and the pages of before stay. */
  readonly written: number | null;
  readonly findings: readonly Finding[];
  /** Why there is no book here at all, in a sentence. */
  readonly why: string | null;
}

/** Builds again at each call; to be closed when no more calls come. */
export type Rebuilder = (() => Promise<Rebuilt>) & { readonly close: () => Promise<void> };

interface RebuildCall {
  readonly folder: string;
  readonly out: string;
  readonly audience: Audience;
  readonly tell: (what: string) => void;
  readonly store: StillStore;
}

/**
 * Builds the same folder again and again, and does again only what changed: logs, heat-ups, pictures, stills and pages are
 * kept. Of a book of many series those that did not change are not even read.
 */
export function rebuilder(input: RebuildCall): Rebuilder {
  const { folder, audience, tell, store } = input;
  const whole = wholeRebuilder(input);
  let crew: Crew | null = null;
  let archive: ReturnType<typeof archiveRebuilder> | null = null;
  const again = async (): Promise<Rebuilt> => {
    const why = notABook(folder);
    if (why !== null) return { written: null, findings: [], why };
    const listed = filesBelow(folder);
    if (manySeries(listed) === null) return whole();
    const spill = join(store.folder(), 'kept');
    crew ??= crewFor({ folder, audience, spill }, tell);
    archive ??= archiveRebuilder({ ...input, spill, crew });
    return { ...(await archive(listed)), why: null };
  };
  return Object.assign(again, { close: async () => crew?.close() });
}

/** A book of a few series is made as one. */
function wholeRebuilder(input: RebuildCall): () => Promise<Rebuilt> {
  const { folder, out, audience, tell, store } = input;
  const sums: SumMemo = new Map();
  const remember = remembering();
  const memo = pictureMemo();
  const kept = pageMemo();
  return async () => {
    const made = await madeFrom({ folder, audience, tell, store, sums, remember: remember.of });
    if (typeof made === 'string') return { written: null, findings: [], why: made };
    remember.forget();
    const { pages, files, frame, shown, findings } = made;
    if (frame === null) return { written: null, findings, why: null };
    const { written } = await buildSite({ pages, files, frame, shown, out, memo, kept, tell: counted(tell) });
    return { written, findings, why: null };
  };
}
