import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { chromiumPath } from '../browser/flow-site.ts';

/**
 * The slowest answer of Find in a real browser, ms: each choice of each list alone, then words, conditions and several at once;
 * from the key to the answer laid out. Null where there is no browser.
 */
export async function slowestAnswer_ms(site: string): Promise<number | null> {
  if (chromiumPath === undefined) return null;
  const browser = await chromium.launch({ executablePath: chromiumPath, args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(site, 'find', 'index.html')).href);
    await page.locator('#find-words').fill('gasket');
    await page.locator('.find-group').first().waitFor({ timeout: 60_000 });
    await page.locator('#find-words').fill('');
    const alone = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLSelectElement>('.find select')].flatMap(({ id, options }) =>
        [...options].slice(0, 12).map(({ value }) => ({ [id.slice('find-'.length)]: value })),
      ),
    );
    const all: readonly Readonly<Record<string, string>>[] = [
      ...[{ words: 'a' }, { words: 'gasket' }, { words: 'the oil' }, { fill: '2.40 L' }, { speed: '290 rpm' }],
      ...[{ speed: '290 rpm', sump: '60 °C' }, { speed: '290 rpm', fill: '9 L', sump: 'own' }, ...alone],
    ];
    const times: number[] = [];
    // twice, the first for the engine to get warm, as a person who types does
    for (const fields of [...all, ...all]) times.push(await answered_ms(page, fields));
    return Math.max(...times.slice(all.length));
  } finally {
    await browser.close();
  }
}

const answered_ms = (page: Page, fields: Readonly<Record<string, string>>): Promise<number> =>
  page.evaluate((typed) => {
    const inputs = [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('.find [id^="find-"]')];
    for (const input of inputs) if ('value' in input) input.value = typed[input.id.slice('find-'.length)] ?? '';
    const begun = performance.now();
    inputs[0]!.dispatchEvent(new Event('input', { bubbles: true }));
    document.querySelector('.find-found')!.getBoundingClientRect();
    return performance.now() - begun;
  }, fields);
