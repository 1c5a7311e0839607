import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, type Browser, type Page as Tab } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isMap, isScalar, isSeq, parseDocument } from 'yaml';
import { buildSite } from '../../src/host/site/build.ts';
import { readNotes } from '../../src/notes/book.ts';
import { makeBook, type Made } from '../../src/pipeline.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { demoFiles } from '../scenario/demo.ts';
import { fileOf } from '../scenario/small.ts';
import { chromiumPath } from './flow-site.ts';
import { hostileSnippets } from './hostile-snippets.ts';

// Every free text of the demo is replaced, and all snippets stand in the words below the fields as well.
const free: ReadonlySet<string> = new Set([
  ...[
    'name',
    'title',
    'summary',
    'question',
    'hook',
    'conflicts',
    'lab',
    'contact',
    'licence',
    'note',
    'what',
    'where',
  ],
  ...['position', 'certificate', 'drive', 'absorbers', 'boundary', 'condition', 'place', 'reason', 'by', 'operators'],
  ...['released-by', 'words', 'caption', 'alt', 'sentence', 'text', 'cause', 'rule', 'answer', 'reply', 'batch', 'why'],
  ...[
    'not-tested',
    'differences',
    'status-reason',
    'client',
    'withheld-why',
    'signed-by',
    'observer',
    'material',
    'method',
  ],
  ...[
    'accepted-by',
    'maker',
    'fill-advice',
    'supersedes',
    'seen',
    'remarks',
    'from-role',
    'found-by',
    'baseline-rerun',
  ],
]);
/** Sheets are opened once of each kind; of runs, articles and workings a few. */
const seldom = /\/(?:runs|workings|articles|oils|side-by-side)\/[^/]+/;

let next = 0;
const snippet = (): string => hostileSnippets[next++ % hostileSnippets.length]!;
/** A line of a note whose value is a snippet, by file and line; `tame` are those that the checks refused. */
const tame = new Set<string>();
let put = 0;
/** What the checks still refuse at the end. */
let last: readonly string[] = [];
/** A note that holds a zero byte or another control is refused whole; below the fields stand the others. */
const asWords = hostileSnippets.filter((text) => !/\p{Cc}(?<![\n\t])/u.test(text));

function hostile(file: SourceFile): SourceFile {
  if (!file.path.endsWith('.md') || !/^(?:book\.md|hill-bowl\/)/.test(file.path)) return file;
  const text = new TextDecoder().decode(file.bytes);
  const [, head = '', body = ''] = /^---\n([^]*?\n)---\n?([^]*)$/.exec(text) ?? [];
  const changes: { readonly from: number; readonly to: number; readonly value: string }[] = [];
  const visit = (node: unknown, key: string): void => {
    if (isMap(node)) for (const { key: k, value } of node.items) visit(value, String(isScalar(k) ? k.value : k));
    else if (isSeq(node)) for (const item of node.items) visit(item, key);
    else if (isScalar(node) && typeof node.value === 'string' && free.has(key) && node.range) {
      const [from, to] = node.range;
      const line = head.slice(0, from).split('\n').length + 1;
      const value = snippet();
      if (!tame.has(`${file.path}:${String(line)}`)) changes.push({ from, to, value });
    }
  };
  visit(parseDocument(head).contents, '');
  let written = head;
  for (const { from, to, value } of [...changes].reverse())
    written = `${written.slice(0, from)}${JSON.stringify(value)}${/\s$/.test(head.slice(from, to)) ? '\n' : ''}${written.slice(to)}`;
  put += changes.length;
  const all = /(?:S-07|F-01|4-[a-z-]+|COR-01|series|P4|O1|rig)\.md$/.test(file.path)
    ? asWords.join('\n\n')
    : asWords[next % asWords.length]!;
  return fileOf(file.path, `---\n${written}---\n${body}\n\n${all}\n`);
}

const folder = mkdtempSync(join(tmpdir(), 'dipmark-hostile-'));
const out = join(folder, 'site');
let browser: Browser;
let made: Made;
let opened: readonly string[];

beforeAll(async () => {
  if (chromiumPath === undefined) return;
  const files = demoFiles();
  let notes: readonly SourceFile[] = [];
  for (let turn = 0; turn < 8; turn++) {
    [next, put] = [0, 0];
    notes = files.map(hostile);
    const { findings, series } = readNotes(notes);
    const wrong = [...findings, ...series.flatMap((one) => one.findings)].filter(({ level }) => level === 'error');
    last = wrong.map(({ code, place }) => `${code} ${place.file}:${String(place.line)}`);
    if (wrong.length === 0) break;
    for (const { place } of wrong) tame.add(`${place.file}:${String(place.line)}`);
  }
  made = makeBook({ files: notes, audience: 'house' });
  const kinds = new Map<string, number>();
  const pages = made.pages.filter(({ path, kind }) => {
    const seen = kinds.get(kind) ?? 0;
    kinds.set(kind, seen + 1);
    return !seldom.test(path) || seen < 3 || /runs\/(?:S-07|F-01|H-09)\/|articles\/P4\/|oils\/O1\//.test(path);
  });
  const wanted = pages.filter(({ kind }) => kind !== 'working' || (kinds.get('w') ?? 0) < 3);
  opened = wanted.map(({ path }) => path);
  await buildSite({
    pages: wanted,
    files: made.files.filter(({ path }) => path.startsWith('find/')),
    frame: made.frame!,
    out,
  });
  browser = await chromium.launch({ executablePath: chromiumPath, args: ['--no-sandbox'] });
}, 300_000);
afterAll(async () => {
  if (chromiumPath !== undefined) await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

describe.skipIf(chromiumPath === undefined)('a book full of hostile texts', () => {
  it('is read: what cannot stand in a field is refused at its place, and the rest is text', () => {
    expect(hostileSnippets.length).toBeGreaterThanOrEqual(150);
    expect(last).toEqual([]);
    expect(put).toBeGreaterThan(hostileSnippets.length);
    expect(made.pages.length).toBeGreaterThan(500);
    expect(existsSync(join(folder, 'escaped.html'))).toBe(false);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    console.log(
      `${String(hostileSnippets.length)} snippets in ${String(put)} fields; ${String(tame.size)} lines refused by the checks`,
    );
  });

  it(
    'runs nothing, asks for nothing outside and breaks no policy, on any kind of page',
    { timeout: 240_000 },
    async () => {
      const context = await browser.newContext();
      const outside: string[] = [];
      const said: string[] = [];
      const tab = await context.newPage();
      await context.route(/^(?!file:)/, (route) => {
        outside.push(route.request().url());
        return route.abort();
      });
      listen(tab, said);
      context.on('page', (another) => said.push(`a window was opened: ${another.url()}`));
      let executed = 0;
      for (const path of opened) {
        await tab.goto(pathToFileURL(join(out, path, 'index.html')).href);
        await tab.evaluate(() => {
          for (const one of document.querySelectorAll('details')) one.open = true;
          for (const one of document.querySelectorAll<HTMLElement>('a, summary, img, p, td')) {
            one.dispatchEvent(new MouseEvent('mouseover'));
            one.dispatchEvent(new PointerEvent('pointerenter'));
          }
        });
        executed += await tab.evaluate(() => (window as unknown as { __hostile?: number }).__hostile ?? 0);
        const shown = await tab.evaluate(() => document.body.innerText);
        expect(shown.includes('49SEVENS'), `${path}: a template was worked out`).toBe(false);
        const odd = await tab.evaluate(() =>
          [...document.querySelectorAll('a[href], area[href]')]
            .map((one) => one.getAttribute('href') ?? '')
            .filter((href) => /^\s*(?!(?:https?|mailto):)[a-z-]+:/i.test(href)),
        );
        expect(odd, path).toEqual([]);
        const foreign = await tab.evaluate(
          () =>
            document.querySelectorAll(
              'main script:not([type="application/json"]):not([type="application/ld+json"]):not([src]), main iframe, main object, main embed, main base, main form[action^="http"], main [onerror], main [onload], main [onclick]',
            ).length,
        );
        expect(foreign, path).toBe(0);
      }
      console.log(
        `${String(opened.length)} pages opened: ${String(executed)} executions, ${String(outside.length)} outside requests`,
      );
      expect(executed).toBe(0);
      expect(outside).toEqual([]);
      expect(said).toEqual([]);
      await context.close();
    },
  );
});

function listen(tab: Tab, said: string[]): void {
  tab.on('dialog', (dialog) => {
    said.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  tab.on('console', (message) => {
    if (message.type() === 'error' || /Content Security Policy/i.test(message.text())) said.push(message.text());
  });
  tab.on('pageerror', (error) => said.push(error.message));
}
