import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { buildSite } from '../../src/host/site/build.ts';
import { demoMade } from '../scenario/demo.ts';
import { chromiumPath } from './flow-site.ts';

export interface DemoSite {
  /** Where the site lies. */
  readonly out: string;
  readonly addressOf: (path: string) => string;
  /** An address in a window of its own. */
  readonly opened: (address: string, options?: BrowserContextOptions) => Promise<Page>;
}

/** These sheets of the demo, built once for a file of tests, with what Find asks; and a browser that opens them from the disk. */
export function demoSite(sheets: readonly string[]): DemoSite {
  const folder = mkdtempSync(join(tmpdir(), 'dipmark-browser-'));
  const out = join(folder, 'site');
  let browser: Browser | null = null;
  beforeAll(async () => {
    if (chromiumPath === undefined) return;
    const made = demoMade();
    const pages = made.pages.filter(({ path }) => sheets.includes(path));
    const files = made.files.filter(({ path }) => path.startsWith('find/'));
    await buildSite({ pages, files, frame: made.frame!, out });
    browser = await chromium.launch({ executablePath: chromiumPath, args: ['--no-sandbox'] });
  }, 300_000);
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });
  return {
    out,
    addressOf: (path) => pathToFileURL(join(out, path, 'index.html')).href,
    opened: async (address, options = {}) => {
      const page = await (await browser!.newContext(options)).newPage();
      await page.goto(address);
      return page;
    },
  };
}
