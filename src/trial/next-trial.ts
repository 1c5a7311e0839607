import type { Cell } from './derived.ts';

/** One more run of a cell, and what it would do to a standing. SI of the quantity. */
export interface NextRun {
  readonly cell: Cell;
  /** `planned`: wanted and not yet run so often. `further`: beyond what the plan wants. */
  readonly kind: 'planned' | 'further';
  readonly baseline: boolean;
  /** Mean simultaneous half width of the differences that stand now, after it. */
  readonly after: number;
  /** Half width of a difference that is not in the standing yet; null where the cell is in it. */
  readonly adds: number | null;
}

export interface NextTrial {
  /** Id of the standing. */
  readonly standing: string;
  readonly plan: 'none' | 'open' | 'done';
  /** `repeats`: the scatter is measured and grows no smaller by itself. `causes`: it is put together from what is known. */
  readonly from: 'repeats' | 'causes';
  /** Mean simultaneous half width of the differences that stand now. */
  readonly now: number;
  /** What narrows most comes first; a cell that is not in the standing yet comes after those that are. */
  readonly runs: readonly NextRun[];
  /** Of a standing from causes: the name of the cause that takes the largest part of the variance, and its part. */
  readonly largest: { readonly cause: string; readonly share: number } | null;
}
