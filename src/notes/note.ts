import type { Finding, Level } from '../finding/finding.ts';
import { placeAt } from '../finding/place.ts';

/** A stretch of the text of a note, counted in UTF-16 units from its first character. */
export interface Span {
  readonly offset: number;
  readonly length: number;
}

/** The text of a note with line ends made one; lines and columns are those of the file. */
export interface NoteText {
  readonly file: string;
  readonly text: string;
  readonly starts: readonly number[];
}

/** Front matter as a plain tree: scalars are the text that was typed, and what they mean is judged by the field that reads them. */
export type Node = TextNode | ListNode | GroupNode;

export interface TextNode {
  readonly kind: 'text';
  readonly text: string;
  readonly span: Span;
  /** Characters before the text inside its span: 1 for an opening quote. */
  readonly lead: number;
}

export interface ListNode {
  readonly kind: 'list';
  readonly items: readonly Node[];
  readonly span: Span;
}

export interface GroupNode {
  readonly kind: 'group';
  readonly entries: readonly Entry[];
  readonly span: Span;
}

export interface Entry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: Node;
}

/** A note taken apart: the tree of its front matter and the words under it. */
export interface Note extends NoteText {
  readonly front: GroupNode;
  readonly body: string;
}

/** A finding before it has a place. */
export interface Told {
  readonly code: string;
  readonly level: Level;
  readonly says: string;
  readonly why: string;
  readonly write: string;
}

export const tell = (note: NoteText, span: Span, told: Told): Finding => ({
  ...told,
  place: placeAt({ ...span, file: note.file, text: note.text, starts: note.starts }),
});

/** The node at a dotted path; a name may itself hold dots. */
export function nodeAt(node: Node, path: string): Node | undefined {
  if (node.kind === 'list') {
    const [step = '', ...rest] = path.split('.');
    const item = node.items[Number(step)];
    return item && rest.length > 0 ? nodeAt(item, rest.join('.')) : item;
  }
  if (node.kind === 'text') return undefined;
  const whole = node.entries.find((e) => e.key === path);
  const head = node.entries.find((e) => path.startsWith(`${e.key}.`));
  return whole?.value ?? (head && nodeAt(head.value, path.slice(head.key.length + 1)));
}
