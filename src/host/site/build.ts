import Eleventy from '@11ty/eleventy';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { SiteFrame } from '../../report/frame.ts';
import type { Chart, Page } from '../../report/page.ts';
import type { Drawn, PictureMemo } from '../pictures/draw.ts';
import { drawChart } from '../pictures/draw.ts';
import { openGraphPictures } from '../pictures/open-graph.ts';
import { insideSite } from './address.ts';
import { copyAssets } from './assets.ts';
import { isDrawn } from './blocks.ts';
import type { PageMemo } from './kept.ts';
import { takenOver } from './kept.ts';
import type { BesideView } from './media-blocks.ts';
import { placeMedia } from './place-media.ts';
import { packageRoot, packageVersion } from './root.ts';
import type { ShownMedia } from './shown.ts';
import { everyBlock, noMedia } from './shown.ts';
import { staged } from './staged.ts';
import type { SheetView } from './view.ts';
import { sheetView } from './view.ts';
import type { AroundView } from './wire.ts';
import { wire } from './wire.ts';

/** For preview: memos kept over rebuilds. */
export const pageMemo = (): PageMemo => ({ pages: new Map(), clips: new Map() });
export const pictureMemo = (): PictureMemo => new Map();

export interface SiteInput {
  readonly pages: readonly Page[];
  /** Ledger, tables and the like, written as they are. */
  readonly files: readonly { readonly path: string; readonly text: string }[];
  /** Addresses of text files of the same site that others write. */
  readonly elsewhere?: readonly string[];
  readonly frame: SiteFrame;
  /** Stills and clips that the pages show; none when it is left out. */
  readonly shown?: ShownMedia;
  readonly out: string;
  readonly tell?: (done: number, all: number, what: string) => void;
  readonly memo?: PictureMemo;
  readonly kept?: PageMemo;
}

/**
 * Lays the whole site out in a fresh folder beside `out`, then puts it in its place: a build that fails leaves
 * the site of before untouched, and no page of before is left over.
 */
export async function buildSite(input: SiteInput): Promise<{ written: number }> {
  const settle = await staged(input.out, async (fresh, out) => {
    const laid = await layInto({ ...input, fresh, before: out });
    await copyAssets(fresh);
    return laid;
  });
  settle();
  return { written: input.pages.length + input.files.length };
}

/** Lays pages, pictures and files into a fresh folder, which others may fill too. To be called back once it is in place. */
export async function layInto(
  input: Omit<SiteInput, 'out'> & { readonly fresh: string; readonly before: string },
): Promise<() => void> {
  const { kept, pages, frame, shown = noMedia, fresh, before } = input;
  const drawn = await openGraphPictures({
    pages,
    into: fresh,
    ...(input.memo === undefined ? {} : { memo: input.memo }),
  });
  const beside = besideView(input, drawn);
  const { changed, now } =
    kept === undefined
      ? { changed: pages, now: [] }
      : await takenOver({ pages, frame, beside, memo: kept.pages, before, fresh });
  const sheets = await layOut({ ...input, pages: changed, drawn });
  input.tell?.(0, sheets.length, 'pages');
  const builder = new Eleventy(join(packageRoot, 'content'), fresh, {
    configPath: join(packageRoot, '.eleventy.js'),
    quietMode: true,
    source: 'script',
    config: (config) => {
      wire(config, { sheets, around: aroundView(input.frame) });
    },
  });
  builder.disableLogger();
  if (sheets.length > 0) await builder.write();
  await writeFiles(input.files, fresh);
  await placeMedia(shown, { fresh, before, ...(kept === undefined ? {} : { memo: kept.clips }) });
  input.tell?.(sheets.length, sheets.length, 'pages');
  return () => {
    kept?.pages.clear();
    for (const [path, made] of now) kept?.pages.set(path, made);
  };
}

/** Draws every picture, one after the other, and works every page out for the templates. */
export async function layOut(
  input: Omit<SiteInput, 'out' | 'kept'> & { readonly drawn?: ReadonlySet<string> },
): Promise<readonly SheetView[]> {
  const { pages, frame, tell, memo } = input;
  const charts = chartsOf(pages);
  const drawn = new Map<Chart, Drawn>();
  for (const [i, chart] of charts.entries()) {
    tell?.(i, charts.length, 'pictures');
    if (isDrawn(chart)) drawn.set(chart, await drawChart(chart, memo));
  }
  const pictureOf = (chart: Chart): Drawn => {
    const picture = drawn.get(chart);
    if (picture === undefined) throw new Error(`No picture was drawn for ${chart.id}`);
    return picture;
  };
  const beside = besideView(input, input.drawn);
  return pages.map((page) => sheetView(page, frame, { pictureOf, beside }));
}

export const chartsOf = (pages: readonly Page[]): readonly Chart[] =>
  pages
    .flatMap((page) => page.sections.flatMap(({ blocks }) => everyBlock(blocks)))
    .flatMap((block) => (block.kind === 'chart' ? [block.chart] : []));

function besideView(
  { files, elsewhere = [], frame, shown = noMedia }: Pick<SiteInput, 'files' | 'elsewhere' | 'frame' | 'shown'>,
  drawn: ReadonlySet<string> = new Set(),
): BesideView {
  const texts = new Map([
    ...elsewhere.map((path) => [path, ''] as const),
    ...files.map(({ path, text }) => [path, text] as const),
  ]);
  return {
    stillOf: (address) => shown.stills.get(address) ?? null,
    language: frame.language,
    hasClip: (address) => shown.clips.has(address),
    hasPicture: (address) => drawn.has(address),
    textOf: (address) => texts.get(address) ?? null,
  };
}

export const aroundView = (frame: SiteFrame): AroundView => ({
  lab: frame.lab,
  language: frame.language,
  invented: frame.invented,
  footer: frame.footer,
  version: packageVersion,
});

export async function writeFiles(files: SiteInput['files'], into: string): Promise<void> {
  for (const { path, text } of files) {
    const place = join(into, insideSite(path));
    await mkdir(dirname(place), { recursive: true });
    await writeFile(place, text);
  }
}
