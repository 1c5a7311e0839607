import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readFolder } from '../../src/host/disk/book.ts';
import { buildSite } from '../../src/host/site/build.ts';
import { makeBook } from '../../src/pipeline.ts';
import { chromiumPath } from './flow-site.ts';

/* A site that does not stand at the root of its host: everything it needs has to be found below /tests/, and nothing above. */
const folder = mkdtempSync(join(tmpdir(), 'dipmark-base-'));
const out = join(folder, 'site');
const prefix = '/tests/';
const types: Readonly<Record<string, string>> = {
  ...{ '.html': 'text/html; charset=utf-8', '.css': 'text/css', '.js': 'text/javascript', '.svg': 'image/svg+xml' },
  ...{ '.woff2': 'font/woff2', '.xml': 'application/xml', '.json': 'application/json', '.png': 'image/png' },
};
const asked: string[] = [];
let server: Server;
let root = '';
let browser: Browser | null = null;

/** What a plain web host does: a file as it is, `index.html` for a folder, 404 for the rest. */
const fileFor = (path: string): string | null => {
  if (!path.startsWith(prefix)) return null;
  const file = join(out, decodeURIComponent(path.slice(prefix.length)));
  const page = existsSync(file) && statSync(file).isDirectory() ? join(file, 'index.html') : file;
  return existsSync(page) ? page : null;
};

beforeAll(async () => {
  const files = readFolder('demo-runs').flatMap((file) => {
    if (file.path !== 'book.md') return file.path.startsWith('where-the-oil-stands/') ? [file] : [];
    const note = new TextDecoder()
      .decode(file.bytes)
      .replace(/^address: .*$/m, 'address: https://tests.example')
      .replace(/^path-prefix: .*$/m, `path-prefix: ${prefix}`);
    return [{ ...file, bytes: new TextEncoder().encode(note) }];
  });
  const made = makeBook({ files, audience: 'public' });
  await buildSite({ pages: made.pages, files: made.files, frame: made.frame!, out });
  server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://host');
    const file = fileFor(pathname);
    asked.push(`${file === null ? '404' : '200'} ${pathname}`);
    if (file === null) return void response.writeHead(404).end();
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
    response.end(readFileSync(file));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  root = `http://127.0.0.1:${String((server.address() as AddressInfo).port)}${prefix}`;
  if (chromiumPath !== undefined) browser = await chromium.launch({ executablePath: chromiumPath, args: ['--no-sandbox'] }); // prettier-ignore
}, 300_000);
afterAll(async () => {
  await browser?.close();
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('a site under /tests/', () => {
  it('has every link, picture, style and script of every page below it', () => {
    const seen = new Set<string>();
    const broken: string[] = [];
    const queue = [prefix];
    for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
      if (seen.has(at)) continue;
      seen.add(at);
      const file = fileFor(at);
      if (file === null) broken.push(at);
      else if (file.endsWith('.html'))
        for (const [, to] of readFileSync(file, 'utf8').matchAll(/\b(?:href|src|poster)="([^"#]+)[^"]*"/g)) {
          const url = new URL(to!.replaceAll('&amp;', '&'), `https://tests.example${at}`);
          if (url.host === 'tests.example') queue.push(url.pathname);
        }
    }
    expect(broken).toEqual([]);
    expect([...seen].filter((path) => path.endsWith('.html')).length).toBeGreaterThan(60);
  });

  it('tells feed readers and search engines addresses that are there', () => {
    for (const name of ['feed.xml', 'sitemap.xml']) {
      const addresses = [...readFileSync(join(out, name), 'utf8').matchAll(/https:\/\/tests\.example[^"<\s]*/g)];
      expect(addresses.length).toBeGreaterThan(1);
      for (const [address] of addresses) expect(fileFor(new URL(address).pathname), address).not.toBeNull();
    }
    const home = readFileSync(join(out, 'index.html'), 'utf8');
    expect(home).toContain('<meta property="og:url" content="https://tests.example/tests/">');
  });

  it.skipIf(chromiumPath === undefined)('is read, asked and walked in a browser without one file missing', async () => {
    const page = await browser!.newPage();
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    await page.goto(root);
    await page.locator('nav a', { hasText: 'Where the Oil Stands' }).first().click();
    await page.waitForURL(`${root}series/where-the-oil-stands/**`);
    await page.goto(`${root}find/`);
    await page.locator('#find-words').fill('bearing');
    await page.locator('.find-group a').first().click();
    await page.waitForURL((url) => !url.pathname.includes('/find/'));
    expect(page.url().startsWith(root)).toBe(true);
    expect(said).toEqual([]);
    expect(asked.filter((one) => one.startsWith('404') && !one.endsWith('/favicon.ico'))).toEqual([]);
    expect(asked.some((one) => one.endsWith('.js'))).toBe(true);
  });
});
