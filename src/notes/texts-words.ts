import type { Told } from './note.ts';

export const bannedWord = (found: {
  readonly word: string;
  readonly banned: { readonly why: string; readonly write: string };
}): Told => ({
  code: 'word-not-plain',
  level: 'warning',
  says: `"${found.word}" stands in these words.`,
  why: found.banned.why,
  write: found.banned.write,
});
