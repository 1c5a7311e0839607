import type { Told } from './note.ts';

/** What is said of values that nobody has looked up yet. */
export const stillGuessed = (fields: readonly string[], runs: readonly string[]): Told => ({
  code: 'guessed-still',
  level: runs.length > 0 ? 'warning' : 'notice',
  says: `${fields.join(', ')}: ${fields.length === 1 ? 'a guess' : 'guesses'} so far.${runs.length > 0 ? ` ${runs.join(', ')} ${runs.length === 1 ? 'gives' : 'give'} no figures until then.` : ''}`,
  why: 'A figure that rests on a guess is worse than none.',
  write: `Look ${fields.length === 1 ? 'it up, write it in, and take its name' : 'them up, write them in, and take their names'} out of  guessed:  .`,
});

export const guessedStranger = (name: string, meant: string | null): Told => ({
  code: 'guessed-stranger',
  level: 'warning',
  says: `This note has no field "${name}".`,
  why: 'What is still a guess must be told by its name, or it is forgotten.',
  write: meant === null ? 'Take it out of  guessed:  .' : `Write  ${meant}  , or take it out of  guessed:  .`,
});
