import type { Told } from './note.ts';

/** What is said of corrections and objections. */
const error = (code: string, says: string, why: string, write: string): Told => ({
  code,
  level: 'error',
  says,
  why,
  write,
});

export const amendmentLeftOut = 'This note is left out: nothing is corrected by it.';

export const changeOfWhat = (): Told =>
  error(
    'change-of-what',
    'This change names neither a run nor an instrument.',
    'A correction reaches what it names, and nothing else.',
    'Write  run: H-09  or  instrument: tc-1  with the channel or the field.',
  );

export const changeHow = (): Told =>
  error(
    'change-how',
    'This change does not say what is read otherwise.',
    'Figures before and after are worked out from it.',
    'Write  channel: ambient, add: -3.4 K  or  times: 1.012  , or  field: article, write: P3 .',
  );

export const changeBoth = (): Told =>
  error(
    'change-how',
    'This change names a channel and a field.',
    'A channel stands in the log, a field in the note; each is a change of its own.',
    'Make two changes of it.',
  );

export const fieldNeedsRun = (): Told =>
  error(
    'change-of-what',
    'A field is changed, and no run is named.',
    'Fields are changed in the note of one run.',
    'Write  run: S-12  beside the field.',
  );

export const addNeedsChannel = (): Told =>
  error(
    'change-channel',
    'Something is added, and no channel is named.',
    'What an amount is depends on the channel.',
    'Write  channel: ambient  beside it.',
  );

export const fieldNotThere = (run: string, field: string): Told =>
  error(
    'change-field',
    `The note of ${run} has no "${field}".`,
    'Only what was typed can be read otherwise.',
    'Name the field as the note has it, such as  article  or  fill.mass-in .',
  );

export const publishedBeforeFound = (found: string, published: string): Told =>
  error(
    'amendment-days',
    `It was published on ${published} and found on ${found}.`,
    'Nothing is corrected before it is found.',
    'Write both days as they were.',
  );

export const idTaken = (id: string, other: string): Told =>
  error(
    'id-twice',
    `"${id}" is not the only id here that is spelled ${other}.`,
    'An id names one thing in a series: article, oil, run, claim or amendment; case alone does not tell two apart.',
    'Give this note another id, such as COR-01, and name its file after it.',
  );
