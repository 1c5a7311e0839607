import type { Finding } from '../../finding/finding.ts';

/** Why a still cannot stand on a page. */
export type StillTrouble = Pick<Finding, 'says' | 'why' | 'write'>;

export const notAPicture = (): StillTrouble => ({
  says: 'The file is named as a still and is no PNG, JPEG or WebP.',
  why: 'Only these three kinds are decoded; a drawing that could hold a program is not.',
  write: 'Save the picture as PNG or JPEG and name that file.',
});

export const tooManyPixels = (pixels: number, most: number): StillTrouble => ({
  says: `The picture has ${tenths(pixels / 1e6)} megapixels.`,
  why: `More than ${tenths(most / 1e6)} are not decoded, since they would fill the memory; a page shows one or two.`,
  write: 'Save a smaller copy under this name and keep the original elsewhere.',
});

export const storedInPasses = (bytes: number, most: number): StillTrouble => ({
  says: `The picture is stored in passes and needs ${tenths(bytes / 1e6)} MB of memory at once.`,
  why: `More than ${tenths(most / 1e6)} MB are not given to one picture.`,
  write: 'Save it without interlacing (as a plain, not a progressive picture).',
});

export const tooManyBytes = (bytes: number, most: number): StillTrouble => ({
  says: `The picture has ${tenths(bytes / 2 ** 20)} MiB.`,
  why: `Pictures of more than ${tenths(most / 2 ** 20)} MiB are not decoded.`,
  write: 'Save it as JPEG and keep the original elsewhere.',
});

export const animation = (): StillTrouble => ({
  says: 'The picture is an animation.',
  why: 'A still shows one moment; which of its frames is meant cannot be told.',
  write: 'Save the one frame as PNG or JPEG, or name the film under clips.',
});

export const damaged = (): StillTrouble => ({
  says: 'The picture cannot be decoded: it is damaged or ends early.',
  why: 'Half a picture could hide what it is shown for.',
  write: 'Copy it from the camera again, or take the still again from its clip.',
});

export const noDecoder = (): StillTrouble => ({
  says: 'The picture cannot be decoded on this machine: the library for pictures does not start here.',
  why: 'Published as it is, it would carry everything that the camera wrote into it.',
  write: 'Install dipmark again on this machine, or build on another one.',
});

/** One finding a picture, at the head of the picture itself. */
export const stillNotDecoded = (file: string, { says, why, write }: StillTrouble): Finding => ({
  code: 'still-not-decoded',
  level: 'error',
  place: { file, line: 1, column: 1 },
  says: says,
  why: why,
  write: write,
  effect: 'Its place on the page says that the still could not be read.',
});

/** A tool without its native parts, as in a pack: the figures stand, the stills wait for another machine. */
export const stillsWithoutDecoder = (first: string, count: number): Finding => ({
  code: 'stills-not-decoded',
  level: 'warning',
  place: { file: first, line: 1, column: 1 },
  says: `${count === 1 ? 'One still' : `${String(count)} stills`} cannot be decoded: the library for pictures does not start on this machine.`,
  why: noDecoder().why,
  write: noDecoder().write,
  effect: 'Their places on the pages say that they could not be read; every figure stands.',
});

/** Two stills would be written to one address. */
export const stillNameTwice = (file: string, other: string): Finding => ({
  code: 'still-name-twice',
  level: 'error',
  place: { file, line: 1, column: 1 },
  says: `${file} and ${other} have one name but for its ending.`,
  why: 'The made pictures carry the name without its ending, so that one would stand in the place of the other.',
  write: 'Give one of the two another name.',
  effect: `${other} is shown; the other is not.`,
});

const tenths = (n: number): string => String(Math.round(n * 10) / 10);
