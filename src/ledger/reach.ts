import type { Correction } from '../trial/amendment.ts';
import type { ComparedSeries } from '../trial/compared.ts';
import type { Reach } from '../trial/reach.ts';
import type { Figure } from './figure.ts';
import type { Ledger } from './ledger.ts';

/** Differences that are the rounding of the machine. */
const roundOff = 1e-6;

/** One state of a series: without a correction, or with it. */
export interface State {
  readonly ledger: Ledger;
  readonly compared: Pick<ComparedSeries, 'claims'>;
}

/** What a correction reached: the series as it stood before it, and after. Nobody has to name it. */
export function reachOf(correction: Correction, before: State, after: State): Reach<Figure> {
  const ids = [...new Set([...before.ledger.byId.keys(), ...after.ledger.byId.keys()])].sort();
  const pairs = ids.map((id) => ({
    id,
    before: before.ledger.byId.get(id) ?? null,
    after: after.ledger.byId.get(id) ?? null,
  }));
  const figures = pairs.filter((pair) => isMoved(pair.before, pair.after));
  const moved = new Set(figures.map(({ id }) => id));
  return {
    correction,
    figures,
    intervals: pairs.flatMap(({ id, before: b, after: a }) => (moved.has(id) || sameInterval(b!, a!) ? [] : [id])),
    runs: [...new Set(figures.flatMap(({ before: b, after: a }) => (a ?? b)!.subject.run ?? []))],
    claims: before.compared.claims.flatMap(({ claim, word }) => {
      const now = after.compared.claims.find((c) => c.claim === claim)?.word;
      return now === undefined || now === word ? [] : [{ id: claim, before: word, after: now }];
    }),
  };
}

const isMoved = (a: Figure | null, b: Figure | null): boolean =>
  a === null ||
  b === null ||
  a.bound !== b.bound ||
  a.separated !== b.separated ||
  (a.value === null || b.value === null ? a.value !== b.value : apart(a.value, b.value, a)) ||
  (a.value === null && !sameInterval(a, b));

/** Against the width of the interval where there is one, so that a difference near zero is not taken by its last bits. */
function apart(a: number, b: number, { interval: [low, high] }: Figure): boolean {
  const size = Math.max(Math.abs(a), low === null || high === null ? 0 : high - low, 1e-12);
  return Math.abs(a - b) > roundOff * size;
}

const sameInterval = (a: Figure, b: Figure): boolean =>
  ([0, 1] as const).every((end) => {
    const [x, y] = [a.interval[end], b.interval[end]];
    return x === null || y === null ? x === y : !apart(x, y, a);
  });
