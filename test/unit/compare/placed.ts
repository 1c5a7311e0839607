import { factorialsOf, type FactorialInput } from '../../../src/compare/factorial.ts';
import { estimate, type Cause, type CauseTable } from '../../../src/quantity/estimate.ts';
import type { CellFigure, Effect } from '../../../src/trial/compared.ts';
import type { DerivedRun, Result } from '../../../src/trial/derived.ts';
import { calibrationCause, cell, derived, series } from './runs.ts';

/** Spin power at 290 rpm and 60 °C of one cell, and the level that its oil stood at. */
export interface PlacedCell {
  readonly article: string;
  readonly litres: number;
  readonly level_mm: number | null;
  readonly watts: number;
  readonly rigState?: string;
  readonly oil?: string;
  readonly indicative?: readonly string[];
}

/** Two watts of refit scatter a cell, six of one torque cell in all of them. */
export const scatter_W = 2;
export const calibration_W = 6;

export const at = { outputSpeed_rad_s: (290 * Math.PI) / 30, sump_K: 333.15 };
const idOf = (c: PlacedCell): string => `${c.article}-${String(c.litres * 100)}${c.oil ?? ''}`;

export const figureOf = (c: PlacedCell): CellFigure => ({
  cell: cell({ article: c.article, oil: c.oil ?? 'O1', fill_m3: c.litres / 1e3 }),
  quantity: 'spin-power',
  at,
  estimate: estimate(c.watts, [
    { cause: 'calibration:torque-low', u: calibration_W },
    { cause: `scatter:${idOf(c)}`, u: scatter_W },
  ]),
  bound: null,
  runs: [idOf(c)],
  notes: [],
  unranked: null,
  indicative: c.indicative ?? [],
});

const levelResult = (level_mm: number): Result => ({
  quantity: 'static-level',
  at: {},
  // One rule reads all levels a millimetre high or low alike.
  estimate: estimate(level_mm / 1e3, [{ cause: 'calibration:level', u: 1e-3 }]),
  bound: null,
  class: 'derived from measurement',
  relation: 'level-table',
  method: 'level',
  notes: [],
  given: [],
  steps: [],
});

const runOf = (c: PlacedCell): DerivedRun =>
  derived({
    run: idOf(c),
    rigState: c.rigState ?? 'Q1-a',
    cell: figureOf(c).cell,
    results: c.level_mm === null ? [] : [levelResult(c.level_mm)],
  });

const causesOf = (cells: readonly PlacedCell[]): CauseTable =>
  new Map(
    [
      calibrationCause,
      { ...calibrationCause, id: 'calibration:level' },
      ...cells.map((c): Cause => ({ ...calibrationCause, id: `scatter:${idOf(c)}`, kind: 'scatter', scope: 'refit' })),
    ].map((cause) => [cause.id, cause]),
  );

export const inputOf = (cells: readonly PlacedCell[], effects: readonly Effect[] = []): FactorialInput => ({
  cells: cells.map(figureOf),
  effects,
  runs: new Map(cells.map((c) => [idOf(c), runOf(c)])),
  series,
  causes: causesOf(cells),
  trials: null,
});

export const factored = (cells: readonly PlacedCell[], effects: readonly Effect[] = []) =>
  factorialsOf(inputOf(cells, effects));

/** A roomier bowl P1 beside P0: at the same litres its oil stands 25 mm lower, at the same level it takes 1.19 L more. */
export const base = { article: 'P0', litres: 2.4, level_mm: -53, watts: 240 } as const;
export const baseMore = { article: 'P0', litres: 3.2, level_mm: -36, watts: 262 } as const;
export const deep = { article: 'P1', litres: 2.4, level_mm: -78, watts: 206 } as const;
export const deepMore = { article: 'P1', litres: 3.2, level_mm: -62, watts: 226 } as const;
export const deepLevel = { article: 'P1', litres: 3.59, level_mm: -53, watts: 236 } as const;
