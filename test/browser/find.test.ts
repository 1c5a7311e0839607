import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoSite } from './demo-site.ts';
import { chromiumPath } from './flow-site.ts';

const own = ['find/', 'series/hill-bowl/runs/S-07/', 'series/hill-bowl/workings/P4~P0/spin-power/'];
const site = demoSite(own);

const opened = async (hash = '', javaScriptEnabled = true): Promise<{ page: Page; said: string[] }> => {
  const page = await site.opened('about:blank', { javaScriptEnabled });
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  await page.goto(site.addressOf('find/') + hash);
  return { page, said };
};
const status = (page: Page) => page.locator('.find [role="status"]');

describe.skipIf(chromiumPath === undefined)('finding, from the disk', () => {
  it('answers by keys alone, says so to who listens, and keeps the question in the address', async () => {
    const { page, said } = await opened();
    await page.locator('#find-words').focus();
    await page.keyboard.type('gasket proud lower left bolt');
    await page.locator('.find-group h3', { hasText: 'Words' }).waitFor();
    expect(await status(page).textContent()).toMatch(/^Found: 1 run, \d+ places? in words\.$/);
    const copy = await opened(new URL(page.url()).hash);
    await copy.page.locator('.find-group h3', { hasText: 'Words' }).waitFor();
    expect(await status(copy.page).textContent()).toBe(await status(page).textContent());
    await page.locator('.find-group a', { hasText: 'S-07' }).first().focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/runs\/S-07\/index\.html$/);
    expect(said).toEqual([]);
  });

  it('says "not tested" with the nearest, and marks what it cannot read', async () => {
    const { page } = await opened('#oil=SAE+75W-80&fill=3.20+L');
    expect(await status(page).textContent()).toMatch(/^Not tested: SAE 75W-80, 3\.20 L\. Nearest: /);
    expect(await page.locator('.find-group li').count()).toBeGreaterThan(1);
    await page.locator('#find-fill').fill('3.2');
    expect(await page.locator('#find-fill').getAttribute('aria-invalid')).toBe('true');
    expect(await status(page).textContent()).toBe('Not asked: see the fields that are marked.');
    await page.locator('.find > button').click();
    expect(await status(page).textContent()).toBe('');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('find-words');
  });

  it('leads from a difference to its working, shows the rest on a press, and keeps nobody out', async () => {
    const { page } = await opened('#article=P4+ring+gear+shroud&trial=spin');
    const rows = page.locator('.find-group tbody tr');
    expect(await rows.count()).toBe(25);
    const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).include('.find').analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
    await page.locator('.find-group button').last().click();
    expect(await rows.count()).toBeGreaterThan(100);
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('A');
    await page
      .locator('.find-group a[href*="spin-power"][href*="P4~P0"], .find-group a[href*="P4~P0"]')
      .first()
      .click();
    await page.waitForURL(/workings\/P4~P0\/spin-power\/index\.html#/);
    expect(
      await page.evaluate(() => document.getElementById(decodeURIComponent(location.hash.slice(1))) !== null),
    ).toBe(true);
  });

  it('lists series, articles, oils and claims with scripts off', async () => {
    const { page } = await opened('', false);
    expect(await page.locator('noscript').first().innerText()).toContain('needs scripts');
    for (const id of ['find-series', 'find-articles', 'find-oils', 'find-claims'])
      expect(await page.locator(`#${id} a`).count(), id).toBeGreaterThan(1);
  });
});
