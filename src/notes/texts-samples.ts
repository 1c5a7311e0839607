import type { Told } from './note.ts';

/** What is said about samples of an oil. */
const error = (code: string, says: string, why: string, write: string): Told => ({
  code,
  level: 'error',
  says,
  why,
  write,
});

export const sampleLeftOut = 'This sample is left out.';
export const resultLeftOut = 'This result of the sample is left out.';

export const sampleTwice = (id: string): Told =>
  error(
    'id-twice',
    `"${id}" stands for two samples here.`,
    'An id names one thing.',
    `Give the second "${id}" another id.`,
  );

export const unusedAfterRun = (run: string): Told =>
  error(
    'sample-unused-after-run',
    `The unused sample was drawn after run "${run}".`,
    'Unused oil has seen no run; otherwise what changed in that run would count as having been there before.',
    'Take out after-run, or write  point: drain-mid  or  point: syringe.',
  );

export const usedSinceWhen = (): Told =>
  error(
    'sample-run-missing',
    'The sample names neither the run it was drawn after nor the one it was drawn before.',
    'Nobody can tell what its oil had seen.',
    'Write  after-run: H-03  with the last run that the oil had seen.',
  );

export const propertyTwice = (property: string): Told =>
  error(
    'sample-property-twice',
    `"${property}" stands twice in this sample.`,
    'It cannot be told which of the two is meant.',
    'Keep one of the two, or write the second as a sample of its own.',
  );

export const resultShape = (property: string, like: string): Told =>
  error('field-shape', `"${property}" is not one number.`, 'It has no unit.', `Write  value: ${like}.`);

export const repeatabilityNone = (): Told =>
  error(
    'repeatability-none',
    'The repeatability is not above nothing.',
    'Two results of one method on one oil always lie some way apart.',
    'Write what the standard of the method states, such as  repeatability: 0.4 %.',
  );

export const noUnusedTwin = (id: string, batch: string): Told => ({
  code: 'sample-without-unused',
  level: 'warning',
  says: `Sample "${id}" has no unused sample of batch "${batch}" beside it.`,
  why: 'A value of a data sheet or of another batch is no before: nothing can be said of a change.',
  write: `Add a sample of batch ${batch} with  point: unused, or leave it: its results stand alone.`,
});

export const sampleOfOtherOil = (run: string, used: string, oil: string): Told =>
  error(
    'sample-of-other-oil',
    `Run "${run}" used the oil "${used}".`,
    `The sample stands in the note of "${oil}".`,
    `Look at the run, or move the sample to the note of "${used}".`,
  );

export const drawnBeforeRun = (takenOn: string, run: string, started: string): Told =>
  error(
    'sample-before-run',
    `The sample was taken on ${takenOn}; run "${run}", which it was drawn after, started on ${started}.`,
    'It cannot hold what that run did.',
    'Look at taken-on and after-run.',
  );
