import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../src/host/terminal/serve.ts';
import {
  buildFlowSite,
  byHand,
  chromiumPath,
  clipLoaded,
  inWindow,
  noteOf,
  onDisk,
  series,
  timesIn,
} from './flow-site.ts';

const folder = mkdtempSync(join(tmpdir(), 'dipmark-film-'));
const out = join(folder, 'site');
/** The same book with a camera that runs 7.4 s ahead of the logger. */
const ahead = join(folder, 'ahead');
const aheadNote = noteOf('F-01', (note) => note.replace('sync: 00:00:12.000', 'sync: 00:00:19.400'));

let browser: Browser;
let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  if (chromiumPath === undefined) return;
  await buildFlowSite(out);
  await buildFlowSite(ahead, new Map([['hill-bowl/runs/F-01.md', aheadNote]]));
  server = await serve({ folder: out, port: 0 });
  browser = await chromium.launch({ executablePath: chromiumPath, args: ['--no-sandbox'] });
}, 300_000);
afterAll(async () => {
  if (chromiumPath !== undefined) {
    await browser.close();
    server.close();
  }
  rmSync(folder, { recursive: true, force: true });
});
const served = (path: string): string => `http://127.0.0.1:${server.port}/${series}${path}`;

/** Times of all cues that the player of the page has, s. */
async function cueTimes(page: Page): Promise<(readonly [number, number])[]> {
  await page.waitForFunction(() => (document.querySelector('video')?.textTracks[0]?.cues?.length ?? 0) > 0);
  return page.evaluate(() =>
    [...document.querySelector('video')!.textTracks[0]!.cues!].map((cue) => [cue.startTime, cue.endTime] as const),
  );
}

function agree(found: readonly (readonly [number, number])[], written: readonly (readonly [number, number])[]): void {
  expect(found).toHaveLength(written.length);
  const off = found.map(([from, to], i) => Math.max(Math.abs(from - written[i]![0]), Math.abs(to - written[i]![1])));
  expect(Math.max(...off)).toBeLessThan(0.01);
}

/** Where the mark stands on the drawing that is seen, as log time, s; null without a mark. */
const markTime = (page: Page): Promise<number | null> =>
  page.evaluate(() => {
    const svg = [...document.querySelectorAll<SVGSVGElement>('.picture-film svg')].find(
      (each) => each.clientWidth > 0,
    )!;
    if (svg.querySelector('.film-mark')!.getAttribute('visibility') !== 'visible') return null;
    const of = (name: string) => Number(svg.dataset[name]);
    const x = Number(svg.querySelector('.film-line')!.getAttribute('x1'));
    const minutes = of('timeFrom') + ((x - of('left')) / (of('right') - of('left'))) * (of('timeTo') - of('timeFrom'));
    return minutes * 60;
  });

const send = (page: Page, to_s: number): Promise<void> =>
  page.evaluate(
    (time) =>
      new Promise<void>((done) => {
        const video = document.querySelector('video')!;
        video.addEventListener(
          'seeked',
          () => {
            done();
          },
          { once: true },
        );
        video.currentTime = time;
      }),
    to_s,
  );

// The captions that lie beside the run are the source of these times.
const written = timesIn('demo-runs/hill-bowl/runs/F-01.vtt');

describe.skipIf(chromiumPath === undefined)('captions in a player', () => {
  it('are all there, right to a hundredth of a second, from a server and from the disk', async () => {
    expect(written.length).toBeGreaterThan(20);
    for (const address of [served('runs/F-01/'), onDisk(out, 'runs/F-01')])
      await inWindow(browser, {}, async (page, said) => {
        await page.goto(address);
        agree(await cueTimes(page), written);
        expect(said).toEqual([]);
      });
  });

  it('are taken by a player from the file beside the clip', async () => {
    await inWindow(browser, {}, async (page) => {
      await page.goto(served('runs/F-01/'));
      await page.evaluate(() => {
        const video = document.querySelector('video')!;
        const track = document.createElement('track');
        track.src = document.querySelector<HTMLAnchorElement>('.clip a[href$=".vtt"]')!.href;
        track.default = true;
        for (const each of video.querySelectorAll('track')) each.remove();
        video.append(track);
      });
      agree(await cueTimes(page), written);
    });
  });

  it('come from the page where it was opened from the disk and its captions file may not be loaded', async () => {
    const file = fileURLToPath(onDisk(out, 'runs/F-01'));
    const html = readFileSync(file, 'utf8');
    const other = html.replace(/(<track [^>]*src=")data:[^"]*"/, '$1../../clips/R4.vtt"');
    expect(other).not.toBe(html);
    writeFileSync(file.replace('index.html', 'other.html'), other);
    await inWindow(browser, {}, async (page) => {
      await page.goto(onDisk(out, 'runs/F-01').replace('index.html', 'other.html'));
      agree(await cueTimes(page), written);
    });
  });
});

describe.skipIf(chromiumPath === undefined)('observations', () => {
  it('of the moment stand under the picture and not in it, and once it is used nothing below them moves', async () => {
    await inWindow(browser, { viewport: { width: 390, height: 844 } }, async (page) => {
      await page.goto(onDisk(out, 'runs/F-01'));
      await clipLoaded(page);
      const below = () =>
        page.evaluate(() => document.querySelector('.clip-steps')!.getBoundingClientRect().top + scrollY);
      const unopened = await below();
      await send(page, 2);
      const before = await below();
      // before the first use no empty place is kept for them
      expect(unopened).toBeLessThan(before);
      await send(page, 51);
      const here = page.locator('.clip-said p').filter({ visible: true });
      // 290 rpm up has three cues from 47 s to 57 s: two observers and their joint look
      expect(await here.allTextContents()).toEqual([
        expect.stringMatching(/^Observer A: Reach 3/),
        expect.stringMatching(/^Observer B: Reach \d/),
        expect.stringMatching(/^Joint look: Reach 3/),
      ]);
      await send(page, 57.5);
      expect(await here.count()).toBe(0);
      expect(await below()).toBe(before);
      expect(await page.evaluate(() => document.querySelector('video')!.textTracks[0]!.mode)).toBe('hidden');
    });
  });
});

describe.skipIf(chromiumPath === undefined)('the mark on the traces', () => {
  it.each([
    { width: 1280, site: out, note: noteOf('F-01'), clock: 'a camera in step' },
    { width: 390, site: ahead, note: aheadNote, clock: 'a camera 7.4 s ahead' },
  ])('stands at the time of the log that the clip shows, $width px, $clock', async ({ width, site, note }) => {
    const log_s = byHand('F-01', note);
    await inWindow(browser, { viewport: { width, height: 844 } }, async (page, said) => {
      await page.goto(onDisk(site, 'runs/F-01'));
      await clipLoaded(page);
      for (const clip_s of [12.3, 21.9, 22, 50.05, 103.7, 141.2]) {
        await send(page, clip_s);
        expect(Math.abs((await markTime(page))! - log_s(clip_s)), `${clip_s} s of the clip`).toBeLessThan(0.1);
      }
      expect(said).toEqual([]);
    });
  });

  it('follows a running clip to a tenth of a second', async () => {
    const log_s = byHand('F-01');
    await inWindow(browser, {}, async (page) => {
      await page.goto(onDisk(out, 'runs/F-01'));
      await clipLoaded(page);
      await send(page, 47);
      // read with the clock of the player at each picture of the screen, for some two seconds
      const seen = await page.evaluate(async () => {
        const video = document.querySelector('video')!;
        const svg = [...document.querySelectorAll<SVGSVGElement>('.picture-film svg')].find((e) => e.clientWidth > 0)!;
        const of = (name: string) => Number(svg.dataset[name]);
        video.muted = true;
        await video.play();
        const read: [number, number][] = [];
        while (video.currentTime < 49) {
          await new Promise((next) => requestAnimationFrame(next));
          const x = Number(svg.querySelector('.film-line')!.getAttribute('x1'));
          const share = (x - of('left')) / (of('right') - of('left'));
          read.push([video.currentTime, (of('timeFrom') + share * (of('timeTo') - of('timeFrom'))) * 60]);
        }
        video.pause();
        return read;
      });
      expect(seen.at(-1)![0] - seen[0]![0]).toBeGreaterThan(1);
      // on a busy machine a picture of the screen comes late, and the mark stands where the clip was at the one before
      for (const [i, [clip, mark]] of seen.entries()) {
        expect(mark, `${clip} s`).toBeGreaterThan(log_s(seen[Math.max(i - 1, 0)]![0]) - 0.1);
        expect(mark, `${clip} s`).toBeLessThan(log_s(clip) + 0.1);
      }
    });
  });

  it('sends the clip to the time that a reader points at, or goes to by the arrow keys', async () => {
    const log_s = byHand('F-01');
    await inWindow(browser, { viewport: { width: 1280, height: 1800 } }, async (page) => {
      await page.goto(onDisk(out, 'runs/F-01'));
      await clipLoaded(page);
      const field = page.getByRole('slider').filter({ visible: true });
      const box = (await field.boundingBox())!;
      const clock = await page.evaluate(() => {
        const { timeFrom, timeTo } = document.querySelector<SVGSVGElement>('.picture-film .wide svg')!.dataset;
        return [Number(timeFrom) * 60, Number(timeTo) * 60] as const;
      });
      const share = (log_s(52) - clock[0]) / (clock[1] - clock[0]);
      await field.click({ position: { x: share * box.width, y: box.height / 2 } });
      const now = () => page.evaluate(() => document.querySelector('video')!.currentTime);
      // one pixel of the chart is this many seconds
      const pixel = (clock[1] - clock[0]) / box.width;
      expect(Math.abs((await now()) - 52)).toBeLessThan(pixel);
      const before = await now();
      await page.keyboard.press('ArrowRight');
      expect((await now()) - before).toBeCloseTo(1, 2);
      await page.keyboard.press('PageUp');
      await expect.poll(() => page.locator('.clip-step').textContent()).toBe('390 rpm up');
      await expect.poll(() => field.getAttribute('aria-valuetext')).toMatch(/^\d+:\d\d\.\d, 390 rpm up$/);
    });
  });

  it('is told that there is no film where a reader points at what was cut out', async () => {
    await inWindow(browser, { viewport: { width: 1280, height: 1800 } }, async (page) => {
      await page.goto(onDisk(out, 'runs/F-01'));
      await clipLoaded(page);
      await send(page, 50);
      const field = page.getByRole('slider').filter({ visible: true });
      const { width } = (await field.boundingBox())!;
      await field.click({ position: { x: width - 1, y: 40 } });
      expect(await page.locator('.clip-step').textContent()).toMatch(/^no film at \d+:\d\d\.\d$/);
      expect(await page.evaluate(() => document.querySelector('video')!.currentTime)).toBe(50);
    });
  });
});

describe.skipIf(chromiumPath === undefined)('two clips', () => {
  const times = (page: Page) => page.evaluate(() => [...document.querySelectorAll('video')].map((v) => v.currentTime));

  it('begin together at the step that is chosen by key, keep together while they run, and stop together', async () => {
    await inWindow(browser, {}, async (page, said) => {
      await page.goto(onDisk(out, 'side-by-side/F-01~F-02'));
      await clipLoaded(page);
      await page.getByRole('button', { name: '290 rpm up', exact: true }).focus();
      await page.keyboard.press('Enter');
      // 290 up begins at 47 s of both clips, as their notes cut them
      await expect.poll(() => times(page)).toEqual([47, 47]);
      expect(page.url()).toMatch(/#step=290-up$/);
      await page.getByRole('button', { name: 'Play both' }).focus();
      await page.keyboard.press('Enter');
      const apart = await page.evaluate(async () => {
        const [a, b] = [...document.querySelectorAll('video')];
        const read: number[] = [];
        while (a!.currentTime < 49) {
          await new Promise((next) => setTimeout(next, 50));
          read.push(Math.abs(a!.currentTime - b!.currentTime));
        }
        return read;
      });
      expect(Math.max(...apart)).toBeLessThan(0.1);
      await page.getByRole('button', { name: 'Pause both' }).click();
      expect(await page.evaluate(() => [...document.querySelectorAll('video')].map((v) => v.paused))).toEqual([
        true,
        true,
      ]);
      expect(said).toEqual([]);
    });
  });

  it('are brought together again when one has run ahead', async () => {
    await inWindow(browser, {}, async (page) => {
      await page.goto(onDisk(out, 'side-by-side/F-01~F-02'));
      await clipLoaded(page);
      await page.getByRole('button', { name: '290 rpm up', exact: true }).click();
      await page.getByRole('button', { name: 'Play both' }).click();
      await expect.poll(async () => (await times(page))[0]!).toBeGreaterThan(47.5);
      await page.evaluate(() => {
        document.querySelectorAll('video')[1]!.currentTime += 3;
      });
      await expect
        .poll(async () => {
          const [a, b] = await times(page);
          return Math.abs(a! - b!);
        })
        .toBeLessThan(0.1);
    });
  });

  it('stand at the step that a link names', async () => {
    await inWindow(browser, {}, async (page) => {
      await page.goto(`${onDisk(out, 'side-by-side/F-01~F-02')}#step=390-down`);
      await clipLoaded(page);
      // 390 down begins at 83 s of both clips
      await expect.poll(() => times(page)).toEqual([83, 83]);
      const current = page.locator('.together [aria-current]');
      await expect.poll(() => current.textContent()).toBe('390 down');
    });
  });
});
