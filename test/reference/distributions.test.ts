import { describe, expect, it } from 'vitest';
import { fTail } from '../../src/statistics/f-tail.ts';
import { chanceToSeparate, detectableDifference, runsNeeded, smallestDifference } from '../../src/statistics/power.ts';
import { scatterPoints } from '../../src/statistics/scatter-points.ts';
import { coverageFactor, normalTail, tQuantile, tTail } from '../../src/statistics/student.ts';
import '../matchers.ts';

describe("Student's t", () => {
  it.each([
    { coverage: 0.95, dof: 5, printed: '2.57' },
    { coverage: 0.95, dof: 10, printed: '2.23' },
    { coverage: 0.9545, dof: 10, printed: '2.28' },
    { coverage: 0.99, dof: 16, printed: '2.92' },
    { coverage: 0.99, dof: 3, printed: '5.84' },
    { coverage: 0.95, dof: 2, printed: '4.30' },
    { coverage: 0.95, dof: Infinity, printed: '1.960' },
  ])('JCGM 100 table G.2: coverage $coverage, $dof degrees, t $printed', ({ coverage, dof, printed }) => {
    expect(coverageFactor(coverage, dof)).toAgreeWithPrinted(printed);
  });

  it('takes degrees of freedom that are not whole (SciPy 1.17, stats.t.ppf)', () => {
    expect(tQuantile(0.975, 3.202427391398766)).toAgreeWithPrinted('3.071615417');
  });

  it('gives back the probability whose quantile it was given, on both sides of zero', () => {
    for (const dof of [1, 2.5, 16, 400]) {
      expect(tTail(tQuantile(0.975, dof), dof)).toBeCloseTo(0.05, 12);
      expect(tTail(tQuantile(0.025, dof), dof)).toBeCloseTo(0.05, 12);
    }
  });

  it('keeps the digits of small tails, and is normal at infinite degrees (SciPy 1.17, stats.norm.sf and stats.t.sf)', () => {
    expect(normalTail(3)).toShareDigits('0.0013498980316300933', 10);
    expect(tTail(8, Infinity) / 2).toShareDigits('6.22096057427174e-16', 10);
    expect(tTail(40, 12) / 2).toShareDigits('1.925614790386016e-14', 10);
  });
});

describe('upper tail of F', () => {
  it('e-Handbook 1.3.6.7.3 (from memory): the 5 % points 4.965 (1, 10) and 3.239 (3, 16) leave 5 % above them', () => {
    expect(fTail(4.965, { above: 1, below: 10 })).toAgreeWithPrinted('0.0500');
    expect(fTail(3.239, { above: 3, below: 16 })).toAgreeWithPrinted('0.0500');
  });

  it('keeps its digits where one less the lower tail is 0 (SciPy 1.17, stats.f.sf)', () => {
    expect(fTail(21, { above: 8, below: 180 })).toShareDigits('2.5832643372689864e-22', 8);
  });

  it('is 1 for no ratio and 0 for an endless one', () => {
    expect(fTail(0, { above: 2, below: 5 })).toBe(1);
    expect(fTail(Infinity, { above: 2, below: 5 })).toBe(0);
  });
});

describe('a standard deviation from few runs is itself uncertain (JCGM 100:2008 table E.1; digits √(1/c₄² − 1) by an independent script)', () => {
  it.each([
    { n: 2, percent: '76', printed: '0.75551064' },
    { n: 3, percent: '52', printed: '0.52272320' },
    { n: 4, percent: '42', printed: '0.42201569' },
    { n: 5, percent: '36', printed: '0.36299929' },
    { n: 10, percent: '24', printed: '0.23876481' },
    { n: 20, percent: '16', printed: '0.16325647' },
    { n: 30, percent: '13', printed: '0.13186128' },
    { n: 50, percent: '10', printed: '0.10126996' },
  ])('of $n runs: by $percent %', ({ n, percent, printed }) => {
    const points = scatterPoints(n - 1);
    const averaged = (f: (x: number) => number) =>
      points.reduce((sum, { x, weight }) => sum + weight * f(x), 0) / points.reduce((sum, p) => sum + p.weight, 0);
    const relative = Math.sqrt(averaged((x) => x * x) / averaged((x) => x) ** 2 - 1);
    expect(100 * relative).toAgreeWithPrinted(percent);
    expect(relative).toAgreeWithPrinted(printed);
  });
});

describe('size of the next trial', () => {
  it('documentation of power.t.test in R: 20 each, one deviation apart, are separated with chance 0.8689528', () => {
    expect(chanceToSeparate({ s: 1, dof: 38, n1: 20, n2: 20, difference: 1 })).toAgreeWithPrinted('0.8689528');
  });

  it('documentation of power.t.test in R: chance 0.90 asks for 22.02 runs each, so 23', () => {
    expect(runsNeeded({ s: 1, difference: 1, chance: 0.9 })).toBe(23);
  });

  it.each([
    // First column t·√(2/n) of JCGM 100 table G.2; the others by SciPy 1.17, stats.nct.
    { n: 2, observed: '4.303', at80: '5.653489', at90: '6.795612' },
    { n: 3, observed: '2.267', at80: '3.070893', at90: '3.589206' },
    { n: 4, observed: '1.730', at80: '2.380756', at90: '2.766641' },
    { n: 5, observed: '1.458', at80: '2.024441', at90: '2.347951' },
    { n: 6, observed: '1.286', at80: '1.795543', at90: '2.080626' },
    { n: 8, observed: '1.072', at80: '1.506636', at90: '1.744532' },
    { n: 10, observed: '0.940', at80: '1.324949', at90: '1.533692' },
  ])('$n runs each: $observed deviations when observed, $at80 with 80 % chance', ({ n, observed, at80, at90 }) => {
    const pair = { s: 1, dof: 2 * (n - 1), n1: n, n2: n };
    expect(smallestDifference(pair)).toAgreeWithPrinted(observed);
    expect(detectableDifference({ ...pair, chance: 0.8 })).toAgreeWithPrinted(at80);
    expect(detectableDifference({ ...pair, chance: 0.9 })).toAgreeWithPrinted(at90);
  });

  it('two runs each over five articles need t 2.57 where two articles need 4.30 (JCGM 100 table G.2)', () => {
    expect(smallestDifference({ s: 1, dof: 5, n1: 2, n2: 2 })).toAgreeWithPrinted('2.57');
    expect(smallestDifference({ s: 1, dof: 2, n1: 2, n2: 2 })).toAgreeWithPrinted('4.30');
  });
});
