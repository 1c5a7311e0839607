import { createHash } from 'node:crypto';
import {
  closeSync,
  ftruncateSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readFolder, readMedia } from '../../../src/host/disk/book.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-book-'));
const folder = join(root, 'book');
const write = (path: string, bytes: string | Uint8Array): void => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), bytes);
};
const large = Buffer.alloc(700_000, 'film');
const film_bytes = 65 * 2 ** 20;

beforeAll(() => {
  write('book/book.md', '---\n---\n');
  write('book/hill/runs/F-01.md', '---\n---\n');
  write('book/hill/runs/F-01.log7', 't,v\n');
  write('book/hill/runs/F-01.vtt', 'WEBVTT\n');
  write('book/hill/runs/F-01.webm', large);
  write('book/hill/runs/F-02.MP4', 'film');
  write('book/hill/pictures/F-01-60.png', 'picture');
  write('book/hill/pictures/F-01-60.xyz', 'no picture');
  write('book/hill/pictures/empty.jpg', '');
  write('book/_site/old.png', 'picture');
  write('outside.png', 'secret');
  write('other/outside.webm', 'secret');
  symlinkSync(join(root, 'outside.png'), join(folder, 'hill', 'pictures', 'link.png'));
  symlinkSync(join(root, 'other'), join(folder, 'hill', 'films'));
  const file = openSync(join(folder, 'hill', 'runs', 'F-03.webm'), 'w');
  ftruncateSync(file, film_bytes);
  closeSync(file);
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

describe('a folder that is read', () => {
  it('gives its notes, logs and captions whole, and no picture or film among them', () => {
    expect(readFolder(folder).map(({ path }) => path)).toEqual([
      'book.md',
      'hill/runs/F-01.log7',
      'hill/runs/F-01.md',
      'hill/runs/F-01.vtt',
    ]);
  });

  it('gives pictures and clips by name, whatever lies in pictures/ with them, and follows no link', () => {
    expect(readMedia(folder).map(({ path }) => path)).toEqual([
      'hill/pictures/F-01-60.png',
      'hill/pictures/F-01-60.xyz',
      'hill/pictures/empty.jpg',
      'hill/runs/F-01.webm',
      'hill/runs/F-02.MP4',
      'hill/runs/F-03.webm',
    ]);
  });

  it('knows of a clip its size, its beginning and its sum, and of a long film no sum', () => {
    const of = (name: string) => readMedia(folder).find(({ path }) => path.endsWith(name))!;
    const clip = of('F-01.webm');
    expect([clip.size, clip.head.length]).toEqual([700_000, 256 * 1024]);
    expect(Buffer.from(clip.head).equals(large.subarray(0, 256 * 1024))).toBe(true);
    expect(clip.sha256).toBe(createHash('sha256').update(large).digest('hex'));
    const film = of('F-03.webm');
    expect([film.size, film.head.length, film.sha256]).toEqual([film_bytes, 256 * 1024, null]);
    const none = of('empty.jpg');
    expect([none.size, none.head.length]).toEqual([0, 0]);
    // FIPS 180-4 example of the empty message.
    expect(none.sha256).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
  });

  it('sums a changed picture again when sums are kept, and an unchanged one not', () => {
    const sums = new Map<string, string>();
    const sumOf = () => readMedia(folder, sums).find(({ path }) => path.endsWith('F-01-60.png'))!.sha256;
    const first = sumOf();
    expect(sumOf()).toBe(first);
    write('book/hill/pictures/F-01-60.png', 'another picture');
    expect(sumOf()).toBe(createHash('sha256').update('another picture').digest('hex'));
  });
});
