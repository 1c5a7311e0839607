import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { buildSite } from '../../src/host/site/build.ts';
import { readFolder } from '../../src/host/disk/book.ts';
import { makeBook } from '../../src/pipeline.ts';
import { chromiumPath } from '../browser/flow-site.ts';
import type { Measure } from './book.ts';

/** A change on the page of a reader's own axle in a real browser: from the key to the new figures laid out. */
export async function axleBench(): Promise<readonly Measure[]> {
  if (chromiumPath === undefined) return [];
  const folder = mkdtempSync(join(tmpdir(), 'dipmark-bench-axle-'));
  const browser = await chromium.launch({ executablePath: chromiumPath, args: ['--no-sandbox'] });
  try {
    const made = makeBook({ files: readFolder('demo-runs'), audience: 'house' });
    const pages = made.pages.filter(({ path }) => path === 'series/hill-bowl/own-axle/');
    await buildSite({ pages, files: [], frame: made.frame!, out: join(folder, 'site') });
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(folder, 'site', pages[0]!.path, 'index.html')).href);
    const times = await page.evaluate(() => {
      const field = document.querySelector<HTMLInputElement>('#axle-speed')!;
      const table = document.querySelector<HTMLElement>('.axle table')!;
      return Array.from({ length: 80 }, (_, i) => {
        const begun = performance.now();
        field.value = `${String(100 + i * 5)} rpm`;
        field.dispatchEvent(new Event('input', { bubbles: true }));
        table.getBoundingClientRect();
        return performance.now() - begun;
      }).slice(20);
    });
    const sorted = [...times].sort((a, b) => a - b);
    const told = (value: number): number => Number(value.toFixed(1));
    return [
      { name: 'own axle in a browser, a change', value: told(sorted[sorted.length / 2]!), unit: 'ms' },
      { name: 'own axle in a browser, slowest change', value: told(sorted.at(-1)!), unit: 'ms' },
    ];
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
