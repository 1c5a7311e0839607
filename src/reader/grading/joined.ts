import { readVtt } from '../../notes/vtt.ts';
import { captionsText } from '../../trial/cue.ts';
import { readCue } from '../../trial/read-cue.ts';

export interface Written {
  readonly name: string;
  readonly text: string;
}

export type Joined =
  | { readonly ok: true; readonly name: string; readonly text: string; readonly cues: number }
  | { readonly ok: false; readonly why: string };

/** Files of several observers about one clip as one file, in order of time: a note names one file a clip. */
export function joined(files: readonly Written[]): Joined {
  if (files.length < 2) return { ok: false, why: 'Choose two files or more, of one clip.' };
  const read = files.map(({ name, text }) => ({
    name,
    vtt: readVtt(text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')),
  }));
  const broken = read.find(({ vtt }) => vtt.troubles.length > 0 || vtt.cues.length === 0);
  if (broken !== undefined) return { ok: false, why: `${broken.name} is no captions file of this page.` };
  const cues = read.flatMap(({ name, vtt }) => vtt.cues.map((cue) => ({ ...cue, name, is: readCue(cue.text) })));
  const unread = cues.find(({ is }) => is.noted === null);
  if (unread !== undefined) return { ok: false, why: `${unread.name} has a cue that says no grades: ${unread.text}` };
  const clips = [...new Set(cues.map(({ is }) => is.run?.text ?? ''))];
  if (clips.length > 1)
    return { ok: false, why: `These files are about ${clips.join(' and ')}. One file is of one clip.` };
  const seen = cues.map(({ is, from_s }) => `${is.noted!.observer} ${is.noted!.pass} ${String(from_s)}`);
  const twice = cues.find((_, i) => seen.indexOf(seen[i]!) < i);
  if (twice !== undefined)
    return { ok: false, why: `${twice.name} repeats an observer who graded the same seconds in another of the files.` };
  return { ok: true, name: `${clips[0]!}.vtt`, text: captionsText(cues), cues: cues.length };
}
