import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const program = resolve('dist/host/terminal/main.js');
const answers = [
  ...['--lab', 'Mill', '--question', 'Which pan runs cooler?', '--baseline', 'stock pan', '--candidate', 'deep pan'],
  ...['--fill', '2.40 L', '--oil', 'SAE 75W-90'],
];
let root: string;
const at = (...path: readonly string[]): string => join(root, ...path);
/** Runs the tool as a user would, after what a shell may say first; what it said on both streams. */
function called(args: readonly string[], first = ''): { readonly status: number | null; readonly said: string } {
  const shell = `${first} exec "$0" "$@"`;
  const { status, stdout, stderr } = spawnSync('sh', ['-c', shell, process.execPath, program, ...args], {
    cwd: root,
    encoding: 'utf8',
  });
  return { status, said: stdout + stderr };
}
/** One sentence for people: no inside of the program, and the exit status of a call that cannot be met. */
function expectTold(of: ReturnType<typeof called>, words: RegExp): void {
  expect(of.said).toMatch(words);
  expect(of.said).not.toMatch(/fault of dipmark|\n\s+at /);
  expect(of.status).toBe(2);
}

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'dipmark-troubles-'));
  mkdirSync(at('book'));
  cpSync('demo-runs/book.md', at('book', 'book.md'));
  cpSync('demo-runs/where-the-oil-stands', at('book', 'where-the-oil-stands'), { recursive: true });
  expect(called(['build', 'book', '--out', 'site']).status).toBe(0);
}, 120_000);
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

describe('trouble of the machine, from the command line', () => {
  it('a file that may not grow: the site of before stays, and nothing is left beside it', () => {
    const before = readFileSync(at('site', 'index.html'), 'utf8');
    expectTold(called(['build', 'book', '--out', 'site'], 'ulimit -f 100;'), /does not allow .* to be that large/);
    expect(readFileSync(at('site', 'index.html'), 'utf8')).toBe(before);
    expect(readdirSync(root).sort()).toEqual(['book', 'site']);
  });

  it('a file that may not grow as a book is begun: none of its notes is left, and the folder is free again', () => {
    expectTold(called(['start', 'mine', ...answers], 'ulimit -f 1;'), /does not allow/);
    expect(readdirSync(root)).not.toContain('mine');
    expect(called(['start', 'mine', ...answers]).status).toBe(0);
    rmSync(at('mine'), { recursive: true });
  });

  it('a full disk', ({ skip }) => {
    mkdirSync(at('disk'));
    const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=3m', 'tmpfs', at('disk')]).status === 0;
    try {
      if (!mounted) skip('no small disk may be mounted here');
      expectTold(called(['build', 'book', '--out', 'disk/site']), /The disk is full/);
      expect(readdirSync(at('disk'))).toEqual([]);
      expectTold(called(['pack', 'book', '--out', 'disk/pack']), /The disk is full/);
      expect(readdirSync(at('disk'))).toEqual([]);
    } finally {
      if (mounted) spawnSync('umount', [at('disk')]);
      rmSync(at('disk'), { recursive: true });
    }
  });

  it.skipIf(process.platform !== 'linux')('a folder that nobody may write', () => {
    expectTold(called(['build', 'book', '--out', '/sys/site']), /does not allow it \(E[A-Z]+\): \w+ of \/sys\//);
    expectTold(called(['start', '/sys/mine', ...answers]), /does not allow it \(E[A-Z]+\): \w+ of \/sys\/mine/);
  });

  it('a folder that is not there, or no longer', () => {
    expectTold(called(['build', 'nowhere', '--out', 'site']), /There is no folder nowhere/);
    mkdirSync(at('gone'));
    expectTold(called(['check'], 'cd gone; rmdir ../gone;'), /The folder that this was called in is gone/);
  });
});
