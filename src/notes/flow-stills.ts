import type { Still } from '../trial/flow.ts';
import { tellWord } from './banned-words.ts';
import type { EntryOf, InNote } from './flow.ts';
import { clipNamed, tellTime } from './flow-observations.ts';
import { placeOf } from './gather.ts';
import { tellAt } from './record.ts';
import * as say from './texts-flow.ts';

/** A picture as the note has it; whether it is there and is a picture is looked at where the files are known. */
export function toStill(v: EntryOf<'stills'>, path: string, note: InNote): Still {
  const { into } = note;
  const clip = v.clip === null ? null : clipNamed(v.clip, `${path}.clip`, note);
  if (v.at) tellTime(v.at, `${path}.at`, { clip: v.clip === null ? 'none' : clip, for_s: 0 }, note);
  if (v.rule === 'offset' && !v.offset) tellAt(into, `${path}.rule`, say.ruleNeeds('offset', 'offset: 5 s'));
  if (v.rule === 'event' && v.event === null)
    tellAt(into, `${path}.rule`, say.ruleNeeds('event', 'event: "first mist"'));
  for (const name of ['offset', 'event'] as const)
    if (v[name] !== null && v.rule !== name) tellAt(into, `${path}.${name}`, say.ruleHasNot(name, v.rule));
  for (const name of ['caption', 'alt'] as const)
    if (v[name].trim() === '') tellAt(into, `${path}.${name}`, say.emptyText(name));
    else tellWord(`${path}.${name}`, into);
  return {
    file: v.file,
    step: v.step,
    clip: clip?.file ?? null,
    at_s: v.at?.value_s ?? null,
    rule: v.rule,
    offset_s: v.offset?.value ?? null,
    event: v.event,
    shows: v.shows,
    alters: v.alters ?? [],
    caption: v.caption,
    alt: v.alt,
    rights: v.rights,
    place: placeOf(note.head, path),
  };
}
