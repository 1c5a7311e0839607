import type { AirSample, Clip, FlowNotes, SettleRow } from '../trial/flow.ts';
import type { NoteHead } from '../trial/note.ts';
import type { TrialKind } from '../trial/plan.ts';
import type { ValuesOf } from './fields.ts';
import * as fields from './flow-fields.ts';
import { toObservations } from './flow-observations.ts';
import { toStill } from './flow-stills.ts';
import { placeOf } from './gather.ts';
import { leftOut } from './read.ts';
import type { Into } from './read-value.ts';
import { tellAt } from './record.ts';
import * as say from './texts-flow.ts';

export type FlowValues = ValuesOf<typeof fields.flowFields>;
export type EntryOf<N extends 'clips' | 'observations' | 'stills' | 'settle'> = NonNullable<
  NonNullable<FlowValues[N]>[number]
>;

/** The note that a part stands in, and the clips of the run that it may name. */
export interface InNote {
  readonly head: NoteHead;
  readonly into: Into;
  readonly clips: readonly Clip[];
  /** Files of the clips that were left out: whoever names one of them is not told a second time. */
  readonly clipsLeftOut: readonly string[];
}

/** The parts of a flow trial as the note has them. A part in which something is wrong is left out alone. */
export function toFlow(v: FlowValues & { readonly trial: TrialKind }, head: NoteHead, into: Into): FlowNotes {
  if (v.trial !== 'flow')
    for (const name of ['observations', 'settle', 'air-sample'] as const)
      if (v[name] !== null) tellAt(into, name, say.onlyFlow(name, v.trial));
  const clips = kept(v.clips, 'clips', fields.clipLeftOut, into, (clip, path, before: readonly Clip[]) => {
    if (before.some(({ file }) => file === clip.file)) tellAt(into, `${path}.file`, say.clipTwice(clip.file));
    return toClip(clip, path, { head, into });
  });
  const typed = [...head.typed].flatMap(([path, file]) => (/^clips\.\d+(\.file)?$/.test(path) ? [file] : []));
  const note = { head, into, clips, clipsLeftOut: typed.filter((file) => !clips.some((c) => c.file === file)) };
  return {
    clips,
    observations: kept(v.observations, 'observations', fields.observationsLeftOut, into, (block, path) =>
      toObservations(block, path, note),
    ).flat(),
    stills: kept(v.stills, 'stills', fields.stillLeftOut, into, (still, path) => toStill(still, path, note)),
    settle: kept(v.settle, 'settle', fields.settleLeftOut, into, (row, path, before: readonly SettleRow[]) => {
      const last = before[before.length - 1];
      if (last && row.after.value <= last.after_s) tellAt(into, `${path}.after`, say.rowsOrder(row.after.asWritten));
      return toRow(row, path, head);
    }),
    airSample: v['air-sample'] && toSample(v['air-sample'], head),
  };
}

/** Each entry that could be read, made into what it is; one in which `make` finds an error is left out. */
export function kept<V, T>(
  list: readonly (V | null)[] | null,
  path: string,
  effect: string,
  into: Into,
  make: (entry: V, path: string, before: readonly T[]) => T,
): T[] {
  const made: T[] = [];
  for (const [i, entry] of (list ?? []).entries()) {
    if (entry === null) continue;
    const from = into.findings.length;
    const one = make(entry, `${path}.${i}`, made);
    if (!leftOut(into, from, effect)) made.push(one);
  }
  return made;
}

function toClip(v: EntryOf<'clips'>, path: string, { head, into }: Pick<InNote, 'head' | 'into'>): Clip {
  for (const [i, { clip }] of (v.pieces ?? []).entries()) {
    const before = v.pieces?.[i - 1]?.clip;
    if (before ? clip.value_s <= before.value_s : clip.value_s !== 0)
      tellAt(into, `${path}.pieces.${i}.clip`, say.piecesOrder(clip.asWritten, before?.asWritten ?? null));
    else if (v.length && clip.value_s >= v.length.value_s)
      tellAt(into, `${path}.pieces.${i}.clip`, say.beyondClip(clip.asWritten, v.length.asWritten));
  }
  return {
    file: v.file,
    code: v.code,
    shows: v.shows,
    length_s: v.length?.value_s ?? null,
    sync_s: v.sync?.value_s ?? null,
    pieces: v.pieces?.map(({ clip, film }) => ({ clip_s: clip.value_s, film_s: film.value_s })) ?? [
      { clip_s: 0, film_s: 0 },
    ],
    captions: v.captions,
    kept: v.kept,
    place: placeOf(head, path),
  };
}

const toRow = (v: EntryOf<'settle'>, path: string, head: NoteHead): SettleRow => ({
  after_s: v.after.value,
  level_z_m: v.level?.value ?? null,
  bubble: v.bubble,
  foam_m: v.foam?.value ?? null,
  place: placeOf(head, path),
});

const toSample = (v: NonNullable<FlowValues['air-sample']>, head: NoteHead): AirSample => ({
  step: v.step,
  mass_kg: v.mass.value,
  volume_m3: v.volume.value,
  temperature_K: v.temperature.value,
  place: placeOf(head, 'air-sample'),
});
