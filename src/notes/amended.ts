import type { Reading } from '../finding/finding.ts';
import type { Correction, FieldChange } from '../trial/amendment.ts';
import type { SourceFile } from '../trial/series.ts';
import { splitNote } from './split.ts';
import { nodeAt, type GroupNode, type Node, type Note } from './note.ts';

/** A note of a run as it is read now: fields that a correction reads otherwise are in the place of what was typed. */
export const withWritten =
  <T>(read: (note: Note) => Reading<T>, changes: readonly FieldChange[]) =>
  (note: Note): Reading<T> => {
    const id = nodeAt(note.front, 'id');
    const own = changes.filter(({ run }) => id?.kind === 'text' && id.text === run);
    if (own.length === 0) return read(note);
    const front = own.reduce((front, { field, write }) => replaced(front, field, write), note.front);
    return read({ ...note, front });
  };

export const fieldChanges = (corrections: readonly Correction[]): FieldChange[] =>
  corrections.flatMap(({ changes }) => changes.filter((change) => change.kind === 'field'));

/** The text of one scalar replaced; its place stays that of what was typed. */
function replaced(front: GroupNode, path: string, write: string): GroupNode {
  const at = nodeAt(front, path);
  if (at?.kind !== 'text') return front;
  const swap = (node: Node): Node => {
    if (node === at) return { ...at, text: write };
    if (node.kind === 'list') return { ...node, items: node.items.map(swap) };
    return node.kind === 'group'
      ? { ...node, entries: node.entries.map((e) => ({ ...e, value: swap(e.value) })) }
      : node;
  };
  return swap(front) as GroupNode;
}

/** Whether every field that a correction reads otherwise stands in its note: one that half applies is left out whole. */
export const fieldsStand = ({ changes }: Correction, runs: readonly SourceFile[]): boolean =>
  changes.every((change) => {
    if (change.kind !== 'field') return true;
    const file = runs.find(({ path }) => path.endsWith(`/runs/${change.run}.md`));
    const note = file === undefined ? null : splitNote(file);
    return note?.ok === true && nodeAt(note.value.front, change.field)?.kind === 'text';
  });
