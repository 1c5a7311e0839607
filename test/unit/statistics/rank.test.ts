import { describe, expect, it } from 'vitest';
import { inSpan, rank } from '../../../src/statistics/rank.ts';

describe('rank of a set of vectors', () => {
  // Determinants and dependences done by hand.
  it.each([
    { of: 'three that are one plane: the third is twice the second less the first', is: 2, rows: [[1, 2, 3], [4, 5, 6], [7, 8, 9]] }, // prettier-ignore
    { of: 'an upper triangle', is: 3, rows: [[2, 1, 0], [0, 3, 1], [0, 0, 4]] }, // prettier-ignore
    { of: 'one vector and its multiples', is: 1, rows: [[1, -1], [3, -3], [-2, 2]] }, // prettier-ignore
    { of: 'nothing but noughts', is: 0, rows: [[0, 0], [0, 0]] }, // prettier-ignore
    { of: 'more than the room has ways to go', is: 2, rows: [[1, 0], [0, 1], [1, 1]] }, // prettier-ignore
    { of: 'none at all', is: 0, rows: [] },
  ])('$of: $is', ({ rows, is }) => {
    expect(rank(rows)).toBe(is);
  });
});

describe('a contrast that a design can estimate', () => {
  // One-way layout of three groups, model mean + effect: a textbook case (Searle, Linear Models, 1971, chapter 5, from memory):
  // a difference of two effects is estimable, an effect alone is not.
  const layout = [
    [1, 1, 0, 0],
    [1, 0, 1, 0],
    [1, 0, 0, 1],
    [1, 0, 0, 1],
  ];
  it('is a difference of two groups, and the mean of one', () => {
    expect(inSpan(layout, [0, 1, -1, 0])).toBe(true);
    expect(inSpan(layout, [1, 0, 0, 1])).toBe(true);
  });
  it('is not one effect by itself, nor a sum of them', () => {
    expect(inSpan(layout, [0, 1, 0, 0])).toBe(false);
    expect(inSpan(layout, [0, 1, 1, 1])).toBe(false);
  });
  it('is nothing but nought without a single run', () => {
    expect(inSpan([], [0, 0])).toBe(true);
    expect(inSpan([], [0, 1])).toBe(false);
  });
});
