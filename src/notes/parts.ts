import type { Finding, Place } from '../finding/finding.ts';
import type { NoteHead } from '../trial/note.ts';
import { foundAt } from './gather.ts';
import type { Told } from './note.ts';

/** Parts of a run that stand, and what was found in them. */
export interface Parts<T> {
  readonly kept: readonly T[];
  readonly findings: readonly Finding[];
}

/** A finding about a field of one part of a run. A part is known by its place, which is that of its path in the note. */
export function partAt(head: NoteHead, part: { readonly place: Place }, field: string, told: Told): Finding {
  const path = [...head.places].find(([, place]) => place === part.place)?.[0];
  return path === undefined ? { ...told, place: part.place } : foundAt(head, `${path}.${field}`, told);
}

/** The same, saying of an error what becomes of the part. */
export const leftOutOf = (
  head: NoteHead,
  part: { readonly place: Place },
  field: string,
  told: Told,
  effect: string,
): Finding[] => {
  const finding = partAt(head, part, field, told);
  return [finding.level === 'error' ? { ...finding, effect } : finding];
};
