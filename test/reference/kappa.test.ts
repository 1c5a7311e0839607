import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { halfOfLastDigit } from '../../src/physics/relation.ts';
import { weightedKappa } from '../../src/statistics/kappa.ts';

const fromProgram = readFileSync(new URL('./tables/kappa.csv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))
  .slice(1)
  .map((line) => {
    const [counts, kappa, standardError] = line.split(',') as [string, string, string];
    return { counts, table: counts.split('|').map((row) => row.split(' ').map(Number)), kappa, standardError };
  });

const agrees = (got: number, printed: string): void => {
  expect(Math.abs(got - Number(printed))).toBeLessThanOrEqual(halfOfLastDigit(printed) * (1 + 1e-9));
};

describe('quadratic-weighted kappa (Cohen 1968) and its standard error (Fleiss, Cohen & Everitt 1969)', () => {
  // With two grades the weights leave nothing to choose, so that the plain kappa of a two by two table is the same.
  it('is 0.348 for the two by two table of Artstein & Poesio 2008, Table 1, as the tests of scikit-learn print it', () => {
    agrees(weightedKappa([[20, 20], [10, 50]])!.kappa, '0.348'); // prettier-ignore
  });

  it('is 0.9541 for three grades of a hundred pairs, printed by the tests of scikit-learn', () => {
    agrees(weightedKappa([[46, 0, 0], [4, 40, 0], [0, 0, 10]])!.kappa, '0.9541'); // prettier-ignore
  });

  it('has 25 tables of another program to agree with', () => {
    expect(fromProgram).toHaveLength(25);
  });

  it.each(fromProgram)('of $counts is $kappa with $standardError (statsmodels)', ({ table, kappa, standardError }) => {
    const got = weightedKappa(table)!;
    agrees(got.kappa, kappa);
    agrees(got.standardError, standardError);
  });
});

/**
 * Concordance of two lists, 2 s_xy/(s_x² + s_y² + (x̄ − ȳ)²) with moments divided by n.
 * Lin, Biometrics 45 (1989) 255, from memory.
 */
function concordance(pairs: readonly (readonly [number, number])[]): number {
  const mean = (of: (pair: readonly [number, number]) => number): number =>
    pairs.reduce((total, pair) => total + of(pair), 0) / pairs.length;
  const [x, y] = [mean((p) => p[0]), mean((p) => p[1])];
  const both = mean((p) => (p[0] - x) * (p[1] - y));
  return (2 * both) / (mean((p) => (p[0] - x) ** 2) + mean((p) => (p[1] - y) ** 2) + (x - y) ** 2);
}

describe('quadratic-weighted kappa and the concordance coefficient (Lin 1989)', () => {
  const pair = fc.tuple(fc.nat(4), fc.nat(4));
  const lists = fc
    .array(pair, { minLength: 2, maxLength: 120 })
    .filter((pairs) => [0, 1].every((i) => new Set(pairs.map((p) => p[i]!)).size > 1));

  it('are one number for any grades, to 12 digits', () => {
    fc.assert(
      fc.property(lists, (pairs) => {
        const table = [0, 1, 2, 3, 4].map((a) => [0, 1, 2, 3, 4].map((b) => pairs.filter(([x, y]) => x === a && y === b).length)); // prettier-ignore
        expect(Math.abs(weightedKappa(table)!.kappa - concordance(pairs))).toBeLessThanOrEqual(5e-13);
      }),
      { numRuns: 1000, seed: 20260317 },
    );
  });
});
