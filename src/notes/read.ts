import { nearest } from '../finding/nearest.ts';
import {
  type Field,
  type Fields,
  type GroupKind,
  type Kind,
  type ListKind,
  type NamedKind,
  step,
  type ValuesOf,
} from './fields.ts';
import {
  type Entry,
  type GroupNode,
  type ListNode,
  type Node,
  type NoteText,
  type Span,
  type TextNode,
} from './note.ts';
import {
  beginning,
  checked,
  errors,
  fells,
  type Into,
  readScalar,
  worthKnowing,
  wrong,
  type Wrong,
  wrongAt,
} from './read-value.ts';
import { readNumber } from '../quantity/read.ts';
import * as say from './texts-fields.ts';

/** What could be read; `whole` is false when something required is missing or wrong, which the findings tell. */
export type FieldsRead<F extends Fields> =
  | { readonly whole: true; readonly values: ValuesOf<F> }
  | { readonly whole: false; readonly values: Partial<ValuesOf<F>> };

/** The fields of a note by its table. Every value is read and every trouble told; nothing is guessed. */
export function readFields<F extends Fields>(
  kind: GroupKind & { readonly fields: F },
  front: GroupNode,
  into: Into,
): FieldsRead<F> {
  const before = errors(into);
  const values = readGroup(kind, front, '', into);
  // the one place where what was read by a table is taken to have the types of that table
  return errors(into) === before
    ? { whole: true, values: values as ValuesOf<F> }
    : { whole: false, values: values as Partial<ValuesOf<F>> };
}

function readGroup(kind: GroupKind, node: GroupNode, path: string, into: Into): Readonly<Record<string, unknown>> {
  const known = Object.keys(kind.fields);
  const settled = tellStrangers(node, known, path, into);
  const values = new Map<string, unknown>();
  const unstated = Object.entries(kind.fields).filter(
    ([name, field]) => field.need === 'recommended' && !settled.has(name) && !isStated(node, name),
  );
  if (unstated.length > 0) worthKnowing(into, head(node), say.notStated(homeOf(node, path), unstated));
  for (const [name, field] of Object.entries(kind.fields)) {
    const entry = node.entries.find((e) => e.key === name);
    if (settled.has(name)) continue;
    const value = readField(field, name, entry, { node, path }, into);
    if (value !== wrong) values.set(name, value);
  }
  for (const names of kind.either ?? [])
    if (!names.some((name) => settled.has(name))) tellEither(names, node, path, kind.fields, into);
  return Object.fromEntries(values);
}

/** Fields that the table does not know. Gives the names that need no further word: misspelt, or cut in two by a comma. */
function tellStrangers(node: GroupNode, known: readonly string[], path: string, into: Into): ReadonlySet<string> {
  const settled = new Set<string>();
  for (const [i, entry] of node.entries.entries()) {
    if (known.includes(entry.key)) continue;
    const before = node.entries[i - 1];
    const sign = signBefore(into.note, entry.keySpan);
    if (before && isEmpty(entry.value) && (sign === ',' || /\s/.test(entry.key))) {
      const offset = before.value.span.offset;
      const span = { offset, length: entry.keySpan.offset + entry.keySpan.length - offset };
      const typed = into.note.text.slice(offset, offset + span.length);
      const told = sign === ',' && /^\d/.test(entry.key) ? say.decimalComma : say.commaInWords;
      wrongAt(into, span, told(join(path, before.key), typed));
      settled.add(before.key);
    } else {
      const near = nearest(entry.key, known);
      wrongAt(into, entry.keySpan, say.unknownField(join(path, entry.key), near, known));
      if (near !== null) settled.add(near);
    }
  }
  return settled;
}

function readField(field: Field, name: string, entry: Entry | undefined, parent: Parent, into: Into): unknown {
  const path = join(parent.path, name);
  if (entry && !isEmpty(entry.value)) return readValue(field.kind, entry.value, path, into);
  const span = entry?.keySpan ?? head(parent.node);
  if (field.need === 'required') return wrongAt(into, span, say.missing(homeOf(parent.node, parent.path), name, field));
  if (field.otherwise === undefined) return null;
  return field.kind.type === 'group'
    ? readGroup(field.kind, { kind: 'group', entries: [], span }, path, into)
    : readValue(field.kind, { kind: 'text', text: field.otherwise, span, lead: 0 }, path, into);
}

const isStated = (node: GroupNode, name: string): boolean => {
  const entry = node.entries.find((e) => e.key === name);
  return entry !== undefined && !isEmpty(entry.value);
};

/** An entry of a list is called by its id. */
const homeOf = (node: GroupNode, path: string): say.Home => {
  const id = node.entries.find((e) => e.key === 'id')?.value;
  return { path, id: id?.kind === 'text' && id.text !== '' ? id.text : null };
};

interface Parent {
  readonly node: GroupNode;
  readonly path: string;
}

/** Where a missing field is told: at the first name of the group it belongs to, or at the bracket that opens it. */
function head(node: GroupNode): Span {
  const name = node.entries[0]?.keySpan;
  return name?.offset === node.span.offset ? name : beginning(node.span);
}

function tellEither(names: readonly string[], node: GroupNode, path: string, fields: Fields, into: Into): void {
  const [one, two] = node.entries.filter((e) => names.includes(e.key));
  if (one && two) wrongAt(into, two.keySpan, say.both(join(path, two.key), one.key));
  if (!one) wrongAt(into, head(node), say.missingEither(path, names, fields));
}

/** One value by its kind; `wrong` when it was told why not, null when it is a part that the note stands without. */
export function readValue(kind: Kind, node: Node, path: string, into: Into): unknown {
  const without = 'without' in kind ? kind.without : undefined;
  if (without === undefined) return readWhole(kind, node, path, into);
  const from = into.findings.length;
  const value = readWhole(kind, node, path, into);
  return leftOut(into, from, without) ? null : value;
}

/** Says what becomes of the errors found since `from`; false when there are none. */
export function leftOut({ findings }: Into, from: number, effect: string): boolean {
  const own = findings.slice(from);
  findings.splice(from, own.length, ...own.map((f) => (fells(f) ? { ...f, effect } : f)));
  return own.some(fells);
}

function readWhole(kind: Kind, node: Node, path: string, into: Into): unknown {
  switch (kind.type) {
    case 'later':
      return node;
    case 'group':
      return node.kind === 'group' ? readGroup(kind, node, path, into) : shape(kind, node, path, into);
    case 'list':
      return node.kind === 'list' ? readList(kind, node, path, into) : shape(kind, node, path, into);
    case 'named':
      return node.kind === 'group' ? readNamed(kind, node, path, into) : shape(kind, node, path, into);
    case 'point':
      return node.kind === 'list' ? readPoint(node, path, into) : shape(kind, node, path, into);
    default:
      return node.kind === 'text' ? readScalar(kind, node, path, into) : shape(kind, node, path, into);
  }
}

const shape = (kind: Kind, node: Node, path: string, into: Into): Wrong =>
  wrongAt(into, node.kind === 'text' ? node.span : beginning(node.span), say.wrongShape(path, node.kind, kind));

function readList(kind: ListKind, node: ListNode, path: string, into: Into): readonly unknown[] | Wrong {
  if (node.items.length < kind.least)
    return wrongAt(into, beginning(node.span), say.tooFew(path, node.items.length, kind.least));
  const cut =
    kind.of.type === 'quantity' ? node.items.findIndex((item, i) => isCut(node.items[i - 1], item, into.note)) : -1;
  const [left, right] = [node.items[cut - 1], node.items[cut]];
  const bare =
    kind.of.type === 'group' ? node.items.find((item) => item.kind === 'text' && item.text !== '') : undefined;
  if (bare?.kind === 'text') return wrongAt(into, bare.span, say.bareEntry(path, bare.text, kind));
  if (left && right) return wrongAt(into, left.span, say.decimalComma(path, `${textOf(left)},${textOf(right)}`));
  return node.items.map((item, i) => readValue(kind.of, item, join(path, String(i)), into));
}

/** `[2,4 L]`: a bare number, a comma without a blank, and digits again. */
const isCut = (left: Node | undefined, right: Node, note: NoteText): boolean =>
  left !== undefined &&
  /^[+-]?\d+$/.test(textOf(left)) &&
  /^\d/.test(textOf(right)) &&
  signBefore(note, right.span) === ',';

function readNamed(kind: NamedKind, node: GroupNode, path: string, into: Into): ReadonlyMap<string, unknown> {
  const value = (entry: Entry, at: string): unknown => {
    const name: TextNode = { kind: 'text', text: entry.key, span: entry.keySpan, lead: 0 };
    if (kind.steps && readScalar(step, name, at, into) === wrong) return wrong;
    return isEmpty(entry.value)
      ? wrongAt(into, entry.keySpan, say.emptyNamed(at, kind))
      : readValue(kind.of, entry.value, at, into);
  };
  return new Map(
    node.entries.map((entry) => {
      const from = into.findings.length;
      const read = value(entry, join(path, entry.key));
      const without = 'without' in kind.of ? kind.of.without : undefined;
      return [entry.key, without !== undefined && leftOut(into, from, without) ? null : read];
    }),
  );
}

function readPoint(node: ListNode, path: string, into: Into): readonly unknown[] | Wrong {
  if (node.items.length !== 2) return wrongAt(into, beginning(node.span), say.notPoint(path));
  return node.items.map((item) =>
    item.kind === 'text'
      ? checked(readNumber(item.text), item, path, into)
      : shape({ type: 'point' }, item, path, into),
  );
}

export const join = (path: string, name: string): string => (path === '' ? name : `${path}.${name}`);
const isEmpty = (node: Node): boolean => node.kind === 'text' && node.text === '' && node.lead === 0;
const textOf = (node: Node): string => (node.kind === 'text' ? node.text : '');
const signBefore = ({ text }: NoteText, span: Span): string => text.charAt(span.offset - 1);
