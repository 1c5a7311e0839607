import type { Told } from './note.ts';

/** What is said of parts, their pins and the questions they carry. */
const told =
  (level: Told['level']) =>
  (code: string, says: string, why: string, write: string): Told => ({ code, level, says, why, write });
const error = told('error');
const warning = told('warning');

export const partLeftOut = 'This part is left out; the others stand.';
export const questionLeftOut = 'This question is left out; the others stand.';

export const partNumberFirst = (id: string, number: number): Told =>
  error(
    'part-number',
    `"${id}" does not begin with the number of the part.`,
    'Its file, its pins and its address are found by the number.',
    `Name the part and its file  ${number.toFixed(0)}-${id.replace(/^\d+-/, '')} .`,
  );

export const partNumberTwice = (number: number, other: string): Told =>
  error(
    'part-number',
    `Part ${number.toFixed(0)} is also ${other}.`,
    'Readers call a part by its number, also years later; none is used twice.',
    'Give one of the two a number that was never used.',
  );

export const refScheme = (scheme: string, meant: string | null): Told =>
  warning(
    'ref-kind',
    `A link to "${scheme}:" leads nowhere.`,
    'Words of a part refer to figure:, claim:, see:, chart: and still:, or to the web.',
    meant === null ? 'Write  [final rise](figure:H-09/final-rise) .' : `Write  ${meant}: .`,
  );

export const refForm = (scheme: string, target: string, picture: boolean): Told =>
  warning(
    'ref-form',
    picture ? `A ${scheme} is written as a picture here.` : `A ${scheme} is written as a link here.`,
    'Figures, claims and names stand in a sentence; charts and stills stand by themselves.',
    picture ? `Write  [words](${scheme}:${target}) .` : `Write  ![what is to be seen](${scheme}:${target}) .`,
  );

export const partNotPinned = (id: string): Told =>
  warning(
    'part-not-pinned',
    'This part says that it is out, and nothing was pinned.',
    'A published part keeps what it showed on its day; without that nobody could say later what was believed.',
    `Read it once more, then type  dipmark pin --part ${id} . Until then only the house sees it.`,
  );

export const pinsOfDraft = (): Told =>
  warning(
    'pins-of-draft',
    'There are pins beside this part, and its note calls it a draft.',
    'What was published stays published.',
    'Write  status: out  , or  status: withdrawn  with the reason.',
  );

export const pinsWithoutPart = (): Told =>
  warning(
    'pins-alone',
    'These pins stand beside no part that could be read.',
    'They say what a part showed, and mean nothing without it.',
    'Put the note of the part back beside them.',
  );

export const pinsRow = (line: string): Told =>
  error(
    'pins-row',
    `This row cannot be read: "${line}".`,
    'Pins are written by the tool, one row a figure, its columns parted by tabs, and are not to be edited.',
    'Fetch the file back as it was on the day the part came out.',
  );

export const pinsDay = (pinned: string, published: string): Told =>
  warning(
    'pins-day',
    `It says that it came out on ${published}, and was pinned for ${pinned}.`,
    'The day of a part is part of its record.',
    `Write  published: ${pinned} .`,
  );

export const wordsChanged = (): Told =>
  warning(
    'part-rewritten',
    'The words of this part are not those that were pinned.',
    'Parts are never rewritten, only annotated; the page says that its words were changed.',
    'Fetch the words back as they were, and write an amendment of kind text.',
  );

export const questionTwice = (id: string): Told =>
  error(
    'id-twice',
    `There are two questions "${id}".`,
    'A question is carried from part to part by its id.',
    'Give one of them another id.',
  );

export const questionBoth = (): Told =>
  error(
    'question-state',
    'This question was dropped and handed on.',
    'One thing became of it.',
    'Keep  dropped  or  handed-on .',
  );

export const answeredBeforeAsked = (id: string, raised: string): Told =>
  warning(
    'question-days',
    `"${id}" is answered here and was put on ${raised}, after this part came out.`,
    'A question that came later cannot have been answered before.',
    'Look at both days.',
  );
