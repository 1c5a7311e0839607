import { expect, it } from 'vitest';
import { placeSymmetricEnds, shortestInterval, symmetricInterval } from '../../../src/statistics/coverage-interval.ts';
import { seededSource } from '../../../src/statistics/seeded.ts';

const upTo = (n: number) => Float64Array.from({ length: n }, (_, i) => i + 1);

it('a hundred values leave three below and two above 95 of them', () => {
  // q = 95, r = ⌊(100 − 95 + 1)/2⌋ = 3 (JCGM 101:2008, 7.7.2, by hand).
  expect(symmetricInterval(upTo(100), 0.95)).toEqual([3, 98]);
});

it('ten thousand values leave 249 below and 250 above', () => {
  expect(symmetricInterval(upTo(10000), 0.95)).toEqual([250, 9750]);
});

it('the shortest lies where values are densest, at the first of equals', () => {
  const skewed = Float64Array.from(upTo(200), (x) => (x / 10) ** 3);
  expect(shortestInterval(skewed, 0.9)).toEqual([skewed[0], skewed[180]]);
  expect(shortestInterval(upTo(100), 0.9)).toEqual([1, 91]);
});

it('two values are their own ends, and one is a slip of ours', () => {
  expect(symmetricInterval(upTo(2), 0.95)).toEqual([1, 2]);
  expect(shortestInterval(upTo(2), 0.95)).toEqual([1, 2]);
  expect(() => symmetricInterval(upTo(1), 0.95)).toThrow('fewer than two');
});

it('ends put in their places are those of the sorted values, also with ties, order and endless values', () => {
  const source = seededSource('ends');
  const random = Float64Array.from({ length: 5001 }, () => source.next());
  const tied = random.map((x) => x % 7);
  const endless = random.map((x, i) => (i % 9 === 0 ? Infinity : x));
  for (const values of [random, tied, endless, random.slice().sort(), random.slice().sort().reverse(), upTo(2)]) {
    for (const coverage of [0.5, 0.95, 0.99]) {
      const sorted = symmetricInterval(values.slice().sort(), coverage);
      expect(symmetricInterval(placeSymmetricEnds(values.slice(), coverage), coverage)).toEqual(sorted);
    }
  }
});
