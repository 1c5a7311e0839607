import { nodeAt, type Told } from './note.ts';
import { type Into, worthKnowing } from './read-value.ts';
import { bannedWord } from './texts-words.ts';

/** Words that do not describe what was seen, and what to write instead. Whole words, in any case; a blank is any stretch of blanks. */
interface Banned {
  readonly words: readonly string[];
  readonly why: string;
  readonly write: string;
}

export const banned: readonly Banned[] = [
  {
    words: ['looks like', 'look like', 'looked like', 'looking like', 'seems', 'seemed'],
    why: 'It says what the picture is like and not what is in it.',
    write: 'Write what was there, as "closed sheet, narrower than half the face".',
  },
  {
    words: [
      ...['because', 'because of', 'due to', 'caused by', 'cause of', 'causes', 'so that', 'therefore', 'thanks to'],
      ...['owing to', 'as a result of', 'leads to', 'hence'],
    ],
    why: 'It gives a cause; a cause is shown by a comparison and not by looking.',
    write: 'Write what was seen alone, as "rebound seen as separate drops".',
  },
  {
    words: [
      ...['better', 'worse', 'good', 'bad', 'fine', 'enough', 'dry enough', 'healthy', 'happy', 'poor', 'perfect'],
      ...['excellent', 'ideal', 'ok', 'okay', 'best', 'worst', 'starved', 'destroyed'],
    ],
    why: 'It is a verdict, and the next observer would give another.',
    write: 'Write what was seen, with its grade, its number or its place.',
  },
  {
    words: ['proves', 'proven', 'safe', 'approved', 'certified', 'free', 'up to', 'real-world'],
    why: 'It says more than a trial behind a window can show.',
    write: 'Write what was seen in this run, with its number where there is one.',
  },
];

/** In a claim a cause and a comparison are what is to be tried; only a promise is more than runs can show. */
export const bannedInClaims: readonly Banned[] = [
  {
    words: [
      ...['best', 'worst', 'proves', 'proven', 'proof', 'safe', 'approved', 'certified', 'free', 'up to'],
      ...['real-world', 'always', 'never', 'guaranteed'],
    ],
    why: 'It says more than two cells on one rig can show.',
    write: 'Write which cell differs from which, in which quantity, and by how much.',
  },
];

export interface WordFound {
  readonly offset: number;
  readonly length: number;
  readonly word: string;
  readonly banned: Banned;
}

// longest first, so that "because of" is underlined whole
const patternOf = ({ words }: Banned): RegExp =>
  new RegExp(
    `(?<![\\p{L}\\p{N}-])(?:${[...words]
      .sort((a, b) => b.length - a.length)
      .map((word) => word.replaceAll(' ', '\\s+'))
      .join('|')})(?![\\p{L}\\p{N}-])`,
    'iu',
  );

const patterns = new Map([...banned, ...bannedInClaims].map((row) => [row, patternOf(row)]));

/** The first word of a text that does not describe, or that a claim should not have; null when there is none. */
export function findWord(text: string, rows: readonly Banned[] = banned): WordFound | null {
  const found = rows.flatMap((row): WordFound[] => {
    const hit = (patterns.get(row) ?? patternOf(row)).exec(text);
    return hit ? [{ offset: hit.index, length: hit[0].length, word: hit[0].replace(/\s+/g, ' '), banned: row }] : [];
  });
  return found.sort((a, b) => a.offset - b.offset || b.length - a.length)[0] ?? null;
}

/** Looks at one text of a note as it stands in the file, so that the word itself is underlined. */
export function tellWord(
  path: string,
  into: Into,
  { rows, told }: { readonly rows: readonly Banned[]; readonly told: (found: WordFound) => Told } = {
    rows: banned,
    told: bannedWord,
  },
): void {
  const node = nodeAt(into.note.front, path);
  if (node?.kind !== 'text') return;
  const found = findWord(into.note.text.slice(node.span.offset, node.span.offset + node.span.length), rows);
  if (found) worthKnowing(into, { offset: node.span.offset + found.offset, length: found.length }, told(found));
}
