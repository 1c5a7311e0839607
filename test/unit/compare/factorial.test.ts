import { describe, expect, it } from 'vitest';
import { standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { Contrast } from '../../../src/trial/factorial.ts';
import { base, baseMore, deep, deepLevel, deepMore, factored, scatter_W, type PlacedCell } from './placed.ts';

// Sums by hand; k is 1.960 for firm causes (JCGM 100:2008, table G.2).
const all: readonly PlacedCell[] = [base, baseMore, deep, deepMore, deepLevel];
const only = (cells: readonly PlacedCell[]) => factored(cells).factorials[0]!;
const half = ({ interval: [low, high] }: Pick<Contrast, 'interval'>): number => (high - low) / 2;

describe('the same litres in two parts', () => {
  const { whole, byLevel, rest } = only(all).levelPart!;

  it('takes what went with the level from the article alone, and leaves what is left at the same level', () => {
    expect(whole.estimate.value).toBeCloseTo(206 - 240, 10);
    expect(byLevel.estimate.value).toBeCloseTo(206 - 236, 10);
    expect(rest.estimate.value).toBeCloseTo(236 - 240, 10);
  });

  it('keeps in each part the scatter of its two cells; the torque cell they share cancels', () => {
    for (const part of [whole, byLevel, rest]) {
      expect(standardUncertainty(part.estimate)).toBeCloseTo(Math.SQRT2 * scatter_W, 10);
      expect(half(part)).toBeCloseTo(1.96 * Math.SQRT2 * scatter_W, 3);
    }
  });

  it('separates what its own interval holds off nothing', () => {
    expect([whole.separated, byLevel.separated, rest.separated]).toEqual([true, true, false]);
  });

  it('names what each difference is about', () => {
    expect([whole.basis, byLevel.basis, rest.basis]).toEqual(['same litres', 'fill is the subject', 'same level']);
  });
});

describe('what one basis alone does not tell', () => {
  it.each([
    ['the same litres only', [base, baseMore, deep, deepMore], 'litres only'],
    ['the same level only', [base, deepLevel], 'level only'],
    ['neither', [base, { ...deep, litres: 2.9, level_mm: -68 }], 'neither'],
    ['litres that are the level', [base, { ...deep, level_mm: -52 }], 'litres are level'],
    ['levels that nobody surveyed', [base, { ...deep, level_mm: null }], 'litres only'],
  ] as const)('%s: no part is given to the level', (_, cells, run) => {
    const found = only(cells);
    expect(found.run).toBe(run);
    expect(found.levelPart).toBeNull();
  });

  it('the fill of the baseline counts that the series names: beside another fill of it nothing is split', () => {
    expect(only([baseMore, { ...deep, litres: 3.2 }, { ...deepLevel, level_mm: -36 }]).levelPart).toBeNull();
  });
});

describe('cells that may not be held against each other', () => {
  const other = only([base, deep, { ...deepLevel, rigState: 'Q1-b' }]);

  it('give no part, and the reason is kept', () => {
    expect(other.levelPart).toBeNull();
    expect(other.refused).toEqual(['rig states differ: Q1-a, Q1-b']);
  });

  it('are those of another oil: each oil has its own', () => {
    const found = factored([base, deep, { ...deepLevel, oil: 'O2' }]).factorials;
    expect(found.map(({ oil, run }) => `${oil} ${run}`)).toEqual(['O1 litres only']);
  });

  it('an indicative cell makes what it goes into indicative, and separates nothing', () => {
    const { byLevel } = only([base, { ...deep, indicative: ['all runs are of one day'] }, deepLevel]).levelPart!;
    expect(byLevel.indicative).toEqual(['all runs are of one day']);
    expect(byLevel.separated).toBe(false);
  });
});

describe('two articles with two fills', () => {
  it('at the same litres: what the article comes to at the second fill less at the first', () => {
    const [square] = only(all).bases['same litres'].squares;
    expect(square!.interaction.estimate.value).toBeCloseTo(226 - 262 - (206 - 240), 10);
    // four scatters of 2 W
    expect(standardUncertainty(square!.interaction.estimate)).toBeCloseTo(2 * scatter_W, 10);
    expect(square!.interaction.separated).toBe(false);
    expect([square!.fillInBase, square!.fillInOwn].map(({ estimate }) => estimate.value)).toEqual([22, 20]);
    expect(square!.interaction.runs).toEqual(['P0-240', 'P1-240', 'P0-320', 'P1-320']);
  });

  it('at the same level, where a second level was run with both, the same; then no line through levels is asked', () => {
    const found = only([base, baseMore, deepLevel, { ...deepLevel, litres: 4.45, level_mm: -36, watts: 268 }]);
    const [square] = found.bases['same level'].squares;
    expect(square!.interaction.estimate.value).toBeCloseTo(268 - 262 - (236 - 240), 10);
    expect(found.slopes).toBeNull();
  });

  it('has none where one cell of the article lies near two fills of the baseline', () => {
    const found = only([base, { ...baseMore, litres: 2.44, level_mm: -52 }, { ...deep, litres: 2.42 }]);
    expect(found.bases['same litres'].squares).toEqual([]);
  });
});

describe('what more level does in each of the two', () => {
  const { base: ofBase, own, apart } = only(all).slopes!;

  it('is the line of least squares through the cells of each', () => {
    // P0: 22 W over 17 mm. P1: levels −78, −62, −53 mm lie −13⅔, 2⅓, 11⅓ mm off their mean: 386⅔ W·mm over 320⅔ mm².
    expect(ofBase.slope.estimate.value).toBeCloseTo(22 / 0.017, 6);
    expect(own.slope.estimate.value).toBeCloseTo((1160 / 962) * 1000, 6);
    expect(apart.estimate.value).toBeCloseTo((1160 / 962) * 1000 - 22 / 0.017, 6);
  });

  it('keeps the scatter of the cells; one torque cell and one level rule in all of them cancel', () => {
    const [ofTwo, ofThree] = [scatter_W / (0.017 / Math.SQRT2), scatter_W / Math.sqrt(962 / 3e6)];
    expect(standardUncertainty(ofBase.slope.estimate)).toBeCloseTo(ofTwo, 6);
    expect(standardUncertainty(own.slope.estimate)).toBeCloseTo(ofThree, 6);
    expect(standardUncertainty(apart.estimate)).toBeCloseTo(Math.hypot(ofTwo, ofThree), 6);
  });

  it('lists its cells by rising level', () => {
    expect(own.cells.map(({ level_z_m }) => level_z_m)).toEqual([-0.078, -0.062, -0.053]);
  });

  it('is not told where one of the two stood at one level, within the tolerance of the series', () => {
    expect(only([base, { ...baseMore, level_mm: -51 }, deep, deepLevel]).slopes).toBeNull();
    expect(only([base, deep, deepLevel]).slopes).toBeNull();
  });

  it('is not told across two rig states', () => {
    const found = only([base, { ...baseMore, rigState: 'Q1-b' }, deep, deepLevel]);
    expect(found.slopes).toBeNull();
    expect(found.refused).toContain('rig states differ: Q1-a, Q1-b');
  });
});
