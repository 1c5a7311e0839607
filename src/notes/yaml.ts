import {
  type Alias,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node as YamlNode,
  parseDocument,
  Scalar,
  visit,
  type YAMLError,
} from 'yaml';
import type { Entry, GroupNode, Node, Span, TextNode, Told } from './note.ts';
import * as say from './texts-file.ts';

export interface YamlTrouble {
  readonly span: Span;
  readonly told: Told;
}

export interface YamlRead {
  readonly front: GroupNode | null;
  readonly troubles: readonly YamlTrouble[];
}

/** Nodes that aliases may bring in, all together, and how deep a note may nest. */
const aliasBudget = 200;
const deepest = 12;

/** YAML 1.2 core to a tree of typed text; `shift` is where `text` begins in the file. */
export function readYaml(text: string, shift: number): YamlRead {
  const parsed = parse(text);
  if (parsed === null)
    return { front: null, troubles: [{ span: { offset: 0, length: shift }, told: say.tooDeep(deepest) }] };
  const troubles = syntaxTroubles(parsed, text, shift);
  if (troubles.length > 0) return { front: null, troubles };
  const budget = { left: aliasBudget, troubles: [] as YamlTrouble[] };
  const front = toNode(parsed.contents, {
    doc: parsed,
    shift,
    depth: 0,
    alias: null,
    budget,
    home: { offset: 0, length: shift },
  });
  if (budget.troubles.length > 0) return { front: null, troubles: budget.troubles.slice(0, 1) };
  if (front.kind === 'group') return { front, troubles: [] };
  return { front: null, troubles: [{ span: front.span, told: say.notFields() }] };
}

/** The parser descends by recursion; a note that exhausts the stack is refused like any other that nests too deep. */
function parse(text: string): Document.Parsed | null {
  try {
    return parseDocument(text, { schema: 'core', uniqueKeys: true, prettyErrors: false, logLevel: 'silent' });
  } catch (trouble) {
    if (trouble instanceof RangeError) return null;
    throw trouble;
  }
}

/** The first trouble only, since those after it mostly follow from it; doubled keys stand each for themselves. */
function syntaxTroubles(doc: Document.Parsed, text: string, shift: number): YamlTrouble[] {
  const all: YAMLError[] = [...doc.errors, ...doc.warnings];
  if (all.some((e) => /call stack/i.test(e.message)))
    return [{ span: { offset: 0, length: shift }, told: say.tooDeep(deepest) }];
  const first = all.find((e) => e.code !== 'DUPLICATE_KEY');
  const told = first ? [first] : all;
  return told.map((e) => troubleAt(e, doc, text, shift));
}

function troubleAt(e: YAMLError, doc: Document.Parsed, text: string, shift: number): YamlTrouble {
  const offset = e.code === 'MISSING_CHAR' ? openingOf(doc, e.pos[0]) : Math.min(e.pos[0], text.length);
  const rest = /^.*/.exec(text.slice(offset))?.[0] ?? '';
  // a field that is indented too far is taken for more of the value above it
  const below = /^\n(\s*)\S/.exec(text.slice(offset + rest.length));
  if (e.code === 'BLOCK_AS_IMPLICIT_KEY' && below && !/:(\s|$)/.test(rest)) {
    const at = offset + rest.length + 1 + (below[1]?.length ?? 0);
    return { span: { offset: at + shift, length: 1 }, told: say.yaml('BAD_INDENT', e.message, '', '') };
  }
  const line = text.slice(text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1, offset + rest.length);
  const word = /^[\w-]+/.exec(rest)?.[0] ?? rest.slice(0, 1);
  return {
    span: { offset: offset + shift, length: e.code === 'DUPLICATE_KEY' ? word.length : 1 },
    told: say.yaml(e.code, e.message, line, word),
  };
}

/** A missing closing quote is told where the quote was opened, not where the note ran out. */
function openingOf(doc: Document.Parsed, pos: number): number {
  let opening = pos;
  visit(doc, {
    Scalar(_, node) {
      const start = node.range?.[0];
      if (node.type?.startsWith('QUOTE') === true && start !== undefined && start <= pos) opening = start;
    },
  });
  return opening;
}

interface Walk {
  readonly doc: Document.Parsed;
  readonly shift: number;
  readonly depth: number;
  /** The alias by which the walk came here: nodes behind it are counted, and told at it. */
  readonly alias: Span | null;
  readonly budget: { left: number; readonly troubles: YamlTrouble[] };
  /** Where to point when a value was left empty. */
  readonly home: Span;
}

function toNode(node: unknown, walk: Walk): Node {
  const span = spanOf(node as YamlNode | null, walk);
  const nothing: TextNode = { kind: 'text', text: '', span: { ...span, length: 0 }, lead: 0 };
  const no = (told: Told, at: Span = span): Node => {
    walk.budget.troubles.push({ span: walk.alias ?? at, told });
    return nothing;
  };
  if (walk.budget.troubles.length > 0) return nothing;
  if (walk.depth > deepest) return no(say.tooDeep(deepest));
  if (walk.alias && walk.budget.left-- <= 0) return no(say.aliases(aliasBudget));
  if (isAlias(node)) return fromAlias(node, { ...walk, alias: walk.alias ?? span }, no);
  if (isScalar(node)) return fromScalar(node, span);
  const inside = { ...walk, depth: walk.depth + 1 };
  if (isSeq(node))
    return { kind: 'list', span, items: node.items.map((item) => toNode(item, { ...inside, home: span })) };
  if (!isMap(node)) return { kind: 'text', text: '', span: walk.home, lead: 0 };
  const entries: Entry[] = [];
  for (const pair of node.items) {
    const key = isScalar(pair.key) ? fromScalar(pair.key, spanOf(pair.key, walk)) : null;
    if (key === null || key.text === '')
      return no(say.keyNotWord(), spanOf(pair.key as YamlNode | null, { ...walk, home: span }));
    entries.push({ key: key.text, keySpan: key.span, value: toNode(pair.value, { ...inside, home: key.span }) });
  }
  return { kind: 'group', span, entries };
}

function fromAlias(alias: Alias, walk: Walk, no: (told: Told) => Node): Node {
  const target = alias.resolve(walk.doc);
  return target ? toNode(target, { ...walk, depth: walk.depth + 1 }) : no(say.aliasUnknown(alias.source));
}

/** The characters that were typed, not what YAML would make of them: `010`, `1.10` and `1:30` reach the field as they are. */
function fromScalar(node: Scalar, span: Span): TextNode {
  const plain = node.type === undefined || node.type === Scalar.PLAIN;
  const text = plain ? (node.source ?? '') : String(node.value);
  const quoted = node.type === Scalar.QUOTE_DOUBLE || node.type === Scalar.QUOTE_SINGLE;
  return { kind: 'text', text, span, lead: quoted ? 1 : 0 };
}

function spanOf(node: YamlNode | null, walk: Walk): Span {
  const range = node?.range;
  if (!range || range[1] === range[0]) return walk.home;
  return { offset: range[0] + walk.shift, length: range[1] - range[0] };
}
