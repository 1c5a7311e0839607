import { nearest } from '../finding/nearest.ts';
import type { Place } from '../finding/finding.ts';
import type { Timecode } from '../quantity/timecode.ts';
import { writeTimecode } from '../quantity/timecode.ts';
import { seenGrades } from '../trial/cue.ts';
import { type Clip, gradeKinds, type Observation } from '../trial/flow.ts';
import { tellWord } from './banned-words.ts';
import { observationLeftOut } from './flow-fields.ts';
import type { EntryOf, InNote } from './flow.ts';
import { firstLine } from './gather.ts';
import { nodeAt, tell } from './note.ts';
import { leftOut } from './read.ts';
import { tellAt } from './record.ts';
import { readStep } from './step.ts';
import * as say from './texts-flow.ts';

type Block = EntryOf<'observations'>;

/** One block of the table: what one observer wrote in one pass, step by step. */
export function toObservations(block: Block, path: string, note: InNote): Observation[] {
  const clip = block.clip === null ? null : clipNamed(block.clip, `${path}.clip`, note);
  return [...block.steps].flatMap(([name, seen]): Observation[] => {
    const step = readStep(name);
    if (seen === null || step === null) return [];
    const from = note.into.findings.length;
    const at = `${path}.steps.${name}`;
    if (seen.at)
      tellTime(seen.at, `${at}.at`, { clip: block.clip === null ? 'none' : clip, for_s: block.for.value }, note);
    const typed = gradeKinds.find((kind) => seen[kind] !== 'ng');
    if (seen.view < 2 && typed) tellAt(note.into, `${at}.${typed}`, say.unseenGrade());
    if (seen.words !== null) tellWord(`${at}.words`, note.into);
    if (leftOut(note.into, from, observationLeftOut)) return [];
    const { reach, side, wall, bubble, tube } = seen;
    return [
      {
        step,
        observer: block.observer,
        pass: block.pass,
        blind: block.blind ?? [],
        grades: seenGrades({ reach, side, wall, bubble, tube }, seen.view),
        view: seen.view,
        level_z_m: seen.level?.value ?? null,
        swing_m: seen.swing?.value ?? null,
        foam_m: seen.foam?.value ?? null,
        detach_rad: seen.detach?.value ?? null,
        words: seen.words,
        clip: clip?.file ?? null,
        from_s: seen.at?.value_s ?? null,
        to_s: seen.at ? seen.at.value_s + block.for.value : null,
        place: stepPlace(`${path}.steps`, name, note),
      },
    ];
  });
}

/** The clip of this run by its file; told when it is none of them. Of one that was left out only the name is known. */
export function clipNamed(file: string, path: string, { clips, clipsLeftOut, into }: InNote): NamedClip | null {
  const clip = clips.find((c) => c.file === file);
  if (clip) return clip;
  if (clipsLeftOut.includes(file)) return { file, length_s: null };
  const files = clips.map((c) => c.file);
  tellAt(into, path, say.clipUnknown(file, nearest(file, files), files));
  return null;
}

type NamedClip = Pick<Clip, 'file' | 'length_s'>;

/** A time in a clip needs its clip and lies in it. `clip` is null where its name was told to be wrong. */
export function tellTime(
  at: Timecode,
  path: string,
  { clip, for_s }: { readonly clip: NamedClip | null | 'none'; readonly for_s: number },
  { into }: InNote,
): void {
  if (clip === 'none') tellAt(into, path, say.atWithoutClip());
  else if (clip?.length_s != null && at.value_s + for_s > clip.length_s + 1e-6)
    tellAt(into, path, say.beyondClip(at.asWritten, writeTimecode(clip.length_s)));
}

/** Where the step is named, which is what a reader looks for. */
function stepPlace(path: string, name: string, { into: { note } }: InNote): Place {
  const steps = nodeAt(note.front, path);
  const entry = steps?.kind === 'group' ? steps.entries.find((e) => e.key === name) : undefined;
  return entry ? tell(note, entry.keySpan, say.unseenGrade()).place : firstLine(note.file);
}
