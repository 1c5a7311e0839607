import type { Finding } from '../../finding/finding.ts';
import type { Remember } from '../../pipeline.ts';
import type { Audience } from '../../report/input.ts';
import type { SumMemo } from '../disk/book.ts';
import type { StillStore } from '../pictures/stills.ts';
import { buildSite, pageMemo, pictureMemo } from '../site/build.ts';
import { madeFrom } from './make.ts';

export interface Rebuilt {
  /** Pages and files that now stand in the site; null when nothing was written and the pages of before stay. */
  readonly written: number | null;
  readonly findings: readonly Finding[];
  /** Why there is no book here at all, in a sentence. */
  readonly why: string | null;
}

/**
 * Builds the same folder again and again, and does again only what changed: logs, heat-ups, pictures, stills and pages are
 * kept.
 */
export function rebuilder(input: {
  folder: string;
  out: string;
  audience: Audience;
  tell: (what: string) => void;
  store: StillStore;
}): () => Promise<Rebuilt> {
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

export const counted =
  (tell: (what: string) => void) =>
  (done: number, all: number, what: string): void => {
    tell(`${done} of ${all}  ${what}`);
  };

/** Keeps answers from one build to the next; what a build did not ask for is forgotten after it. */
function remembering(): { of: Remember; forget: () => void } {
  let before = new Map<string, unknown>();
  let asked = new Map<string, unknown>();
  return {
    of: <T>(key: string, make: () => T): T => {
      const value = (asked.has(key) ? asked.get(key) : before.has(key) ? before.get(key) : make()) as T;
      asked.set(key, value);
      return value;
    },
    forget: () => {
      before = asked;
      asked = new Map();
    },
  };
}
