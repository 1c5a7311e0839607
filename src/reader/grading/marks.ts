import { type Graded, type GradeKind, gradeKinds, type View } from '../../trial/flow.ts';

/** Rows to be filled for each step. View comes first: it says whether the others can be. */
export const rows = ['view', ...gradeKinds] as const;
export type Row = (typeof rows)[number];

/** What stands in the rows of one step so far; null where nothing was said. */
export interface Marks {
  readonly view: View | null;
  readonly grades: Readonly<Record<GradeKind, Graded | null>>;
  readonly words: string;
}

export const noMarks: Marks = {
  view: null,
  grades: { reach: null, side: null, wall: null, bubble: null, tube: null },
  words: '',
};

/** With View 0 or 1 nothing is graded. */
export const isUnseen = ({ view }: Marks): boolean => view !== null && view < 2;

/** A row as it counts; what was given before the view went down is kept and comes back with it. */
export const standing = (marks: Marks, row: Row): Graded | null =>
  row === 'view' ? marks.view : isUnseen(marks) ? 'ng' : marks.grades[row];

export const isWhole = (marks: Marks): boolean => rows.every((row) => standing(marks, row) !== null);

export const isEmpty = ({ view, grades, words }: Marks): boolean =>
  view === null && words === '' && gradeKinds.every((kind) => grades[kind] === null);

/** Null for a value that the row does not have. */
export function marked(marks: Marks, row: Row, value: Graded): Marks | null {
  if (row === 'view') return value === 'ng' || value === 4 ? null : { ...marks, view: value };
  return isUnseen(marks) ? null : { ...marks, grades: { ...marks.grades, [row]: value } };
}

export const valuesOf = (row: Row): readonly Graded[] => (row === 'view' ? [0, 1, 2, 3] : [0, 1, 2, 3, 4, 'ng']);

/** The row above or below; with View 0 or 1 there is only View. */
export function rowBeside(marks: Marks, row: Row, way: -1 | 1): Row {
  const open = isUnseen(marks) ? (['view'] as const) : rows;
  const at = (open as readonly Row[]).indexOf(row);
  return open[Math.min(open.length - 1, Math.max(0, at + way))] ?? 'view';
}

export const isGraded = (value: unknown): value is Graded =>
  value === 'ng' || (typeof value === 'number' && [0, 1, 2, 3, 4].includes(value));
