import type { Place } from '../finding/finding.ts';
import type { At, Cell } from './derived.ts';
import type { QuantityName } from './figures.ts';

/** In the order of the rule: the first that holds is the word. */
export const claimWords = ['cannot tell', 'shown', 'shown against', 'not shown', 'leaning'] as const;
export type ClaimWord = (typeof claimWords)[number];

/** Quantities that a claim may be about. */
export const claimQuantities = [
  'spin-power',
  'heat-made',
  'final-rise',
  'final-temperature',
  'limit-crossing',
  'shed',
  'store',
  'bearing-rise',
  'makes-less-share',
] as const satisfies readonly QuantityName[];
export type ClaimQuantity = (typeof claimQuantities)[number];

/** One thing a claim says of two cells; a claim of several holds only where all of them do. */
export interface Clause {
  readonly quantity: ClaimQuantity;
  readonly at: At;
  readonly subject: Cell;
  readonly against: Cell;
  /** `lower`, `higher`: by at least the threshold. `within`: by no more than it, either way. `at-least`: of a share. */
  readonly direction: 'lower' | 'higher' | 'within' | 'at-least';
  /** SI, at least 0. */
  readonly threshold: number;
  /** As it was typed, or null where any difference was meant. */
  readonly thresholdTyped: string | null;
  readonly place: Place;
}

/** A sentence that its runs can refute, with its rule and its date. */
export interface Claim {
  readonly id: string;
  readonly sentence: string;
  /** Who put it, as a role: "supplier", "reader"; null when the house did. */
  readonly by: string | null;
  /** A day: 2026-03-01. */
  readonly made: string;
  readonly clauses: readonly Clause[];
  /** A word that somebody wants instead. It stands beside the computed word and never hides it. */
  readonly override: {
    readonly word: ClaimWord;
    readonly by: string;
    readonly on: string;
    readonly why: string;
  } | null;
  readonly place: Place;
}
