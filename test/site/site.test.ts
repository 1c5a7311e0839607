import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { buildSite } from '../../src/host/site/build.ts';
import type { Page } from '../../src/report/page.ts';
import { noMedia } from '../../src/host/site/shown.ts';
import { flowTexts } from './sample-flow.ts';
import { sampleMedia } from './sample-media.ts';
import { frame, pages } from './sample.ts';

const folder = mkdtempSync(join(tmpdir(), 'dipmark-site-'));
const out = join(folder, 'site');
const files = [{ path: 'series/hill-bowl/ledger.json', text: '{"figures": []}\n' }, ...flowTexts];
let shown = noMedia;
let done: () => void;

function filesBelow(root: string, below = ''): readonly string[] {
  return readdirSync(join(root, below)).flatMap((name) => {
    const path = below === '' ? name : `${below}/${name}`;
    return statSync(join(root, path)).isDirectory() ? filesBelow(root, path) : [path];
  });
}
const read = (path: string) => readFileSync(join(out, path), 'utf8');
const htmlFiles = () => filesBelow(out).filter((path) => path.endsWith('.html'));
const tagsOf = (html: string) => html.match(/<[a-z][^>]*>/gi) ?? [];
const valuesOf = (html: string, name: string) =>
  [
    ...tagsOf(html)
      .join('\n')
      .matchAll(new RegExp(` ${name}="([^"]*)"`, 'g')),
  ].map(([, value]) => value!);

beforeAll(async () => {
  ({ shown, close: done } = await sampleMedia(join(folder, 'book'), pages));
  await buildSite({ pages, files, frame, shown, out });
});
afterAll(() => {
  done();
  rmSync(folder, { recursive: true, force: true });
});

describe('every page', () => {
  it('is written where its path says, beside the text files', () => {
    expect([...htmlFiles()].sort()).toEqual(pages.map((page) => `${page.path}index.html`).sort());
    expect(read('series/hill-bowl/ledger.json')).toBe(files[0]!.text);
  });
  it('says its language, its title once in the tab and once as its only first heading', () => {
    for (const page of pages) {
      const html = read(`${page.path}index.html`);
      expect(html).toMatch(/^\s*<!doctype html>/);
      expect(html).toContain('<html lang="en">');
      expect(html.match(/<h1[ >]/g)).toHaveLength(1);
      expect(/<title>([^<]+)<\/title>/.exec(html)?.[1]).toContain(page.title);
    }
  });
  it('runs nothing and styles nothing within itself, and says so to the browser', () => {
    for (const path of htmlFiles()) {
      const html = read(path);
      const policy = /Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1];
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("script-src 'self'; media-src 'self' data:; connect-src 'none'");
      expect(policy).not.toContain('unsafe');
      const tags = tagsOf(html);
      expect(tags.filter((tag) => /^<(?:style|iframe|object|embed|base)\b/i.test(tag))).toEqual([]);
      // A script is a file of the site, or data that no browser runs.
      const own =
        /^<script (?:defer src="(?:\.\.\/)+assets\/(?:film|grading)\.js"|type="application\/json" class="[a-z-]+")>$/;
      expect(tags.filter((tag) => tag.startsWith('<script') && !own.test(tag))).toEqual([]);
      expect(tags.filter((tag) => / (?:style|on[a-z]+)=/i.test(tag))).toEqual([]);
    }
  });
  it('gives no name twice', () => {
    for (const path of htmlFiles()) {
      const ids = valuesOf(read(path), 'id');
      expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    }
  });
  it('points, for the ear, only at names that it has', () => {
    for (const path of htmlFiles()) {
      const html = read(path);
      const ids = new Set(valuesOf(html, 'id'));
      const named = ['aria-labelledby', 'aria-describedby'].flatMap((name) => valuesOf(html, name));
      expect(named.filter((id) => !ids.has(id))).toEqual([]);
    }
  });
  it('prints no number or value that is none', () => {
    for (const path of htmlFiles()) expect(read(path)).not.toMatch(/\bNaN\b|\bundefined\b|\[object /);
  });
  it('says that the data are invented, and who laid it out', () => {
    for (const path of htmlFiles()) {
      expect(read(path)).toContain('Everything in this book is invented');
      expect(read(path)).toMatch(/Laid out by Dipmark \d/);
    }
  });
});

describe('every link', () => {
  it('is relative, ends in a file, and leads to one with its anchor, or is a page that the sample does not hold', () => {
    const known = new Set(filesBelow(out));
    const missing = new Set<string>();
    for (const path of htmlFiles())
      for (const href of [...valuesOf(read(path), 'href')]) {
        if (/^(?:https?|mailto):/.test(href)) continue;
        expect(href).not.toMatch(/^\/|^[a-z]+:/);
        const [file = '', anchor] = href.split('#');
        const target = file === '' ? path : join(dirname(path), decodeURIComponent(file));
        expect(target).not.toMatch(/\/$/);
        if (!known.has(target)) missing.add(target);
        else if (anchor !== undefined) expect(valuesOf(read(target), 'id')).toContain(decodeURIComponent(anchor));
      }
    // The sample names workings and articles that it has no sheets for.
    for (const target of missing) expect(target).toMatch(/^series\/hill-bowl\/(?:working|articles)\//);
    expect(missing.size).toBeGreaterThan(0);
  });
});

describe('every picture', () => {
  it('is drawn for a wide and a narrow column, with a role, a name and a description', () => {
    const html = read('series/hill-bowl/standing/index.html');
    const pictures = html.match(/<svg[^>]*role="img"[^>]*>/g) ?? [];
    expect(pictures.map((svg) => / width="(\d+)"/.exec(svg)?.[1])).toEqual(['690', '350']);
    expect(html).toMatch(/<title id="standing-wide-name">Standing by spin power<\/title>/);
    expect(html).toContain('The same numbers as a table');
  });
  it('is smaller than 20 kB and takes its colours from the style sheet', () => {
    const drawn = htmlFiles().flatMap((path) => read(path).match(/<svg[^>]* role="img"[^]*?<\/svg>/g) ?? []);
    expect(drawn.length).toBeGreaterThan(20);
    for (const svg of drawn) {
      expect(svg.length).toBeLessThan(20_000);
      expect(svg.match(/(?:fill|stroke)="#[0-9a-f]+"/gi)).toBeNull();
    }
  });
});

describe('words of a note', () => {
  const html = () => read('series/hill-bowl/runs/H-05/index.html');
  it('show raw HTML as text and keep no link that could run', () => {
    expect(html()).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(valuesOf(html(), 'href').filter((href) => /^(?:javascript|figure):/i.test(href))).toEqual([]);
  });
  it('have their headings below those of the page', () => {
    expect(html()).toContain('<h3>Second refit</h3>');
  });
});

describe('code', () => {
  it('is set by the highlighter where it knows the language, and as plain text where it does not, escaped in both', () => {
    const html = read('guide/index.html');
    expect(html).toMatch(/<pre class="language-yaml"[^>]*>.*token key/s);
    expect(html).toContain('a &lt; b &amp; c');
    expect(html).not.toContain('<b>');
  });
});

describe('a build', () => {
  it('of the same pages is the same bytes', async () => {
    const again = join(folder, 'again');
    await buildSite({ pages, files, frame, shown, out: again });
    expect(filesBelow(again)).toEqual(filesBelow(out));
    for (const path of filesBelow(out))
      expect(readFileSync(join(again, path)).equals(readFileSync(join(out, path)))).toBe(true);
  });
  it('says nothing by itself, even where code to be set takes most of its time', async () => {
    const guide = pages.find(({ kind }) => kind === 'guide')!;
    const code = { kind: 'code', language: 'yaml', text: 'a: [1, 2, "b"] # c\n'.repeat(3000) } as const;
    const page: Page = {
      ...guide,
      sections: [{ ...guide.sections[0]!, blocks: Array(8).fill(code) as (typeof code)[] }],
    };
    const heard = (['log', 'warn', 'error', 'info'] as const).map((way) =>
      vi.spyOn(console, way).mockImplementation(() => undefined),
    );
    try {
      await buildSite({ pages: [page], files: [], frame, out: join(folder, 'code') });
      expect(heard.flatMap(({ mock }) => mock.calls)).toEqual([]);
    } finally {
      for (const one of heard) one.mockRestore();
    }
  });
  it('leaves no page of the build before, and shows a changed text in the same process', async () => {
    const place = join(folder, 'changed');
    await buildSite({ pages: pages.slice(0, 2), files, frame, out: place });
    const renamed = { ...pages[0]!, lead: ['A new first sentence.'] };
    await buildSite({ pages: [renamed], files: [], frame, out: place });
    expect(filesBelow(place).filter((path) => !/^(?:assets|schema)\//.test(path))).toEqual(['index.html']);
    expect(readFileSync(join(place, 'index.html'), 'utf8')).toContain('A new first sentence.');
  });
  it('that fails leaves the last good site as it was, and nothing beside it', async () => {
    const before = read('index.html');
    const formula = { kind: 'formula', latex: '\\frac{1', plain: 'broken' } as const;
    const broken: Page = { ...pages[0]!, sections: [{ id: 'x', heading: null, margin: [], blocks: [formula] }] };
    await expect(buildSite({ pages: [broken], files, frame, out })).rejects.toThrow();
    await expect(buildSite({ pages, files: [{ path: '../out.txt', text: '' }], frame, out })).rejects.toThrow(
      /outside the site/,
    );
    expect(read('index.html')).toBe(before);
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });
  it('does not replace a folder that is not a site', async () => {
    const place = mkdtempSync(join(folder, 'papers-'));
    writeFileSync(join(place, 'letter.txt'), 'mine');
    await expect(buildSite({ pages, files, frame, out: place })).rejects.toThrow(/left alone/);
    expect(readdirSync(place)).toEqual(['letter.txt']);
  });
});
