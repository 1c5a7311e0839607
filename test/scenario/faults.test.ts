import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ownFolder } from '../../src/host/disk/own-folder.ts';
import { recovered, staged } from '../../src/host/site/staged.ts';

/** The number of a process that is over, as a killed build leaves it in the names of its folders. */
const gone = spawnSync(process.execPath, ['-e', '']).pid;
let root: string;
const at = (...path: readonly string[]) => join(root, ...path);
const put = (path: string, text: string): void => {
  mkdirSync(dirname(at(path)), { recursive: true });
  writeFileSync(at(path), text);
};
const site = (folder: string, text: string): void => {
  put(`${folder}/assets/site.css`, '');
  put(`${folder}/index.html`, text);
};
const read = (path: string): string => readFileSync(at(path), 'utf8');

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'dipmark-faults-'));
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

/** The moments at which a build can be killed, as they lie on the disk. `test/bench/kills.ts` kills real ones. */
describe('after a build that was killed', () => {
  const fresh = `._site-${String(gone)}-abcDEF`;
  it('while it laid out: the site of before stays, the half one goes', async () => {
    site('_site', 'old');
    put(`${fresh}/half.html`, 'half');
    await recovered(at('_site'));
    expect(readdirSync(root)).toEqual(['_site']);
    expect(read('_site/index.html')).toBe('old');
  });

  it('between the two renames: the site of before is put back', async () => {
    site(`${fresh}-before`, 'old');
    site(fresh, 'new');
    await recovered(at('_site'));
    expect(readdirSync(root)).toEqual(['_site']);
    expect(read('_site/index.html')).toBe('old');
  });

  it('while it carried over what had not changed: all of it goes back', async () => {
    site(`${fresh}-before`, 'old');
    put(`${fresh}-before/series/b/index.html`, 'b');
    put(`${fresh}/series/a/index.html`, 'a');
    put(`${fresh}-carried`, JSON.stringify(['series/a', 'series/b']));
    await recovered(at('_site'));
    expect(readdirSync(root)).toEqual(['_site']);
    expect([read('_site/series/a/index.html'), read('_site/series/b/index.html')]).toEqual(['a', 'b']);
  });

  it('before it took the old one away: the new one stays', async () => {
    site('_site', 'new');
    site(`${fresh}-before`, 'old');
    await recovered(at('_site'));
    expect(readdirSync(root)).toEqual(['_site']);
    expect(read('_site/index.html')).toBe('new');
  });

  it('before there was any site: nothing is left', async () => {
    put(`${fresh}/half.html`, 'half');
    await recovered(at('_site'));
    expect(readdirSync(root)).toEqual([]);
  });

  it('what belongs to nobody’s build is not touched', async () => {
    put('._site-notes/mine.txt', 'mine');
    put('._site-12/mine.txt', 'mine');
    put(`._other-${String(gone)}-abcDEF/mine.txt`, 'mine');
    await recovered(at('_site'));
    expect(readdirSync(root)).toHaveLength(3);
  });
});

describe('a build beside another', () => {
  it('is refused while the other is at work, and takes nothing of it away', async () => {
    site('_site', 'old');
    put(`._site-${String(process.ppid)}-abcDEF/half.html`, 'half');
    await expect(staged(at('_site'), () => Promise.resolve())).rejects.toThrow(
      `Another build is at work on ${at('_site')} (process ${String(process.ppid)}). Wait until it is done`,
    );
    expect(read('_site/index.html')).toBe('old');
    expect(existsSync(at(`._site-${String(process.ppid)}-abcDEF`))).toBe(true);
  });
});

describe('a build that fails', () => {
  it.each([
    ['the disk is full', 'ENOSPC'],
    ['the folder may not be written', 'EROFS'],
  ])('since %s leaves the site of before and nothing beside it', async (_, code) => {
    site('_site', 'old');
    const full = Object.assign(new Error(`${code}: no`), { code, syscall: 'write' });
    const fill = (fresh: string): Promise<never> => {
      writeFileSync(join(fresh, 'half.html'), 'half');
      return Promise.reject(full);
    };
    await expect(staged(at('_site'), fill)).rejects.toBe(full);
    expect(readdirSync(root)).toEqual(['_site']);
    expect(read('_site/index.html')).toBe('old');
  });

  it('as it takes its place puts back what it had carried over', async () => {
    site('_site', 'old');
    put('_site/series/a/index.html', 'a');
    await expect(staged(at('_site'), () => Promise.resolve(), ['series/a', 'series/none'])).rejects.toThrow('ENOENT');
    expect(readdirSync(root)).toEqual(['_site']);
    expect(read('_site/series/a/index.html')).toBe('a');
  });
});

describe('a folder of one process', () => {
  it('is fresh, carries its number, and those of the dead go', () => {
    put(`dipmark-x-${String(gone)}-abcDEF/left.txt`, '');
    put(`dipmark-x-${String(process.ppid)}-abcDEF/works.txt`, '');
    const own = ownFolder(root, 'dipmark-x-');
    expect(own).toContain(`dipmark-x-${String(process.pid)}-`);
    expect(readdirSync(root)).toHaveLength(2);
    expect(existsSync(at(`dipmark-x-${String(process.ppid)}-abcDEF`))).toBe(true);
  });
});
