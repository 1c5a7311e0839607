import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoSite } from './demo-site.ts';
import { chromiumPath } from './flow-site.ts';

const path = 'series/hill-bowl/own-axle/';
const site = demoSite([path]);
const address = site.addressOf(path);
const opened = (url = address, javaScriptEnabled = true) => site.opened(url, { javaScriptEnabled });
const ownTable = (page: Page): Promise<string[]> => page.locator('.axle tbody td').allTextContents();
const type = (page: Page, field: string, text: string): Promise<void> => page.locator(`#axle-${field}`).fill(text);

describe.skipIf(chromiumPath === undefined)("a reader's own axle, from the disk", () => {
  it('opens on the case of the series, with the figures of the table that needs no script', async () => {
    const page = await opened();
    const own = await page.locator('.axle tbody tr').all();
    const fixed = await page.locator('#own-axle-reference tbody tr, table#own-axle-reference tbody tr').all();
    expect(own).toHaveLength(5);
    expect(fixed).toHaveLength(5);
    for (const [i, row] of own.entries()) {
      const cells = (await row.locator('td').allTextContents()).map((text) => text.trim());
      const published = (await fixed[i]!.locator('td, th').allTextContents()).map((text) => text.trim());
      expect(published.slice(1, 5)).toEqual(cells);
    }
  });

  it('takes another unit, keeps it in the address, and a copy of the address shows the same', async () => {
    const page = await opened();
    const before = await ownTable(page);
    await type(page, 'speed', '30 mph');
    await type(page, 'sump', '150 °F');
    const after = await ownTable(page);
    expect(after).not.toEqual(before);
    const copy = await opened(page.url());
    expect(await ownTable(copy)).toEqual(after);
    await copy.locator('.axle > button').click();
    expect(await ownTable(copy)).toEqual(before);
  });

  it('says beside the field what will not do, shows no figure then, and goes on when it is mended', async () => {
    const page = await opened();
    await type(page, 'load', '30 hp');
    expect(await page.locator('#axle-load').getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('#axle-load-why').textContent()).toContain('hp');
    expect(await page.locator('.axle table').isVisible()).toBe(false);
    await type(page, 'load', '22 kW');
    expect(await page.locator('.axle table').isVisible()).toBe(true);
  });

  it('gives the reason where it is not carried: too fast, another fill, a hotter place', async () => {
    const page = await opened();
    await type(page, 'speed', '900 rpm');
    expect((await ownTable(page)).join(' ')).toContain('of the wheel only');
    await type(page, 'speed', '290 rpm');
    await type(page, 'fill', '3.2 L');
    expect((await ownTable(page)).join(' ')).toContain('run with 2.40');
    await type(page, 'ambient', '45 °C');
    expect((await ownTable(page)).join(' ')).toContain('no further than 10 K');
  });

  it('asks for viscosities only of another oil, and for the battery only of an electric drive', async () => {
    const page = await opened();
    expect(await page.locator('#axle-nu40').isVisible()).toBe(false);
    await page.locator('#axle-oil').selectOption('other');
    expect(await page.locator('#axle-nu40').isVisible()).toBe(true);
    await page.locator('#axle-drive').selectOption('diesel');
    expect(await page.locator('#axle-efficiency').isVisible()).toBe(false);
    expect((await ownTable(page)).join(' ')).toContain('L/100 km');
  });

  it('shows the table of the series and a word of why without scripts', async () => {
    const page = await opened(address, false);
    expect(await page.locator('.axle input').count()).toBe(0);
    expect(await page.locator('noscript').count()).toBeGreaterThan(0);
    expect(await page.locator('#own-axle-reference').isVisible()).toBe(true);
  });

  it('adds no more than 60 kB, packed', () => {
    const script = gzipSync(readFileSync(join(site.out, 'assets', 'axle.js'))).length;
    const held = readFileSync(join(site.out, path, 'index.html'), 'utf8');
    expect(script + gzipSync(held).length).toBeLessThan(60_000);
  });
});
