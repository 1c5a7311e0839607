import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compactLetters } from '../../../src/statistics/letters.ts';

const pair = (a: string, b: string) => [a, b].sort().join('~');

it('gives overlapping letters where the middle one is separated from neither end', () => {
  const letters = compactLetters({ order: ['P0', 'P1', 'P2'], separated: (a, b) => pair(a, b) === 'P0~P2' });
  expect(Object.fromEntries(letters)).toEqual({ P0: 'a', P1: 'ab', P2: 'b' });
});

it('gives one letter to cells of which none is separated, and a letter each where all are', () => {
  const order = ['x', 'y', 'z'];
  expect([...compactLetters({ order, separated: () => false }).values()]).toEqual(['a', 'a', 'a']);
  expect([...compactLetters({ order, separated: () => true }).values()]).toEqual(['a', 'b', 'c']);
});

it('gives a single cell the letter a, and no cells no letters', () => {
  expect(Object.fromEntries(compactLetters({ order: ['P0'], separated: () => true }))).toEqual({ P0: 'a' });
  expect(compactLetters({ order: [], separated: () => true }).size).toBe(0);
});

it('goes on after z and Z without using a letter twice', () => {
  const order = Array.from({ length: 60 }, (_, i) => `cell-${i}`);
  const letters = [...compactLetters({ order, separated: () => true }).values()];
  expect(letters.slice(0, 2)).toEqual(['a', 'b']);
  expect(letters[52]).toBe('a2');
  expect(new Set(letters).size).toBe(60);
});

it('lets a pair share a letter just when it is not separated, whatever pairs are separated', () => {
  const order = ['A', 'B', 'C', 'D', 'E', 'F', 'G'];
  const pairs = order.flatMap((a, i) => order.slice(i + 1).map((b) => pair(a, b)));
  fc.assert(
    fc.property(fc.subarray(pairs), (chosen) => {
      const separated = (a: string, b: string) => chosen.includes(pair(a, b));
      const letters = compactLetters({ order, separated });
      for (const [i, a] of order.entries()) {
        expect(letters.get(a)).not.toBe('');
        for (const b of order.slice(i + 1)) {
          const shared = Array.from(letters.get(a)!).some((letter) => letters.get(b)!.includes(letter));
          expect(shared).toBe(!separated(a, b));
        }
      }
    }),
    { seed: 20261124, numRuns: 300 },
  );
});
