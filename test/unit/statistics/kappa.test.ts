import { describe, expect, it } from 'vitest';
import { weightedKappa } from '../../../src/statistics/kappa.ts';

const empty = [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
];
const withCounts = (...at: readonly (readonly [row: number, column: number, count: number])[]): number[][] => {
  const table = empty.map((row) => [...row]);
  for (const [row, column, count] of at) table[row]![column] = count;
  return table;
};

describe('kappa of two observers', () => {
  it('is not there without a pair, and not with one: there is no spread to agree on', () => {
    expect(weightedKappa(empty)).toBeNull();
    expect(weightedKappa(withCounts([1, 1, 1]))).toBeNull();
    expect(weightedKappa(withCounts([0, 2, 1]))).toBeNull();
  });

  it('is not there when one of them gave one grade throughout, be it the first or the second', () => {
    expect(weightedKappa(withCounts([1, 0, 4], [1, 2, 3]))).toBeNull();
    expect(weightedKappa(withCounts([0, 1, 4], [2, 1, 3]))).toBeNull();
  });

  it('is 1 for two equal pairs of different grades, and the large-sample form sees no scatter in them', () => {
    expect(weightedKappa(withCounts([0, 0, 1], [2, 2, 1]))).toEqual({ n: 2, kappa: 1, standardError: 0 });
  });

  it('is −1 when each grade meets its opposite', () => {
    expect(weightedKappa(withCounts([0, 2, 5], [2, 0, 5]))!.kappa).toBe(-1);
  });

  it('does not change when the observers change places, or when grades that nobody gave are left out', () => {
    const table = withCounts([0, 0, 6], [0, 1, 2], [1, 1, 5], [1, 0, 1]);
    const turned = table.map((_, i) => table.map((row) => row[i]!));
    expect(weightedKappa(turned)).toEqual(weightedKappa(table));
    const small = weightedKappa([
      [6, 2],
      [1, 5],
    ])!;
    expect(weightedKappa(table)!.kappa).toBe(small.kappa);
    expect(weightedKappa(table)!.standardError).toBeCloseTo(small.standardError, 14);
  });

  it('has a standard error half as large for four times the pairs', () => {
    const table = withCounts([0, 0, 6], [0, 1, 2], [1, 1, 5], [2, 1, 1], [2, 2, 3]);
    const four = weightedKappa(table.map((row) => row.map((count) => 4 * count)))!;
    expect(four.kappa).toBeCloseTo(weightedKappa(table)!.kappa, 14);
    expect(four.standardError).toBeCloseTo(weightedKappa(table)!.standardError / 2, 14);
  });

  it('of a table that is not square is our bug', () => {
    expect(() => weightedKappa([[1, 2]])).toThrow('not square');
  });
});
