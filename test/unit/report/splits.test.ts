import { describe, expect, it } from 'vitest';
import type { ComparedSeries, Effect } from '../../../src/trial/compared.ts';
import { split } from './fixture-claims.ts';
import { cellOf, type Variation } from './fixture.ts';
import { of } from './fixture-results.ts';
import { firstOf, joined, pagesOf, plainSpaces, rowsOf, wordsIn } from './page-at.ts';
import { textsOf } from './reading.ts';

const section = 'split-l1';

/** The shroud separated from the baseline by final rise. */
const separated = (made: ComparedSeries): ComparedSeries => {
  const yes = <T extends { readonly quantity: string }>(of_: T): T =>
    of_.quantity === 'final-rise' ? { ...of_, separated: true } : of_;
  return {
    ...made,
    effects: made.effects.map(yes),
    standings: made.standings.map((s) => ({
      ...s,
      rows: s.rows.map((r) => (r.effect === null ? r : { ...r, effect: yes(r.effect) })),
    })),
  };
};

/** The shroud once more, fuller: at the level of the baseline. */
const fuller = cellOf('A1', 3.59e-3);
const bothWays: Variation = {
  compared: (made: ComparedSeries): ComparedSeries => {
    const rise = made.effects.find(({ quantity }) => quantity === 'final-rise')!;
    const level: Effect = { ...rise, cell: fuller, basis: 'same level', estimate: of(-1.2, 0.9) };
    return {
      ...made,
      effects: [...made.effects, level],
      splits: [...made.splits, split({ cell: fuller, byHeatMade: of(-0.1, 0.4), byShed: of(-1.1, 0.8), share: null })],
      standings: made.standings.map((s) =>
        s.quantity === 'final-rise'
          ? { ...s, rows: s.rows.map((r) => (r.cell.fill_m3 === 3.2e-3 ? { ...r, cell: fuller, effect: level } : r)) }
          : s,
      ),
    };
  },
};

describe('makes less, sheds more', () => {
  it('stands beside the standing by final rise, part by part, with the whole and the share', () => {
    const { page } = pagesOf({ compared: separated });
    const [only, ...others] = rowsOf(page('standing/'), `${section}-table`);
    expect(others).toEqual([]);
    expect(only!.slice(0, 2)).toEqual(['A1 shroud, 2.40 L (same litres)', 'A0, 2.40 L']);
    expect(only![2]).toMatch(/^−1\.5 ± [\d.]+ K$/);
    expect(only![3]).toMatch(/^−0\.20 ± [\d.]+ K$/);
    expect(only![4]).toMatch(/^−1\.3 ± [\d.]+ K$/);
    expect(only![5]).toMatch(/^13 ± [\d.]+ %$/);
    const ids = page('standing/').sections.map(({ id }) => id);
    expect(ids.indexOf(section)).toBe(ids.indexOf('final-rise-l1') + 1);
  });

  it('names the identity that the parts add up by', () => {
    const { page } = pagesOf();
    expect(JSON.stringify(page('standing/').sections)).toContain('method/heat/#log-mean-rise');
  });

  it('stands on the sheet of the article, and on none that was not compared', () => {
    const { page } = pagesOf();
    expect(rowsOf(page('articles/A1/'), 'split-table')).toHaveLength(1);
    expect(page('articles/A0/').sections.map(({ id }) => id)).not.toContain('split');
  });

  it('does not tell a share of a whole that is not separated', () => {
    const told = (variation: Variation) => pagesOf(variation).page('standing/');
    const why = 'The share is not told where the whole difference is not separated.';
    expect(rowsOf(told({}), `${section}-table`)[0]!.at(-1)).toBe('not told');
    expect(wordsIn(told({}), section)).toContain(why);
    expect(wordsIn(told({ compared: separated }), section)).not.toContain(why);
    const none = (made: ComparedSeries) => ({ ...separated(made), splits: [split({ share: null })] });
    expect(rowsOf(told({ compared: none }), `${section}-table`)[0]!.at(-1)).toBe('not told');
  });

  it('puts the same litres and the same level side by side where both were run', () => {
    const { page } = pagesOf(bothWays);
    for (const path of ['standing/', 'articles/A1/']) {
      const pair = firstOf(page(path), 'pair')!;
      expect(pair.sides.map(({ title }) => joined(title))).toEqual(['Same litres, 2.40 L', 'Same level, 3.59 L']);
    }
    expect(firstOf(pagesOf().page('standing/'), 'pair')).toBeUndefined();
  });

  it('says of a roomier bowl that its oil stands lower at the same litres', () => {
    const { page } = pagesOf(bothWays);
    expect(wordsIn(page('standing/'), section)).toMatch(
      /A1 shroud is roomier: at the same litres its oil stands lower\. Of its difference the heat made accounts for −0\.20 ± [\d.]+ K there, and for −0\.10 ± [\d.]+ K at the same level\./,
    );
  });

  it('is not there without the figure of the whole difference, or without a split', () => {
    const { page } = pagesOf({ compared: (made) => ({ ...made, splits: [] }) });
    expect(page('standing/').sections.map(({ id }) => id)).not.toContain(section);
    expect(plainSpaces(textsOf(page('articles/A1/')))).not.toContain('Makes less');
  });
});
