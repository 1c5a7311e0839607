import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import type { Finding } from '../../src/finding/finding.ts';
import { readMedia } from '../../src/host/disk/book.ts';
import { stillStore } from '../../src/host/pictures/stills.ts';
import type { ShownMedia } from '../../src/host/site/shown.ts';
import { shownMedia } from '../../src/host/site/shown.ts';
import type { Page } from '../../src/report/page.ts';

/** What a player needs to know a WebM by; nothing in it is a film. */
export const noFilm = Buffer.from([0x1a, 0x45, 0xdf, 0xa3, 0x80]);

/** A plain picture of a size, as a camera or a drawing program would save it. */
export const picture = (width: number, height: number, background = '#7a5b2e'): sharp.Sharp =>
  sharp({ create: { width, height, channels: 3, background } });

/** A book folder with the stills and clips of the sample pages, one of the stills cut short. */
export async function sampleMedia(
  folder: string,
  pages: readonly Page[],
): Promise<{ shown: ShownMedia; findings: readonly Finding[]; close: () => void }> {
  const write = (path: string, bytes: Uint8Array): void => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), bytes);
  };
  const pictures = 'hill-bowl/pictures/';
  for (const name of ['F-01-60', 'F-01-290', 'F-02-290'])
    write(
      `${pictures}${name}.png`,
      await picture(1600, 1200, name.startsWith('F-01') ? '#7a5b2e' : '#4d6a52')
        .png()
        .toBuffer(),
    );
  write(`${pictures}F-01-cut.jpg`, (await picture(800, 600).jpeg().toBuffer()).subarray(0, 700));
  for (const name of ['F-01', 'F-02']) write(`hill-bowl/runs/${name}.webm`, noFilm);
  const store = stillStore();
  return { ...(await shownMedia({ folder, pages, media: readMedia(folder), store })), close: store.close };
}
