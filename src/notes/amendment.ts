import type { Reading } from '../finding/finding.ts';
import { correctionKinds, objectionStates, type Change, type Correction, type Objection } from '../trial/amendment.ts';
import { channelDimension, channelKinds, type ReadingKind } from '../trial/rig.ts';
import type { Dimension } from '../quantity/quantity.ts';
import {
  code,
  day,
  group,
  headFields,
  later,
  list,
  number,
  optional,
  required,
  text,
  type ValueOf,
  words,
} from './fields.ts';
import { placeOf } from './gather.ts';
import type { Note } from './note.ts';
import { quantityOf, type Into } from './read-value.ts';
import { readRecord, tellAt } from './record.ts';
import { neededFor } from './texts-check.ts';
import * as say from './texts-amendment.ts';

const readingKinds = channelKinds.filter((kind): kind is ReadingKind => kind !== 'event');

const change = group({
  run: optional(code('H-09'), 'The run that is read otherwise.'),
  instrument: optional(code('tc-1'), 'Or the instrument: then every run that was read with it between the two days.'),
  channel: optional(words(...readingKinds), 'The channel of the log.'),
  add: optional(later('-3.4 K', 'an amount in a unit of the channel'), 'What is added to each reading.'),
  times: optional(number('1.012', [0.1, 10]), 'What each reading is multiplied by, before anything is added.'),
  from: optional(day, 'The first day of it, where it has one.'),
  to: optional(day, 'The last day of it, where it has one.'),
  field: optional(text('fill.mass-in'), 'A field of the note of the run, as the note has it.'),
  write: optional(text('2155 g'), 'What is read there instead.'),
});

/** `amendments/<id>.md`: a correction, or an objection with its answer. */
export const amendmentKind = group({
  id: required(code('COR-01'), 'It is cited by it; it is also the name of the file.'),
  kind: required(
    words(...correctionKinds, 'objection'),
    'Input, calibration, method, identity or text; or an objection.',
  ),
  'found-on': optional(day, 'Of a correction: when it was found.'),
  'found-by': optional(text('reader'), 'Of a correction: who found it, as a role.'),
  'published-on': optional(day, 'Of a correction: from this day on it holds; parts that came out before show both.'),
  what: optional(text('"ambient read 3.4 K too warm"'), 'Of a correction: what was wrong, in a sentence.'),
  since: optional(day, 'Of a correction: since when it was wrong.'),
  cause: optional(text('"the probe hung in the return of the fan"'), 'Of a correction: how it came about.'),
  rule: optional(
    text('"a photograph of the probe at every run"'),
    'Of a correction: what is done otherwise from now on.',
  ),
  from: optional(list(code('OB-01')), 'Of a correction: objections that led to it.'),
  changes: optional(list(change, 1), 'Of a correction: what is read otherwise; none for words alone.'),
  received: optional(day, 'Of an objection: when it came.'),
  'from-role': optional(text('reader'), 'Of an objection: whose it is, as a role.'),
  about: optional(list(text('P2')), 'Of an objection: articles, runs, claims or parts that it is about.'),
  text: optional(text('"The tray cannot cool by five kelvin."'), 'Of an objection: what it says.'),
  state: optional(words(...objectionStates), 'Of an objection: open, answered, or what it led to.'),
  answer: optional(text('"Right: see COR-01."'), 'Of an objection: what was answered.'),
  by: optional(list(text('H-09')), 'Of an objection: runs, claims, corrections or figures that answer.'),
  reply: optional(text('"Ours was tested with another gasket."'), "A maker's reply, word for word as it came."),
  ...headFields,
});

type Values = ValueOf<typeof amendmentKind>;
export type AmendmentNote =
  (Correction & { readonly note: 'correction' }) | (Objection & { readonly note: 'objection' });

export const readAmendment = (note: Note): Reading<AmendmentNote> =>
  readRecord(amendmentKind, note, (v, head, into): AmendmentNote => {
    const need = needed(v, into);
    if (v.kind === 'objection')
      return {
        ...head,
        note: 'objection',
        id: v.id,
        received: need('received', '2026-07-16'),
        fromRole: need('from-role', 'reader'),
        about: v.about ?? [],
        text: need('text', '"what it says"'),
        state: v.state ?? 'open',
        ...{ answer: v.answer, by: v.by ?? [], reply: v.reply },
      };
    const foundOn = need('found-on', '2026-07-16');
    const publishedOn = need('published-on', '2026-07-20');
    if (publishedOn < foundOn) tellAt(into, 'published-on', say.publishedBeforeFound(foundOn, publishedOn));
    return {
      ...head,
      note: 'correction',
      id: v.id,
      kind: v.kind,
      ...{ foundOn, publishedOn, foundBy: need('found-by', 'reader') },
      ...{ what: need('what', '"what was wrong"'), since: need('since', '2026-03-31') },
      ...{ cause: need('cause', '"how it came about"'), rule: v.rule, from: v.from ?? [] },
      changes: (v.changes ?? []).flatMap((one, i) => readChange(one, `changes.${i}`, { head, into }) ?? []),
    };
  });

const needed =
  (v: Values, into: Into) =>
  (field: keyof Values, like: string): string => {
    const value = v[field];
    if (typeof value === 'string' && value.trim() !== '') return value;
    tellAt(
      into,
      'kind',
      neededFor(field, v.kind === 'objection' ? 'an objection' : 'a correction', `${field}: ${like}`),
    );
    return '';
  };

type ChangeValues = ValueOf<typeof change>;

function readChange(
  v: ChangeValues,
  path: string,
  { head, into }: { head: Parameters<typeof placeOf>[0]; into: Into },
): Change | null {
  const place = placeOf(head, path);
  const no = (at: string, told: Parameters<typeof tellAt>[2]): null => {
    tellAt(into, at, told);
    return null;
  };
  if (v.run === null && v.instrument === null) return no(path, say.changeOfWhat());
  const onReadings = v.add !== null || v.times !== null;
  if (v.field !== null || v.write !== null) {
    if (onReadings || v.channel !== null) return no(path, say.changeBoth());
    if (v.run === null) return no(path, say.fieldNeedsRun());
    if (v.field === null || v.write === null) return no(path, say.changeHow());
    return { kind: 'field', run: v.run, field: v.field, write: v.write, place };
  }
  if (!onReadings || (v.run !== null && v.channel === null)) return no(path, say.changeHow());
  if (v.add !== null && v.channel === null) return no(path, say.addNeedsChannel());
  const add = v.add === null ? 0 : quantityOf(differenceOf(v.channel!), v.add, `${path}.add`, into)?.value;
  if (add === undefined) return null;
  const typed = [
    ...(v.times === null ? [] : [`times ${head.typed.get(`${path}.times`) ?? ''}`]),
    ...(v.add === null ? [] : [`${head.typed.get(`${path}.add`) ?? ''} added`]),
  ].join(', ');
  return {
    kind: 'channel',
    ...{ run: v.run, instrument: v.instrument, channel: v.channel, from: v.from, to: v.to },
    ...{ times: v.times ?? 1, add, typed, place },
  };
}

/** A temperature is moved by a difference. */
const differenceOf = (channel: ReadingKind): { readonly dimension: Dimension; readonly like: string } => {
  const dimension = channelDimension[channel];
  return dimension === 'temperature'
    ? { dimension: 'temperature-difference', like: '-3.4 K' }
    : { dimension, like: dimension === 'torque' ? '0.05 N·m' : '1' };
};
