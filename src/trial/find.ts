import type { TrialKind } from './plan.ts';
import type { QuantityName } from './figures.ts';

/**
 * What the page that finds knows of one series, or of the pages outside any: plain data, as it stands in a script file
 * beside the page. A number in a row is a place in a list of the same part, so that a thousand runs stay small.
 */
export interface FindPart {
  readonly texts: readonly FindText[];
  readonly series: FindSeries | null;
}

/** A stretch of a page: its address below the site's root, its title, its words. */
export type FindText = readonly [path: string, title: string, words: string];

export interface FindSeries {
  readonly id: string;
  readonly title: string;
  /** Which shaft a speed is of. */
  readonly shaft: 'wheel' | 'output';
  readonly heldRuns: number;
  /** Two that differ by no more are the same. */
  readonly tolerance: { readonly fill_L: number; readonly speed_ratio: number };
  readonly articles: readonly FindArticle[];
  readonly oils: readonly (readonly [id: string, name: string, grade: string])[];
  readonly cells: readonly FindCell[];
  readonly runs: readonly FindRun[];
  readonly subjects: readonly FindSubject[];
  readonly quantities: readonly (readonly [name: QuantityName, words: string, trial: TrialKind])[];
  readonly conditions: readonly FindCondition[];
  readonly verdicts: readonly string[];
  readonly figures: FindFigures;
  readonly claims: readonly FindClaim[];
}

/** `standsInFor`: places of the articles that a window copy was made after. */
export type FindArticle = readonly [id: string, name: string, kind: string, standsInFor: readonly number[]];

/** `fill_L` is null where nobody told. */
export type FindCell = readonly [article: number, oil: number, fill_L: number | null, words: string];

/** `out`: why no figure is made of it, or null. */
export type FindRun = readonly [
  id: string,
  trial: TrialKind,
  cell: number,
  basis: string,
  day: string,
  out: string | null,
];

/** A run (`run` at least 0), a cell, or a cell less another (`against` at least 0). `id` and `suffix` are of figure ids. */
export type FindSubject = readonly [id: string, suffix: string, run: number, cell: number, against: number];

/** `id` is of figure ids; speed and temperature are null where the figure has none. */
export type FindCondition = readonly [id: string, words: string, speed_rpm: number | null, sump: FindSump];
/** Degrees Celsius, or at its own running temperature. */
export type FindSump = number | 'own' | null;

/** In columns; one place in each is one figure. */
export interface FindFigures {
  readonly subject: readonly number[];
  readonly quantity: readonly number[];
  readonly condition: readonly number[];
  readonly text: readonly string[];
  /** Place among the verdicts; −1 without one. */
  readonly verdict: readonly number[];
}

export type FindClaim = readonly [
  id: string,
  sentence: string,
  word: string,
  clauses: readonly (readonly [cell: number, against: number, quantity: number, condition: number])[],
];
