import type { Trouble } from './quantity.ts';
import type { At } from './texts.ts';

export const timecodeUnclear = (at: At, text: string, why: string): Trouble => ({
  code: 'timecode-unclear',
  ...at,
  says: text === '' ? 'Nothing is written here.' : `"${text}" is not a timecode.`,
  why,
  write: 'Write hours, minutes and seconds with two digits each, as 00:00:36 or 00:00:36.500.',
});
