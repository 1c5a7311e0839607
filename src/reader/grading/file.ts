import { readStep } from '../../notes/step.ts';
import { captionsText, cueText } from '../../trial/cue.ts';
import { type Graded, type GradeKind, gradeKinds } from '../../trial/flow.ts';
import { isWhole, standing } from './marks.ts';
import { type Grader, marksAt, type Sitting } from './sitting.ts';

export interface GradeFile {
  readonly name: string;
  readonly text: string;
  readonly cues: number;
}

/** The captions file of one clip: a cue for every step that is graded in all its rows; what is not stays out. */
export function fileOf(sitting: Sitting, code: string): GradeFile {
  const { observer, pass, blind } = sitting.grader;
  const cues = sitting.items.flatMap((item) => {
    const marks = marksAt(sitting, item);
    const step = readStep(item.step);
    if (item.code !== code || step === null || marks.view === null || !isWhole(marks)) return [];
    const { from_s, to_s } = item;
    const grades = Object.fromEntries(gradeKinds.map((kind) => [kind, standing(marks, kind) ?? 'ng'])) as Record<
      GradeKind,
      Graded
    >;
    const noted = {
      ...{ step, observer, pass, blind, grades, view: marks.view, words: marks.words.trim() || null },
      ...{ level_z_m: null, swing_m: null, foam_m: null, detach_rad: null },
    };
    return [{ from_s, to_s, text: cueText(noted, { run: code }) }];
  });
  return { name: fileName(code, sitting.grader), text: captionsText(cues), cues: cues.length };
}

/** `K7-A.vtt`; a joint look does not take the place of a first one. */
export const fileName = (code: string, { observer, pass }: Pick<Grader, 'observer' | 'pass'>): string =>
  `${plain(code)}-${plain(observer)}${pass === 'joint' ? '-joint' : ''}.vtt`;

const plain = (text: string): string => text.replace(/[^\p{L}\p{N}+_-]/gu, '-');

/** Initials are one word of letters, as `A` or `A+B`: a cue and a file carry them. Null for what is none. */
export function readObserver(typed: string): string | null {
  const initials = typed.trim();
  return /^\p{L}[\p{L}\p{N}+]{0,7}$/u.test(initials) ? initials : null;
}
