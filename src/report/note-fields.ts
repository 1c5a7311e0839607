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
    [words, fold('Fields as typed', facts(typedFields(view, note).map(([field, typed]) => [field, [code(typed)]])))],
    [{ name: 'Note.', text: [code(note.file)] }],
  );
}

/** Leaves only: a mapping is shown by its parts. Whoever ran, released or left out is the house's own business. */
function typedFields(view: View, { typed }: NoteHead): readonly (readonly [string, string])[] {
  const fields = [...typed].filter(([field]) => ![...typed.keys()].some((other) => other.startsWith(`${field}.`)));
  return view.house ? fields : fields.filter(([field]) => !personal.test(field));
}

const personal = /(^|\.)(operators|released-by|by|cautions-by)(\.|$)/;
