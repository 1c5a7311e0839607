import { describe, expect, it } from 'vitest';
import { demoSite } from './demo-site.ts';
import { chromiumPath } from './flow-site.ts';
import { tabTo } from './keys.ts';

const series = 'series/hill-bowl/';
const own = ['', 'find/', ...['stress/', 'own-axle/', 'runs/S-07/'].map((path) => series + path)];
const site = demoSite(own);
const opened = (path: string) => site.opened(site.addressOf(path), { viewport: { width: 1280, height: 844 } });

describe.skipIf(chromiumPath === undefined)('by keys alone', () => {
  it('a question is asked on Find, narrowed by its fields, and its answer opened', async () => {
    const page = await opened('find/');
    await tabTo(page, '#find-words');
    await page.keyboard.type('gasket proud lower left bolt');
    await page.locator('.find-group h3', { hasText: 'Words' }).waitFor();
    await tabTo(page, '.find-group a[href*="runs/S-07"]');
    await page.keyboard.press('Enter');
    await page.waitForURL(/runs\/S-07\/index\.html/);
    await page.goBack();
    await tabTo(page, '#find-fill');
    await page.keyboard.type('2.40 L');
    await tabTo(page, '.find > button');
    await page.keyboard.press('Space');
    expect(await page.locator('#find-fill').inputValue()).toBe('');
    expect(await page.locator('.find [role="status"]').textContent()).toBe('');
  });

  it('a choice of the stress table is made otherwise, a run left out, and all taken back', async () => {
    const page = await opened(`${series}stress/`);
    await tabTo(page, '.stress-switches select');
    await page.keyboard.press('ArrowDown');
    expect(await page.locator('.stress-said').textContent()).toContain('One choice made otherwise');
    expect(await page.locator('.stress-said').getAttribute('role')).toBe('status');
    await tabTo(page, '.stress-switches summary');
    await page.keyboard.press('Enter');
    await tabTo(page, '.stress-runs input');
    await page.keyboard.press('Space');
    expect(await page.locator('.stress-said').textContent()).toContain('2 choices');
    await tabTo(page, '.stress > button');
    await page.keyboard.press('Enter');
    expect(await page.locator('.stress-said').textContent()).toBe('Every choice as published.');
  });

  it("a reader's own speed and oil give figures of their own", async () => {
    const page = await opened(`${series}own-axle/`);
    const before = await page.locator('.axle tbody td').allTextContents();
    await tabTo(page, '#axle-speed');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('30 mph');
    expect(await page.locator('.axle tbody td').allTextContents()).not.toEqual(before);
    await tabTo(page, '.axle > button');
    await page.keyboard.press('Enter');
    expect(await page.locator('.axle tbody td').allTextContents()).toEqual(before);
  });

  it('what scrolls sideways is reached and scrolled, and nothing holds the focus', async () => {
    const page = await opened(`${series}runs/S-07/`);
    await tabTo(page, '[tabindex="0"]');
    for (let i = 0; i < 400; i++) {
      await page.keyboard.press('Tab');
      if (await page.evaluate(() => document.activeElement === document.body)) return;
    }
    throw new Error('the focus never left the page');
  });
});
