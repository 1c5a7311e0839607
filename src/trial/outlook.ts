import type { NextTrial } from './next-trial.ts';
import type { PlanReach } from './plan-reach.ts';
import type { RunCard } from './run-card.ts';

/** What lies ahead of a series: what its plan can part, which run would narrow most, and a card for each planned run. */
export interface Outlook {
  /** Null without a plan. */
  readonly reach: PlanReach | null;
  /** One a standing that holds a difference. */
  readonly next: readonly NextTrial[];
  /** Every planned run in the order of the plan; empty without a plan. */
  readonly cards: readonly RunCard[];
  /** The order is drawn from it. */
  readonly seed: number | null;
}
