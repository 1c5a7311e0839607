import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

// The compiled command, as a user starts it: `npm test` compiles first.
const command = resolve('dist/host/terminal/main.js');
const root = mkdtempSync(join(tmpdir(), 'dipmark-commands-'));
const good = join(root, 'good');
const spoilt = join(root, 'spoilt');
const note = join('drop-box', 'series.md');

beforeAll(() => {
  for (const book of [good, spoilt]) cpSync('test/fixtures/forestry', book, { recursive: true });
  const text = readFileSync(join(spoilt, note), 'utf8');
  writeFileSync(join(spoilt, note), text.replace('title:', 'titel:'));
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

const start = (...argv: readonly string[]) => spawn(process.execPath, [command, ...argv], { cwd: root });
const run = (...argv: readonly string[]) =>
  new Promise<{ status: number | null; out: string; told: string }>((resolve) => {
    let out = '';
    let told = '';
    const child = start(...argv);
    child.stdout.on('data', (more: Buffer) => (out += more.toString()));
    child.stderr.on('data', (more: Buffer) => (told += more.toString()));
    child.on('close', (status) => {
      resolve({ status, out, told });
    });
  });

describe('the command', () => {
  it('ends with 0 on a clean book and writes the site where it was told to, with no word on standard output', async () => {
    const { status, out, told } = await run('build', 'good', '--out', 'site');
    expect({ status, out }).toEqual({ status: 0, out: '' });
    expect(told).toMatch(/^\d+ pages and files in site$/m);
    expect(existsSync(join(root, 'site', 'index.html'))).toBe(true);
    // Progress is for a terminal; a pipe gets lines only.
    expect(told).not.toMatch(/[\r\u001b]/);
  });

  it('ends with 1 on findings that stop publication, names their place, and leaves the last good site alone', async () => {
    const checked = await run('check', 'spoilt', '--json');
    expect(checked.status).toBe(1);
    const findings = JSON.parse(checked.out) as readonly Record<string, unknown>[];
    expect(findings).toContainEqual(expect.objectContaining({ level: 'error', file: 'drop-box/series.md' }));
    writeFileSync(join(root, 'site', 'index.html'), 'the last good site');
    const built = await run('build', 'spoilt', '--public', '--out', 'site');
    expect(built.status).toBe(1);
    expect(built.told).toMatch(/drop-box\/series\.md:\d+:\d+ {2}error/);
    expect(built.told).toContain('Nothing was written; site is as it was.');
    expect(readFileSync(join(root, 'site', 'index.html'), 'utf8')).toBe('the last good site');
  });

  it('ends with 2 on a wrong call, and says what to write', async () => {
    expect(await run('biuld')).toMatchObject({ status: 2, out: '' });
    expect(await run('check', 'nowhere')).toMatchObject({ status: 2, told: 'There is no folder nowhere.\n' });
    const over = await run('build', 'good', '--out', 'good');
    expect(over).toMatchObject({ status: 2 });
    expect(over.told).toContain('Write  --out _site');
    expect(existsSync(join(good, 'book.md'))).toBe(true);
  });

  it('serves a preview, builds again when a note is saved, and leaves nothing behind', async () => {
    const child = start('preview', 'good', '--port', '0');
    let told = '';
    const until = (what: RegExp) =>
      new Promise<string>((resolve) => {
        const look = () => {
          const found = what.exec(told);
          if (found === null) return;
          child.stderr.off('data', look);
          resolve(found[1]!);
        };
        child.stderr.on('data', look);
        look();
      });
    child.stderr.on('data', (more: Buffer) => (told += more.toString()));
    const address = await until(/Open (http:\S+)/);
    expect(await (await fetch(address)).text()).toContain('<h1');
    const book = join(good, 'book.md');
    writeFileSync(book, readFileSync(book, 'utf8').replace(/^lab: .*$/m, 'lab: The Other Room'));
    await until(/Open[^]*(pages and files)/);
    expect(await (await fetch(address)).text()).toContain('The Other Room');
    const ended = new Promise((resolve) => child.on('close', resolve));
    child.kill('SIGINT');
    expect(await ended).toBe(0);
  });
});
