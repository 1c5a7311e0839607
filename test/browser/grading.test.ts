import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readMedia } from '../../src/host/disk/book.ts';
import { makeBook } from '../../src/pipeline.ts';
import { readNotes } from '../../src/notes/book.ts';
import type { Observation } from '../../src/trial/flow.ts';
import { demoOf, flowRuns } from '../scenario/small.ts';
import { buildFlowSite, chromiumPath, clipLoaded, inWindow, onDisk } from './flow-site.ts';
import { tabTo } from './keys.ts';

const folder = mkdtempSync(join(tmpdir(), 'dipmark-grading-'));
const out = join(folder, 'site');

let browser: Browser;
beforeAll(async () => {
  if (chromiumPath === undefined) return;
  await buildFlowSite(out);
  browser = await chromium.launch({ executablePath: chromiumPath, args: ['--no-sandbox'] });
}, 300_000);
afterAll(async () => {
  if (chromiumPath !== undefined) await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

/** By the keys alone, from the first field to the first clip. */
async function begin(page: Page, observer: string): Promise<void> {
  await page.goto(onDisk(out, 'grading'));
  await tabTo(page, '#observer');
  await page.keyboard.type(observer);
  await page.keyboard.press('Enter');
  await page.locator('.desk').waitFor();
}

/** View, Reach, Side fall, Wall hit, Bubble, Tube run of each step of a clip, as they are typed. */
const steps = ['60 up', '120 up', '200 up', '290 up', '390 up', '520 up', '390 down', '290 down', '200 down', '120 down', '60 down']; // prettier-ignore
const gradesOf = (shift: number): readonly string[] =>
  steps.map((_, i) =>
    i === 4 ? '1' : [3, i, i + 1, i + 2, i + shift].map((g, k) => (k === 0 ? '3' : String(g % 5))).join('') + 'n',
  );

/** Types through every step until the clip is done; other clips are passed over. */
async function gradeClip(page: Page, code: string, typed: readonly string[]): Promise<void> {
  for (let i = 0; i < 200; i++) {
    const at = await page.locator('.desk-name').textContent();
    const step = /^Clip (\S+) · (\d+) rpm (up|down)$/.exec(at ?? '');
    if (step?.[1] === code) await page.keyboard.type(typed[steps.indexOf(`${step[2]!} ${step[3]!}`)]!);
    if (step?.[1] === code && `${step[2]!} ${step[3]!}` === '60 down') return;
    await page.keyboard.press('Enter');
  }
}

async function written(page: Page): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('f')]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

/** The demo with another captions file beside the note of the coded clip K7, which is F-02. */
function bookWith(name: string, text: string) {
  const put = (path: string, content: string) => {
    const bytes = new TextEncoder().encode(content);
    return { path, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
  };
  const note = readFileSync('demo-runs/hill-bowl/runs/F-02.md', 'utf8').replace(
    'captions: F-02.vtt',
    `captions: ${name}`,
  );
  const files = demoOf(flowRuns).filter(({ path }) => !/runs\/F-02\.(md|vtt)$/.test(path));
  files.push(put('hill-bowl/runs/F-02.md', note), put(`hill-bowl/runs/${name}`, text));
  return { files, media: readMedia('demo-runs') };
}

function observations(book: ReturnType<typeof bookWith>): readonly Observation[] {
  const series = readNotes(book.files, book.media).series.find(({ series: one }) => one.id === 'hill-bowl');
  return series!.runs.find(({ id }) => id === 'F-02')!.observations;
}

/** An observation as it would have been typed. */
const asTyped = ({ view, grades }: Observation): string =>
  view < 2
    ? String(view)
    : [view, grades.reach, grades.side, grades.wall, grades.bubble, grades.tube].join('').replace('ng', 'n');

describe.skipIf(chromiumPath === undefined)('the grading page, from the disk and by keys alone', () => {
  it('writes a file that is read beside the note without a finding, with the grades that were typed', async () => {
    await inWindow(browser, {}, async (page, said) => {
      await begin(page, 'C');
      await gradeClip(page, 'K7', gradesOf(0));
      const file = await written(page);
      expect(file.name).toBe('K7-C.vtt');
      const book = bookWith(file.name, file.text);
      const made = makeBook({ ...book, audience: 'house' });
      const found = made.findings.filter(({ place }) => /runs\/(F-02\.md|K7-C\.vtt)$/.test(place.file));
      expect(found.filter(({ level, place }) => level === 'error' || place.file.endsWith('.vtt'))).toEqual([]);
      const seen = observations(book);
      expect(seen.map(asTyped)).toEqual(gradesOf(0));
      expect(new Set(seen.map(({ observer, pass, blind }) => `${observer} ${pass} ${blind.join(' ')}`))).toEqual(
        new Set(['C first fill oil']),
      );
      // each hold begins a second after its piece of the clip, as the note cuts it; ten seconds are graded
      expect(seen.map(({ from_s, to_s }) => [from_s, to_s])).toEqual(steps.map((_, i) => [11 + 12 * i, 21 + 12 * i]));
      expect(said).toEqual([]);
    });
  });

  it('makes one file of two observers, and the book holds them against each other', async () => {
    const files: string[] = [];
    for (const [observer, shift] of [
      ['C', 0],
      ['D', 1],
    ] as const)
      await inWindow(browser, {}, async (page) => {
        await begin(page, observer);
        await gradeClip(page, 'K7', gradesOf(shift));
        const { name, text } = await written(page);
        writeFileSync(join(folder, name), text);
        files.push(join(folder, name));
      });
    await inWindow(browser, {}, async (page) => {
      await begin(page, 'E');
      await page.locator('.desk-files summary').click();
      await page.locator('#join-files').setInputFiles(files);
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Write one file' }).click(),
      ]);
      const text = readFileSync(await download.path(), 'utf8');
      expect(download.suggestedFilename()).toBe('K7.vtt');
      const book = bookWith('K7.vtt', text);
      const seen = observations(book);
      expect(seen.filter(({ observer }) => observer === 'C').map(asTyped)).toEqual(gradesOf(0));
      expect(seen.filter(({ observer }) => observer === 'D').map(asTyped)).toEqual(gradesOf(1));
      const made = makeBook({ ...book, audience: 'house' });
      expect(made.findings.filter(({ place }) => place.file.endsWith('K7.vtt'))).toEqual([]);
      // percent, the third and the fourth observer of the book: one Reach on every step, a Bubble that is never the same, Tube run ng
      const equal = new Map(
        made.ledgers[0]!.figures.filter(({ quantity }) => quantity === 'grades-equal').map((f) => [f.id, f.value]),
      );
      expect(equal.get('hill-bowl/grades-equal@reach,3-4')).toBe(100);
      expect(equal.get('hill-bowl/grades-equal@bubble,3-4')).toBe(0);
      expect(equal.has('hill-bowl/grades-equal@tube,3-4')).toBe(false);
    });
  });

  it('says nothing of the article, the fill or the oil, nor of the run', async () => {
    await inWindow(browser, {}, async (page) => {
      await begin(page, 'C');
      const desk = await page.locator('.grading').evaluate((e) => e.outerHTML);
      expect(desk).toContain('K7');
      expect(desk).not.toMatch(/P0|P4|F-0|O1|2\.40|shroud|baseline/);
    });
  });

  it('plays the ten seconds of the hold and stops at their end', async () => {
    await inWindow(browser, {}, async (page) => {
      await begin(page, 'C');
      await clipLoaded(page);
      const state = () =>
        page.evaluate(() => {
          const { currentTime, paused } = document.querySelector('video')!;
          return { currentTime, paused };
        });
      await expect.poll(async () => (await state()).currentTime).toBeGreaterThan(11.2);
      expect((await state()).paused).toBe(false);
      await page.evaluate(() => {
        document.querySelector('video')!.currentTime = 20.5;
      });
      await expect.poll(async () => (await state()).paused).toBe(true);
      const { currentTime } = await state();
      expect(Math.abs(currentTime - 21)).toBeLessThan(0.25);
      await page.keyboard.press('r');
      await expect.poll(async () => (await state()).currentTime).toBeLessThan(13);
      expect((await state()).paused).toBe(false);
      await page.keyboard.press(' ');
      expect((await state()).paused).toBe(true);
    });
  });

  it('stands still until it is asked where movement is not welcome', async () => {
    await inWindow(browser, { reducedMotion: 'reduce' }, async (page) => {
      await begin(page, 'C');
      await clipLoaded(page);
      await expect.poll(() => page.evaluate(() => document.querySelector('video')!.currentTime)).toBe(11);
      expect(await page.evaluate(() => document.querySelector('video')!.paused)).toBe(true);
    });
  });

  it('keeps what was graded, warns before it is closed, and no more once the file is written', async () => {
    await inWindow(browser, {}, async (page) => {
      await begin(page, 'C');
      await page.keyboard.type('333210');
      await begin(page, 'C');
      expect(await page.locator('.desk-progress').textContent()).toBe('1 of 22 steps graded');
      await page.keyboard.press('b');
      let asked = 0;
      page.on('dialog', (dialog) => {
        asked++;
        void dialog.dismiss();
      });
      await page.close({ runBeforeUnload: true });
      await expect.poll(() => asked).toBe(1);
      await written(page);
      expect(await page.locator('.desk-said').textContent()).toContain('is written, with 1 step');
      const closed = page.waitForEvent('close');
      await page.close({ runBeforeUnload: true });
      await closed;
      expect(asked).toBe(1);
    });
  });

  it('keeps going where the browser keeps nothing', async () => {
    await inWindow(browser, {}, async (page, said) => {
      await page.addInitScript(() => {
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('refused', 'SecurityError');
          },
        });
      });
      await begin(page, 'C');
      await page.keyboard.type('333210');
      expect(await page.locator('.desk-progress').textContent()).toBe('1 of 22 steps graded');
      expect(said).toEqual([]);
    });
  });

  it('names a word that judges as it is typed, and letters that will not do before anything is graded', async () => {
    await inWindow(browser, {}, async (page) => {
      await page.goto(onDisk(out, 'grading'));
      await page.locator('#observer').fill('A B');
      await page.keyboard.press('Enter');
      expect(await page.locator('#observer-says').textContent()).toContain('will not do');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('observer');
      await page.locator('#observer').fill('C');
      await page.keyboard.press('Enter');
      await page.locator('.desk').waitFor();
      await page.keyboard.press('w');
      await page.keyboard.type('looks like foam');
      expect(await page.locator('.words-said').textContent()).toContain('“looks like”');
      await page.keyboard.press('Escape');
      await page.keyboard.press('3');
      expect(await page.locator('.grade-row input:checked').count()).toBe(1);
    });
  });

  // WCAG 2.1, levels A and AA, as far as a program can judge it; the rules are those of axe-core.
  it.each([
    { width: 390, colorScheme: 'dark' },
    { width: 1280, colorScheme: 'light' },
  ] as const)('has nothing at $width px, $colorScheme, that keeps a grader out, and nothing that moves', async (w) => {
    await inWindow(browser, { viewport: { width: w.width, height: 844 }, colorScheme: w.colorScheme }, async (page) => {
      const judge = async () => {
        const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
        return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120) ?? ''}`);
      };
      await page.goto(onDisk(out, 'grading'));
      expect(await judge()).toEqual([]);
      await begin(page, 'C');
      await clipLoaded(page);
      expect(await judge()).toEqual([]);
      const places = () =>
        page.evaluate(() =>
          ['.grade-row', '.desk-words', '.desk-steps', '.desk-keys', '.desk-files'].map((name) =>
            Math.round(document.querySelector(name)!.getBoundingClientRect().top + scrollY),
          ),
        );
      const before = await places();
      await page.keyboard.type('333210');
      await page.keyboard.press('w');
      await page.keyboard.type('looks like foam');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Enter');
      expect(await places()).toEqual(before);
      const [wide, room] = await page.evaluate(() => [
        document.documentElement.scrollWidth,
        document.documentElement.clientWidth,
      ]);
      expect(wide).toBeLessThanOrEqual(room);
    });
  });
});
