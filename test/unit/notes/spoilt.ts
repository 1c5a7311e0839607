import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/finding/finding.ts';
import { type BookNotes, readNotes } from '../../../src/notes/book.ts';
import { asFiles, type Files, goodBook } from './good-book.ts';

/** The good book with one text of one file replaced; the text has to be there. */
export function spoil(path: string, was: string, is: string): Files {
  const text = goodBook[path];
  if (text?.includes(was) !== true) throw new Error(`${path} does not hold ${was}`);
  return { ...goodBook, [path]: text.replace(was, () => is) };
}

export interface Outcome {
  readonly notes: BookNotes;
  /** Errors and warnings. */
  readonly loud: readonly Finding[];
  /** Ids of the runs that stand. */
  readonly runs: readonly string[];
}

export function outcome(files: Files): Outcome {
  const notes = readNotes(asFiles(files));
  const all = [...notes.findings, ...notes.series.flatMap((s) => s.findings)];
  return {
    notes,
    loud: all.filter((f) => f.level !== 'notice'),
    runs: notes.series.flatMap((s) => s.runs.map((run) => run.id)),
  };
}

/** `code file:line:column` of each, the file without its folder. */
export const placed = (findings: readonly Finding[]): string[] =>
  findings.map((f) => `${f.code} ${f.place.file.replace(/^.*\//, '')}:${f.place.line}:${f.place.column}`);

export const S07 = 'hill-bowl/runs/S-07.md';

/** One thing spoilt in the good book; in the note of run S-07 unless `path` says where. */
export interface Row {
  readonly title: string;
  readonly path?: string;
  readonly was: string;
  readonly is: string;
  /** `code file:line:column` of the one finding. */
  readonly finds: string;
  /** Stands in what the finding says to write. */
  readonly write: string;
  /** Runs that stand after it; S-08 unless said. */
  readonly runs?: readonly string[];
}

export const eachGivesOneFinding = (of: string, rows: readonly Row[]): void => {
  describe(`a good book with one thing spoilt gives one finding: ${of}`, () => {
    it.each(rows)('for $title', ({ path = S07, was, is, finds, write, runs = ['S-08'] }) => {
      const { loud, runs: stand } = outcome(spoil(path, was, is));
      expect(placed(loud)).toEqual([finds]);
      expect(loud[0]?.write).toContain(write);
      expect(stand).toEqual(runs);
    });
  });
};
