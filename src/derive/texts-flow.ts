import type { Finding, Place } from '../finding/finding.ts';
import { writeNumber } from '../quantity/write.ts';

/** Texts of the flow trial. Times are logger seconds. */

interface Here {
  readonly place: Place;
  readonly run: string;
}

const round = (v: number, places = 1): string => writeNumber(v, places);

export const cameraClock = (f: Here & { clip: string; ahead: number }): Finding => ({
  code: 'camera-clock',
  level: 'notice',
  place: f.place,
  says: `The camera of ${f.clip} is ${round(Math.abs(f.ahead))} s ${f.ahead > 0 ? 'ahead of' : 'behind'} the logger: both saw the flash, at different times.`,
  why: 'Cues and steps would stand that far beside what the logger read.',
  write: 'Nothing needs writing; set both clocks before the next trial.',
  effect: 'Cues, captions and chapters of this clip are moved by it.',
  about: { run: f.run },
});

export const syncNotInLog = (f: Here): Finding => ({
  code: 'sync-not-in-log',
  level: 'warning',
  place: f.place,
  says: 'The clip names the time of a flash, and the log has no event  sync .',
  why: 'Without the same moment in both, film and logger cannot be laid beside each other.',
  write: 'Map the event column and write  sync  in the row of the flash, or take  sync:  out of the clip.',
  effect: 'The clip is shown, untied: no mark runs on the traces, and cues are not held against the steps.',
  about: { run: f.run },
});

export const stepNotHeld = (f: Here & { steps: readonly string[] }): Finding => ({
  code: 'grade-step-not-held',
  level: 'warning',
  place: f.place,
  says: `Grades are written for ${f.steps.join(', ')}; the log of ${f.run} has no such hold${f.steps.length === 1 ? '' : 's'}.`,
  why: 'A grade without a hold stands beside no speed, level or temperature.',
  write: 'Correct the step, or check the speed column and the steps and hold of the plan.',
  effect: 'These grades are left out; the others of the run stay.',
  about: { run: f.run },
});

export const stepHeldAgain = (f: Here & { step: string; from: number; to: number }): Finding => ({
  code: 'step-held-again',
  level: 'notice',
  place: f.place,
  says: `${f.step} is held a second time, from ${round(f.from)} to ${round(f.to)} s of the log.`,
  why: 'Two holds of one speed and way would stand under one name, and the second begins with what the first left.',
  write: 'Nothing needs writing; hold each speed once on the way up and once on the way down.',
  effect: 'The first hold is used; the second stays in the raw file and in the traces.',
  about: { run: f.run },
});

export const cueOffStep = (
  f: Here & { step: string; from: number; to: number; heldFrom: number; heldTo: number; others: number },
): Finding => ({
  code: 'grade-off-step',
  level: 'warning',
  place: f.place,
  says: `Graded from ${round(f.from)} to ${round(f.to)} s of the log as ${f.step}; that hold runs from ${round(f.heldFrom)} to ${round(f.heldTo)} s.${f.others === 0 ? '' : ` So with ${f.others} more of this run.`}`,
  why: 'The picture that was graded is of another speed, or camera and logger are not tied rightly.',
  write: 'Correct the step or the time of the cue, or  sync:  of the clip.',
  effect: 'These grades are left out; the others of the run stay.',
  about: { run: f.run },
});
