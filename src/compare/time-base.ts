import type { DriftOver } from '../trial/book.ts';
import type { DerivedRun } from '../trial/derived.ts';

/** Where a run stands on the base that drift is taken over. */
export interface TimeBase {
  readonly over: DriftOver;
  /** Hours, or the place in the order of runs; the middle of the run. */
  readonly of: (run: DerivedRun) => number;
}

/**
 * Running time counts the hours of every run that turned the rig, those that were set aside too; clock time counts from the
 * start of the first. Null when the series takes no drift out.
 */
export function timeBase(over: DriftOver, runs: Iterable<DerivedRun>): TimeBase | null {
  if (over === 'none') return null;
  if (over === 'order') return { over, of: (run) => run.order };
  const all = [...runs].sort((a, b) => a.order - b.order);
  const first_s = Math.min(...all.map(({ clock_s }) => clock_s[0]));
  if (over === 'clock-time') return { over, of: ({ clock_s: [from, to] }) => ((from + to) / 2 - first_s) / 3600 };
  const middles = new Map<string, number>();
  let before_s = 0;
  for (const { run, clock_s } of all) {
    const took_s = Math.max(0, clock_s[1] - clock_s[0]);
    middles.set(run, (before_s + took_s / 2) / 3600);
    before_s += took_s;
  }
  return { over, of: ({ run, order }) => middles.get(run) ?? order };
}
