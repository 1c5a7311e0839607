import type { Figure } from './figure.ts';
import type { ByTrials } from '../trial/compared.ts';
import type { Given, Step } from '../trial/derived.ts';

/** One row of the budget of a figure: what a cause contributes, in the figure's unit. */
export interface BudgetRow {
  readonly cause: string;
  readonly name: string;
  readonly u: number;
  /** Share of the variance, 0–1. */
  readonly share: number;
  readonly dof: number;
  readonly scope: string;
}

/** What trials gave (JCGM 101), and what the linear interval was. */
export interface TrialRow extends ByTrials {
  readonly linear: readonly [number, number];
  readonly seed: string;
}

/** How one figure was come by: reads like a solved exercise. */
export interface Working {
  readonly figure: string;
  readonly given: readonly Given[];
  readonly steps: readonly Step[];
  readonly budget: readonly BudgetRow[];
  /** The same figure by trials, beside the linear interval; null where none were run. In the figure's unit. */
  readonly trials: TrialRow | null;
  /** Standard uncertainty, in the figure's unit. */
  readonly u: number | null;
}

/** The only home of numbers of one series. */
export interface Ledger {
  readonly series: string;
  readonly methodVersion: string;
  readonly figures: readonly Figure[];
  readonly byId: ReadonlyMap<string, Figure>;
  readonly workings: ReadonlyMap<string, Working>;
}
