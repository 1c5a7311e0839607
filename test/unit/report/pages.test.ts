import { describe, expect, it } from 'vitest';
import { workingPath } from '../../../src/ledger/ids.ts';
import { bookPages, seriesPages } from '../../../src/report/pages.ts';
import type { Page, Span } from '../../../src/report/page.ts';
import { siteFrame } from '../../../src/report/site-frame.ts';
import { book, input } from './fixture.ts';
import { spansOf, tablesOf, textOf, textsOf } from './reading.ts';

const house = input();
const all: readonly Page[] = [
  ...bookPages({ book, series: [house], findings: [], audience: 'house' }),
  ...seriesPages(house),
];
const page = (path: string): Page => {
  const found = all.find((p) => p.path === path);
  if (found === undefined) throw new Error(`no page at ${path}`);
  return found;
};

describe('the pages of a book with one series', () => {
  it('holds a page of every kind', () => {
    expect([...new Set(all.map(({ kind }) => kind))].sort()).toEqual([
      'article',
      'book',
      'card',
      'cards',
      'cautions',
      'checks',
      'claims',
      'find',
      'grades',
      'grading',
      'guide',
      'ledger',
      'method',
      'not-looked-at',
      'oil',
      'own-axle',
      'plan',
      'rig',
      'run',
      'runs',
      'series',
      'side-by-side',
      'standing',
      'usual-objections',
      'words',
      'working',
    ]);
  });

  it('has an address of its own for each page, with a slash at the end', () => {
    const paths = all.map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
    for (const path of paths) expect(path === '' || path.endsWith('/')).toBe(true);
  });

  it.each(all.map((p) => [p.path === '' ? 'home' : p.path, p] as const))(
    '%s has a title, a lead and anchors that occur once',
    (_, p) => {
      expect(p.title.trim()).not.toBe('');
      expect(p.description.trim()).not.toBe('');
      expect(p.lead.map(textOf).join('').trim()).not.toBe('');
      const anchors = [...p.sections.map(({ id }) => id), ...tablesOf(p).map(({ id }) => id)];
      expect(anchors.filter((id, i) => anchors.indexOf(id) !== i)).toEqual([]);
      expect(anchors.every((id) => id !== '' && !/\s/.test(id))).toBe(true);
    },
  );

  it('prints no word of the machine and no word that the house does not use', () => {
    for (const p of all) {
      const text = textsOf(p);
      expect(text, p.path).not.toMatch(/\b(NaN|undefined|Infinity|\[object)\b/);
      expect(spansOf(p).filter((span) => textOf(span).trim() === 'null')).toEqual([]);
      expect(text.toLowerCase(), p.path).not.toMatch(/safe|\bbest\b|\bworst\b|\bproves\b|\bapproved\b|\bcertified\b/);
    }
  });

  it('gives every row of a table as many cells as it has columns', () => {
    for (const p of all)
      for (const table of tablesOf(p))
        for (const row of table.rows) expect(row.cells.length, `${p.path} ${table.id}`).toBe(table.columns.length);
  });

  it('links every figure to the section of its working, and the figure stands in the ledger', () => {
    const figures = all
      .flatMap(spansOf)
      .filter((span): span is Extract<Span, { kind: 'figure' }> => typeof span !== 'string' && span.kind === 'figure');
    expect(figures.length).toBeGreaterThan(50);
    for (const span of figures) {
      const figure = house.ledger.byId.get(span.id);
      expect(figure, span.id).toBeDefined();
      const { page: path, anchor } = workingPath(figure!, 'pan');
      expect(span.to).toBe(`${path}#${anchor}`);
      expect(page(path).sections.map(({ id }) => id)).toContain(anchor);
    }
  });

  it('leads every link to a page and an anchor that exist', () => {
    for (const p of all)
      for (const span of spansOf(p)) {
        if (typeof span === 'string' || (span.kind !== 'link' && span.kind !== 'article') || span.to === null) continue;
        const [path = '', anchor] = span.to.split('#');
        if (/\.[a-z0-9]+$/.test(path)) continue;
        const target = page(path);
        if (anchor !== undefined)
          expect(
            [...target.sections.map(({ id }) => id), ...tablesOf(target).map(({ id }) => id)],
            `${p.path} → ${span.to}`,
          ).toContain(anchor);
      }
    const frame = siteFrame({ book, series: [house] });
    for (const { to } of [...frame.nav, ...frame.seriesNav.pan!]) expect(page(to).path).toBe(to);
  });
});

describe('what a page says first', () => {
  it('opens the home page with the hook', () => {
    expect(page('').title).toBe('How many watts is a shroud worth?');
  });

  it('says the finding of the standing in its title, and counts who is not ranked out', () => {
    expect(plainSpaces(page('series/pan/standing/').title)).toBe(
      'At 300 wheel rpm and 60 °C A1, 2.40 L, is separated from the baseline',
    );
    expect(textsOf(page('series/pan/standing/'))).toContain('not ranked');
    expect(textsOf(page('series/pan/standing/'))).toContain('ambient differs by 4.1 K');
  });

  it('says of a heat-up what it reached, what it did not, and where it is heading', () => {
    expect(plainSpaces(page('series/pan/runs/H-02/').lead.map(textOf).join(''))).toMatch(
      /^It reached 80 °C in 47\.\d+ ± \d\.\d+ min, did not reach 95 °C \(> 150 min\), and is heading for 95\.7 ± 1\.\d °C\.$/,
    );
  });

  it('names a set-aside run with its reason and gives it no figure', () => {
    const sheet = page('series/pan/runs/S-03/');
    expect(sheet.lead.map(textOf).join('')).toBe('This run is set aside: belt slipped.');
    expect(sheet.banners.map(({ code }) => code)).toContain('left-out');
  });

  it('never lets a loss stand without pinion supply and bearing rise beside it', () => {
    for (const path of [
      'series/pan/standing/',
      'series/pan/articles/A1/',
      'series/pan/runs/S-02/',
      'series/pan/runs/H-02/',
      'series/pan/',
    ]) {
      expect(textsOf(page(path)), path).toMatch(/Reach at 300\s+wheel rpm/);
      expect(textsOf(page(path)), path).not.toMatch(/not graded here yet/);
      expect(textsOf(page(path)).toLowerCase(), path).toMatch(/pinion.{0,12} bearing/);
    }
    expect(plainSpaces(textsOf(page('series/pan/runs/H-02/')))).toMatch(
      /Pinion bearing above sump: \n6\.80 ± 0\.\d+ K/,
    );
  });
});

describe('units', () => {
  it('brackets US units behind SI where the book asks for both', () => {
    const pages = seriesPages(input({ unitsShown: 'si-and-us' }));
    const heatUp = pages.find(({ path }) => path === 'series/pan/runs/H-02/')!;
    expect(plainSpaces(heatUp.lead.map(textOf).join(''))).toMatch(/95\.7 ± 1\.\d °C \(204\.3 ± 2\.\d °F\)/);
    expect(textsOf(page('series/pan/runs/H-02/'))).not.toContain('°F');
  });

  it('speaks of the output shaft on a gear box', () => {
    const pages = seriesPages(input({ rig: { kind: 'gearbox_bench', rollingRadius_m: null } }));
    const texts = pages.map(textsOf).join('\n');
    expect(texts).toContain('output rpm');
    expect(texts).not.toContain('wheel rpm');
  });
});

/** Narrow and no-break spaces as plain ones. */
const plainSpaces = (text: string): string => text.replace(/[\u00a0\u202f\u2009]/g, ' ');

describe('a series with little in it', () => {
  const full = input();
  const bare = {
    ...full,
    record: { ...full.record, runs: [], plan: null, oils: new Map(), articles: new Map() },
    derived: new Map(),
    compared: {
      seed: null,
      claims: [],
      splits: [],
      films: [],
      surfaces: [],
      costs: [],
      depends: [],
      factorials: [],
      agreements: [],
      cells: [],
      effects: [],
      refusals: [],
      standings: [],
      causes: [],
      findings: [],
    },
    ledger: { ...full.ledger, figures: [], byId: new Map(), workings: new Map() },
  };

  it('still has its pages, and says that nothing stands side by side yet', () => {
    const pages = [...bookPages({ book, series: [bare], findings: [], audience: 'house' }), ...seriesPages(bare)];
    expect(pages.find(({ path }) => path === 'series/pan/standing/')!.title).toBe('Nothing stands side by side yet');
    for (const p of pages) {
      expect(p.lead.map(textOf).join('').trim(), p.path).not.toBe('');
      expect(textsOf(p), p.path).not.toMatch(/\b(NaN|undefined|Infinity)\b/);
    }
  });

  it('lists runs that nothing could be derived from, and says so on their sheets', () => {
    const pages = seriesPages({ ...full, derived: new Map(), compared: bare.compared, ledger: bare.ledger });
    const sheet = pages.find(({ path }) => path === 'series/pan/runs/S-01/')!;
    expect(sheet.lead.map(textOf).join('')).toBe(
      'No figure is made of this run: its note or its logger file could not be used.',
    );
    expect(sheet.banners.map(({ code }) => code)).toContain('left-out');
  });
});
