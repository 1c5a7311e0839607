import type { Estimate } from '../quantity/estimate.ts';
import type { ByTrials, Effect } from './compared.ts';
import type { At, Cell } from './derived.ts';
import type { QuantityName } from './figures.ts';

/** How two cells are matched: by what was poured in, or by where it stands. */
export type FillBasis = 'same litres' | 'same level';

/** What an interaction and a slope of one quantity are called. */
export const factorialNames = {
  'spin-power': { interaction: 'spin-power-interaction', slope: 'spin-power-by-level' },
  'final-rise': { interaction: 'final-rise-interaction', slope: 'final-rise-by-level' },
  'heat-made': { interaction: 'heat-made-interaction', slope: 'heat-made-by-level' },
} as const satisfies Partial<Record<QuantityName, { interaction: QuantityName; slope: QuantityName }>>;
export type FactorialQuantity = keyof typeof factorialNames;

/** A number made of several cells, with its own 95 % interval. SI. */
export interface Contrast {
  readonly estimate: Estimate;
  readonly interval: readonly [number, number];
  /** Null where no trials were run. */
  readonly trials: ByTrials | null;
  /** Its own interval holds no 0, and nothing makes it indicative only. */
  readonly separated: boolean;
  readonly indicative: readonly string[];
  readonly runs: readonly string[];
}

/** An article's cell and the baseline's that it is matched with. */
export interface Matched {
  readonly own: Cell;
  readonly base: Cell;
  readonly effect: Effect;
  /** Own level at rest less the baseline's; null where one is not known. */
  readonly apart_m: number | null;
}

/** Two articles with two fills: four cells. What more oil does is told for each of the two. */
export interface FillSquare {
  readonly first: Matched;
  readonly second: Matched;
  /** Second fill less first, in the baseline and in the article. */
  readonly fillInBase: Effect;
  readonly fillInOwn: Effect;
  /** Effect of the article at the second fill less that at the first. */
  readonly interaction: Contrast;
}

/** What a quantity does with the level at rest in one article: a straight line through its cells. Per metre. */
export interface LevelSlope {
  /** By rising level. */
  readonly cells: readonly { readonly cell: Cell; readonly level_z_m: number }[];
  readonly slope: Contrast;
}

/** The same litres in two parts that add up to it: what went with the level, and what is left at the same level. */
export interface LevelPart {
  readonly whole: Effect;
  /** The article at those litres less the article at the baseline's level. */
  readonly byLevel: Effect;
  readonly rest: Effect;
}

/** Article and fill held apart: one article beside the baseline article, one quantity, one oil and tilt. */
export interface Factorial {
  readonly article: string;
  readonly baseline: string;
  readonly oil: string;
  readonly tilt_ratio: number;
  readonly quantity: FactorialQuantity;
  readonly at: At;
  /** Of each basis: the pairs that were matched, and the squares that two of them make. */
  readonly bases: Readonly<
    Record<FillBasis, { readonly matched: readonly Matched[]; readonly squares: readonly FillSquare[] }>
  >;
  /** Slopes over the level of the baseline and of the article; null where one was run at one level only. */
  readonly slopes: {
    readonly base: LevelSlope;
    readonly own: LevelSlope;
    /** Own slope less the baseline's: the interaction on the level basis where two levels are not shared. */
    readonly apart: Contrast;
  } | null;
  /** Null where not both bases were run, or where one pair of cells is both. */
  readonly levelPart: LevelPart | null;
  /** Against the reference fill of the baseline. */
  readonly run: 'both' | 'litres only' | 'level only' | 'litres are level' | 'neither';
  /** Why cells that were run are not held against each other. */
  readonly refused: readonly string[];
}
