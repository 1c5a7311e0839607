import type { Finding, Reading } from '../finding/finding.ts';
import { partStatuses, type Part } from '../trial/part.ts';
import { code, day, group, headFields, list, optional, required, text, whole, words } from './fields.ts';
import type { Note } from './note.ts';
import { refsOf } from './part-refs.ts';
import { readRecord, tellAt } from './record.ts';
import { neededFor } from './texts-check.ts';
import * as say from './texts-parts.ts';

const answer = group({
  question: required(code('Q-1'), 'The question, by its id in `claims.md`.'),
  by: optional(list(text('H-09')), 'Runs, claims, figures or corrections that answer it.'),
});

/** `parts/<n>-<slug>.md`: an instalment. */
export const partKind = group({
  id: required(code('4-uphill'), 'It is also the name of the file; the number comes first.'),
  number: required(whole('4', [1, 999]), 'Parts are called by it; no number is used twice.'),
  title: required(text('Uphill for two hours'), 'Readers know the part by it.'),
  summary: required(text('"Store, shed, and why the tray looks so good."'), 'One sentence for the front page.'),
  status: required(words(...partStatuses), 'A draft is for the house; out is pinned and public; withdrawn says why.'),
  published: optional(day, 'The day it came out: figures are pinned as they stood then.'),
  why: optional(text('"the wrong oil was in the bowl"'), 'Of a withdrawn part: why it was taken back.'),
  asks: optional(list(code('Q-1')), 'Questions that it puts.'),
  answers: optional(list(answer), 'Questions that it answers, and what answers them.'),
  ...headFields,
});

/** A part as its note says it; its pins lie in a file of their own. */
export const readPart = (note: Note): Reading<Part> => {
  const refs = refsOf(note);
  const read = readRecord(partKind, note, (v, head, into): Part => {
    if (v.status !== 'draft' && v.published === null)
      tellAt(into, 'status', neededFor('published', `status: ${v.status}`, 'published: 2026-06-23'));
    if (v.status === 'withdrawn' && (v.why ?? '').trim() === '')
      tellAt(into, 'status', neededFor('why', 'status: withdrawn', 'why: "the wrong oil was in the bowl"'));
    if (!v.id.startsWith(`${v.number.toFixed(0)}-`)) tellAt(into, 'id', say.partNumberFirst(v.id, v.number));
    return {
      ...head,
      ...{ id: v.id, number: v.number, title: v.title, summary: v.summary, published: v.published },
      ...{ status: v.status, why: v.why, asks: v.asks ?? [] },
      answers: (v.answers ?? []).map(({ question, by }) => ({ question, by: by ?? [] })),
      refs: refs.refs,
      pins: null,
    };
  });
  const findings: Finding[] = [...read.findings, ...refs.findings];
  return read.ok ? { ok: true, value: read.value, findings } : { ok: false, findings };
};
