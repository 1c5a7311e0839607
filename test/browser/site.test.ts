import { AxeBuilder } from '@axe-core/playwright';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoMade } from '../scenario/demo.ts';
import { demoSite } from './demo-site.ts';
import { chromiumPath } from './flow-site.ts';

const series = 'series/hill-bowl/';
/** A sheet of every kind, with a run of every kind of trial. */
const sheets: readonly string[] = [
  ...['', 'find/', 'method/', 'cautions/', 'words/', 'guide/', 'guide/heat-up/', 'guide/handing-over/'],
  ...[
    '',
    'standing/',
    'claims/',
    'stress/',
    'own-axle/',
    'amends/',
    'parts/4/',
    'asks/',
    'not-looked-at/',
    'usual-objections/',
    'rig/',
    'plan/',
    'checks/',
    'runs/',
    'articles/P4/',
    'oils/O1/',
  ].map((path) => series + path),
  ...['grades/', 'side-by-side/', 'side-by-side/F-01~F-05/'].map((path) => series + path),
  ...['cards/', 'cards/26/'].map((path) => series + path),
  'series/where-the-oil-stands/ledger/',
  ...['S-07', 'H-03', 'C-01', 'F-02', 'F-04', 'T-01'].map((run) => `${series}runs/${run}/`),
  ...['H-03/final-temperature', 'F-01/reach', 'hill-bowl/kappa'].map((name) => `${series}workings/${name}/`),
];
const { addressOf, opened: openedAt } = demoSite(sheets);

/** Opens sheets in a window of its own and hands over what the browser said meanwhile: script errors, refused files, broken policy. */
async function inWindow(
  options: BrowserContextOptions,
  use: (page: Page, said: readonly string[]) => Promise<void>,
): Promise<void> {
  const page = await openedAt('about:blank', options);
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  page.on('requestfailed', (request) => {
    // A sheet that is left while its icon still loads gives up that request by itself: nothing was refused.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') said.push(`not loaded: ${request.url()}`);
  });
  page.on('request', (request) => {
    if (!/^(?:file|data):/.test(request.url())) said.push(`asked the network: ${request.url()}`);
  });
  try {
    await use(page, said);
  } finally {
    await page.context().close();
  }
}

/** The long form looks in every window; the short one at each width and each colour scheme once. */
const everyWindow = process.env['EVERY_WINDOW'] !== undefined;
/** 320 and 640 px are a window of 1280 px at 400 and at 200 %: WCAG 2.1, 1.4.4 and 1.4.10. */
const windows = [320, 390, 640, 1280].flatMap((width) =>
  (['light', 'dark'] as const).map((colorScheme) => ({ width, colorScheme })),
);
const brief = ['320 light', '390 dark', '1280 light'];
const opened = windows.filter(({ width, colorScheme }) => everyWindow || brief.includes(`${width} ${colorScheme}`));

/** The slow look at every rule: in the short form each sheet in one of two windows, in turn. */
const judged = ({ colorScheme }: (typeof windows)[number]): readonly string[] =>
  sheets.filter((_, i) => everyWindow || (i % 2 === 0) === (colorScheme === 'dark'));

const widthOf = (page: Page): Promise<readonly [number, number]> =>
  page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth] as const);

const moving = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => [
    ...document.getAnimations().map(() => 'an animation'),
    ...[...document.querySelectorAll('video[autoplay]')].map(({ outerHTML }) => outerHTML),
    ...[...document.querySelectorAll('*')].flatMap((one) => {
      const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one);
      return /[1-9]/.test(transitionDuration) || animationName !== 'none' || scrollBehavior === 'smooth'
        ? [one.outerHTML.slice(0, 80)]
        : [];
    }),
  ]);

describe.skipIf(chromiumPath === undefined)('the demo book in a browser, from the disk', () => {
  it.each(opened)(
    'opens at $width px, $colorScheme, without a word of complaint and without sideways scroll',
    async (w) => {
      await inWindow({ viewport: { width: w.width, height: 844 }, colorScheme: w.colorScheme }, async (page, said) => {
        for (const path of sheets) {
          await page.goto(addressOf(path));
          expect(await page.locator('h1').count(), path).toBe(1);
          const [wide, room] = await widthOf(page);
          expect(wide, `width of ${path}`).toBeLessThanOrEqual(room);
        }
        expect(said).toEqual([]);
      });
    },
  );

  it('moves nothing where less motion is asked for, and keeps its words in the window when they are twice as large', async () => {
    await inWindow({ viewport: { width: 1280, height: 844 }, reducedMotion: 'reduce' }, async (page) => {
      for (const path of sheets) {
        await page.goto(addressOf(path));
        expect(await moving(page), path).toEqual([]);
        await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
        const [wide, room] = await widthOf(page);
        expect(wide, `width of ${path}`).toBeLessThanOrEqual(room);
      }
    });
  });

  it('is looked at on a sheet of every kind', () => {
    const kindsOf = (pages: readonly { readonly kind: string }[]) => [...new Set(pages.map(({ kind }) => kind))].sort();
    const { pages } = demoMade();
    const looked = pages.filter(({ path }) => sheets.includes(path));
    expect(looked.map(({ path }) => path).sort()).toEqual([...sheets].sort());
    // Grading holds clips, and is looked at with them in its own test.
    expect(kindsOf(looked)).toEqual(kindsOf(pages).filter((kind) => kind !== 'grading'));
  });

  // WCAG 2.1, levels A and AA, and common practice, as far as a program can judge it; the rules are those of axe-core.
  it.each(opened.filter(({ width }) => width === 390 || width === 1280))(
    'has nothing at $width px, $colorScheme, that keeps a reader out',
    async (w) => {
      await inWindow({ viewport: { width: w.width, height: 844 }, colorScheme: w.colorScheme }, async (page) => {
        const found: string[] = [];
        for (const path of judged(w)) {
          await page.goto(addressOf(path));
          const { violations } = await new AxeBuilder({ page })
            .setLegacyMode(true)
            .options({ resultTypes: ['violations'] })
            .analyze();
          for (const { impact, id, nodes } of violations)
            found.push(`${path}: ${id} (${String(impact)}): ${nodes[0]?.html.slice(0, 160)} (${nodes.length})`);
        }
        expect(found).toEqual([]);
      });
    },
    240_000,
  );

  it('comes first to the link past the navigation, and from there into the sheet', async () => {
    await inWindow({}, async (page) => {
      await page.goto(addressOf(`${series}standing/`));
      await page.keyboard.press('Tab');
      const target = await page.evaluate(() => document.activeElement?.getAttribute('href'));
      expect(target).toMatch(/^#/);
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      const inside = await page.evaluate(
        (id) => document.querySelector(id)?.contains(document.activeElement) === true,
        target!,
      );
      expect(inside).toBe(true);
    });
  });

  it('leads from the home page to the series by a click, and shows its figures with scripts off', async () => {
    await inWindow({ javaScriptEnabled: false }, async (page, said) => {
      await page.goto(addressOf(''));
      await page.locator('nav a', { hasText: 'The Hill Bowl Series' }).first().click();
      expect(await page.locator('h1').first().textContent()).toContain('Hill Bowl');
      await page.goto(addressOf(`${series}runs/H-03/`));
      expect(await page.locator('svg:visible').count()).toBeGreaterThan(0);
      expect(said).toEqual([]);
    });
  });

  it('cuts no line of code off on paper', async () => {
    // A4 less its margins, at 96 px an inch
    await inWindow({ viewport: { width: 660, height: 990 } }, async (page) => {
      await page.emulateMedia({ media: 'print' });
      await page.goto(addressOf('guide/heat-up/'));
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll('pre')].map(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth),
      );
      expect(cut.length).toBeGreaterThan(1);
      expect(Math.max(...cut)).toBeLessThanOrEqual(0);
    });
  });

  it('prints: a run sheet comes out on paper with its pages', async () => {
    await inWindow({}, async (page) => {
      await page.goto(addressOf(`${series}runs/H-03/`));
      const paper = (await page.pdf({ format: 'A4' })).toString('latin1');
      expect(paper.startsWith('%PDF-')).toBe(true);
      expect(paper.match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeGreaterThan(0);
    });
  });
});
