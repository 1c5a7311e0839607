import { describe, expect, it } from 'vitest';
import { coverageTogether, dunnett, sharedByRuns } from '../../src/statistics/dunnett.ts';
import { holm } from '../../src/statistics/holm.ts';
import { coverageFactor } from '../../src/statistics/student.ts';
import { oneWayAnova } from '../../src/statistics/scatter.ts';
import '../matchers.ts';

describe('all candidates against one baseline (Dunnett 1964, two-sided 5 % table)', () => {
  it.each([
    { candidates: 1, dof: 10, printed: '2.23' },
    { candidates: 2, dof: 10, printed: '2.57' },
    { candidates: 3, dof: 10, printed: '2.76' },
    { candidates: 3, dof: 20, printed: '2.54' },
    { candidates: 4, dof: 20, printed: '2.65' },
    { candidates: 5, dof: 20, printed: '2.73' },
  ])('$candidates candidates, $dof degrees: $printed', ({ candidates, dof, printed }) => {
    const d = dunnett({
      shared: sharedByRuns({ baselineRuns: 4, runs: Array.from({ length: candidates }, () => 4) }),
      dof,
      coverage: 0.95,
    });
    expect(d).toAgreeWithPrinted(printed);
  });

  it('lies between one comparison and Bonferroni, also with few and unequal runs and a scatter known for sure', () => {
    for (const dof of [1, 2, 5.5, Infinity]) {
      const d = dunnett({ shared: sharedByRuns({ baselineRuns: 3, runs: [1, 2, 2, 5] }), dof, coverage: 0.95 });
      expect(d).toBeGreaterThan(coverageFactor(0.95, dof));
      expect(d).toBeLessThan(coverageFactor(1 - 0.05 / 4, dof));
    }
  });
});

it('blood counts with 6, 4 and 5 animals: adjusted tails 0.620 and 0.0058 (data of Dunnett 1955; SciPy 1.17, stats.dunnett)', () => {
  const groups = [
    [7.4, 8.5, 7.2, 8.24, 9.84, 8.32],
    [9.76, 8.8, 7.68, 9.36],
    [12.8, 9.68, 12.16, 9.2, 10.55],
  ];
  const anova = oneWayAnova(groups)!;
  const tail = (i: number) => {
    const u = anova.s * Math.sqrt(1 / groups[i]!.length + 1 / 6);
    const d = Math.abs(anova.means[i]! - anova.means[0]!) / u;
    return 1 - coverageTogether({ shared: sharedByRuns({ baselineRuns: 6, runs: [4, 5] }), dof: anova.dofWithin, d });
  };
  expect(tail(1)).toAgreeWithPrinted('0.620');
  expect(tail(2)).toAgreeWithPrinted('0.0058');
});

describe('several planned comparisons (Holm 1979, worked by hand)', () => {
  it('0.01, 0.04, 0.03 and 0.005 become 0.03, 0.06, 0.06 and 0.02 in their own order', () => {
    expect(holm([0.01, 0.04, 0.03, 0.005]).map((p) => Number(p.toFixed(12)))).toEqual([0.03, 0.06, 0.06, 0.02]);
  });

  it('leaves a single one as it is, none as none, and goes no higher than 1', () => {
    expect(holm([0.03])).toEqual([0.03]);
    expect(holm([])).toEqual([]);
    expect(holm([0.7, 0.8])).toEqual([1, 1]);
  });
});
