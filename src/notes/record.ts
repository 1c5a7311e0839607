import type { Finding, Place, Reading } from '../finding/finding.ts';
import { placeAt } from '../finding/place.ts';
import type { NoteHead, ShownTo } from '../trial/note.ts';
import type { Fields, GroupKind, ValuesOf } from './fields.ts';
import { type Node, type Note, nodeAt, type Span, type Told } from './note.ts';
import { join, readFields } from './read.ts';
import { beginning, errors, type Into, worthKnowing, wrongAt } from './read-value.ts';

/** From a note to its record by the table of its kind: `make` is called when every field could be read, and may find more. */
export function readRecord<F extends Fields, T>(
  kind: GroupKind & { readonly fields: F },
  note: Note,
  make: (values: ValuesOf<F>, head: NoteHead, into: Into) => T,
): Reading<T> {
  const findings: Finding[] = [];
  const into: Into = { note, findings };
  const read = readFields(kind, note.front, into);
  if (!read.whole) return { ok: false, findings: firmest(findings) };
  const value = make(read.values, headOf(note), into);
  return errors(into) === 0 ? { ok: true, value, findings } : { ok: false, findings: firmest(findings) };
}

/** Where an error stands, a warning about the same place adds nothing. */
const firmest = (findings: readonly Finding[]): Finding[] => {
  const at = ({ place }: Finding): string => `${place.line}:${place.column}`;
  const wrong = new Set(findings.filter((f) => f.level === 'error').map(at));
  return findings.filter((f) => f.level === 'error' || !wrong.has(at(f)));
};

/** Tells something about the value at a path of the note. */
export const tellAt = (into: Into, path: string, told: Told): void => {
  wrongAt(into, spanAt(into.note, path), told);
};

/** Tells something worth knowing about the value at a path, with the level of its text. */
export const warnAt = (into: Into, path: string, told: Told): void => {
  worthKnowing(into, spanAt(into.note, path), told);
};

function spanAt(note: Note, path: string): Span {
  const node = nodeAt(note.front, path);
  if (node) return spanOf(node);
  return path.includes('.') ? spanAt(note, path.slice(0, path.lastIndexOf('.'))) : { offset: 0, length: 3 };
}

const spanOf = (node: Node): Span => (node.kind === 'text' ? node.span : beginning(node.span));

/** The part of a record that every note has. */
export function headOf(note: Note): NoteHead {
  const places = new Map<string, Place>();
  const typed = new Map<string, string>();
  const walk = (node: Node, path: string): void => {
    if (path !== '') {
      places.set(path, placeAt({ ...spanOf(node), file: note.file, text: note.text, starts: note.starts }));
      typed.set(path, node.kind === 'text' ? node.text : oneLine(note.text, node));
    }
    if (node.kind === 'group') for (const e of node.entries) walk(e.value, join(path, e.key));
    if (node.kind === 'list') for (const [i, item] of node.items.entries()) walk(item, join(path, String(i)));
  };
  walk(note.front, '');
  const shownTo: ShownTo = typed.get('shown-to') === 'public' ? 'public' : 'house';
  return { file: note.file, shownTo, body: note.body, places, typed };
}

const oneLine = (text: string, node: Node): string =>
  text
    .slice(node.span.offset, node.span.offset + node.span.length)
    .trim()
    .replace(/\s+/g, ' ');
