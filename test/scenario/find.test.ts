import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { answerOf } from '../../src/reader/find/answer.ts';
import { nothingAsked, readAsk, type Ask, type AskTyped } from '../../src/reader/find/ask.ts';
import { bookOf, claimPath, runPath, type FindBook } from '../../src/reader/find/book.ts';
import { figureWords } from '../../src/reader/find/shown.ts';
import { saidOf } from '../../src/reader/find/said.ts';
import type { FindPart } from '../../src/trial/find.ts';
import { makeBook, type Made } from '../../src/pipeline.ts';
import { demoMade } from './demo.ts';
import { smallDemo, spoilt } from './small.ts';

/** The scripts of the page, run as a browser runs them: they only put their parts into a list. */
function partsOf(made: Made): readonly FindPart[] {
  const around = { self: {} as { dipmarkFind?: FindPart[] } };
  for (const { path, text } of made.files) if (/^find\/.*\.js$/.test(path)) runInNewContext(text, around);
  return around.self.dipmarkFind ?? [];
}

let opened: FindBook | null = null;
const book = (): FindBook => (opened ??= bookOf(partsOf(demoMade())));
const read = (of: Partial<AskTyped>): Ask => {
  const asked = readAsk({ ...nothingAsked, ...of });
  if (!asked.ok) throw new Error([...asked.wrong].join('; '));
  return asked.ask;
};
const ask = (of: Partial<AskTyped>) => book().ask(read(of));
const ids = (of: Partial<AskTyped>): string[] => ask(of).answer.runs.map(({ run }) => run[0]);
const recordOf = (id: string) => demoMade().series.find(({ record }) => record.series.id === id)!.record;

describe('finding over both series of the demo', () => {
  it('finds every claim, by its word and by the words of its sentence', () => {
    const { claims } = recordOf('hill-bowl');
    for (const { id, sentence } of claims) {
      expect(
        ask({ words: sentence })
          .texts.slice(0, 3)
          .map(({ path }) => path),
        id,
      ).toContain(`series/hill-bowl/claims/#${id}`);
    }
    const byWord = ['shown', 'leaning', 'not shown', 'shown against', 'cannot tell'].flatMap((word) =>
      ask({ word }).answer.claims.map(({ claim }) => claim[0]),
    );
    expect(byWord.sort()).toEqual(claims.map(({ id }) => id).sort());
  });

  it('finds the runs of an article in the order of their names, with those of its window copy', () => {
    const own = recordOf('hill-bowl').runs.filter(({ article }) => article === 'P4' || article === 'P4w');
    expect(ids({ article: 'P4 ring gear shroud' })).toEqual(own.map(({ id }) => id));
    expect(own.length).toBeGreaterThan(8);
  });

  it('finds high fills over both series', () => {
    const found = ask({ article: 'P0 pressed bowl', trial: 'spin', fill: '2.8 L' }).answer.runs;
    expect(new Set(found.map(({ series }) => series.id))).toEqual(new Set(['where-the-oil-stands']));
    expect(ids({ fill: '3.2 L', trial: 'spin' }).length).toBeGreaterThan(2);
  });

  // The plan of the demo has the thin oil at 2.40 L, and in the deep bowl at the level of the pressed one (3.59 L).
  it('answers that the thin oil was never tested at 3.20 L, with the nearest fill and the nearest oil', () => {
    const typed = { ...nothingAsked, oil: 'SAE 75W-80', fill: '3.20 L' };
    const found = book().ask(read(typed));
    expect(recordOf('hill-bowl').plan!.cells.filter((c) => c.oil === 'O2' && c.fill_m3 === 0.0032)).toEqual([]);
    expect(found.answer).toMatchObject({ tested: false, runs: [], figures: [] });
    expect(saidOf(found, typed, 0)).toMatch(/^Not tested: SAE 75W-80, 3\.20 L\. Nearest: /);
    const near = found.answer.nearest.map(({ series, runs, differs }) => [
      series.cells[runs[0]![2]]![3].replace('\u202f', ' '),
      differs.join(),
    ]);
    expect(near).toContainEqual(['P0 pressed bowl, 3.20 L of O1', 'oil']);
    expect(near).toContainEqual(['P1 deep bowl, 3.59 L of O2', 'fill']);
  });

  it('says of a speed beyond the last step that it was not tested, and names the last step', () => {
    const [near] = ask({ trial: 'spin', article: 'P4 ring gear shroud', speed: '700 rpm' }).answer.nearest;
    expect([near!.differs, near!.condition![2]]).toEqual([['speed'], 520]);
  });

  it('finds grades as the observers left them', () => {
    const { ledger } = demoMade().series[0]!;
    const four = new Set(
      ledger.figures.filter((f) => f.quantity === 'reach' && f.value === 4).map((f) => f.subject.run),
    );
    expect(ids({ grade: 'reach', value: '4' }).sort()).toEqual([...four].sort());
  });

  it('leads only to pages that are there, and to places on them', () => {
    const pages = new Map(demoMade().pages.map((page) => [page.path, page]));
    for (const series of book().series) {
      for (const run of series.runs) expect(pages.has(runPath({ series, run }))).toBe(true);
      for (const claim of series.claims) {
        const [path, anchor] = claimPath({ series, claim }).split('#');
        expect(
          pages.get(path!)?.sections.some(({ id }) => id === anchor),
          claim[0],
        ).toBe(true);
      }
      for (const at of series.figures.text.keys()) {
        const [path, anchor] = figureWords({ series, at }).path.split('#');
        const page = pages.get(path!);
        const there = page?.sections.some(({ id }) => id === anchor);
        expect(there, `${path!}#${anchor!}`).toBe(true);
      }
    }
    for (const [path] of partsOf(demoMade()).flatMap(({ texts }) => texts)) {
      const [page, anchor] = path.split('#');
      const found = pages.get(page!);
      expect(anchor === undefined ? found !== undefined : found?.sections.some(({ id }) => id === anchor), path).toBe(
        true,
      );
    }
  });

  it('finds words of notes, oils, findings, the guide and the method', () => {
    const where = (words: string): string[] => ask({ words }).texts.map(({ path }) => path);
    expect(where('gasket proud lower left bolt')).toContain('series/hill-bowl/runs/S-07/');
    expect(where('churning')).toEqual(expect.arrayContaining([expect.stringMatching(/^method\//)]));
    expect(where('decimal comma')).toEqual(expect.arrayContaining([expect.stringMatching(/^guide\//)]));
    expect(where('75W-80')).toEqual(expect.arrayContaining([expect.stringMatching(/oils\/O2\//)]));
    expect(where('H-09.csv')).toEqual(expect.arrayContaining([expect.stringMatching(/checks\/|amends\/|claims\//)]));
  });

  it('lists everything on its page for who has no scripts', () => {
    const page = demoMade().pages.find(({ kind }) => kind === 'find')!;
    const text = JSON.stringify(page.sections);
    for (const { record } of demoMade().series) {
      const base = `series/${record.series.id}/`;
      for (const { id } of record.runs) expect(text).toContain(`"${base}runs/${id}/"`);
      for (const id of record.articles.keys()) expect(text).toContain(`"${base}articles/${id}/"`);
      for (const id of record.oils.keys()) expect(text).toContain(`"${base}oils/${id}/"`);
      for (const { id } of record.claims) expect(text).toContain(`"${base}claims/#${id}"`);
    }
  });
});

describe('finding in a public book', () => {
  it('counts what is held back and tells nothing of it', () => {
    const files = spoilt('hill-bowl/runs/S-07.md', 'shown-to: public', 'shown-to: house', smallDemo());
    const parts = partsOf(makeBook({ files, audience: 'public' }));
    expect(JSON.stringify(parts)).not.toContain('S-07');
    const [series] = parts.flatMap((part) => part.series ?? []);
    expect(series!.heldRuns).toBe(1);
    expect(answerOf([series!], read({ trial: 'spin' })).runs.length).toBeGreaterThan(0);
  });
});
