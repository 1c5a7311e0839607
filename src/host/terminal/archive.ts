import { blocks, type Finding, inOrder } from '../../finding/finding.ts';
import { seriesFolders } from '../../notes/book.ts';
import { madeAround, readHead } from '../../pipeline.ts';
import type { Audience } from '../../report/input.ts';
import { isMany } from '../../report/site-frame.ts';
import { type Found, readFolder } from '../disk/book.ts';
import { stillsWithoutDecoder } from '../pictures/texts.ts';
import { copyAssets } from '../site/assets.ts';
import { layInto } from '../site/build.ts';
import { staged } from '../site/staged.ts';
import type { PageMemo } from '../site/kept.ts';
import { crewFor } from './crew.ts';
import { bookNote, type Crew, type Job, type OneBuilt } from './one.ts';
import { counted } from './say.ts';

/** Folders of series of a book that is too large to be held as one; null when it is not. */
export function manySeries(listed: readonly Found[]): readonly string[] | null {
  const folders = seriesFolders(listed.map(({ path }) => path));
  return isMany(folders.length) ? folders : null;
}

/** What a book came to. Null: nothing is written where there is no book, or a public one has an error. */
export interface ArchiveBuilt {
  readonly written: number | null;
  readonly findings: readonly Finding[];
}

/**
 * A book of many series: each is made, drawn and laid out by itself, some at a time, and of each only what the rest of the
 * book tells of it is kept. The pages outside the series come last.
 */
export async function buildArchive(of: {
  readonly folder: string;
  readonly out: string;
  readonly audience: Audience;
  readonly tell: (what: string) => void;
  readonly listed: readonly Found[];
  readonly crew?: Crew;
}): Promise<ArchiveBuilt> {
  const { folder, audience, tell } = of;
  const crew = of.crew ?? crewFor({ folder, audience, spill: null }, tell);
  return layArchive({ ...of, crew }).finally(crew.close);
}

/** For preview: series that did not change, by folder, and what the pages outside were made of. */
export interface ArchiveKept {
  readonly same: ReadonlyMap<string, OneBuilt>;
  readonly pages: PageMemo;
  /** Once the site is in place: what each series came to, the others among them. */
  readonly settle: (ones: ReadonlyMap<string, OneBuilt>) => void;
}

export async function layArchive(of: {
  readonly folder: string;
  readonly out: string;
  readonly audience: Audience;
  readonly tell: (what: string) => void;
  readonly listed: readonly Found[];
  readonly crew: Crew;
  readonly kept?: ArchiveKept;
}): Promise<ArchiveBuilt> {
  const { folder, out, audience, tell, listed, crew, kept } = of;
  const folders = seriesFolders(listed.map(({ path }) => path));
  const same = kept?.same ?? new Map<string, OneBuilt>();
  const { book, findings: head } = readHead(
    readFolder(
      folder,
      listed.filter(({ path }) => path === bookNote),
    ),
  );
  if (book === null) return { written: null, findings: inOrder(head) };
  let findings: readonly Finding[] = [];
  const carried = [...same.values()].flatMap(({ share }) => (share === null ? [] : placesOf(share.share.id)));
  const fill = async (fresh: string, before: string) => {
    const jobs = largestFirst(folders, listed)
      .filter((series) => !same.has(series))
      .map((series) => ({ series, folders, fresh, before }));
    const ones = new Map([...same, ...(await eachOf(jobs, crew, tell))]);
    const inTurn = folders.map((series) => ones.get(series)!);
    findings = allFindings(head, inTurn);
    if (audience === 'public' && blocks(findings)) throw new Stopped();
    const around = madeAround({
      ...{ book, folders: folders.length },
      shares: inTurn.flatMap(({ share }) => share ?? []),
    });
    const settle = await layInto({
      ...{ ...around, fresh, before, tell: counted(tell) },
      ...(kept === undefined ? {} : { kept: kept.pages }),
    });
    await copyAssets(fresh);
    const own = inTurn.reduce((n, { written }) => n + written.length, 0);
    return { written: own + around.pages.length + around.files.length, settle, ones };
  };
  try {
    const { written, settle, ones } = await staged(out, fill, carried);
    settle();
    kept?.settle(ones);
    return { written, findings };
  } catch (trouble) {
    if (trouble instanceof Stopped) return { written: null, findings };
    throw trouble;
  }
}

/** Thrown so that what was laid out is taken away again. */
class Stopped extends Error {}

/** Where the pages and files of a series lie in the site. */
const placesOf = (id: string): readonly string[] => [`series/${id}`, `find/series/${id}.js`];

/** As they come from one book: in order, and what is of the machine said once. */
function allFindings(head: readonly Finding[], ones: readonly OneBuilt[]): readonly Finding[] {
  const undecoded = ones.flatMap((one) => one.undecoded);
  const own = ones.flatMap(({ findings }) => findings).filter(({ code }) => code !== 'stills-not-decoded');
  const once = undecoded.length === 0 ? [] : [stillsWithoutDecoder(undecoded[0]!, undecoded.length)];
  return inOrder([...head, ...own, ...once]);
}

/** As many at a time as there are hands; a failure is told once those at work have ended. */
async function eachOf(
  jobs: readonly Job[],
  crew: Crew,
  tell: (what: string) => void,
): Promise<ReadonlyMap<string, OneBuilt>> {
  const ones = new Map<string, OneBuilt>();
  const left = [...jobs];
  const work = async (): Promise<void> => {
    for (let job = left.shift(); job !== undefined; job = left.shift()) {
      try {
        ones.set(job.series, await crew.build(job));
        tell(`${ones.size} of ${jobs.length}  series`);
      } catch (trouble) {
        left.length = 0;
        throw trouble;
      }
    }
  };
  const ended = await Promise.allSettled(Array.from({ length: crew.hands }, work));
  const failed = ended.find((end) => end.status === 'rejected');
  if (failed !== undefined) throw failed.reason;
  return ones;
}

/** So that no long one is left for the end, when the other hands have nothing to do. */
function largestFirst(folders: readonly string[], listed: readonly Found[]): readonly string[] {
  const size = new Map<string, number>();
  for (const file of listed) {
    const [folder = ''] = file.path.split('/');
    size.set(folder, (size.get(folder) ?? 0) + file.size);
  }
  return [...folders].sort((a, b) => (size.get(b) ?? 0) - (size.get(a) ?? 0) || (a < b ? -1 : 1));
}
