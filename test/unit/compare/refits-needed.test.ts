import { describe, expect, it } from 'vitest';
import { refitsNeeded } from '../../../src/compare/refits-needed.ts';
import { estimate, type Cause } from '../../../src/quantity/estimate.ts';
import type { CellFigure } from '../../../src/trial/compared.ts';

const cause = (id: string, scope: Cause['scope']): [string, Cause] => [
  id,
  { id, name: id, kind: 'scatter', distribution: 'normal', dof: Infinity, scope },
];
const causes = new Map([cause('refit:H-01', 'refit'), cause('refit:H-02', 'refit'), cause('calibration', 'series')]);
const side = (run: string, own: number, shared: number): CellFigure =>
  ({
    runs: [run],
    estimate: estimate(80, [
      { cause: `refit:${run}`, u: own },
      { cause: 'calibration', u: shared },
    ]),
  }) as unknown as CellFigure;
const of = (gap: number, sides: readonly CellFigure[] | null = [side('H-01', 1, 0.5), side('H-02', 1, 0.5)]) =>
  refitsNeeded({ gap, scatter: undefined, sides, causes, coverage: 0.95 });

describe('refits that a claim would need, where scatter comes from causes', () => {
  // (1.960 + 0.842)²·(1 + 1)/gap² and (1.960 + 1.282)²·2/gap², by hand with the normal quantiles of any table
  it('are those of two means with known scatter', () => {
    expect(of(2).map(({ refits }) => refits)).toEqual([
      Math.ceil((2.8016 ** 2 * 2) / 4),
      Math.ceil((3.2415 ** 2 * 2) / 4),
    ]);
    expect(of(1).map(({ refits }) => refits)).toEqual([16, 22]);
  });

  it('do not count what both sides share in one size, and count what they do not', () => {
    expect(of(1, [side('H-01', 1, 5), side('H-02', 1, 5)])).toEqual(of(1));
    expect(of(1, [side('H-01', 1, 1), side('H-02', 1, 0)])[0]!.refits).toBeNull();
  });

  it('are not told where nothing has to be told apart, nor of what is no difference of two cells', () => {
    expect(of(0)).toEqual([]);
    expect(of(1, null)).toEqual([]);
  });
});
