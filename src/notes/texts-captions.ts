import type { CueTrouble } from '../trial/read-cue.ts';
import type { Told } from './note.ts';
import { gradeOff } from './texts-flow.ts';

/** What is said of a captions file: as text, as WebVTT, and cue by cue. Nothing here names an observer. */
const told =
  (level: Told['level']) =>
  (code: string, says: string, why: string, write: string): Told => ({ code, level, says, why, write });
const error = told('error');
const warning = told('warning');
const notice = told('notice');

const example =
  'run F-01 rpm 60 up | observer A | reach 1 side 1 wall 0 bubble 0 tube 0 view 3 | level -57 swing 3 | words: single drops at the pocket';

export const captionsLeftOut = 'None of its observations are read; the run stands without them.';

export const otherRunLeftOut = 'The cues about it are left out; the run stands without them.';

export const tooLarge = (bytes: number): Told =>
  error(
    'captions-too-large',
    `The captions file has ${bytes} bytes.`,
    'A few dozen cues are some thousand bytes; this is no list of observations.',
    'Name the WebVTT file under captions.',
  );

export const utf16 = (): Told =>
  error(
    'captions-not-utf8',
    'The captions file is saved as UTF-16.',
    'WebVTT is UTF-8.',
    'Save the file again as UTF-8.',
  );

export const zeroBytes = (): Told =>
  error(
    'captions-not-text',
    'The captions file holds zero bytes, so it is not text.',
    'WebVTT is a text file in UTF-8.',
    'Put the file back from a copy, or name the WebVTT file under captions.',
  );

export const notUtf8 = (byte: number): Told =>
  error(
    'captions-not-utf8',
    `The byte 0x${byte.toString(16).padStart(2, '0')} here is not UTF-8.`,
    'WebVTT is UTF-8; read as something else, words would turn into others unseen.',
    'Save the file again as UTF-8 and look at the signs on this line.',
  );

export const noHeader = (first: string): Told =>
  error(
    'captions-header',
    first === '' ? 'The first line is empty.' : 'The first line is not WEBVTT.',
    'A player reads a file as WebVTT only when it begins with that word.',
    'Write WEBVTT alone on the first line, an empty line under it, and then the cues.',
  );

export const headerLine = (): Told =>
  error(
    'captions-header',
    'No empty line stands under WEBVTT.',
    'What stands there belongs to the head of the file and is passed over.',
    'Write an empty line after WEBVTT.',
  );

export const timeInNote = (): Told =>
  error(
    'captions-time-in-note',
    'A time line stands in a NOTE.',
    'A player takes it for a cue, whatever stands above it.',
    'Take the sign --> out of the note, or put an empty line before the time line to make it a cue.',
  );

export const noTimes = (): Told =>
  error(
    'captions-no-time',
    'No time line stands over these words.',
    'A player passes them over.',
    'Write the times over them, as  00:00:36.000 --> 00:00:46.000, or NOTE before them.',
  );

export const badTime = (typed: string): Told =>
  error(
    'captions-time',
    typed === '' ? 'A time is missing beside -->.' : `"${typed}" is not a time.`,
    /^[\d:]+,\d+$/.test(typed)
      ? 'In WebVTT parts of a second stand after a point.'
      : 'A time is hours, minutes, seconds and three digits after a point; hours may be left out.',
    'Write  00:00:36.000 --> 00:00:46.000.',
  );

export const arrowInWords = (): Told =>
  error(
    'captions-arrow',
    'The sign --> stands in the text of a cue.',
    'A player takes such a line for a time line, and shows nothing of the cue.',
    'Write  --&gt;  or other words.',
  );

export const endNotAfter = (from: string, to: string): Told =>
  error(
    'captions-end',
    `The cue ends at ${to} and begins at ${from}.`,
    'A cue ends after it begins.',
    'Look at both times; ten seconds are the window of a grade.',
  );

export const outOfOrder = (): Told =>
  warning(
    'captions-order',
    'This cue begins before the one above it.',
    'WebVTT keeps cues in the order in which they begin, and some players show no others.',
    'Put the cue where its time belongs.',
  );

export const overlapping = (): Told =>
  error(
    'captions-overlap',
    'This cue begins before another one of this observer and pass has ended.',
    'One observer looks at one step at a time.',
    'Look at the times of both; two observers, or two passes, may overlap.',
  );

export const outsideClip = (length: string): Told =>
  error(
    'clip-time-outside',
    'The cue does not lie in the clip.',
    `The clip is ${length} long.`,
    'Look at these times and at the length of the clip; times are counted from the beginning of the clip.',
  );

export const otherRun = (typed: string, names: readonly string[]): Told =>
  error(
    'cue-run',
    `The cue is about "${typed}".`,
    `This file belongs to ${names.join(', as graders know it ')}.`,
    `Write  run ${names[0] ?? ''}, or put the cue into the file of that clip.`,
  );

export const captionsMissing = (file: string, path: string, near: string | null): Told =>
  error(
    'captions-missing',
    `There is no captions file "${file}".`,
    `It was looked for at ${path}.`,
    near === null
      ? 'Copy the file itself beside the note, since a link is not followed; or write the name that it has.'
      : `Did you mean  captions: ${near} ?`,
  );

export const captionsTwice = (file: string): Told =>
  error(
    'captions-twice',
    `"${file}" is the captions file of another clip already.`,
    'Its times are those of one clip.',
    'Write the captions of each clip in a file of its own.',
  );

export const captionsNotNamed = (name: string): Told =>
  notice(
    'captions-not-named',
    `No clip names the captions file "${name}".`,
    'Its observations are in no figure.',
    `Write  captions: ${name}  at its clip, or leave it where it is.`,
  );

/** A notice for the house; it stops a public build, where nothing says who observed. */
export const captionsNameTells = (run: string): Told =>
  notice(
    'captions-name-tells',
    'The name of this captions file says who observed.',
    'The name of a file stands in the ledger and on sheets; initials are for the house.',
    `Rename the file before it is published, and write  captions: ${run}.vtt.`,
  );

/** Twenty are enough to see what is wrong with a file. */
export const moreInFile = (more: number): Omit<Told, 'level'> => ({
  code: 'more-findings',
  says: `${more} more finding${more === 1 ? '' : 's'} in this captions file.`,
  why: 'Only the first twenty are listed.',
  write: 'Mend these and check again.',
});

/** What will not do in the text of a cue. */
export function inCue(t: CueTrouble): Told {
  const [one, two] = [`"${t.typed}"`, t.near === null ? null : `Did you mean "${t.near}"?`];
  switch (t.what) {
    case 'no-run':
      return error(
        'cue-form',
        t.typed === '' ? 'The cue is empty.' : 'The cue does not begin with the word run.',
        'Every cue of this file is one observation, in one form; other words stand in a NOTE.',
        `Write  ${example}.`,
      );
    case 'unknown':
      return error(
        'cue-word',
        `${one} is not a word of a cue.`,
        'Known are run, step, rpm, observer, pass, blind, the five grades, view, level, swing and foam in mm, detach in degrees, all without a unit; plain words stand after words:.',
        two ?? `Write it as  ${example}.`,
      );
    case 'twice':
      return error(
        'cue-word-twice',
        `${one} stands twice in this cue.`,
        'It cannot be told which of the two holds.',
        'Keep one of the two; a bar | stands before words: and what follows it.',
      );
    case 'missing':
      return error(
        'cue-incomplete',
        `${t.known.join(', ')} ${t.known.length === 1 ? 'is' : 'are'} missing in this cue.`,
        'An observation says run, speed, observer, five grades and View; what could not be seen is ng.',
        `Write  ${t.known.map((name) => `${name} ${values[name] ?? 'ng'}`).join(' ')}  with what was seen.`,
      );
    case 'no-value':
      return error(
        'cue-incomplete',
        `Nothing stands after ${t.name}.`,
        'Each word of a cue has its value.',
        `Write  ${t.name} ${values[t.name] ?? 'ng'}  with what was seen.`,
      );
    case 'grade':
      return gradeOff(t.name, t.typed, t.name === 'view' ? { most: 3, ng: false } : { most: 4, ng: true });
    case 'number':
      return error(
        'cue-number',
        `${t.name} is ${one}, which is not a plain number.`,
        'rpm is written in rpm, heights in mm and angles in degrees, with a point and without a unit.',
        `Write  ${t.name} ${values[t.name] ?? '3'}  with what was read.`,
      );
    case 'outside':
      return error(
        'value-impossible',
        `${t.name} is ${t.typed}.`,
        `It lies between ${t.known.join(' and ')}.`,
        'Look at the sign and the digits; heights are in mm, angles in degrees.',
      );
    case 'word':
      return error(
        'cue-word',
        t.typed === '' ? 'The speed does not say up or down.' : `${one} does not stand after ${t.name}.`,
        `It is one of: ${t.known.join(' · ')}.`,
        two ?? `Write  ${t.name} ${values[t.name] ?? t.known[0] ?? ''}.`,
      );
  }
}

const values: Readonly<Record<string, string>> = {
  ...{ run: 'F-01', step: '1', rpm: '60 up', observer: 'A', pass: 'joint', blind: 'fill oil' },
  ...{ view: '3', level: '-57', swing: '3', foam: '0', detach: '300' },
};
