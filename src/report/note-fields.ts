import type { NoteHead } from '../trial/note.ts';
import type { Block, Section } from './page.ts';
import { code, facts, fold, section } from './spans.ts';
import type { View } from './view.ts';

/** The words of a note, and its fields as they were typed: a stranger can see what was written down. */
export function noteSection(view: View, note: NoteHead): Section {
  const words: Block | null = note.body.trim() === '' ? null : { kind: 'words', markdown: note.body.trim() };
  return section(
    'note',
    'The note',
    [
      words,
      fold(
        'Fields as typed',
        facts([...inRows(typedFields(view, note))].map(([field, typed]) => [field, [code(typed)]])),
      ),
    ],
    [{ name: 'Note.', text: [code(note.file)] }],
  );
}

/** Leaves only: a mapping is shown by its parts. Whoever ran, released or left out is the house's own business. */
function typedFields(view: View, { typed }: NoteHead): readonly (readonly [string, string])[] {
  const fields = [...typed].filter(([field]) => ![...typed.keys()].some((other) => other.startsWith(`${field}.`)));
  return view.house ? fields : fields.filter(([field]) => !personal.test(field));
}

/** Items of a list share a row: "steps: 60 rpm, 120 rpm"; "cells 3: trial spin, article P1"; graded steps have a row each. */
function inRows(fields: readonly (readonly [string, string])[]): ReadonlyMap<string, string> {
  const rows = new Map<string, string>();
  for (const [field, typed] of fields) {
    const { row, name } = rowOf(field);
    const part = name === '' ? typed : `${name} ${typed}`;
    rows.set(row, rows.has(row) ? `${rows.get(row)!}, ${part}` : part);
  }
  return rows;
}

function rowOf(field: string): { readonly row: string; readonly name: string } {
  const [, list, index, rest] = /^(.*?)\.(\d+)(?:\.(.+))?$/.exec(field) ?? [];
  if (list === undefined) return { row: field, name: '' };
  if (rest === undefined) return { row: list, name: '' };
  const row = `${list} ${String(Number(index) + 1)}`;
  const [, step, of] = /^steps\.(.+)\.([^.]+)$/.exec(rest) ?? [];
  if (step !== undefined) return { row: `${row}, ${step}`, name: of! };
  const part = rest.replace(/\.\d+$/, '').replace(/\.(\d+)\./g, (_, n: string) => ` ${String(Number(n) + 1)} `);
  return { row, name: /^\d+$/.test(rest) ? '' : part };
}

const personal = /(^|\.)(operators|released-by|by|cautions-by|observer)(\.|$)/;
