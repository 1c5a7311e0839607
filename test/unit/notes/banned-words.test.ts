import { describe, expect, it } from 'vitest';
import { banned, findWord } from '../../../src/notes/banned-words.ts';

const found = (text: string): string | null => {
  const hit = findWord(text);
  return hit && text.slice(hit.offset, hit.offset + hit.length);
};

// the list of words to avoid is the house's own: common practice, no source
describe('words that judge, explain or promise', () => {
  it.each(banned.flatMap(({ words }) => words))('"%s" is found, in any case', (word) => {
    expect(found(`drops ${word} at the pocket`)?.toLowerCase()).toContain(word);
    expect(found(`${word.toUpperCase()}: drops`)).not.toBeNull();
  });

  it.each([
    ['Looks  like milk', 'Looks  like'],
    ['thrown off because\nof the shroud', 'because\nof'],
    ['the wall is dry enough.', 'dry enough'],
    ['(good) sheet, bad view', 'good'],
  ])('in "%s" it is "%s" that is underlined', (text, word) => {
    expect(found(text)).toBe(word);
  });

  it.each([
    'single drops at the pocket',
    'goods, badly, finer, freely, safety, betterment',
    'oil-free lip',
    'closed sheet, half the face or wider',
    'milky, grid lost, lamp to be made out',
    'more bubbles than at this speed on the way up',
    '',
  ])('"%s" is plain', (text) => {
    expect(found(text)).toBeNull();
  });
});
