import type { Told } from './note.ts';

/** What is said of pictures and clips as files. */
const told =
  (level: Told['level']) =>
  (code: string, says: string, why: string, write: string): Told => ({ code, level, says, why, write });
const error = told('error');
const warning = told('warning');
const notice = told('notice');

export const codeLeftOut = 'The clip is kept without its code.';
export const captionsUnread = 'The clip is kept without them.';

export const notBare = (file: string, home: string, like: string): Told =>
  error(
    'media-outside',
    `"${file}" is not the bare name of a file.`,
    'A book is read from its own folders only, so that it can be carried elsewhere whole.',
    `Put the file into ${home} and write its name alone, as  ${like}.`,
  );

export const stillMissing = (file: string, home: string, near: string | null): Told =>
  error(
    'still-missing',
    `There is no picture "${file}".`,
    `It was looked for in ${home}.`,
    near === null
      ? `Put the file itself into ${home}, since a link is not followed; or write the name that it has.`
      : `Did you mean  file: ${near} ?`,
  );

export const stillSvg = (): Told =>
  error(
    'still-svg',
    'The picture is an SVG.',
    'A drawing as SVG can carry script.',
    'Write it out as PNG and name that file.',
  );

export const notPicture = (): Told =>
  error(
    'still-no-picture',
    'The file is no PNG, JPEG or WebP, by its bytes.',
    'Only these three are shown; the ending of a name does not make a picture.',
    'Save the picture as PNG or JPEG and name that file.',
  );

export const stillHeavy = (megabytes: string): Told =>
  error(
    'still-heavy',
    `The picture has ${megabytes} MB.`,
    'Pictures of more than 40 MB are not taken in.',
    'Save it as JPEG, or smaller, and keep the original elsewhere.',
  );

export const stillLarge = (width: number, height: number, megapixels: string): Told =>
  error(
    'still-large',
    `The picture is ${width} × ${height}, ${megapixels} megapixels.`,
    'More than 50 megapixels are not decoded; a page shows one or two.',
    'Save a smaller copy and keep the original elsewhere.',
  );

export const stillSizeUnknown = (cut: boolean): Told =>
  error(
    'still-size-unknown',
    cut
      ? 'Width and height do not stand in the first 256 KiB of the picture.'
      : 'Width and height of the picture cannot be read.',
    cut ? 'Something large stands before them, such as a preview of the camera.' : 'It is damaged or ends early.',
    cut ? 'Save the picture again as a plain PNG or JPEG.' : 'Copy it from the camera again, or take the still again.',
  );

export const clipMissing = (file: string, near: string | null): Told =>
  notice(
    'clip-missing',
    `There is no clip "${file}" beside the note.`,
    'Its page stands without it; what was seen is kept all the same.',
    near === null
      ? 'Copy the file itself beside the note, since a link is not followed; or write where it is, as  kept: "camera shelf 2".'
      : `Did you mean  file: ${near} ? If not, write where it is, as  kept: "camera shelf 2".`,
  );

export const notFilm = (): Told =>
  error(
    'clip-no-film',
    'The file is no WebM, MP4 or Ogg, by its first bytes.',
    'Only these three play in a browser without more.',
    'Write the film out as WebM or MP4, or take it out of the folder and write where it is kept, as  kept: "camera shelf 2".',
  );

export const filmEnding = (file: string, kind: string, ending: string): Told =>
  error(
    'clip-no-film',
    `"${file}" holds ${kind} and does not end in ${ending}.`,
    'A server tells a browser by the ending what a file is.',
    `Name it ${file.replace(/\.[^.]*$/, '')}${ending.split(' ')[0] ?? ''}.`,
  );

export const whereFilmed = (): Told =>
  warning(
    'clip-says-where',
    'The clip carries the place where it was filmed.',
    'A clip is published as it is, so that a public book would publish that place.',
    'Write the film out again without location, and look at the settings of the camera.',
  );

export const codeTwice = (code: string): Told =>
  error(
    'clip-code-twice',
    `Another clip of this series has the code ${code} already.`,
    'Graders and addresses know a clip by its code.',
    `Look for  code: ${code}  in the notes of the runs, and give this clip another one.`,
  );

export const codeIsRun = (code: string): Told =>
  error(
    'clip-code-is-run',
    `The code ${code} is the name of a run.`,
    'A code hides the run from graders, and both are part of an address.',
    'Give the clip a code that no run has, such as K7.',
  );
