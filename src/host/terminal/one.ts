import { join } from 'node:path';
import type { Finding } from '../../finding/finding.ts';
import { readBook } from '../../notes/book.ts';
import { type BookShare, makeSeries } from '../../one-series.ts';
import type { Audience } from '../../report/input.ts';
import { frameOf } from '../../report/site-frame.ts';
import { filesBelow, readFolder, readMedia } from '../disk/book.ts';
import { stillStore, type StillStore } from '../pictures/stills.ts';
import { pageFile } from '../site/address.ts';
import type { PictureMemo } from '../pictures/draw.ts';
import { layInto, pictureMemo } from '../site/build.ts';
import { shownMedia } from '../site/shown.ts';
import { loaded, spilt } from './spill.ts';
import { counted } from './say.ts';

/** What all series of a book are built with. Plain data: it goes to another thread. */
export interface BuiltWith {
  readonly folder: string;
  readonly audience: Audience;
  /** Where what was worked out of each series is kept for the next build; null where there will be none. */
  readonly spill: string | null;
}

/** One series to be built. */
export interface Job {
  readonly series: string;
  /** Every folder of the book that holds a series. */
  readonly folders: readonly string[];
  /** The site that is being laid out, and the one of before. */
  readonly fresh: string;
  readonly before: string;
}

/** What is left of a series when its pages are written. Plain data: it comes back from another thread. */
export interface OneBuilt {
  /** Null where it is left out or held back. */
  readonly share: BookShare | null;
  readonly findings: readonly Finding[];
  readonly undecoded: readonly string[];
  /** Its pages and text files, as files of the site. */
  readonly written: readonly string[];
}

/** Those who build series: `hands` of them at a time. */
export interface Crew {
  readonly hands: number;
  readonly build: (job: Job) => Promise<OneBuilt>;
  readonly close: () => Promise<void>;
}

export const bookNote = 'book.md';

/** Reads one series from the disk, makes it, and lays its pages into the site. Nothing else of the book is held meanwhile. */
export async function buildOne(
  on: BuiltWith,
  job: Job,
  how: { readonly store: StillStore; readonly pictures: PictureMemo; readonly tell: (what: string) => void },
): Promise<OneBuilt> {
  const { folder, audience } = on;
  const { series, folders, fresh, before } = job;
  const { store, pictures, tell } = how;
  const kept = on.spill === null ? null : loaded(on.spill, series);
  const listed = filesBelow(folder, series);
  const note = readFolder(folder, [{ path: bookNote, size: 0, changed_ms: 0 }]);
  const { book } = readBook(note);
  if (book === null) throw new Error(`${join(folder, bookNote)} was there a moment ago.`);
  const media = readMedia(folder, kept?.sums, listed);
  const { made, findings } = makeSeries({
    ...{ files: [...note, ...readFolder(folder, listed)], media, book, folder: series, folders, audience, tell },
    ...(kept === null ? {} : { remember: kept.remember.of }),
  });
  if (made === null) return { share: null, findings, undecoded: [], written: [] };
  const { pages, files, share } = made;
  const { shown, undecoded, findings: ofStills } = await shownMedia({ folder, pages, media, store });
  const frame = frameOf({ book, shares: [share.share], folders: folders.length });
  const settle = await layInto({
    ...{ pages, files, frame, shown, fresh, before, memo: pictures },
    elsewhere: frame.address === null ? [] : ['feed.xml'],
    tell: counted(tell),
    ...(kept === null ? {} : { kept: kept.pages }),
  });
  settle();
  if (on.spill !== null && kept !== null) spilt(on.spill, series, kept);
  return {
    ...{ share, undecoded, findings: [...findings, ...ofStills] },
    written: [...pages.map(({ path }) => pageFile(path)), ...files.map(({ path }) => path)],
  };
}

/** One after the other in this thread. */
export function alone(on: BuiltWith, tell: (what: string) => void): Crew {
  const store = stillStore();
  const pictures = pictureMemo();
  return {
    hands: 1,
    build: (job) => buildOne(on, job, { store, pictures, tell }),
    close: () => {
      store.close();
      return Promise.resolve();
    },
  };
}
