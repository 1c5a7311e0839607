import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { commanded } from '../../../src/host/terminal/commanded.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-print-'));
const at = (...path: readonly string[]) => join(root, ...path);
/** The command in this process, as `commands.test.ts` calls it in one of its own. Arguments after > are paths in the folder. */
async function run(...argv: readonly string[]) {
  const said = { out: '', told: '' };
  const streams = [
    vi.spyOn(process.stdout, 'write').mockImplementation((text) => (said.out += String(text)) !== ''),
    vi.spyOn(process.stderr, 'write').mockImplementation((text) => (said.told += String(text)) !== ''),
  ];
  try {
    const status = await commanded(argv.map((one) => (one.startsWith('>') ? at(one.slice(1)) : one)));
    const short = (text: string): string => text.replaceAll(`${root}/`, '');
    return { status, out: short(said.out), told: short(said.told) };
  } finally {
    for (const stream of streams) stream.mockRestore();
  }
}

/** A book whose plan wants one run more of the lid than there are, and one whose plan has no run yet. */
beforeAll(() => {
  for (const book of ['done', 'open', 'ahead']) cpSync('test/fixtures/forestry', at(book), { recursive: true });
  for (const book of ['open', 'ahead']) {
    const plan = at(book, 'drop-box', 'plan.md');
    const text = readFileSync(plan, 'utf8');
    writeFileSync(plan, text.replace(/(article: D1, .*wanted: )3/, '$14'));
  }
  rmSync(at('ahead', 'drop-box', 'runs'), { recursive: true });
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

describe('run cards from the command line', () => {
  it('are written one a run that is still wanted, with the seed of their order', async () => {
    const { status, out, told } = await run('print', '>open', '--cards', '--out', '>cards');
    expect({ status, out }).toEqual({ status: 0, out: '' });
    expect(told).toContain('drop-box: order drawn from seed 1\n1 card in cards\n');
    const list = readFileSync(at('cards', 'index.html'), 'utf8');
    const [, href = ''] = /<a href="([^"]*cards\/\d+\/[^"]*)"/.exec(list) ?? [];
    expect(readFileSync(at('cards', href), 'utf8')).toContain('kind-card');
  });

  it('are written for every planned run where that is asked, and also into a folder among the notes that is never read', async () => {
    const { status, told } = await run('print', '>done', '--cards', '--all', '--out', '>done/_cards');
    expect(status).toBe(0);
    expect(told).toContain('8 cards in done/_cards');
    expect((await run('check', '>done')).status).toBe(0);
    expect(existsSync(at('done', '_cards', 'index.html'))).toBe(true);
  });

  it('lead to no page that is not there', () => {
    const pages = ['index.html', 'series/drop-box/cards/index.html', 'series/drop-box/cards/1/index.html'];
    for (const page of pages) {
      const html = readFileSync(at('done', '_cards', page), 'utf8');
      const links = [...html.matchAll(/<a [^>]*href="([^"#]+)/g)].map(([, to]) =>
        join('done', '_cards', page, '..', to!),
      );
      for (const to of links) expect(existsSync(at(to)), `${page} → ${to}`).toBe(true);
    }
  });

  it('are not written where every planned run is done, and the last ones are left alone', async () => {
    const { status, told } = await run('print', '>done', '--cards', '--out', '>cards');
    expect(status).toBe(0);
    expect(told).toContain('Every planned run is done. Write  --all');
    expect(existsSync(at('cards', 'index.html'))).toBe(true);
  });

  it('never take the place of a site or of the notes', async () => {
    expect((await run('build', '>done', '--out', '>site')).status).toBe(0);
    const over = await run('print', '>open', '--cards', '--out', '>site');
    expect(over).toMatchObject({ status: 2 });
    expect(over.told).toContain('site holds a site, and the cards would take its place. Write  --out _cards.');
    const notes = await run('print', '>open', '--cards', '--out', '>open');
    expect(notes).toMatchObject({ status: 2 });
    expect(notes.told).toContain('Write  --out _cards');
    expect(existsSync(at('site', 'method', 'index.html'))).toBe(true);
  });

  it('are of one series where one is named; an unknown one is told what there is', async () => {
    expect((await run('print', '>open', '--cards', '--series', 'drop-box', '--out', '>cards')).status).toBe(0);
    const { status, told } = await run('print', '>open', '--cards', '--series', 'dropbox', '--out', '>cards');
    expect(status).toBe(2);
    expect(told).toContain('There is no series dropbox that could be read. Write one of: drop-box');
  });
});

describe('a check of a plan without a run', () => {
  it('says what the plan can and cannot separate, kind of trial by kind of trial, in lines of a terminal', async () => {
    const { status, out } = await run('check', '>ahead');
    expect(status).toBe(0);
    expect(out).toContain('drop-box/plan.md  no run yet: what this plan can and cannot separate');
    expect(out).toMatch(/^ {2}spin$[^]*^ {2}heat-up$/m);
    expect(out).toMatch(/Article against the baseline at the same litres\n {6}can {5}D1 with U1\n/);
    expect(out).toMatch(/What the oil does\n {6}cannot {2}Run with one oil only\n/);
    expect(
      Math.max(
        ...out
          .split('\n')
          .slice(0, 60)
          .map((line) => line.length),
      ),
    ).toBeLessThanOrEqual(100);
  });

  it('stands beside the findings as JSON, with the line of the cell that it is of', async () => {
    const plan = readFileSync(at('ahead', 'drop-box', 'plan.md'), 'utf8').split('\n');
    const cellLine = plan.findIndex((line) => line.includes('trial: spin, article: D1')) + 1;
    const list = JSON.parse((await run('check', '>ahead', '--json')).out) as readonly Record<string, unknown>[];
    const reach = list.filter(({ code }) => code === 'plan-reach');
    expect(reach).toContainEqual(
      expect.objectContaining({
        ...{ trial: 'spin', effect: 'same litres', of: 'D1 with U1', estimable: true, level: 'notice' },
        ...{ file: 'drop-box/plan.md', line: cellLine, cells: [1, 0] },
      }),
    );
    // Every field of a finding is there, so that a reader of findings can show it.
    for (const one of reach)
      for (const field of ['code', 'level', 'file', 'line', 'column', 'says', 'why', 'write'])
        expect(one[field], field).toBeDefined();
  });

  it('is silent once a run is there', async () => {
    expect((await run('check', '>open')).out).not.toContain('can and cannot separate');
    expect((await run('check', '>open', '--json')).out).not.toContain('plan-reach');
  });
});
