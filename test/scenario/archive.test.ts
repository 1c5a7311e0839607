import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { filesBelow } from '../../src/host/disk/book.ts';
import { stillStore } from '../../src/host/pictures/stills.ts';
import { buildSite } from '../../src/host/site/build.ts';
import { manySeries } from '../../src/host/terminal/archive.ts';
import { madeFrom } from '../../src/host/terminal/make.ts';
import { rebuilder } from '../../src/host/terminal/rebuild.ts';
import { makeArchive, seriesName } from '../bench/archive-book.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-archive-'));
const folder = join(root, 'book');
const runs = ['S-01', 'S-09', 'F-03'];
const many = 7;
const audience = 'house';
const tell = () => undefined;
const store = stillStore();

/** Every file of a site by its path, to be compared whole. */
const siteOf = (out: string): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(join(root, out), { recursive: true, encoding: 'utf8' })
      .sort()
      .filter((path) => statSync(join(root, out, path)).isFile())
      .map((path) => [path, readFileSync(join(root, out, path), 'latin1')]),
  );
const different = (a: ReadonlyMap<string, string>, b: ReadonlyMap<string, string>): string[] =>
  [...new Set([...a.keys(), ...b.keys()])].filter((path) => a.get(path) !== b.get(path));

async function asOne(out: string): Promise<void> {
  const made = await madeFrom({ folder, audience, tell, store });
  if (typeof made === 'string') throw new Error(made);
  await buildSite({ ...made, frame: made.frame!, out: join(root, out) });
}

beforeAll(async () => {
  makeArchive(folder, many, runs);
  await asOne('as-one');
});
afterAll(() => {
  store.close();
  rmSync(root, { recursive: true, force: true });
});

describe('a book of many series', () => {
  it('is the same bytes made as one, and by the command with threads of its own', async () => {
    expect(manySeries(filesBelow(folder))).toHaveLength(many);
    const command = fileURLToPath(new URL('../../dist/host/terminal/main.js', import.meta.url));
    await promisify(execFile)(process.execPath, [command, 'build', folder, '--out', join(root, 'hands')]);
    const whole = siteOf('as-one');
    expect(whole.size).toBeGreaterThan(many * 20);
    expect(different(siteOf('hands'), whole)).toEqual([]);
  });

  it('makes only the series of a changed note again, and is then what a fresh build makes', async () => {
    const told: string[] = [];
    const out = join(root, 'kept');
    const rebuild = rebuilder({ folder, out, audience, tell: (what) => told.push(what), store });
    await rebuild();
    const note = join(folder, seriesName(3), 'runs', 'S-01.md');
    const text = readFileSync(note, 'utf8');
    told.length = 0;
    writeFileSync(note, `${text}\nThe gasket was replaced afterwards.\n`);
    await rebuild();
    writeFileSync(join(folder, seriesName(5), 'runs', 'S-01.md'), '---\nid: S-01\n---\nhalf written');
    const { written, findings } = await rebuild();
    await rebuild.close();
    expect(told.filter((what) => what.endsWith('series'))).toEqual(['1 of 1  series', '1 of 1  series']);
    expect(findings.some(({ place }) => place.file === `${seriesName(5)}/runs/S-01.md`)).toBe(true);
    expect(written).toBeGreaterThan(many * 20);
    await asOne('fresh');
    expect(different(siteOf('kept'), siteOf('fresh'))).toEqual([]);
  });
});
