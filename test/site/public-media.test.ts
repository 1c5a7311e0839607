import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { build } from '../../src/host/terminal/build.ts';
import { check } from '../../src/host/terminal/check.ts';
import { takeSamplesOut } from '../scenario/demo.ts';

/** Two flow trials of the demo with their clips and stills: F-01 for everybody, F-02 (clip K7) for the house. */
const root = mkdtempSync(join(tmpdir(), 'dipmark-public-media-'));
const book = join(root, 'book');
const note = join(book, 'hill-bowl', 'runs', 'F-02.md');
const picture = (name: string): string => join(book, 'hill-bowl', 'pictures', name);
const hiddenFilm = readFileSync('demo-runs/hill-bowl/runs/F-02.webm');
const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

beforeAll(() => {
  const other =
    /\/(?:make|where-the-oil-stands)|\/runs\/(?!F-0[12]\.)[^/]+$|\/pictures\/(?!F-0[12]-)[^/]+$|truth\.json$/;
  cpSync('demo-runs', book, { recursive: true, filter: (path) => !other.test(path) });
  takeSamplesOut(book);
  writeFileSync(note, readFileSync(note, 'utf8').replace('shown-to: public', 'shown-to: house'));
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

const below = (folder: string, at = ''): string[] =>
  readdirSync(join(folder, at)).flatMap((name) => {
    const path = at === '' ? name : `${at}/${name}`;
    return statSync(join(folder, path)).isDirectory() ? below(folder, path) : [path];
  });

let told = '';
const listening = () => {
  told = '';
  for (const stream of [process.stderr, process.stdout])
    vi.spyOn(stream, 'write').mockImplementation((text) => {
      told += String(text);
      return true;
    });
};
afterEach(() => {
  vi.restoreAllMocks();
});
const built = async (audience: 'house' | 'public'): Promise<number> => {
  listening();
  return build({ folder: book, out: join(root, audience), audience, json: false });
};

describe('clips and stills of a public site', () => {
  it('are those of the runs that are shown, and of no other', async () => {
    expect(await built('public')).toBe(0);
    const files = below(join(root, 'public'));
    const media = files.filter((path) => /\/(?:clips|stills)\//.test(path)).map((path) => path.replace(/.*\//, ''));
    expect(media).toEqual(expect.arrayContaining(['R4.webm', 'R4.vtt', 'R4.chapters.txt']));
    expect(media.filter((name) => /\.(?:webp|jpg)$/.test(name)).length).toBeGreaterThan(5);
    expect(media.filter((name) => /F-02|K7/.test(name))).toEqual([]);
    const film = sumOf(hiddenFilm);
    for (const path of files) {
      const bytes = readFileSync(join(root, 'public', path));
      expect(sumOf(bytes), path).not.toBe(film);
      for (const word of ['F-02', 'K7.webm', film]) expect(bytes.includes(word), `${word} in ${path}`).toBe(false);
    }
  });

  it('say who observed to nobody outside', () => {
    const captions = readFileSync(join(root, 'public/series/hill-bowl/clips/R4.vtt'), 'utf8');
    expect(captions).toMatch(/\| observer 1\b[^]*\| observer 2\b/);
    expect(captions).not.toMatch(/observer [A-Z]/);
  });

  it('are all there for the house', async () => {
    expect(await built('house')).toBe(0);
    const clip = join(root, 'house/series/hill-bowl/clips/K7.webm');
    expect(readFileSync(clip).equals(hiddenFilm)).toBe(true);
    expect(below(join(root, 'house')).filter((path) => /stills\/F-02-290/.test(path)).length).toBeGreaterThan(1);
  });
});

describe('a still that is cut short', () => {
  const cut = (name: string): void => {
    writeFileSync(picture(name), readFileSync(picture(name)).subarray(0, 3000));
  };
  const finding = (name: string) => `hill-bowl/pictures/${name}:1:1  error  still-not-decoded`;

  it('of a run that is held back stops nothing and is said to nobody outside', async () => {
    cut('F-02-290.png');
    expect(await built('public')).toBe(0);
    expect(told).not.toContain('F-02');
  });

  it('is one finding in a check and in a build, and the house book is built round it', async () => {
    listening();
    expect(await check({ folder: book, audience: 'house', json: false })).toBe(1);
    expect(told.split(finding('F-02-290.png'))).toHaveLength(2);
    expect(await built('house')).toBe(1);
    expect(told.split(finding('F-02-290.png'))).toHaveLength(2);
    const page = readFileSync(join(root, 'house/series/hill-bowl/runs/F-02/index.html'), 'utf8');
    expect(page).toContain('Still could not be read.');
    expect(page.match(/<img /g)!.length).toBeGreaterThan(1);
  });

  it('of a run that is shown keeps a public site from being written', async () => {
    cut('F-01-290.png');
    const before = below(join(root, 'public')).length;
    expect(await built('public')).toBe(1);
    expect(told).toContain(finding('F-01-290.png'));
    expect(told).toContain('Nothing was written');
    expect(below(join(root, 'public'))).toHaveLength(before);
  });
});
