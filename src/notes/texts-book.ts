import type { Told } from './note.ts';

/** What is said when notes of a book do not go together, and what becomes of them. */
const told =
  (level: Told['level']) =>
  (code: string, says: string, why: string, write: string): Told => ({ code, level, says, why, write });
const error = told('error');
const warning = told('warning');
const notice = told('notice');

export const standInEffect = 'The series are read; the book stands under stand-in words until this is mended.';
export const seriesLeftOut = 'This series is left out of the book.';
export const planLeftOut = 'The series is read without its plan.';
export const runLeftOut = 'This run is left out of the series.';
export const twinsLeftOut = (ids: readonly string[]): string => `${list(ids)} are left out of the series.`;
export const runsLeftOut = (what: string, ids: readonly string[]): string =>
  ids.length === 0
    ? `No run uses this ${what} now.`
    : `${ids.length === 1 ? 'The run' : 'The runs'} with this ${what} ${ids.length === 1 ? 'is' : 'are'} left out: ${list(ids)}.`;

const list = (ids: readonly string[]): string =>
  ids.length < 2 ? ids.join('') : `${ids.slice(0, -1).join(', ')} and ${ids[ids.length - 1] ?? ''}`;

export const bookMissing = (): Told =>
  error(
    'book-missing',
    'There is no book.md.',
    'It holds the name of the lab and where corrections are sent.',
    'Write a book.md with name, lab, contact and licence.',
  );

export const rigMissing = (): Told =>
  error(
    'rig-missing',
    'The series has no rig.md.',
    'Without the rig no logger file can be read and no figure has an uncertainty.',
    'Write a rig.md beside series.md.',
  );

export const planMissing = (): Told =>
  warning(
    'plan-missing',
    'The series has no plan.md.',
    'Steps, temperatures and limits stand in it; without them no run is reduced.',
    'Write a plan.md beside series.md.',
  );

export const noteNotRead = (): Told =>
  notice(
    'note-not-read',
    'No part of the book reads this note.',
    'Notes are read from series.md, rig.md, plan.md and the folders articles, oils and runs.',
    'Move it into the folder of its kind, or leave it where it is.',
  );

export const noteEnding = (name: string): Told =>
  warning(
    'note-ending',
    `"${name}" is not read, since its name does not end in .md.`,
    'Some editors add an ending of their own when a note is saved.',
    `Name it ${name.replace(/\.md\..*$/i, '.md')}.`,
  );

export const logNotNamed = (name: string): Told =>
  notice(
    'log-not-named',
    `No run names the logger file "${name}".`,
    'Its readings are in no figure.',
    `Write a note with  log: { file: ${name}, map: … }  beside it, or leave it where it is.`,
  );

export const orderTwice = (order: number, other: string): Told =>
  warning(
    'order-twice',
    `${other} is run ${String(order)} of the series too.`,
    'The order says which baseline runs stand before and after, and how far the rig may have wandered between.',
    'Count the runs as they were made and write each its own number.',
  );

export const idNotFile = (id: string, file: string): Told =>
  error(
    'id-not-file',
    `The id is "${id}" and the file is "${file}.md".`,
    'Others find the note by its id.',
    `Write  id: ${file}, or name the file ${id}.md.`,
  );

export const idNotFolder = (id: string, folder: string): Told =>
  error(
    'id-not-file',
    `The id is "${id}" and the folder is "${folder}".`,
    'Both are part of every permanent address.',
    `Write  id: ${folder}, or name the folder ${id}.`,
  );

export const seriesIdTwice = (id: string, folder: string): Told =>
  error(
    'series-id-twice',
    `Another series already has the id "${id}".`,
    'Both would stand at one address.',
    `Write  id: ${folder}.`,
  );

export const idOfOther = (id: string, other: string): Told =>
  error(
    'id-twice',
    `"${id}" is not the only id here that is spelled ${other}.`,
    'An id names one thing in a series: article, oil or run; case alone does not tell two apart.',
    'Give the run and its file another id.',
  );

export const baselineRole = (id: string): Told =>
  warning(
    'baseline-role',
    `The series compares with "${id}", whose role is not baseline.`,
    'The role says what an article is compared as.',
    'Write  role: baseline, or name another article in series.md.',
  );

export const windowCapMissing = (id: string): Told =>
  warning(
    'window-cap-missing',
    `"${id}" has a window, and the rig sheet has no cap for it.`,
    'A clear wall softens with heat; a run past its cap is to be seen on its sheet.',
    `Add ${id} to used-on:  window: { used-on: [${id}], material: polycarbonate, max-sump: 60 °C }  in rig.md.`,
  );

export const mainLimitNotPlanned = (): Told =>
  warning(
    'main-limit-not-planned',
    'The main limit is not one of the limits of the plan.',
    'Only the limits of the plan are timed.',
    'Write one of them, or add this one to limits in plan.md.',
  );

export const noLevelTableThere = (id: string): Told =>
  error(
    'level-table-missing',
    `"${id}" has no level table of its own.`,
    'The level table of one article stands in its own note.',
    'Name an article that has a level-table, or write the table here.',
  );

export const levelTableMissing = (id: string, runs: readonly string[]): Told =>
  warning(
    'level-table-missing',
    `"${id}" has no level table, and no level was read in ${list(runs)}.`,
    'Without either the same litres cannot be told from the same level.',
    'Write  level-table: { method: pour_and_dip, rows: [{ z: -132 mm, volume: 0.20 L }] }  with six rows or more.',
  );

export const logOutside = (file: string): Told =>
  error(
    'log-outside',
    `"${file}" leads out of the folder of this note.`,
    'A book is read from its own folder only, so that it can be carried elsewhere whole.',
    'Copy the file beside the note and write its bare name, as  file: S-07.csv.',
  );

export const logMissing = (file: string, path: string, near: string | null): Told =>
  error(
    'log-missing',
    `There is no logger file "${file}".`,
    `It was looked for at ${path}.`,
    near === null
      ? 'Copy the file itself beside the note, since a link is not followed; or write the name that it has.'
      : `Did you mean  file: ${near} ?`,
  );

export const logTwice = (ids: readonly string[]): Told =>
  error(
    'log-twice',
    `${list(ids)} name the same logger file.`,
    'One file is one run; it cannot be told whose it is.',
    'Write the file of each run in its own note.',
  );

export const logSameContent = (ids: readonly string[]): Told =>
  error(
    'log-twice',
    `The logger files of ${list(ids)} are the same, byte for byte.`,
    'One of them was copied over the other; it cannot be told which.',
    'Put back the file of each run from the logger.',
  );

export const fromNotHeatUp = (id: string, trial: string): Told =>
  error(
    'from-run-kind',
    `"${id}" is a ${trial} trial.`,
    'A cool-down follows a heat-up.',
    'Write the id of the heat-up before it.',
  );

export const zerosMissing = (ids: readonly string[]): Told =>
  error(
    'zeros-missing',
    `No zero is written for ${list(ids)}.`,
    'The rig sheet says that its zero is read before and after; a loss figure without it may be off by the whole zero.',
    `Write  zeros: { ${ids[0] ?? ''}: { before: 0.02 N·m, after: 0.04 N·m } }.`,
  );

export const runBeforeSeries = (day: string): Told =>
  notice(
    'run-before-series',
    'The run started before the series did.',
    `The series started on ${day}; a claim made after its data is stamped so.`,
    'Look at started in both notes; leave it when older runs were taken in.',
  );

export const runBeforeState = (id: string, day: string): Told =>
  notice(
    'run-before-state',
    `The run started before the rig stood as ${id}.`,
    `That state is from ${day}.`,
    'Look at started and at the state of the rig.',
  );
