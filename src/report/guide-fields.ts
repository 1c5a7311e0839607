import type { Field, GroupKind, Kind } from '../notes/fields.ts';
import { noteKinds } from '../notes/json-schema.ts';
import { exampleOf } from '../notes/texts-fields.ts';
import type { Block, Span, TableRow } from './page.ts';
import { code, fold, row, tableBlock } from './spans.ts';

export type NoteKind = keyof typeof noteKinds;

/** Every field of one kind of note, from the table that the reader of notes goes by. */
export const everyField = (kind: NoteKind): Block =>
  fold(
    'Every field of this note',
    tableBlock(
      `fields-${kind}`,
      ['field', 'needed', 'wide written as', 'wide why it is asked'],
      rowsOf(noteKinds[kind], ''),
    ),
  );

const rowsOf = (kind: GroupKind, before: string): TableRow[] =>
  Object.entries(kind.fields).flatMap(([name, field]) => [
    row(code(`${before}${name}`), needWords(kind, name, field), form(field.kind), field.why),
    ...inside(field.kind, `${before}${name}.`),
  ]);

/** Fields of a group, of each entry of a list, and under each name of the writer's own. */
function inside(kind: Kind, before: string): TableRow[] {
  if (kind.type === 'group') return rowsOf(kind, before);
  if (kind.type === 'list') return inside(kind.of, before);
  return kind.type === 'named' ? inside(kind.of, `${before}<${kind.called}>.`) : [];
}

function needWords({ either = [] }: GroupKind, name: string, { need, otherwise = '' }: Field): string {
  const others = either.find((names) => names.includes(name))?.filter((other) => other !== name) ?? [];
  if (others.length > 0) return `this or ${others.join(', ')}`;
  if (need === 'required') return 'yes';
  if (need === 'recommended') return 'when known';
  return otherwise === '' ? 'no' : `no; else ${otherwise}`;
}

function form(kind: Kind): Span[] {
  switch (kind.type) {
    case 'words':
      return [kind.words.join(' · ')];
    case 'yes-no':
      return ['true · false'];
    case 'list':
      return kind.of.type === 'group'
        ? ['a list of groups']
        : kind.of.type === 'words'
          ? ['a list of: ', ...form(kind.of)]
          : [code(exampleOf(kind))];
    case 'group':
      return ['a group'];
    case 'named':
      return [`a group, each by its ${kind.called}`];
    default:
      return [code(exampleOf(kind))];
  }
}
