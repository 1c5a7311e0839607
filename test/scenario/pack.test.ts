import { execFile } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const run = promisify(execFile);
const root = mkdtempSync(join(tmpdir(), 'dipmark-pack-'));
const modules = join(root, 'node_modules');
const own = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string; bin: { dipmark: string } };
const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
  packages: Record<string, { dev?: boolean; devOptional?: boolean }>;
};

/** An empty project with the packed package in it and beside it what an install would bring: nothing that is for developers. */
beforeAll(async () => {
  // Scripts are left out: the compiled form is there, and other tests are using it.
  await run('npm', ['pack', '--ignore-scripts', '--silent', '--pack-destination', root]);
  await run('tar', ['-xzf', `dipmark-${own.version}.tgz`], { cwd: root });
  mkdirSync(modules);
  cpSync(join(root, 'package'), join(modules, 'dipmark'), { recursive: true });
  const brought = Object.entries(lock.packages).flatMap(([path, { dev, devOptional }]) =>
    /^node_modules\/(?:@[^/]+\/)?[^/]+$/.test(path) && dev !== true && devOptional !== true ? [path] : [],
  );
  for (const path of brought.filter((each) => existsSync(each))) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    symlinkSync(resolve(path), join(root, path));
  }
  cpSync('test/fixtures/forestry', join(root, 'book'), { recursive: true });
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

describe('the packed package, installed in an empty project', () => {
  const dipmark = (...argv: readonly string[]) =>
    run(process.execPath, [join(modules, 'dipmark', own.bin.dipmark), ...argv], { cwd: root });

  it('says its version and builds a book, with nothing of this folder but what it declares', async () => {
    expect((await dipmark('--version')).stdout).toBe(`${own.version}\n`);
    await dipmark('build', 'book');
    const home = readFileSync(join(root, '_site', 'index.html'), 'utf8');
    expect(home).toContain('<h1');
    for (const [, sheet] of home.matchAll(/<link rel="stylesheet" href="([^"]+)"/g))
      expect(existsSync(join(root, '_site', sheet!)), sheet).toBe(true);
  });

  it('holds the compiled tool, its templates, its licence and its history, and no tests or demo', () => {
    const has = (path: string) => existsSync(join(modules, 'dipmark', path));
    for (const path of ['dist/pipeline.d.ts', '_includes', 'content', '.eleventy.js', 'README.md', 'LICENSE'])
      expect(has(path), path).toBe(true);
    for (const path of ['CHANGELOG.md', 'content/schema/run.schema.json']) expect(has(path), path).toBe(true);
    for (const path of ['src', 'test', 'demo-runs', '_site', '.ci']) expect(has(path), path).toBe(false);
  });

  it('describes itself without a mistake', async () => {
    const { messages, pkg } = await publint({ pkgDir: '.', pack: false });
    expect(messages.map((message) => formatMessage(message, pkg, { color: false }))).toEqual([]);
  });
});
