import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { buildSite } from '../../src/host/site/build.ts';
import { makeBook } from '../../src/pipeline.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { smallDemo } from './small.ts';

const folder = mkdtempSync(join(tmpdir(), 'dipmark-bytes-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const below = (root: string, at = ''): string[] =>
  readdirSync(join(root, at))
    .sort()
    .flatMap((name) => {
      const path = join(at, name);
      return statSync(join(root, path)).isDirectory() ? below(root, path) : [path];
    });

/** Path and SHA-256 of every file of a site, built afresh with nothing remembered. */
async function sumsOf(name: string, files: readonly SourceFile[]): Promise<string[]> {
  const { pages, files: beside, frame } = makeBook({ files, audience: 'house' });
  const out = join(folder, name);
  await buildSite({ pages, files: beside, frame: frame!, out });
  return below(out).map(
    (path) =>
      `${path} ${createHash('sha256')
        .update(readFileSync(join(out, path)))
        .digest('hex')}`,
  );
}

describe('two builds of one folder', () => {
  it('are the same bytes, file by file, also when the disk gives the files in another order', async () => {
    const files = smallDemo().filter(({ path }) => !/^where|\/runs\/(?!S-0[17]\.|H-01\.)/.test(path));
    const first = await sumsOf('first', files);
    expect(first.length).toBeGreaterThan(50);
    expect(await sumsOf('second', files)).toEqual(first);
    expect(await sumsOf('turned', [...files].reverse())).toEqual(first);
  });
});
