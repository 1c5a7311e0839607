import type { Finding } from '../../finding/finding.ts';

/** What is said of the files of a pack. */
type Told = Omit<Finding, 'place'>;

const another = 'Fetch the file back from another copy of the pack.';

/** "39 figures lose their support: A, B, C and 36 more" */
const supportWords = (figures: readonly string[]): string =>
  figures.length === 0
    ? 'No figure rests on it.'
    : `${figures.length.toFixed(0)} ${figures.length === 1 ? 'figure loses its' : 'figures lose their'} support: ${figures.slice(0, 12).join(' ')}${figures.length > 12 ? ` and ${(figures.length - 12).toFixed(0)} more` : ''}`;

export const fileGone = (path: string, figures: readonly string[]): Told => ({
  code: 'sum-missing',
  level: 'error',
  says: `${path} is gone. ${supportWords(figures)}`,
  why: 'A figure can be followed only as long as what it was worked out from is there.',
  write: another,
});

export const fileChanged = (path: string, figures: readonly string[]): Told => ({
  code: 'sum-differs',
  level: 'error',
  says: `${path} is not the file that was packed. ${supportWords(figures)}`,
  why: 'What was packed is a record; a file that was changed since is another one.',
  write: another,
});

export const fileNew = (path: string): Told => ({
  code: 'sum-unlisted',
  level: 'warning',
  says: `${path} was not there when this was packed.`,
  why: 'A pack holds what stood on one day.',
  write: 'Take it out, or pack the book anew.',
});

export const sumsRow = (): Told => ({
  code: 'sums-row',
  level: 'error',
  says: 'This row is no sum with a path of the pack behind it.',
  why: 'Sums are written by the tool, one row a file.',
  write: another,
});
