import type { Trouble } from '../quantity/quantity.ts';
import type { Bounds, Field, Fields, Kind, ListKind, NamedKind, TextKind } from './fields.ts';
import type { Told } from './note.ts';

/** What is said about a field: one function a finding. */
const error = (code: string, says: string, why: string, write: string): Told => ({
  code,
  level: 'error',
  says,
  why,
  write,
});

/** The name a person looks for: the last word of the path, without places in a list. */
export const fieldOf = (path: string): string => path.split('.').findLast((step) => !/^\d+$/.test(step)) ?? path;

/** An example as somebody would type it. */
export function exampleOf(kind: Kind): string {
  switch (kind.type) {
    case 'text':
    case 'quantity':
    case 'number':
    case 'later':
    case 'day':
      return kind.like;
    case 'words':
      return kind.words[0] ?? '';
    case 'yes-no':
      return 'true';
    case 'instant':
      return '2026-03-17T10:05:00+01:00';
    case 'timecode':
      return '00:00:36.000';
    case 'step':
      return '290 rpm up';
    case 'grade':
      return '3';
    case 'list':
      return `[${exampleOf(kind.of)}]`;
    case 'point':
      return '[40, -128]';
    case 'named':
      return `{ ${kind.steps ? '290 rpm up' : kind.called}: ${exampleOf(kind.of)} }`;
    case 'group': {
      const all = Object.entries(kind.fields);
      const needed = all.filter(
        ([name, f]) => f.need === 'required' || kind.either?.some((names) => names[0] === name),
      );
      return `{ ${(needed.length > 0 ? needed : all).map(([name, f]) => `${name}: ${exampleOf(f.kind)}`).join(', ')} }`;
    }
  }
}

const written = (name: string, kind: Kind): string => `${name}: ${exampleOf(kind)}`;
const anyOf = (words: readonly string[]): string => words.join(' · ');

export const trouble = (path: string, t: Trouble): Told => {
  const field = fieldOf(path);
  return {
    code: t.code,
    level: 'error',
    says: t.says,
    why: t.why,
    write: t.write.includes(field) ? t.write : `${t.write} The field is "${field}".`,
  };
};

export const unknownField = (path: string, near: string | null, known: readonly string[]): Told =>
  error(
    'field-unknown',
    `"${fieldOf(path)}" is not a field here.`,
    'A field that nobody reads would be lost without a word.',
    near === null
      ? `Write one of: ${anyOf(known)}; or put it as words under the front matter.`
      : `Did you mean "${near}"?`,
  );

export function decimalComma(path: string, typed: string): Told {
  const bare = typed.replace(/[“”„«»]/g, '');
  return error(
    'decimal-comma-in-list',
    `The comma in "${bare}" parts two values here.`,
    'Inside [ ] and { } YAML takes a comma as the end of a value, so a decimal comma cuts the number in two.',
    `Put the value of "${fieldOf(path)}" in ${bare === typed ? '' : 'straight '}quotes: "${bare}", or write ${bare.replace(',', '.')}.`,
  );
}

export const commaInWords = (path: string, typed: string): Told =>
  error(
    'comma-in-value',
    `The comma in "${typed}" ends the value of "${fieldOf(path)}".`,
    'Inside [ ] and { } YAML takes a comma as the end of a value.',
    `Put the value in quotes: ${fieldOf(path)}: "${typed}".`,
  );

/** Where a field belongs: nowhere to name for the note itself, else its group, by the id of an entry where it has one. */
export type Home = { readonly path: string; readonly id: string | null };
const homeWords = ({ path, id }: Home): string =>
  id !== null && path !== '' ? ` for ${id}` : path === '' ? '' : ` in "${fieldOf(path)}"`;

export const missing = (home: Home, name: string, field: Field): Told =>
  error('field-missing', `"${name}" is missing${homeWords(home)}.`, field.why, `Write  ${written(name, field.kind)}.`);

/** Fields of one group that it could well have: told together. */
export function notStated(home: Home, fields: readonly (readonly [name: string, field: Field])[]): Told {
  const names = fields.map(([name]) => `"${name}"`);
  return {
    code: 'field-not-stated',
    level: 'notice',
    says: `${sentenceList(names)} ${fields.length === 1 ? 'is' : 'are'} not stated${homeWords(home)}.`,
    why: fields.map(([, field]) => field.why).join(' '),
    write: `If known, write  ${fields.map(([name, field]) => written(name, field.kind)).join('  and  ')}.`.replace(
      '?.',
      '?',
    ),
  };
}

const sentenceList = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`;

export const missingEither = (path: string, names: readonly string[], fields: Fields): Told =>
  error(
    'field-missing',
    `${names.map((n) => `"${n}"`).join(' or ')} is missing${path === '' ? '' : ` in "${path}"`}.`,
    fields[names[0] ?? '']?.why ?? '',
    `Write one of them:  ${names.map((n) => (fields[n] ? written(n, fields[n].kind) : n)).join('  or  ')}.`,
  );

export const both = (path: string, other: string): Told =>
  error(
    'field-one-too-many',
    `"${fieldOf(path)}" and "${other}" stand together.`,
    'They say the same thing in two ways, and it cannot be told which counts.',
    `Keep one of "${other}" and "${fieldOf(path)}".`,
  );

export const emptyNamed = (path: string, kind: NamedKind): Told =>
  error(
    'field-missing',
    `"${fieldOf(path)}" has no value.`,
    `Each ${kind.called} here has one.`,
    `Write  ${written(fieldOf(path), kind.of)}.`,
  );

const nouns: Readonly<Record<'text' | 'list' | 'group', string>> = {
  text: 'one value',
  list: 'a list',
  group: 'a group of fields',
};

export function wrongShape(path: string, is: 'text' | 'list' | 'group', kind: Kind): Told {
  const wants =
    kind.type === 'list' || kind.type === 'point'
      ? 'list'
      : kind.type === 'group' || kind.type === 'named'
        ? 'group'
        : 'text';
  return error(
    'field-shape',
    `"${fieldOf(path)}" is ${nouns[is]} here.`,
    `It is read as ${nouns[wants]}.`,
    `Write  ${written(fieldOf(path), kind)}.`,
  );
}

/** A bare name where each entry of the list is a group: told once, with that name in its place. */
export function bareEntry(path: string, typed: string, { of }: ListKind): Told {
  const [[first, field] = []] = of.type === 'group' ? Object.entries(of.fields) : [];
  const example = exampleOf(of);
  return error(
    'field-shape',
    `"${typed}" stands alone in "${fieldOf(path)}".`,
    'Each entry here is a group of fields.',
    `Write  ${fieldOf(path)}: [${field ? example.replace(`${first}: ${exampleOf(field.kind)}`, () => `${first}: ${typed}`) : example}].`,
  );
}

export const wrongWord = (path: string, typed: string, words: readonly string[], near: string | null): Told =>
  error(
    'word-unknown',
    `"${typed}" is not one of the words of "${fieldOf(path)}".`,
    near === null ? 'No other word is read here.' : `They are: ${anyOf(words)}.`,
    near === null ? `Write one of: ${anyOf(words)}.` : `Did you mean  ${fieldOf(path)}: ${near} ?`,
  );

export const wrongPattern = (path: string, typed: string, kind: TextKind): Told =>
  error(
    'field-form',
    `"${typed}" does not have the form of "${fieldOf(path)}".`,
    `It is ${kind.says ?? 'written in one form'}.`,
    `Write it as  ${written(fieldOf(path), kind)}.`,
  );

export const notWhole = (path: string, typed: string): Told =>
  error(
    'number-not-whole',
    `"${typed}" is not a whole number.`,
    `"${fieldOf(path)}" counts.`,
    `Write  ${fieldOf(path)}: ${Math.round(Number(typed)) || 1}.`,
  );

export const impossible = (path: string, typed: string, [low, high]: Bounds, like: string): Told =>
  error(
    'value-impossible',
    `"${fieldOf(path)}" is ${typed}.`,
    `It lies between ${low} and ${high}.`,
    `Look at the sign, the digits and the unit, and write what was read, as  ${fieldOf(path)}: ${like}.`,
  );

export const unusual = (path: string, typed: string, [low, high]: Bounds): Told => ({
  code: 'value-unusual',
  level: 'warning',
  says: `"${fieldOf(path)}" is ${typed}.`,
  why: `It mostly lies between ${low} and ${high}.`,
  write: 'Look at the digits and the unit; leave it when it is what was read.',
});

export const tooFew = (path: string, is: number, least: number): Told =>
  error(
    'list-too-short',
    `"${fieldOf(path)}" has ${is === 0 ? 'no entries' : is === 1 ? 'one entry' : `${is} entries`}.`,
    `At least ${least} ${least === 1 ? 'is' : 'are'} needed.`,
    `Write ${least - is} more under "${fieldOf(path)}".`,
  );

export const notPoint = (path: string): Told =>
  error(
    'point-form',
    `A point of "${fieldOf(path)}" is not two numbers.`,
    'A point is [x, z] in millimetres.',
    'Write  [40, -128].',
  );
