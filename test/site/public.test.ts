import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { build } from '../../src/host/terminal/build.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { smallDemo, spoilt, textOf, withText } from '../scenario/small.ts';

const folder = mkdtempSync(join(tmpdir(), 'dipmark-public-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const runNote = (id: string, change: (text: string) => string): [string, string] => [
  `hill-bowl/runs/${id}.md`,
  change(textOf('hill-bowl/runs/S-15.md').replaceAll('S-15', id)).replace('order: 31', `order: ${id.length + 70}`),
];

/** What is for the house only. Each stands somewhere in the folder that is built, and in no byte of the public site. */
const heldBack = [
  'K-77',
  'Wendlebury',
  'zinnober',
  'QZX',
  'VWQ',
  'JXK',
  'D-88',
  'marzipan',
  'PX-9',
  'quirkle',
  'krypton-client',
];

/** The small book of three public runs, with a house run, a draft, a house article, odd initials and a client's name. */
function bookWithSecrets(): SourceFile[] {
  const own = smallDemo().filter(({ path }) => !/^where|\/runs\/(?!S-(01|07|08)\.)/.test(path));
  const s07 = 'hill-bowl/runs/S-07.md';
  const initials = textOf(s07)
    .replace('operators: [A]', 'operators: [QZX, VWQ]')
    .replace('released-by: A', 'released-by: VWQ')
    .replace(
      '\n---\n',
      '\nexclude:\n  - { from: 10 s, to: 12 s, channels: [skin], reason: "cable moved", by: JXK }\n---\n',
    );
  const notes: [string, string][] = [
    [s07, initials],
    runNote(
      'K-77',
      (t) =>
        `${t.replace('shown-to: public', 'shown-to: house')}\nFor Wendlebury Transit, who asked for it. zinnober.\n`,
    ),
    runNote('D-88', (t) => `${t.replace('status: accepted', 'status: draft')}\nmarzipan\n`),
    [
      'hill-bowl/articles/PX-9.md',
      textOf('hill-bowl/articles/P4.md')
        .replace('id: P4', 'id: PX-9')
        .replace('ring gear shroud', 'quirkle shroud')
        .replace('shown-to: public', 'shown-to: house'),
    ],
    ['hill-bowl/reports/1.md', 'alias: krypton-client\n'],
    [
      'hill-bowl/reports/R-2.md',
      '---\nid: R-2\ntitle: krypton-client\nclient: krypton-client\nversion: 1\nstatus: draft\narticles: [P0]\naliases:\n  - { article: P0, as: krypton-client }\nsigned-by: [head]\n---\nkrypton-client\n',
    ],
  ];
  const logs: [string, string][] = ['K-77', 'D-88'].map((id, i) => [
    `hill-bowl/runs/${id}.csv`,
    textOf('hill-bowl/runs/S-15.csv').replaceAll('\n40,', `\n${40 + (i + 1) / 10},`),
  ]);
  return [...notes, ...logs].reduce((files, [path, text]) => withText(path, text, files), own);
}

const write = (name: string, files: readonly SourceFile[]): string => {
  const root = join(folder, name);
  rmSync(root, { recursive: true, force: true });
  for (const { path, bytes } of files) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), bytes);
  }
  return root;
};

const below = (root: string, at = ''): string[] =>
  readdirSync(join(root, at)).flatMap((name) => {
    const path = at === '' ? name : `${at}/${name}`;
    return statSync(join(root, path)).isDirectory() ? below(root, path) : [path];
  });

/** Every file of a site as its name and its bytes, one sign a byte; text that is not ASCII is held as UTF-8. */
const bytesOf = (root: string): string[] =>
  below(root).map((path) => `${path}\n${readFileSync(join(root, path), 'latin1')}`);
const sumOf = (root: string): string => createHash('sha256').update(bytesOf(root).join('\0'), 'latin1').digest('hex');
const holding = (root: string, word: string): string[] =>
  below(root).filter((path) => `${path}\n${readFileSync(join(root, path), 'latin1')}`.includes(word));

/** What the terminal was told is kept off the runner's own. */
let told = '';
const run = async (name: string, files: readonly SourceFile[], audience: 'house' | 'public', out: string) => {
  const quiet = (text: string | Uint8Array): boolean => {
    told += String(text);
    return true;
  };
  told = '';
  const streams = [vi.spyOn(process.stderr, 'write'), vi.spyOn(process.stdout, 'write')];
  for (const s of streams) s.mockImplementation(quiet);
  try {
    return await build({ folder: write(name, files), out: join(folder, out), audience, json: false });
  } finally {
    for (const s of streams) s.mockRestore();
  }
};

describe('a public site', () => {
  const site = join(folder, 'public');
  beforeAll(async () => {
    expect(await run('book', bookWithSecrets(), 'public', 'public')).toBe(0);
  });

  it.each(heldBack)('holds %s in no byte and in no name of a file', (word) => {
    expect(holding(site, word)).toEqual([]);
  });

  it('shows the public runs, and how many are held back', () => {
    expect(holding(site, 'S-07').length).toBeGreaterThan(3);
    const page = readFileSync(join(site, 'series/hill-bowl/index.html'), 'utf8').replace(/<[^>]+>/g, '');
    expect(page).toContain('Two runs and one other note are not shown to the public.');
  });

  it('can be asked for what is shown, and what answers was made without what is held back', () => {
    const asked = holding(site, 'dipmarkFind').filter((path) => path.startsWith('find/'));
    expect(asked.sort()).toEqual(['find/book.js', 'find/series/hill-bowl.js']);
    const text = readFileSync(join(site, 'find/series/hill-bowl.js'), 'utf8');
    expect(text).toContain('"heldRuns":2');
    expect(text).toContain('"S-07"');
    expect(heldBack.filter((word) => text.includes(word))).toEqual([]);
  });

  it('is not what the house sees: the house build of the same folder shows them', async () => {
    const whole = bookWithSecrets().filter(({ path }) => !path.endsWith('/reports/1.md'));
    expect(await run('book', whole, 'house', 'house')).toBe(0);
    const shown = ['K-77', 'Wendlebury', 'zinnober', 'QZX', 'VWQ', 'D-88', 'PX-9', 'quirkle'];
    for (const word of shown) expect(holding(join(folder, 'house'), word), word).not.toEqual([]);
    const index = readFileSync(join(folder, 'house', 'find/series/hill-bowl.js'), 'utf8');
    for (const word of ['K-77', 'Wendlebury', 'D-88', 'PX-9']) expect(index).toContain(word);
  });
});

describe('a build that an error stops', () => {
  const broken = spoilt('hill-bowl/runs/S-01.md', '2153 g', '2153', bookWithSecrets());

  it('leaves the last good public site as it was, to the byte, and ends with 1', async () => {
    await run('kept', bookWithSecrets(), 'public', 'kept-site');
    const before = sumOf(join(folder, 'kept-site'));
    expect(await run('kept', broken, 'public', 'kept-site')).toBe(1);
    expect(told).toContain('unit-missing');
    expect(told).toContain('S-01.md:16:33');
    expect(sumOf(join(folder, 'kept-site'))).toBe(before);
    expect(below(folder).filter((path) => path.startsWith('.kept-site'))).toEqual([]);
  });

  it('writes the house site round what it cannot read, and ends with 1', async () => {
    expect(await run('kept', broken, 'house', 'house-broken')).toBe(1);
    const site = join(folder, 'house-broken');
    expect(below(site)).toContain('series/hill-bowl/runs/S-07/index.html');
    expect(below(site)).not.toContain('series/hill-bowl/runs/S-01/index.html');
    expect(readFileSync(join(site, 'series/hill-bowl/checks/index.html'), 'utf8')).toContain('unit-missing');
  });

  it('writes nothing at all where a folder is no book, and ends with 2', async () => {
    const none = smallDemo().filter(({ path }) => path !== 'book.md');
    expect(await run('no-book', none, 'public', 'no-site')).toBe(2);
    expect(readdirSync(folder)).not.toContain('no-site');
  });
});
