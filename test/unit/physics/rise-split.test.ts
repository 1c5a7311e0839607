import { describe, expect, it } from 'vitest';
import { logMean_K, riseSplit } from '../../../src/physics/rise-split.ts';

describe('makes less, sheds more', () => {
  it('of a cell with itself is nothing, and the mean of equal rises is the rise', () => {
    const cell = { heat_W: 1000, rise_K: 80 };
    const split = riseSplit({ baseline: cell, other: cell })!;
    expect(split).toMatchObject({ logMean_K: 80, byHeatMade_K: 0 });
    expect(Math.abs(split.byShed_K)).toBe(0);
  });

  it('keeps its digits for rises that nearly agree', () => {
    expect(logMean_K({ a_K: 80, b_K: 80 + 1e-9 })).toBeCloseTo(80, 8);
  });

  it('has no answer without rise or heat', () => {
    expect(logMean_K({ a_K: 0, b_K: 80 })).toBeNull();
    expect(logMean_K({ a_K: 80, b_K: Infinity })).toBeNull();
    expect(riseSplit({ baseline: { heat_W: 0, rise_K: 80 }, other: { heat_W: 900, rise_K: 70 } })).toBeNull();
    expect(riseSplit({ baseline: { heat_W: 900, rise_K: 80 }, other: { heat_W: 900, rise_K: -1 } })).toBeNull();
  });
});
