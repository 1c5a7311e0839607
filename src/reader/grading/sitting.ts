import type { Graded, Observation } from '../../trial/flow.ts';
import type { Item } from './items.ts';
import { isEmpty, isUnseen, isWhole, marked, type Marks, noMarks, type Row } from './marks.ts';

/** Who grades, in which pass, and what is hidden from them. */
export interface Grader {
  readonly observer: string;
  readonly pass: Observation['pass'];
  readonly blind: Observation['blind'];
  readonly order: number;
}

/** An evening of grading: what is to be graded, what was, and where the grader stands. */
export interface Sitting {
  readonly grader: Grader;
  readonly items: readonly Item[];
  readonly at: number;
  readonly row: Row;
  readonly marks: ReadonlyMap<string, Marks>;
  /** Codes of clips with grades that no file holds yet. */
  readonly unwritten: ReadonlySet<string>;
}

export const keyOf = ({ code, step }: Item): string => `${code} ${step}`;
export const marksAt = ({ marks }: Sitting, item: Item): Marks => marks.get(keyOf(item)) ?? noMarks;

/** Begins at the first step that is not whole. */
export function begin(grader: Grader, items: readonly Item[], kept: ReadonlyMap<string, Marks> = new Map()): Sitting {
  const here = items.filter((item) => kept.has(keyOf(item)));
  const marks = new Map(here.map((item) => [keyOf(item), kept.get(keyOf(item))!]));
  const open = items.findIndex((item) => !isWhole(marks.get(keyOf(item)) ?? noMarks));
  const unwritten = new Set(here.filter((item) => !isEmpty(marks.get(keyOf(item))!)).map(({ code }) => code));
  return { grader, items, at: Math.max(0, open), row: 'view', marks, unwritten };
}

/** A grade in the row where the grader stands, or another; the same sitting when the row does not have such a grade. */
export function grade(sitting: Sitting, value: Graded, row: Row = sitting.row): Sitting {
  const item = sitting.items[sitting.at];
  const next = item && marked(marksAt(sitting, item), row, value);
  return item && next ? put({ ...sitting, row }, item, next) : sitting;
}

export function say(sitting: Sitting, words: string): Sitting {
  const item = sitting.items[sitting.at];
  return item ? put(sitting, item, { ...marksAt(sitting, item), words }) : sitting;
}

const put = (sitting: Sitting, item: Item, marks: Marks): Sitting => ({
  ...sitting,
  marks: new Map([...sitting.marks, [keyOf(item), marks]]),
  unwritten: new Set([...sitting.unwritten, item.code]),
});

/** To another step; its first row is View again. At the ends it stays. */
export function goBy(sitting: Sitting, way: -1 | 1): Sitting {
  const at = Math.min(sitting.items.length - 1, Math.max(0, sitting.at + way));
  return at === sitting.at ? sitting : { ...sitting, at, row: 'view' };
}

export const toRow = (sitting: Sitting, row: Row): Sitting => {
  const item = sitting.items[sitting.at];
  return item && row !== 'view' && isUnseen(marksAt(sitting, item)) ? sitting : { ...sitting, row };
};

export const wrote = (sitting: Sitting, code: string): Sitting => ({
  ...sitting,
  unwritten: new Set([...sitting.unwritten].filter((each) => each !== code)),
});

export interface Progress {
  readonly whole: number;
  readonly of: number;
}

/** Steps that are graded in every row, of the whole evening or of one clip. */
export function progress(sitting: Sitting, code: string | null = null): Progress {
  const items = sitting.items.filter((item) => code === null || item.code === code);
  return { whole: items.filter((item) => isWhole(marksAt(sitting, item))).length, of: items.length };
}

/** Codes in the order in which they are graded. */
export const codesOf = ({ items }: Sitting): readonly string[] => [...new Set(items.map(({ code }) => code))];
