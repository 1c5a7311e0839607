import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readMedia } from '../../../src/host/disk/book.ts';
import { stillStore } from '../../../src/host/pictures/stills.ts';
import { placeMedia } from '../../../src/host/site/place-media.ts';
import { shownMedia, type ShownMedia } from '../../../src/host/site/shown.ts';
import { flowPages } from '../../site/sample-flow.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-place-'));
const folder = join(root, 'book');
const runs = join(folder, 'hill-bowl', 'runs');
mkdirSync(runs, { recursive: true });
const store = stillStore();
afterAll(() => {
  store.close();
  rmSync(root, { recursive: true, force: true });
});

const address = 'series/hill-bowl/clips/F-01.webm';
const shownNow = async (): Promise<ShownMedia> =>
  (await shownMedia({ folder, pages: flowPages, media: readMedia(folder), store })).shown;

describe('the clips of a site', () => {
  it('are those that a page shows: another film in the folder is not published', async () => {
    writeFileSync(join(runs, 'F-01.webm'), 'film');
    writeFileSync(join(runs, 'F-08.webm'), 'of a run that no page shows');
    const shown = await shownNow();
    expect([...shown.clips.keys()]).toEqual([address]);
    await placeMedia(shown, { fresh: join(root, 'one') });
    expect(readFileSync(join(root, 'one', address), 'utf8')).toBe('film');
    expect(existsSync(join(root, 'one', 'series/hill-bowl/clips/F-08.webm'))).toBe(false);
  });

  it('are copies: what is done to a site never reaches the raw file', async () => {
    await placeMedia(await shownNow(), { fresh: join(root, 'two') });
    writeFileSync(join(root, 'two', address), 'spoilt');
    expect(readFileSync(join(runs, 'F-01.webm'), 'utf8')).toBe('film');
    expect(readdirSync(join(root, 'two', 'series/hill-bowl/clips'))).toEqual(['F-01.webm']);
  });

  it('are never links, neither when they are looked for nor when they become one afterwards', async () => {
    writeFileSync(join(root, 'secret.webm'), 'secret');
    const shown = await shownNow();
    unlinkSync(join(runs, 'F-01.webm'));
    symlinkSync(join(root, 'secret.webm'), join(runs, 'F-01.webm'));
    await expect(placeMedia(shown, { fresh: join(root, 'three') })).rejects.toThrow(/became a link/);
    expect(existsSync(join(root, 'three', address))).toBe(false);
    expect([...(await shownNow()).clips]).toEqual([]);
    unlinkSync(join(runs, 'F-01.webm'));
    writeFileSync(join(runs, 'F-01.webm'), 'film');
  });

  it('do not lie outside the book by a folder that is a link', async () => {
    const media = readMedia(folder);
    renameSync(runs, join(root, 'elsewhere'));
    symlinkSync(join(root, 'elsewhere'), runs);
    const { shown } = await shownMedia({ folder, pages: flowPages, media, store });
    unlinkSync(runs);
    renameSync(join(root, 'elsewhere'), runs);
    expect([...shown.clips]).toEqual([]);
  });

  it('are taken over from the site of before while they are the same, and only then', async () => {
    const memo = new Map<string, string>();
    const [before, fresh] = [join(root, 'before'), join(root, 'fresh')];
    await placeMedia(await shownNow(), { fresh: before, memo });
    rmSync(join(before, address));
    writeFileSync(join(before, address), 'as it stood in the site of before');
    await placeMedia(await shownNow(), { fresh, before, memo });
    expect(readFileSync(join(fresh, address), 'utf8')).toBe('as it stood in the site of before');
    rmSync(join(runs, 'F-01.webm'));
    writeFileSync(join(runs, 'F-01.webm'), 'another film');
    await placeMedia(await shownNow(), { fresh: join(root, 'later'), before: fresh, memo });
    expect(readFileSync(join(root, 'later', address), 'utf8')).toBe('another film');
  });

  it('are not written outside the site', async () => {
    const clips = new Map([['../out.webm', { place: join(runs, 'F-01.webm'), state: '' }]]);
    await expect(placeMedia({ stills: new Map(), clips }, { fresh: join(root, 'four') })).rejects.toThrow(
      /outside the site/,
    );
    const made = {
      width: 1,
      height: 1,
      sizes: [{ width: 1, webp: join(runs, 'F-01.webm'), jpeg: join(runs, 'F-01.webm') }],
    };
    await expect(
      placeMedia({ stills: new Map([['stills/../../x', made]]), clips: new Map() }, { fresh: join(root, 'four') }),
    ).rejects.toThrow(/outside the site/);
  });
});
