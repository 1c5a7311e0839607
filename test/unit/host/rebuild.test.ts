import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { stillStore } from '../../../src/host/pictures/stills.ts';
import { rebuilder } from '../../../src/host/terminal/rebuild.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-rebuild-'));
const folder = join(root, 'book');
const told: string[] = [];
const store = stillStore();
const rebuilderInto = (out: string) =>
  rebuilder({ folder, out: join(root, out), audience: 'house', tell: (what) => told.push(what), store });
const rebuild = rebuilderInto('site');

/** A site as a map of path → bytes in hex-free form, to be compared whole. */
function siteOf(out: string, below = ''): Record<string, string> {
  return Object.assign(
    {},
    ...readdirSync(join(root, out, below)).map((name) => {
      const path = join(below, name);
      const place = join(root, out, path);
      return statSync(place).isDirectory() ? siteOf(out, path) : { [path]: readFileSync(place, 'latin1') };
    }),
  ) as Record<string, string>;
}
const note = () => {
  const runs = join(folder, 'drop-box', 'runs');
  return join(
    runs,
    readdirSync(runs).find((name) => name.endsWith('.md'))!,
  );
};

beforeAll(async () => {
  cpSync('test/fixtures/forestry', folder, { recursive: true });
  await rebuild();
});
afterAll(() => {
  store.close();
  rmSync(root, { recursive: true, force: true });
});

describe('a folder that is built again', () => {
  it('lays out nothing when nothing changed, and stands there as before', async () => {
    const before = siteOf('site');
    told.length = 0;
    const { written } = await rebuild();
    expect(written).toBeGreaterThan(10);
    expect(told).toContain('0 of 0  pages');
    expect(siteOf('site')).toEqual(before);
  });

  it('lays out few pages after one changed note, and is then what a fresh build makes', async () => {
    writeFileSync(note(), `${readFileSync(note(), 'utf8')}\nThe gasket was replaced afterwards.\n`);
    told.length = 0;
    const { written } = await rebuild();
    const laidOut = told.flatMap((what) => /^0 of (\d+) {2}pages$/.exec(what)?.[1] ?? []).map(Number)[0];
    expect(laidOut).toBeGreaterThan(0);
    expect(laidOut).toBeLessThan(written! / 2);
    await rebuilderInto('fresh')();
    expect(Object.values(siteOf('site')).some((text) => text.includes('The gasket was replaced afterwards.'))).toBe(
      true,
    );
    expect(siteOf('site')).toEqual(siteOf('fresh'));
  });

  it('lays out again a page that someone took away', async () => {
    const before = siteOf('site');
    rmSync(join(root, 'site', 'method'), { recursive: true });
    await rebuild();
    expect(siteOf('site')).toEqual(before);
  });

  it('says why there is no book any more and keeps the last good pages', async () => {
    const before = siteOf('site');
    renameSync(join(folder, 'book.md'), join(folder, 'book.txt'));
    const { written, why } = await rebuild();
    renameSync(join(folder, 'book.txt'), join(folder, 'book.md'));
    expect(written).toBeNull();
    expect(why).toContain('no book.md');
    expect(siteOf('site')).toEqual(before);
    expect((await rebuild()).written).toBeGreaterThan(10);
  });
});
