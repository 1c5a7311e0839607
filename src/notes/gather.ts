import type { Finding, Place, Reading } from '../finding/finding.ts';
import type { NoteHead } from '../trial/note.ts';
import type { SourceFile } from '../trial/series.ts';
import type { Note, Told } from './note.ts';
import { splitNote } from './split.ts';
import * as say from './texts-book.ts';

/** The records of one kind by id, the names of those that could not be read, and what was found in each note. */
export interface Gathered<T> {
  readonly records: ReadonlyMap<string, T>;
  readonly spoilt: ReadonlySet<string>;
  readonly findings: readonly Finding[];
  /** A spoilt name that is spoilt only because of another one. */
  readonly leansOn?: ReadonlyMap<string, string>;
}

/** Reads every note of one kind. A note whose id is not its file's name counts as spoilt under both. */
export function gather<T extends NoteHead & { readonly id: string }>(
  files: readonly SourceFile[],
  read: (note: Note) => Reading<T>,
): Gathered<T> {
  const records = new Map<string, T>();
  const spoilt = new Set<string>();
  const findings: Finding[] = [];
  for (const file of files) {
    const name = stem(file.path);
    const result = readNote(file, read);
    findings.push(...result.findings);
    if (result.ok && result.value.id === name) records.set(name, result.value);
    else spoilt.add(name);
    if (!result.ok || result.value.id === name) continue;
    spoilt.add(result.value.id);
    findings.push(foundAt(result.value, 'id', say.idNotFile(result.value.id, name)));
  }
  return { records, spoilt, findings };
}

export function readNote<T>(file: SourceFile, read: (note: Note) => Reading<T>): Reading<T> {
  const note = splitNote(file);
  return note.ok ? read(note.value) : note;
}

/** A finding about a field of a record, wherever its note stands. */
export const foundAt = (head: NoteHead, path: string, told: Told): Finding => ({ ...told, place: placeOf(head, path) });

export function placeOf(head: NoteHead, path: string): Place {
  const place = head.places.get(path);
  if (place) return place;
  return path.includes('.') ? placeOf(head, path.slice(0, path.lastIndexOf('.'))) : firstLine(head.file);
}

export const firstLine = (file: string): Place => ({ file, line: 1, column: 1 });

/** Says what becomes of the thing that the errors are about; what is told already stays. */
export const withEffect = (findings: readonly Finding[], effect: string, about: Finding['about']): Finding[] =>
  findings.map((f) => ({
    ...f,
    ...(f.level === 'error' && f.effect === undefined ? { effect } : {}),
    ...(about ? { about: { ...about, ...f.about } } : {}),
  }));

export const stem = (path: string): string => path.slice(path.lastIndexOf('/') + 1).replace(/\.md$/, '');
