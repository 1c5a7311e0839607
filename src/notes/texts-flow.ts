import type { Told } from './note.ts';

/** What is said of the parts of a flow trial: steps, grades, clips, stills, settling. */
const told =
  (level: Told['level']) =>
  (code: string, says: string, why: string, write: string): Told => ({ code, level, says, why, write });
const error = told('error');

export const stepForm = (typed: string): Told =>
  error(
    'step-form',
    `"${typed}" is not a step.`,
    'A step is a speed of the plan with its unit, and up or down for the way it was come to.',
    `Write  ${/^\d+(\.\d+)?/.exec(typed)?.[0] ?? '290'} rpm ${/\bdown\b/i.test(typed) ? 'down' : 'up'}.`,
  );

export const scaleOf = ({ most, ng }: { readonly most: number; readonly ng: boolean }): string =>
  `0 to ${most}${ng ? ', or ng' : ''}`;

export const gradeOff = (name: string, typed: string, scale: { readonly most: number; readonly ng: boolean }): Told =>
  error(
    'grade-off-scale',
    `${name} is ${typed}; the scale goes from ${scaleOf(scale)}.`,
    'Each grade has one anchor; between and beyond them two people would not mean the same.',
    scale.ng
      ? 'Write the grade whose anchor fits, and ng where it could not be seen.'
      : 'Write the grade whose anchor fits, from 0 for blind to 3 for clear.',
  );

const warning = told('warning');
const notice = told('notice');

export const unseenGrade = (): Told =>
  notice(
    'grade-unseen',
    'A grade is written beside View 0 or 1.',
    'What could hardly be seen is not graded; every grade of this step is read as ng.',
    'Write ng, or the View that it was.',
  );

export const clipUnknown = (typed: string, near: string | null, known: readonly string[]): Told =>
  error(
    'clip-unknown',
    `"${typed}" is not a clip of this run.`,
    known.length === 0 ? 'This run has no clip that could be read.' : `Its clips: ${known.slice(0, 12).join(' · ')}.`,
    near === null ? 'Write the file of a clip that stands under clips.' : `Did you mean "${near}"?`,
  );

export const atWithoutClip = (): Told =>
  error(
    'at-without-clip',
    '"at" is a time in a clip, and no clip is named.',
    'A time belongs to one clip.',
    'Write  clip: F-01.webm  with the clip it is a time of, or take "at" out.',
  );

export const beyondClip = (typed: string, length: string): Told =>
  error(
    'clip-time-outside',
    `${typed} lies outside the clip.`,
    `The clip is ${length} long.`,
    'Look at this time and at the length of the clip; times are counted from the beginning of the clip.',
  );

export const piecesOrder = (typed: string, before: string | null): Told =>
  error(
    'pieces-order',
    before === null ? `The first piece begins at ${typed}.` : `A piece at ${typed} stands after one at ${before}.`,
    'Pieces are written in the order of the clip, and the first of them begins it.',
    before === null ? 'Begin with  { clip: 00:00:00.000, film: … }.' : 'Write them in rising order, each once.',
  );

export const ruleNeeds = (rule: 'offset' | 'event', write: string): Told =>
  error(
    'field-missing',
    `"${rule}" is missing for a still taken by rule ${rule}.`,
    rule === 'offset'
      ? 'Stills are compared at one time after the hold begins.'
      : 'Stills are compared at one and the same event.',
    `Write  ${write},  or  rule: chosen.`,
  );

export const ruleHasNot = (name: 'offset' | 'event', rule: string): Told =>
  error(
    'field-one-too-many',
    `"${name}" stands beside rule ${rule}.`,
    'It cannot be told which of the two holds.',
    `Write  rule: ${name}, or take "${name}" out.`,
  );

export const emptyText = (name: 'alt' | 'caption'): Told =>
  error(
    'text-empty',
    `"${name}" is empty.`,
    name === 'alt'
      ? 'An alt text stands for the picture where it cannot be seen: it names the article, the step and what is visible.'
      : 'A picture without a caption says nothing.',
    name === 'alt'
      ? 'Write  alt: "P0w at 290 rpm, way up: a closed sheet over the gear, narrower than half its face".'
      : 'Write  caption: "Closed sheet, narrower than half the face."',
  );

export const rowsOrder = (typed: string): Told =>
  error(
    'not-rising',
    `${typed} does not stand after the row before it.`,
    'Rows after the stop are written in the order in which they were read.',
    'Write them in rising order, each once.',
  );

export const clipTwice = (file: string): Told =>
  error(
    'clip-twice',
    `"${file}" stands twice under clips.`,
    'It cannot be told which of the two holds.',
    'Keep one of the two.',
  );

export const onlyFlow = (name: string, trial: string): Told =>
  warning(
    'flow-field-elsewhere',
    `"${name}" stands in a ${trial} trial.`,
    'Only a flow trial is graded and settles; nothing is made of it here.',
    'Write it in the note of the flow trial, or look at  trial.',
  );

export const observedTwice = (): Told =>
  error(
    'observation-twice',
    'This observer has graded this step twice in one pass.',
    'First grades are kept as they were; it cannot be told which of the two was first.',
    'Keep one of the two, or write  pass: joint  where it is what was agreed on a second look.',
  );

export const observersLeftOut = 'The observations of all further observers are left out; the run stands without them.';

export const observersMany = (most: number): Told =>
  error(
    'observers-too-many',
    `More than ${most} observers are named in this run.`,
    'Every two of them are compared; letters written in two ways make two observers of one.',
    'Write the same letters for the same person, and keep the grades of those who are to be compared.',
  );

export const stepUnplanned = (typed: string, near: string | null): Told =>
  error(
    'step-unplanned',
    `${typed} is not a step of the plan.`,
    'A step is one of the speeds of the plan, within 1 %.',
    near === null ? 'Write steps in plan.md, as  steps: [60 rpm, 120 rpm].' : `The nearest is ${near}.`,
  );
