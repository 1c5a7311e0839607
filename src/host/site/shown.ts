import { lstatSync } from 'node:fs';
import type { Finding } from '../../finding/finding.ts';
import type { Block, Page } from '../../report/page.ts';
import type { MediaFile } from '../../trial/series.ts';
import { placeInBook } from '../disk/inside.ts';
import { makeStills, type MadeStill, type StillStore, type StillWanted } from '../pictures/stills.ts';

/** The user's own file that a clip is published from. */
export interface ClipFile {
  readonly place: string;
  /** Size, time and number of the file: another state is another film. */
  readonly state: string;
}

/** Pictures and clips that the pages show, by address. */
export interface ShownMedia {
  /** Null: it could not be decoded, and its place says so. */
  readonly stills: ReadonlyMap<string, MadeStill | null>;
  /** Only those that are there. */
  readonly clips: ReadonlyMap<string, ClipFile>;
}

export const noMedia: ShownMedia = { stills: new Map(), clips: new Map() };

/** Decodes the stills that the pages show and finds their clips: of what no page shows, nothing is touched. */
export async function shownMedia(input: {
  readonly folder: string;
  readonly pages: readonly Page[];
  readonly media: readonly MediaFile[];
  readonly store: StillStore;
  readonly tell?: (done: number, all: number) => void;
}): Promise<{
  readonly shown: ShownMedia;
  readonly findings: readonly Finding[];
  /** Stills that wait for another machine: of all series of a book this is said once. */
  readonly undecoded: readonly string[];
}> {
  const { folder, pages, media } = input;
  const blocks = pages.flatMap((page) => page.sections.flatMap((section) => everyBlock(section.blocks)));
  const { stills, findings, undecoded } = await makeStills({ ...input, wanted: blocks.flatMap(stillsIn) });
  const known = new Set(media.map(({ path }) => path));
  const clips = new Map<string, ClipFile>();
  for (const { source, address } of blocks.flatMap(clipsIn)) {
    const file = known.has(source) && !clips.has(address) ? clipFile(folder, source) : null;
    if (file !== null) clips.set(address, file);
  }
  return { shown: { stills, clips }, findings, undecoded };
}

/** Blocks with those that stand inside them. */
export const everyBlock = (blocks: readonly Block[]): readonly Block[] =>
  blocks.flatMap((block) => [block, ...everyBlock(insideOf(block))]);

const insideOf = (block: Block): readonly Block[] =>
  block.kind === 'fold' ? block.blocks : block.kind === 'pair' ? block.sides.flatMap(({ blocks }) => blocks) : [];

const stillsIn = (block: Block): readonly StillWanted[] => (block.kind === 'stills' ? block.items : []);
const clipsIn = (block: Block): readonly { readonly source: string; readonly address: string }[] =>
  block.kind === 'clip' ? [block.clip] : block.kind === 'two-clips' ? block.clips : [];

function clipFile(folder: string, source: string): ClipFile | null {
  const place = placeInBook(folder, source);
  if (place === null) return null;
  const { size, mtimeMs, ino } = lstatSync(place);
  return { place, state: `${source} ${size} ${mtimeMs} ${ino}` };
}
