import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoMade } from '../scenario/demo.ts';
import { demoSite } from './demo-site.ts';
import { chromiumPath } from './flow-site.ts';

const path = 'series/hill-bowl/stress/';
const site = demoSite([path]);
const address = site.addressOf(path);
const opened = (url = address, javaScriptEnabled = true) => site.opened(url, { javaScriptEnabled });
const wordOf = (page: Page, claim: string) =>
  page
    .locator('.stress tbody tr')
    .filter({ has: page.locator('th', { hasText: new RegExp(`^${claim}$`) }) })
    .locator('td')
    .last()
    .textContent();

describe.skipIf(chromiumPath === undefined)('the switches of the stress table, from the disk', () => {
  it('begin with every word as published', async () => {
    const page = await opened();
    for (const row of await page.locator('.stress tbody tr').all()) {
      const [as, under] = await row.locator('td').allTextContents();
      expect(under).toBe(as);
    }
  });

  it('give for each choice alone the word that stands in the table below', async () => {
    const page = await opened();
    const { claims } = demoMade().series[0]!.stress;
    const own = claims.find(({ claim }) => claim === 'CL-3')!;
    const options = await page.locator('.stress-switches select').first().locator('option').all();
    for (const option of options.slice(1)) {
      await page
        .locator('.stress-switches select')
        .first()
        .selectOption(await option.getAttribute('value'));
      const value = (await option.getAttribute('value'))!.split(':')[1];
      const row = own.rows.find(({ choice }) => choice.kind === 'sump' && String(choice.sump_K) === value);
      if (row !== undefined) expect((await wordOf(page, 'CL-3'))!.replace('→ ', '')).toBe(row.word);
    }
  });

  it('keep several choices in the address: a copy of it shows the same, and one press takes all back', async () => {
    const page = await opened();
    await page.locator('.stress-switches select').first().selectOption('sump:own');
    await page.locator('.stress-switches summary').click();
    await page.locator('.stress-runs input[value="without:H-01"]').check();
    const said = await page.locator('.stress-said').textContent();
    expect(said).toContain('2 choices made otherwise');
    const copy = await opened(page.url());
    expect(await copy.locator('.stress-said').textContent()).toBe(said);
    await copy.locator('.stress > button').click();
    expect(await copy.locator('.stress-said').textContent()).toBe('Every choice as published.');
  });

  it('are not needed: without scripts the whole table is there, and says so', async () => {
    const page = await opened(address, false);
    expect(await page.locator('noscript').count()).toBeGreaterThan(0);
    const { claims } = demoMade().series[0]!.stress;
    const choices = new Set(claims.flatMap(({ rows }) => rows.map(({ choice }) => JSON.stringify(choice))));
    expect(await page.locator('#whole tbody tr').count()).toBe(choices.size);
  });
});
