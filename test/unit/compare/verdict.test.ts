import { describe, expect, it } from 'vitest';
import { wholeWord, wordOf } from '../../../src/compare/verdict.ts';
import type { ClaimWord } from '../../../src/trial/claim.ts';

/** Effect and half-width; words as the rule of the house gives them (our own rule, no source). */
const rows: readonly [
  string,
  'lower' | 'higher' | 'within' | 'at-least',
  threshold: number,
  value: number,
  half: number,
  ClaimWord,
][] = [
  ['9.5 K lower, 5 asked', 'lower', 5, -9.5, 1.8, 'shown'],
  ['28 W lower, 15 asked', 'lower', 15, -28, 9, 'shown'],
  ['just at the threshold', 'lower', 5, -6.8, 1.8, 'shown'],
  ['a fifth of it, a half asked', 'at-least', 0.5, 0.18, 0.15, 'shown against'],
  ['1.3 K lower, 1.5 asked, ± 1.8', 'lower', 1.5, -1.3, 1.8, 'not shown'],
  ['4.7 K lower, 1.5 asked', 'lower', 1.5, -4.7, 1.8, 'shown'],
  ['takes longer by −1.9 min ± 7', 'higher', 0, -1.9, 7, 'not shown'],
  ['22 W more ± 9, any asked', 'higher', 0, 22, 9, 'shown'],
  ['3.1 K hotter, any asked', 'higher', 0, 3.1, 1.8, 'shown'],
  ['3.1 K hotter, more than 2 asked', 'higher', 2, 3.1, 1.8, 'leaning'],
  ['the other way altogether', 'higher', 0, -22, 9, 'shown against'],
  ['within 2 K, 3.5 found ± 1', 'within', 2, 3.5, 1, 'shown against'],
  ['within 2 K, 0.5 found ± 1', 'within', 2, 0.5, 1, 'shown'],
  ['within 2 K, 1.5 found ± 1', 'within', 2, 1.5, 1, 'leaning'],
  ['within 2 K, 2.5 found ± 1', 'within', 2, 2.5, 1, 'not shown'],
  ['within 2 K, below by 3.5', 'within', 2, -3.5, 1, 'shown against'],
];

describe('the word of a claim', () => {
  it.each(rows)('%s', (_, direction, threshold, value, half, word) => {
    expect(wordOf({ direction, threshold }, value, [value - half, value + half])).toBe(word);
  });

  it('nothing lies exactly on 0 and is shown', () => {
    expect(wordOf({ direction: 'higher', threshold: 0 }, 2, [0, 4])).toBe('not shown');
  });

  it('of several clauses holds only where all of them do', () => {
    expect(wholeWord(['shown', 'shown'])).toBe('shown');
    expect(wholeWord(['shown', 'leaning'])).toBe('leaning');
    expect(wholeWord(['leaning', 'not shown'])).toBe('not shown');
    expect(wholeWord(['shown', 'shown against', 'not shown'])).toBe('shown against');
    expect(wholeWord(['shown against', 'cannot tell'])).toBe('cannot tell');
    expect(wholeWord([])).toBe('cannot tell');
  });
});
