import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Chart, Page } from '../../report/page.ts';
import { isDrawn } from '../site/blocks.ts';
import { insideSite } from '../site/address.ts';
import { literalColours, withColours } from './colours.ts';
import { drawChart, type PictureMemo } from './draw.ts';
import { decoder } from './encode.ts';

const size = { width: 1200, height: 630 } as const;
const edge = 60;

/** Address of the picture by which a series is shown where somebody links to it. */
export const openGraphPath = (page: Pick<Page, 'path'>): string => `${page.path}picture.png`;

/**
 * The first chart of each series page as a picture for other sites (Open Graph): on paper colour, its colours literal. The
 * addresses that were drawn; none where pictures cannot be made on this machine.
 */
export async function openGraphPictures(input: {
  readonly pages: readonly Page[];
  readonly memo?: PictureMemo;
  readonly into: string;
}): Promise<ReadonlySet<string>> {
  const sharp = await decoder();
  if (sharp === null) return new Set();
  const colours = await literalColours();
  const drawn = new Set<string>();
  for (const page of input.pages.filter(({ kind }) => kind === 'series')) {
    const chart = page.sections
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === 'chart' ? [block.chart] : []))
      .find((one): one is Parameters<typeof drawChart>[0] & Chart => isDrawn(one));
    if (chart === undefined) continue;
    const { wide } = await drawChart(chart, input.memo);
    const svg = await sharp(Buffer.from(framed(wide, page.title, colours)))
      .png({ palette: true })
      .toBuffer();
    const place = join(input.into, insideSite(openGraphPath(page)));
    await mkdir(dirname(place), { recursive: true });
    await writeFile(place, svg);
    drawn.add(openGraphPath(page));
  }
  return drawn;
}

/** The drawing in the middle of the picture, as large as it goes, under the title of the series. */
function framed(drawing: string, title: string, colours: ReadonlyMap<string, string>): string {
  const [, width = '690', height = '400'] = /width="([\d.]+)" height="([\d.]+)"/.exec(drawing) ?? [];
  const room = { width: size.width - 2 * edge, height: size.height - 2 * edge - 60 };
  const scale = Math.min(room.width / Number(width), room.height / Number(height));
  const inside = drawing.slice(drawing.indexOf('>') + 1, drawing.lastIndexOf('</svg>'));
  const left = (size.width - Number(width) * scale) / 2;
  const text = title.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return withColours(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${String(size.width)}" height="${String(size.height)}">` +
      `<rect width="100%" height="100%" fill="var(--paper)"/>` +
      `<text x="${String(edge)}" y="${String(edge + 24)}" font-size="40" font-weight="600" font-family="Source Serif 4, serif" fill="var(--ink)">${text}</text>` +
      `<g transform="translate(${left.toFixed(1)},${String(edge + 60)}) scale(${scale.toFixed(4)})">${inside}</g></svg>`,
    colours,
  );
}
