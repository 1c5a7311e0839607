import { describe, expect, it } from 'vitest';
import type { Article } from '../../../src/trial/article.ts';
import { keptBack, renaming, toldIn } from '../../../src/trial/kept-back.ts';

const article = (id: string, name: string, standsInFor: readonly string[] = []): [string, Article] => [
  id,
  { id, name, role: standsInFor.length > 0 ? 'window_copy' : 'candidate', standsInFor } as unknown as Article,
];
const articles = new Map([
  article('P1', 'deep bowl'),
  article('P1w', 'window copy of P1', ['P1']),
  article('P10', 'tenth bowl'),
  article('C+', 'bowl (C+)'),
]);
const kept = keptBack(
  {
    aliases: new Map([
      ['P1', 'Article B'],
      ['C+', 'Article $&'],
    ]),
  },
  articles,
);

describe('names that a client copy keeps back', () => {
  it.each([
    ['P1 deep bowl, 2.40 L', 'Article B, 2.40 L'],
    ['deep bowl P1', 'Article B'],
    ['The deep bowl and the P1', 'Article B and Article B'],
    ['deep-bowl, deep_bowl, Deep\u00a0Bowl', 'Article B, Article B, Article B'],
    ['P1w window copy of P1', 'Article B with a window'],
    ['P10 tenth bowl', 'P10 tenth bowl'],
    ['XP1, P1x', 'XP1, P1x'],
    ['see p1.', 'see Article B.'],
    ['bowl (C+) turns', 'Article $& turns'],
  ])('%s → %s', (text, wanted) => {
    expect(renaming(kept)(text)).toBe(wanted);
    expect(toldIn(renaming(kept)(text), kept)).toBeNull();
  });

  it.each(['P1', 'a Deep  Bowl', 'pictures/P1.jpg', 'P1:', '(C+', 'deep\u00ad bowl'])(
    '%s would still tell one',
    (text) => {
      expect(toldIn(text, kept)).not.toBeNull();
    },
  );

  it.each(['P10', 'deeper bowls', 'P1x', 'Article B'])('%s tells none', (text) => {
    expect(toldIn(text, kept)).toBeNull();
  });
});
