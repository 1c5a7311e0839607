import { type Finding, inOrder } from '../finding/finding.ts';
import { writeTimecode } from '../quantity/timecode.ts';
import { rpmText, unescaped } from '../trial/cue.ts';
import type { Clip, Observation } from '../trial/flow.ts';
import { type CueRead, readCue, type Token } from '../trial/read-cue.ts';
import type { SourceFile } from '../trial/series.ts';
import { findWord, type WordFound } from './banned-words.ts';
import { decodeText } from './decode.ts';
import { observationLeftOut } from './flow-fields.ts';
import { type NoteText, type Span, tell, type Told } from './note.ts';
import { plannedSpeed } from './step.ts';
import * as say from './texts-captions.ts';
import { observedTwice, stepUnplanned, unseenGrade } from './texts-flow.ts';
import { bannedWord } from './texts-words.ts';
import { readVtt, type VttCue } from './vtt.ts';

/** What a captions file belongs to. */
export interface CaptionsOf {
  readonly run: string;
  readonly clip: Clip;
  /** Null when the plan is not known. */
  readonly steps_rad_s: readonly number[] | null;
  /** Observations of the run that were read before, which none of these may repeat. */
  readonly before: readonly Observation[];
}

export interface CaptionsRead {
  readonly observations: readonly Observation[];
  readonly findings: readonly Finding[];
}

/** Some thousand cues: far more than anybody grades, and little enough for a page to name what is wrong in them. */
const largest = 400_000;
/** As many findings as one captions file may bring; the rest is counted. */
const mostFindings = 20;

/** Observations of one captions file. A cue in which something is wrong is left out alone, and told where it is wrong. */
export function readCaptions(file: SourceFile, of: CaptionsOf): CaptionsRead {
  const read = decodeText(file, largest);
  if (!read.ok) {
    const told = {
      'too-large': () => say.tooLarge(file.bytes.length),
      'utf-16': say.utf16,
      'zero-bytes': say.zeroBytes,
      'not-utf-8': () => say.notUtf8(read.byte),
    }[read.why]();
    const finding = tell(read.text, { offset: read.offset, length: 1 }, told);
    return { observations: [], findings: [{ ...finding, effect: say.captionsLeftOut }] };
  }
  const vtt = readVtt(read.text.text);
  const observations: Observation[] = [];
  const findings = vtt.troubles.map(({ span, told }) => left(read.text, span, told));
  for (const [i, cue] of vtt.cues.entries()) {
    const before = vtt.cues[i - 1];
    if (before && cue.from_s < before.from_s) findings.push(left(read.text, cue.times, say.outOfOrder()));
    const one = readOne(cue, read.text, { ...of, own: observations });
    // a whole file of another run is one mistake
    findings.push(...one.findings.filter((f) => f.code !== 'cue-run' || !findings.some((g) => g.says === f.says)));
    if (one.observation) observations.push(one.observation);
  }
  return { observations, findings: firstOf(findings) };
}

/** The first of them in order of what they block, and how many more there are. */
function firstOf(findings: readonly Finding[]): Finding[] {
  const all = inOrder(findings);
  const [most, next] = [all.slice(0, mostFindings), all[mostFindings]];
  if (!next) return most;
  const { code, says, why, write } = say.moreInFile(all.length - most.length);
  return [...most, { code, says, why, write, level: next.level, place: next.place }];
}

const left = (text: NoteText, span: Span, told: Told): Finding => ({
  ...tell(text, span, told),
  ...(told.level === 'error' ? { effect: told.code === 'cue-run' ? say.otherRunLeftOut : observationLeftOut } : {}),
});

function readOne(
  cue: VttCue,
  text: NoteText,
  of: CaptionsOf & { readonly own: readonly Observation[] },
): { readonly observation: Observation | null; readonly findings: readonly Finding[] } {
  const read = readCue(cue.text);
  const at = ({ offset, length }: Span): Span =>
    // an empty cue is told on its time line
    cue.text === '' ? cue.times : { offset: cue.offset + offset, length };
  const told = read.troubles.map((t) => left(text, at(t), say.inCue(t)));
  told.push(...further(cue, read, of).map(({ span, told: t }) => left(text, span(at), t)));
  const noted = read.noted;
  if (!noted || told.some((f) => f.level === 'error')) return { observation: null, findings: told };
  const planned = plannedSpeed(noted.step.outputSpeed_rad_s, of.steps_rad_s ?? [noted.step.outputSpeed_rad_s]);
  const observation: Observation = {
    ...noted,
    step: { ...noted.step, outputSpeed_rad_s: planned?.speed_rad_s ?? noted.step.outputSpeed_rad_s },
    clip: of.clip.file,
    from_s: cue.from_s,
    to_s: cue.to_s,
    place: tell(text, at(spanOf(read.run)), unseenGrade()).place,
  };
  const against = repeats(observation, of.before) || repeats(observation, of.own);
  const clash = against ? observedTwice() : of.own.some((o) => overlaps(o, observation)) ? say.overlapping() : null;
  if (clash === null) return { observation, findings: told };
  return { observation: null, findings: [...told, left(text, against ? at(spanOf(read.run)) : cue.times, clash)] };
}

interface Further {
  readonly span: (at: (span: Span) => Span) => Span;
  readonly told: Told;
}

/** What the cue says that does not fit the clip, the run or the plan, or does not describe. */
function further(cue: VttCue, read: CueRead, { run, clip, steps_rad_s }: CaptionsOf): Further[] {
  const names = [run, ...(clip.code === null ? [] : [clip.code])];
  const speed = read.noted?.step.outputSpeed_rad_s;
  const near = speed !== undefined && steps_rad_s ? plannedSpeed(speed, steps_rad_s) : null;
  const word = wordIn(read.words);
  const found: (Further | null)[] = [
    read.run && !names.includes(unescaped(read.run.text))
      ? { span: (at) => at(spanOf(read.run)), told: say.otherRun(read.run.text, names) }
      : null,
    clip.length_s !== null && cue.to_s > clip.length_s + 1e-6
      ? { span: () => cue.times, told: say.outsideClip(writeTimecode(clip.length_s)) }
      : null,
    speed !== undefined && steps_rad_s && near?.planned !== true
      ? {
          span: (at) => at(spanOf(read.rpm)),
          told: stepUnplanned(`${rpmText(speed)} rpm`, near && `${rpmText(near.speed_rad_s)} rpm`),
        }
      : null,
    read.unseen ? { span: (at) => at(spanOf(read.view)), told: unseenGrade() } : null,
    word
      ? {
          span: (at) => at(word),
          told: bannedWord(word),
        }
      : null,
  ];
  return found.filter((f) => f !== null);
}

function wordIn(words: Token | null): WordFound | null {
  const found = words && findWord(words.text);
  return found && { ...found, offset: words.offset + found.offset };
}

const spanOf = (token: Token | null): Span => ({ offset: token?.offset ?? 0, length: token?.text.length ?? 1 });

const sameEyes = (a: Observation, b: Observation): boolean => a.observer === b.observer && a.pass === b.pass;

/** The same step by the same observer in one pass. */
export const repeats = (one: Observation, others: readonly Observation[]): boolean =>
  others.some(
    (o) =>
      sameEyes(o, one) &&
      o.step.direction === one.step.direction &&
      Math.abs(o.step.outputSpeed_rad_s - one.step.outputSpeed_rad_s) <= 0.01 * one.step.outputSpeed_rad_s,
  );

const overlaps = (a: Observation, b: Observation): boolean =>
  sameEyes(a, b) && (a.from_s ?? 0) < (b.to_s ?? 0) && (b.from_s ?? 0) < (a.to_s ?? 0);
