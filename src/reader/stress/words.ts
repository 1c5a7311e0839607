import { atKey, cellKey } from '../../compare/group.ts';
import { opened } from '../../compare/stress-open.ts';
import { subjectsOf, toldUnder, type Subject } from '../../compare/stress.ts';
import type { StressView } from '../../report/page.ts';
import type { Choice, Step, StressWord } from '../../trial/stress.ts';

/** One line of the table: what it is about, its word as published, and its word under the choices taken. */
export interface Line {
  readonly text: string;
  readonly word: StressWord;
  /** Null where the runs that it needs are not there. */
  readonly under: StressWord | null;
}

/** The words under any choices together, by the same comparison as the page was made with. Asked again, it answers from before. */
export function wordsUnder(view: StressView): (taken: readonly Choice[]) => readonly Line[] {
  const as = opened(view.input);
  const base = toldUnder(as, []);
  const subjects = subjectsOf(as, base);
  const lines = [
    ...view.claims.map((claim) => ({ text: claim, of: subjects.find((s) => s.kind === 'claim' && s.claim === claim) })),
    ...view.steps.map(({ text, step }) => ({
      text,
      of: subjects.find((s) => s.kind === 'step' && same(s.step, step)),
    })),
  ].flatMap(({ text, of }): { text: string; of: Subject; word: StressWord }[] => {
    const word = of === undefined ? null : base.wordOf(of);
    return of === undefined || word === null ? [] : [{ text, of, word }];
  });
  const known = new Map<string, readonly Line[]>();
  return (taken) => {
    const key = JSON.stringify(taken);
    const before = known.get(key);
    if (before !== undefined) return before;
    const told = taken.length === 0 ? base : toldUnder(as, taken);
    const now = lines.map(({ text, of, word }): Line => ({ text, word, under: told.wordOf(of) }));
    known.set(key, now);
    return now;
  };
}

const same = (a: Step, b: Step): boolean =>
  a.quantity === b.quantity && atKey(a.at) === atKey(b.at) && cellKey(a.cell) === cellKey(b.cell);
