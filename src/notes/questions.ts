import { questionKinds, type Question } from '../trial/part.ts';
import type { NoteHead } from '../trial/note.ts';
import { code, day, group, optional, required, text, words, type ValueOf } from './fields.ts';
import { placeOf } from './gather.ts';
import type { Into } from './read-value.ts';
import { tellAt } from './record.ts';
import * as say from './texts-parts.ts';

/** A question in `claims.md`. Whether it is answered is not typed: the parts say so. */
export const question = group({
  id: required(code('Q-1'), 'Parts ask and answer it by this.'),
  text: required(text('"Does a fuller bowl run hotter?"'), 'As it was put.'),
  'raised-by': required(text('reader'), 'Who put it, as a role.'),
  'raised-on': required(day, 'When it was put.'),
  kind: required(words(...questionKinds), 'What it is about.'),
  dropped: optional(
    group({ on: required(day, 'Since when.'), why: required(text('"it needs a road"'), 'Why it is not looked at.') }),
    'It will not be looked at here, and why.',
  ),
  'handed-on': optional(
    group({
      on: required(day, 'Since when.'),
      to: required(text('"the next series"'), 'To whom or to what.'),
      why: required(text('"wear needs hundreds of hours"'), 'Why it is not answered here.'),
    }),
    'Somebody else is to answer it.',
  ),
});

export function toQuestion(
  v: ValueOf<typeof question>,
  path: string,
  { head, into }: { readonly head: NoteHead; readonly into: Into },
): Question {
  if (v.dropped !== null && v['handed-on'] !== null) tellAt(into, `${path}.handed-on`, say.questionBoth());
  return {
    id: v.id,
    text: v.text,
    raisedBy: v['raised-by'],
    raisedOn: v['raised-on'],
    kind: v.kind,
    dropped: v.dropped,
    handedOn: v['handed-on'],
    place: placeOf(head, path),
  };
}
