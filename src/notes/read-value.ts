import type { Finding } from '../finding/finding.ts';
import { nearest } from '../finding/nearest.ts';
import type { Quantity, ReadText, Trouble } from '../quantity/quantity.ts';
import { readNumber, readQuantity } from '../quantity/read.ts';
import { readDay, readInstant } from '../quantity/time.ts';
import { readTimecode } from '../quantity/timecode.ts';
import type { Bounds, GradeKind, Kind, NumberKind, QuantityKind, TextKind } from './fields.ts';
import { type Node, type Note, type Span, tell, type TextNode, type Told } from './note.ts';
import { readStep } from './step.ts';
import * as say from './texts-fields.ts';
import { gradeOff, stepForm } from './texts-flow.ts';

/** Where a reading puts what it finds. */
export interface Into {
  readonly note: Note;
  readonly findings: Finding[];
}

/** Errors that the whole note falls with; one whose effect is told already is about a part that was left out. */
export const errors = ({ findings }: Into): number => findings.filter(fells).length;

export const fells = (f: Finding): boolean => f.level === 'error' && f.effect === undefined;

/** Stands for a value that was told to be wrong. */
export const wrong = Symbol('wrong');
export type Wrong = typeof wrong;

export function wrongAt(into: Into, span: Span, told: Told): Wrong {
  into.findings.push(tell(into.note, span, told));
  return wrong;
}

export const worthKnowing = (into: Into, span: Span, told: Told): void => {
  into.findings.push(tell(into.note, span, told));
};

export type ScalarKind = Exclude<Kind, { readonly type: 'later' | 'group' | 'list' | 'named' | 'point' }>;

/** One text by its kind. */
export function readScalar(kind: ScalarKind, node: TextNode, path: string, into: Into): unknown {
  switch (kind.type) {
    case 'text':
      return readPlain(kind, node, path, into);
    case 'words':
      return readWord(kind.words, node, path, into);
    case 'yes-no': {
      const word = readWord(['true', 'false'], node, path, into);
      return word === wrong ? wrong : word === 'true';
    }
    case 'day': {
      const day = checked(readDay(node.text), node, path, into);
      return day === wrong ? wrong : day.asWritten;
    }
    case 'instant':
      return checked(readInstant(node.text), node, path, into);
    case 'timecode':
      return checked(readTimecode(node.text), node, path, into);
    case 'step':
      return readStep(node.text) ?? wrongAt(into, node.span, stepForm(node.text));
    case 'grade':
      return readGrade(kind, node, path, into);
    case 'number':
      return readCount(kind, node, path, into);
    case 'quantity':
      return kind.none === node.text ? null : (quantityOf(kind, node, path, into) ?? wrong);
  }
}

function readPlain(kind: TextKind, node: TextNode, path: string, into: Into): string | Wrong {
  if (kind.pattern === undefined || new RegExp(kind.pattern, 'u').test(node.text)) return node.text;
  return wrongAt(into, node.span, say.wrongPattern(path, node.text, kind));
}

function readWord(words: readonly string[], node: TextNode, path: string, into: Into): string | Wrong {
  if (words.includes(node.text)) return node.text;
  return wrongAt(into, node.span, say.wrongWord(path, node.text, words, nearest(node.text, words)));
}

function readGrade({ most, ng }: GradeKind, node: TextNode, path: string, into: Into): number | 'ng' | Wrong {
  if (ng && node.text === 'ng') return 'ng';
  const on = /^\d$/.test(node.text) && Number(node.text) <= most;
  return on ? Number(node.text) : wrongAt(into, node.span, gradeOff(say.fieldOf(path), node.text, { most, ng }));
}

function readCount(kind: NumberKind, node: TextNode, path: string, into: Into): number | Wrong {
  const value = checked(readNumber(node.text), node, path, into);
  if (value === wrong) return wrong;
  if (kind.whole && !Number.isInteger(value)) return wrongAt(into, node.span, say.notWhole(path, node.text));
  const { hard, soft } = kind;
  if (hard && (value < hard[0] || value > hard[1]))
    return wrongAt(into, node.span, say.impossible(path, node.text, [String(hard[0]), String(hard[1])], kind.like));
  if (soft && (value < soft[0] || value > soft[1]))
    worthKnowing(into, node.span, say.unusual(path, node.text, [String(soft[0]), String(soft[1])]));
  return value;
}

/** A quantity of one dimension from one value of a note, with its bounds; null when it was told why not. */
export function quantityOf(kind: Omit<QuantityKind, 'type'>, node: Node, path: string, into: Into): Quantity | null {
  if (node.kind !== 'text') {
    wrongAt(into, beginning(node.span), say.wrongShape(path, node.kind, { type: 'quantity', ...kind }));
    return null;
  }
  const value = checked(readQuantity(node.text, kind.dimension, { field: say.fieldOf(path) }), node, path, into);
  if (value === wrong) return null;
  if (kind.hard && outside(value.value, kind.hard, kind)) {
    wrongAt(into, node.span, say.impossible(path, node.text, kind.hard, kind.like));
    return null;
  }
  if (kind.soft && outside(value.value, kind.soft, kind))
    worthKnowing(into, node.span, say.unusual(path, node.text, kind.soft));
  return value;
}

/** A value typed as the bound itself is inside, whatever the last bit of a conversion says. */
function outside(value: number, bounds: Bounds, { dimension }: Omit<QuantityKind, 'type'>): boolean {
  const [low, high] = bounds.map((text) => {
    const read = readQuantity(text, dimension);
    if (!read.ok) throw new Error(`the bound ${text} of a ${dimension} cannot be read`);
    return read.value.value;
  });
  const slack = 1e-12 * Math.max(Math.abs(value), 1e-9);
  return value < (low ?? -Infinity) - slack || value > (high ?? Infinity) + slack;
}

/** The trouble of a text becomes a finding at its place in the note. */
export function checked<T>(read: ReadText<T>, node: TextNode, path: string, into: Into): T | Wrong {
  return read.ok ? read.value : wrongAt(into, troubleSpan(read.trouble, node), say.trouble(path, read.trouble));
}

function troubleSpan({ offset, length }: Trouble, { span, lead }: TextNode): Span {
  const from = Math.min(lead + offset, Math.max(0, span.length - 1));
  return { offset: span.offset + from, length: Math.max(0, Math.min(length, span.length - from)) };
}

/** For a list or a group: its first sign only, so that not half a note is underlined. */
export const beginning = (span: Span): Span => ({ offset: span.offset, length: Math.min(1, span.length) });
