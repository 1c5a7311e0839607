/** error: what it names is left out, and nothing is published · warning: kept, and said on the page · notice: worth knowing. */
export type Level = 'error' | 'warning' | 'notice';

/** A place in a file, as an editor counts: lines and columns from 1. `length` is the number of characters to underline. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly length?: number;
  /** The line as it stands in the file, for the caret. */
  readonly lineText?: string;
  /** Cell of a logger line, from 1, for a finder that knows rows and not characters; the pipeline turns it into a column. */
  readonly cell?: number;
}

/** What was found in the input: data, not text on a screen. `code` is a lower-case slug such as `unit-missing`. */
export interface Finding {
  readonly code: string;
  readonly level: Level;
  readonly place: Place;
  /** What is there. */
  readonly says: string;
  /** Why it will not do. */
  readonly why: string;
  /** What to write or do. */
  readonly write: string;
  /** What becomes of it now: "This run is left out of the series." */
  readonly effect?: string;
  readonly about?: { readonly series?: string; readonly run?: string; readonly claim?: string };
}

/** A reading that collects: the caller must look at `ok`. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T; readonly findings: readonly Finding[] }
  | { readonly ok: false; readonly findings: readonly Finding[] };

const rank: Readonly<Record<Level, number>> = { error: 0, warning: 1, notice: 2 };

/** In order of what they block, then by file, line and column. */
export function inOrder(findings: readonly Finding[]): Finding[] {
  return [...findings].sort(
    (a, b) =>
      rank[a.level] - rank[b.level] ||
      (a.place.file < b.place.file ? -1 : a.place.file > b.place.file ? 1 : 0) ||
      a.place.line - b.place.line ||
      a.place.column - b.place.column,
  );
}

export const blocks = (findings: readonly Finding[]): boolean => findings.some((f) => f.level === 'error');
