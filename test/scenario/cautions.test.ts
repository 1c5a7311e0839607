import { describe, expect, it } from 'vitest';
import type { Page } from '../../src/report/page.ts';
import { demoFiles, demoMade, demoTruth } from './demo.ts';
import { wordsOf } from './words-of.ts';

const sheets = (): readonly Page[] => demoMade().pages.filter((p) => p.kind === 'run');
const sheetOf = (run: string): Page => sheets().find((p) => p.path.endsWith(`/runs/${run}/`))!;
const codesOf = (page: Page): string[] =>
  page.sections
    .flatMap((s) => s.margin.flatMap((m) => (m.code?.startsWith('caution-') === true ? [m.code] : [])))
    .sort();

/** Rows of the scenario's table of cautions that belong to each kind of trial on this bench (common practice, no source). */
const powered = ['rotation', 'filling', 'bench', 'noise', 'breather'];
const ofKind: readonly (readonly [string, string, readonly string[]])[] = [
  ['a flow trial behind a window', 'F-01', [...powered, 'altered-part', 'window', 'lamps-and-probes', 'filming']],
  [
    'the same on the tilted cradle',
    'T-01',
    [...powered, 'altered-part', 'window', 'lamps-and-probes', 'filming', 'tilt'],
  ],
  ['a spin trial', 'S-07', [...powered, 'hot-parts', 'fire']],
  ['a loaded heat-up with the fan', 'H-03', [...powered, 'hot-parts', 'fire', 'fan', 'cool-down']],
  ['a tilted heat-up', 'T-04', [...powered, 'hot-parts', 'fire', 'fan', 'cool-down', 'tilt']],
  ['a cool-down with the gears still', 'C-01', ['hot-parts', 'fan', 'cool-down', 'sampling']],
];

describe('the margin of a run sheet carries the cautions of its kind', () => {
  it.each(ofKind)('%s (%s)', (_, run, rows) => {
    expect(codesOf(sheetOf(run))).toEqual([...rows].map((r) => `caution-${r}`).sort());
  });

  it('and every sheet of the book has some, each with words of its own', () => {
    const runs = demoFiles().filter(({ path }) => /\/runs\/[^/]+\.md$/.test(path));
    expect(sheets()).toHaveLength(runs.length);
    for (const sheet of sheets()) {
      expect(codesOf(sheet).length, sheet.path).toBeGreaterThan(3);
      const notes = sheet.sections.flatMap((s) => s.margin.filter((m) => m.code?.startsWith('caution-')));
      for (const note of notes) expect(JSON.stringify(note.text).length, note.code).toBeGreaterThan(20);
    }
  });
});

describe('banners', () => {
  const banner = { 'release not recorded': 'release-not-recorded', 'cap exceeded': 'cap-exceeded' } as const;
  it.each(Object.entries(banner))('%s stands on the sheets of exactly the runs it was planted in', (name, code) => {
    const planted = demoTruth()
      .banners.filter((b) => b.banner === name)
      .map((b) => b.run);
    expect(planted.length).toBeGreaterThan(0);
    const shown = sheets()
      .filter((p) => p.banners.some((b) => b.code === code))
      .map((p) => p.path.split('/').at(-2));
    expect(shown).toEqual(planted);
  });
});

describe('words that the book never says', () => {
  // "proves" as a verb of results; a proven breather, and a person who approves, are the notes' own words.
  it.each([/safe/i, /\bbest\b/i, /\bworst\b/i, /\bproves\b/i, /\bapproved\b/i, /\bcertified\b/i])('%s', (word) => {
    const found = demoMade().pages.flatMap((p) =>
      wordsOf(p)
        .filter((text) => word.test(text))
        .map((text) => `${p.path}: ${text}`),
    );
    expect(found).toEqual([]);
  });

  it('nor NaN, undefined, null or an object', () => {
    const found = demoMade().pages.flatMap((p) =>
      wordsOf(p)
        .filter((text) => /\bNaN\b|\bundefined\b|\[object|\bInfinity\b|\bnull\b/.test(text))
        .map((text) => `${p.path}: ${text}`),
    );
    expect(found).toEqual([]);
  });
});
