import type { Estimate } from '../quantity/estimate.ts';
import type { Drive } from './book.ts';
import type { Cell } from './derived.ts';

/** What follows from differences, beside the differences themselves. */

/** What a difference in spin power comes to over the duty of the series. */
export interface Cost {
  readonly cell: Cell;
  readonly against: Cell;
  readonly sump_K: number;
  readonly drive: Drive;
  /** J/m; null with its reason. */
  readonly energy: Estimate | null;
  /** m³/m; null for an electric drive. */
  readonly fuel: Estimate | null;
  /** Against how far ordinary trips differ; null where the duty does not say what is used. */
  readonly word: 'too small to notice' | 'not told apart from trips' | 'more than trips differ' | null;
  readonly untold: string | null;
  /** Where the relation is outside of its range. */
  readonly outside: readonly string[];
  readonly runs: readonly string[];
}

/** Film of an article over that of the baseline, each at its own running temperature: a model estimate, as a band. */
export interface FilmRatio {
  readonly cell: Cell;
  readonly against: Cell;
  readonly low: number;
  readonly high: number;
  /** Share by which a kelvin more of its own temperature changes it. */
  readonly perKelvin: number;
  /** Where a relation behind it is outside of its range. */
  readonly outside: readonly string[];
  readonly runs: readonly string[];
}

/** From and to. */
interface Band {
  readonly low: number;
  readonly high: number;
}

/** What bare surfaces would shed by published laws: model estimates, as bands, W/K. */
export interface SurfaceShed {
  readonly cell: Cell;
  /** Of the whole axle. */
  readonly whole: Band | null;
  /** Of the article alone, and that over the shed that was measured. */
  readonly own: Band | null;
  readonly share: Band | null;
  /** What the notes lack; null when nothing. */
  readonly untold: string | null;
  readonly outside: readonly string[];
  readonly runs: readonly string[];
}
