import { describe, expect, it } from 'vitest';
import { heldPairs, levelOf } from '../../../src/compare/held-pairs.ts';
import type { Effect } from '../../../src/trial/compared.ts';
import { base, deep, deepLevel, factored, figureOf, inputOf, type PlacedCell } from './placed.ts';

const placed = (c: PlacedCell) => {
  const figure = figureOf(c);
  return { figure, estimate: figure.estimate!, level: null };
};
const pairs = (cells: readonly PlacedCell[], effects: readonly Effect[] = []) => heldPairs(inputOf(cells, effects));
const made = factored([base, deep, deepLevel]).effects;

describe('a difference of two cells', () => {
  it('is the one that a standing holds, wherever there is one', () => {
    const standing = made.map((e) => ({ ...e, notes: ['held by the standing'] }));
    const all = pairs([base, deep], standing);
    expect(all.of(placed(deep), placed(base))).toMatchObject({
      ok: true,
      effect: { notes: ['held by the standing'] },
    });
    expect(all.made()).toEqual([]);
  });

  it('is made once, however often it is asked for', () => {
    const all = pairs([base, deep]);
    const [once, again] = [all.of(placed(deep), placed(base)), all.of(placed(deep), placed(base))];
    expect(once.ok && again.ok && once.effect === again.effect).toBe(true);
    expect(all.made()).toHaveLength(1);
  });

  it('is not made of cells whose conditions differ', () => {
    const all = pairs([base, { ...deep, rigState: 'Q1-b' }]);
    expect(all.of(placed(deep), placed(base))).toEqual({ ok: false, reasons: ['rig states differ: Q1-a, Q1-b'] });
    expect(all.made()).toEqual([]);
  });

  it('of a split stands by itself: its own interval is the one that separates', () => {
    expect(made).not.toHaveLength(0);
    for (const effect of made) expect(effect.simultaneous).toEqual(effect.interval);
  });
});

describe('the level of a cell', () => {
  it('is the mean of its runs, and none where a run of it has none', () => {
    const two = { ...figureOf(base), runs: ['P0-240', 'P1-240'] };
    const runs = (level_mm: number | null) => inputOf([base, { ...deep, level_mm }]).runs;
    expect(levelOf(two, runs(-55))?.value).toBeCloseTo(-0.054, 12);
    expect(levelOf(two, runs(null))).toBeNull();
  });
});
