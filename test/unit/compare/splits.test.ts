import { describe, expect, it } from 'vitest';
import { splitOf } from '../../../src/compare/splits.ts';
import { estimate, standardUncertainty, type Part } from '../../../src/quantity/estimate.ts';
import type { CellFigure } from '../../../src/trial/compared.ts';
import { cell } from './runs.ts';

const figure = (
  article: string,
  quantity: 'final-rise' | 'heat-made',
  value: number,
  parts: readonly Part[] = [],
): CellFigure => ({
  cell: cell({ article }),
  quantity,
  at: {},
  estimate: estimate(value, parts),
  bound: null,
  runs: [],
  notes: [],
  unranked: null,
  indicative: [],
});
const [p0, p1] = [cell({ article: 'P0' }), cell({ article: 'P1' })];

describe('makes less, sheds more', () => {
  it('leaves no residue: both parts add up to the difference', () => {
    // 1004 W and 84.2 K against 991 W and 74.7 K: M = 9.5/ln(84.2/74.7) = 79.36 K; by heat 79.36·ln(991/1004) = −1.034 K.
    const split = splitOf(p1, p0, [
      figure('P0', 'heat-made', 1004),
      figure('P0', 'final-rise', 84.2),
      figure('P1', 'heat-made', 991),
      figure('P1', 'final-rise', 74.7),
    ])!;
    expect(split.byHeatMade.value).toBeCloseTo(-1.034, 3);
    expect(split.byHeatMade.value + split.byShed.value).toBeCloseTo(-9.5, 10);
    expect(split.share.value).toBeCloseTo(0.109, 3);
  });

  it('carries a cause that both rises share so that it cancels in the parts', () => {
    // One probe that reads 0.3 K high everywhere moves both rises alike; apart it would move the difference by 0.42 K.
    const shared = (u: number): Part[] => [{ cause: 'calibration:tc-sump', u }];
    const cells = [
      figure('P0', 'heat-made', 1000),
      figure('P0', 'final-rise', 80, shared(0.3)),
      figure('P1', 'heat-made', 1000),
      figure('P1', 'final-rise', 80.001, shared(0.3)),
    ];
    const { byHeatMade, byShed } = splitOf(p1, p0, cells)!;
    expect(standardUncertainty(byHeatMade)).toBeLessThan(1e-3);
    expect(standardUncertainty(byShed)).toBeLessThan(1e-3);
  });

  it('answers a watt of heat by M/Q kelvin', () => {
    const cells = [
      figure('P0', 'heat-made', 1000),
      figure('P0', 'final-rise', 80),
      figure('P1', 'heat-made', 1000, [{ cause: 'refit:P1', u: 5 }]),
      figure('P1', 'final-rise', 80),
    ];
    // 80 K/1000 W · 5 W = 0.4 K.
    expect(standardUncertainty(splitOf(p1, p0, cells)!.byHeatMade)).toBeCloseTo(0.4, 4);
  });

  it('is not made without all four numbers', () => {
    expect(splitOf(p1, p0, [figure('P0', 'heat-made', 1000), figure('P0', 'final-rise', 80)])).toBeNull();
  });
});
