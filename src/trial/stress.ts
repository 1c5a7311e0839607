import type { Cause, Scope } from '../quantity/estimate.ts';
import type { DriftOver, Series } from './book.ts';
import type { ClaimWord, Clause } from './claim.ts';
import type { FillBasis } from './factorial.ts';
import type { At, Cell, DerivedRun } from './derived.ts';
import type { QuantityName } from './figures.ts';
import type { TrialKind } from './plan.ts';

/** A choice that somebody else could defend as well as the one that was made. */
export type Choice =
  | { readonly kind: 'drift'; readonly over: DriftOver }
  /** Tolerance of the series, so many times. */
  | { readonly kind: 'ambient' | 'airflow'; readonly times: number }
  /** Every standard uncertainty, so many times. */
  | { readonly kind: 'causes'; readonly times: number }
  | { readonly kind: 'without' | 'put-back'; readonly run: string }
  | { readonly kind: 'sump'; readonly sump_K: number | 'own' }
  | { readonly kind: 'limit'; readonly limit_K: number }
  | { readonly kind: 'fill'; readonly basis: FillBasis };

/** What an article comes to beside the baseline in a standing. */
export const stepWords = ['separated below', 'separated above', 'not separated', 'indicative', 'not ranked'] as const;
export type StepWord = (typeof stepWords)[number];

/** A row of a standing at its main condition, held against the baseline. */
export interface Step {
  readonly quantity: QuantityName;
  readonly at: At;
  readonly cell: Cell;
}

export type StressWord = ClaimWord | StepWord;

/** One word under every other choice that could be tried, one at a time. */
export interface Stressed {
  /** Under the choices that were made, with linear intervals. */
  readonly word: StressWord;
  /** In how many of how many the word stays the same. */
  readonly holds: number;
  readonly of: number;
  /** In the order of the choices. */
  readonly rows: readonly { readonly choice: Choice; readonly word: StressWord }[];
}

export interface StressTable {
  readonly claims: readonly (Stressed & { readonly claim: string })[];
  readonly steps: readonly (Stressed & { readonly step: Step })[];
}

/**
 * What the words rest on, as plain data: reduced figures of the runs and the rules they are held to. Nothing of notes, names
 * or people; a page carries it, and the same comparison runs on it in a reader's browser.
 */
export interface StressInput {
  readonly series: Pick<Series, 'baseline' | 'driftOver' | 'coverage' | 'familyLevel' | 'campaigns'> & {
    readonly reference: Pick<Series['reference'], 'outputSpeed_rad_s' | 'mainSump_K' | 'mainLimit_K' | 'ambient_K'>;
    readonly tolerance: Series['tolerance'];
    /** Scatter of a refit that the lab knows, at the output shaft, N·m; null where it keeps none. */
    readonly refit_Nm: number | null;
  };
  readonly plan: { readonly factors: readonly string[]; readonly loadSpeed_rad_s: number | null } | null;
  /** Standard uncertainty of one reading of the airflow, m/s or as a share of it; null without a meter. */
  readonly airflow: { readonly of: 'absolute' | 'reading'; readonly u: number } | null;
  /** That of the seat of the bearing probe, K; 0 without one. */
  readonly bearing_K: number;
  readonly claims: readonly {
    readonly id: string;
    readonly clauses: readonly Pick<Clause, 'quantity' | 'at' | 'subject' | 'against' | 'direction' | 'threshold'>[];
  }[];
  readonly causes: readonly StressCause[];
  readonly ats: readonly At[];
  readonly cells: readonly Cell[];
  readonly runs: readonly StressRun[];
  /** The same runs with every stretch that was excluded put back. */
  readonly putBack: readonly StressRun[];
}

/** A cause without its name; degrees of freedom are null where its limits are firm. */
export interface StressCause {
  readonly kind: Cause['kind'];
  readonly distribution: Cause['distribution'];
  readonly dof: number | null;
  readonly scope: Scope;
  /** Causes of one family have one number. */
  readonly family: number | null;
}

export interface StressRun {
  readonly run: string;
  readonly trial: TrialKind;
  /** Place in the list of cells. */
  readonly cell: number;
  readonly rigState: string;
  readonly order: number;
  readonly day: string;
  readonly clock_s: readonly [number, number];
  readonly conditions: DerivedRun['conditions'];
  readonly counts: boolean;
  /** Slope of total heat at the final temperature: value, then its parts as those of a result; null where not measured. */
  readonly slope: readonly [number, readonly number[]] | null;
  /** Watts of heat made that bring it to load and speed of the plan, as the slope; null where nothing does. */
  readonly toLoad: readonly [number, readonly number[]] | null;
  /** Its ambient moved too far to stand for one. */
  readonly moved: boolean;
  /** Places in the list of causes that it carries. */
  readonly causes: readonly number[];
  readonly results: readonly StressResult[];
}

/** Quantity, place in the list of conditions, value and parts (place in the list of causes, then size), or what bounds it. SI. */
export type StressResult =
  | readonly [QuantityName, number, number, readonly number[]]
  | readonly [QuantityName, number, null, 'above' | 'below', number];
