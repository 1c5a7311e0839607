import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wrongOut } from '../../../src/host/terminal/out.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-out-'));
const at = (path: string) => join(root, path);
const asked = (folder: string, out: string) => wrongOut({ folder: at(folder), out: at(out) });

beforeAll(() => {
  for (const path of ['shelf/book/spring', 'site/assets', 'letters', 'empty']) mkdirSync(at(path), { recursive: true });
  for (const path of ['site/assets/site.css', 'letters/june.txt', 'note.txt']) writeFileSync(at(path), '');
  symlinkSync(at('shelf/book'), at('same-book'));
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

describe('where a site may be written', () => {
  it('is a new folder, an empty one, a site of before, or _site among the notes', async () => {
    for (const out of ['new/deep', 'empty', 'site', 'shelf/book/_site', 'shelf/book/_site-public'])
      expect(await asked('shelf/book', out), out).toBeNull();
  });
  it('is never the book, nor a folder above it, under whatever name', async () => {
    for (const out of ['shelf/book', 'shelf', '', 'same-book'])
      expect(await asked('shelf/book', out), out).toContain('holds the notes');
    expect(await asked('same-book', 'shelf/book')).toContain('holds the notes');
  });
  it('is not among the notes, where the next build would read it', async () => {
    for (const out of ['shelf/book/spring', 'shelf/book/pages', 'same-book/pages'])
      expect(await asked('shelf/book', out), out).toContain('lies among the notes');
  });
  it('is never a file, nor a folder with anything else in it', async () => {
    for (const out of ['letters', 'note.txt']) expect(await asked('shelf/book', out), out).toContain('is left alone');
  });
});
