import { expect, it } from 'vitest';
import type { Finding } from '../../../src/finding/finding.ts';
import { flowOutcome, spoilFlow } from './flow-book.ts';

/** One thing spoilt in the flow run; what is told, and what is left of the run. */
export interface FlowRow {
  readonly title: string;
  readonly was: string;
  readonly is: string;
  /** `code file:line` of the one finding. */
  readonly finds: string;
  /** Its line of the file: a bar stands where the caret begins, and the text ends with what is underlined. */
  readonly marks: string;
  /** Stands in what is said of it. */
  readonly says: string;
  readonly level?: 'error' | 'warning' | 'notice';
  /** Observations, stills, clips and rows after the stop that are left of 4, 2, 2 and 2. */
  readonly left?: readonly [number, number, number, number];
}

/** What the caret underlines, with as much of the line before it as `marks` has. */
function marked({ place: { lineText = '', column, length = 0 } }: Finding, marks: string): string {
  const at = column - 1;
  return `${lineText.slice(Math.max(0, at - marks.indexOf('|')), at)}|${lineText.slice(at, at + length)}`;
}

export const lineOf = (f: Finding): string => `${f.code} ${f.place.file.replace(/^.*\//, '')}:${f.place.line}`;

/** Each gives its one finding at its place, with what becomes of it when it is an error; the run and the rest of it stand. */
export const eachKeepsTheRest = (path: string, rows: readonly FlowRow[]): void => {
  it.each(rows)('for $title', ({ was, is, finds, marks, says, level = 'error', left = [4, 2, 2, 2] }) => {
    const { findings, run } = flowOutcome(spoilFlow(path, was, is));
    expect(findings.map(lineOf)).toEqual([finds]);
    const told = findings[0]!;
    expect(marked(told, marks)).toBe(marks);
    expect([told.says, told.why, told.write].join(' ')).toContain(says);
    expect([told.level, told.effect !== undefined, told.about?.run]).toEqual([level, level === 'error', 'F-01']);
    const { observations, stills, clips, settle } = run;
    expect([observations.length, stills.length, clips.length, settle.length]).toEqual(left);
  });
};
