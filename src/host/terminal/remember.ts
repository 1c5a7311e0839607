import type { Remember } from '../../one-series.ts';

/** Answers that are kept from one build to the next; what a build did not ask for is forgotten after it. */
export interface Remembering {
  readonly of: Remember;
  readonly forget: () => void;
  /** What was asked for since it was last told to forget. */
  readonly asked: () => ReadonlyMap<string, unknown>;
}

export function remembering(known: ReadonlyMap<string, unknown> = new Map()): Remembering {
  let before = known;
  let asked = new Map<string, unknown>();
  return {
    of: <T>(told: () => string, make: () => T): T => {
      const key = told();
      const value = (asked.has(key) ? asked.get(key) : before.has(key) ? before.get(key) : make()) as T;
      asked.set(key, value);
      return value;
    },
    forget: () => {
      before = asked;
      asked = new Map();
    },
    asked: () => asked,
  };
}
