import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { printCopy } from '../../../src/host/terminal/print-copy.ts';
import { printerFor } from '../../../src/host/paper/printers.ts';

// The compiled command, as a user starts it: `npm test` compiles first.
const command = resolve('dist/host/terminal/main.js');
const root = mkdtempSync(join(tmpdir(), 'dipmark-copy-'));
const at = (...path: readonly string[]) => join(root, ...path);
const run = (...argv: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...argv], { cwd: root, encoding: 'utf8' });
  return { status, out: stdout, told: stderr };
};
/** The same inside this process, where only its words and its status are asked for. */
const call = async (copy: string | null, over: Partial<Parameters<typeof printCopy>[0]> = {}) => {
  const told: string[] = [];
  const heard = vi.spyOn(process.stderr, 'write').mockImplementation((text) => told.push(String(text)) > 0);
  const given = { folder: at('book'), copy, out: at('CR-1-issue-1.pdf'), sheet: 'A4', browser: null, series: null };
  const status = await printCopy({ ...given, ...over }).finally(() => {
    heard.mockRestore();
  });
  return { status, told: told.join('') };
};
const note = `---
id: CR-1
title: A baffle in a drop box
client: Client A
version: 1
status: issued
issued: 2026-01-15
articles: [D0, D1]
aliases:
  - { article: D1, as: Article X }
withheld: [S-6]
withheld-why: asked for by the client
not-tested: [wear]
signed-by: [head of the lab]
---
Whether a baffle lets the box turn more easily.
`;
const write = (text: string): void => {
  writeFileSync(at('book', 'drop-box', 'reports', 'CR-1.md'), text);
};
const pdfs = (): readonly string[] => readdirSync(root).filter((name) => /\.pdf|\.part/.test(name));

beforeAll(() => {
  cpSync('test/fixtures/forestry', at('book'), { recursive: true });
  mkdirSync(at('book', 'drop-box', 'reports'));
  mkdirSync(at('book', 'drop-box', 'parts'));
  writeFileSync(
    at('book', 'drop-box', 'parts', '1-one.md'),
    '---\nid: 1-one\nnumber: 1\ntitle: One\nsummary: Not yet.\nstatus: draft\n---\nWords.\n',
  );
  write(note);
});
afterEach(() => {
  for (const name of pdfs()) rmSync(at(name));
  write(note);
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

describe('a client copy from the command line', () => {
  it('is one PDF, named after its number and issue, and the same when it is printed again', async () => {
    const first = run('print', 'CR-1', 'book');
    expect(first).toEqual({ status: 0, out: '', told: 'CR-1, issue 1: CR-1-issue-1.pdf\n' });
    const bytes = readFileSync(at('CR-1-issue-1.pdf'));
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect((await call('CR-1')).status).toBe(0);
    expect(readFileSync(at('CR-1-issue-1.pdf')).equals(bytes)).toBe(true);
    expect(pdfs()).toEqual(['CR-1-issue-1.pdf']);
  });

  it('that was issued is never written over by another', async () => {
    writeFileSync(at('CR-1-issue-1.pdf'), 'what the client holds');
    const { status, told } = await call('CR-1');
    expect(status).toBe(1);
    expect(told).toContain('An issue is never changed: give the note a higher  version:');
    expect(readFileSync(at('CR-1-issue-1.pdf'), 'utf8')).toBe('what the client holds');
  });

  it.each([
    ['an alias that is a real id', 'as: Article X', 'as: D0', 'alias-real', 10],
    ['a part that is a draft', 'not-tested:', 'parts: [1-one]\nnot-tested:', 'report-over-draft', 13],
    ['nobody who signs', 'signed-by: [head of the lab]\n', '', 'field-missing', 2],
    ['a withheld run that nobody knows', 'withheld: [S-6]', 'withheld: [S-66]', 'run-unknown', 11],
    ['a title that tells the name', 'A baffle in', 'The sheet baffle in', 'alias-told', 3],
  ])(
    'is not printed over %s: one finding at its place, and nothing is left on the disk',
    async (_, was, is, code, line) => {
      write(note.replace(was, is));
      const { status, told } = await call('CR-1');
      expect(status).toBe(1);
      expect(told).toMatch(new RegExp(`^drop-box/reports/CR-1\\.md:${String(line)}:\\d+ +error +${code}$`, 'm'));
      expect(told).toContain('1 error');
      expect(told).toContain('Nothing was written.');
      expect(pdfs()).toEqual([]);
    },
  );

  it('is asked for by a name that is there, on a sheet and by a program that are there', async () => {
    const wrong = async (copy: string | null, over: Parameters<typeof call>[1] = {}): Promise<string> => {
      const { status, told } = await call(copy, over);
      expect(status).toBe(2);
      return told;
    };
    expect(await wrong('CR-2')).toContain('There is no client copy CR-2 that can be read. Write  dipmark print CR-1');
    expect(await wrong('CR-1', { folder: at('nowhere') })).toContain('There is no folder');
    expect(await wrong('CR-1', { sheet: 'A5' })).toContain('Write  --sheet A4  or  --sheet letter');
    expect(await wrong('CR-1', { out: at('nowhere', 'a.pdf') })).toContain('There is no folder');
    expect(await wrong('CR-1', { browser: './none' })).toContain('./none is no program that can be run.');
    expect(await wrong(null)).toContain('Say which client copy. Write  dipmark print CR-01');
    expect(pdfs()).toEqual([]);
  });
});

describe('what sets the paper', () => {
  const path = process.env.PATH;
  afterEach(() => {
    process.env.PATH = path;
  });
  const nowhere = () => Promise.resolve(null);

  it('says what to install where neither way is there', async () => {
    process.env.PATH = root;
    const told = await printerFor(null, nowhere);
    expect(told).toContain('npm install');
    expect(told).toContain('--browser');
  });

  it('is an installed browser where the other is not installed', async () => {
    writeFileSync(at('chromium'), '', { mode: 0o755 });
    process.env.PATH = root;
    expect(await printerFor(null, nowhere)).toMatchObject({ name: 'browser' });
    expect(await printerFor(null)).toMatchObject({ name: 'typst' });
  });
});
