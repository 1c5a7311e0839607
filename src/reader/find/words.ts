import MiniSearch from 'minisearch';
import type { FindText } from '../../trial/find.ts';

export interface FoundText {
  readonly path: string;
  readonly title: string;
  /** Some words round the first of those that were found. */
  readonly around: string;
}

export interface WordIndex {
  /** Takes in some more stretches; true when all are in. */
  readonly read: (most: number) => boolean;
  /** Every word has to be found; where no stretch has all of them, some will do. */
  readonly ask: (words: string) => readonly FoundText[];
}

/** All words of the book. They are taken in piece by piece, so that the page answers meanwhile. */
export function wordIndex(texts: readonly FindText[]): WordIndex {
  const index = new MiniSearch<{ id: number; title: string; words: string }>({
    fields: ['title', 'words'],
    tokenize: tokensOf,
    processTerm: folded,
    searchOptions: {
      boost: { title: 3 },
      // A short word is meant as it is written: P4 is not P1.
      prefix: (term) => term.length > 2 && !/\d/.test(term),
      fuzzy: (term) => (term.length > 4 && !/\d/.test(term) ? 0.2 : false),
    },
  });
  let taken = 0;
  const read = (most: number): boolean => {
    const piece = texts.slice(taken, taken + most);
    index.addAll(piece.map(([, title, words], i) => ({ id: taken + i, title, words })));
    taken += piece.length;
    return taken === texts.length;
  };
  return {
    read,
    ask: (asked) => {
      read(texts.length);
      const all = index.search(asked, { combineWith: 'AND' });
      return (all.length > 0 ? all : index.search(asked)).map(({ id, terms }) => {
        const [path, title, words] = texts[id as number]!;
        return { path, title, around: aroundOf(words, terms) };
      });
    },
  };
}

/** A name with a hyphen is one word, and each of its parts is one: "85W-90" is found by itself and by "90". */
export function tokensOf(text: string): string[] {
  const whole = text.match(/[\p{L}\p{N}]+(?:[-.~][\p{L}\p{N}]+)*/gu) ?? [];
  return whole.flatMap((word) => (/[-.~]/.test(word) ? [word, ...word.split(/[-.~]/)] : [word]));
}

const folded = (term: string): string => term.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

const before = 60;
const longest = 200;

function aroundOf(words: string, terms: readonly string[]): string {
  const low = words.toLowerCase();
  const places = terms.map((term) => low.indexOf(term)).filter((place) => place >= 0);
  const from = Math.max(0, Math.min(...(places.length === 0 ? [0] : places)) - before);
  const start = from === 0 ? 0 : words.indexOf(' ', from) + 1;
  const part = words.slice(start, start + longest);
  const end = start + longest < words.length ? part.lastIndexOf(' ') : part.length;
  return `${start === 0 ? '' : '… '}${part.slice(0, end > 0 ? end : part.length)}${start + longest < words.length ? ' …' : ''}`;
}
