import { rankIntervals } from '../../src/statistics/rank-intervals.ts';
import { describe, expect, it } from 'vitest';
import { compactLetters } from '../../src/statistics/letters.ts';
import { oneWayAnova } from '../../src/statistics/scatter.ts';
import { studentizedRangeQuantile, tukeyKramer } from '../../src/statistics/tukey.ts';
import '../matchers.ts';

describe('studentized range (published tables; longer digits by SciPy 1.17, stats.studentized_range.ppf)', () => {
  it.each([
    { p: 0.95, k: 3, dof: 10, printed: '3.88', longer: '3.876776750' },
    { p: 0.95, k: 5, dof: 10, printed: '4.65', longer: '4.654292998' },
    { p: 0.95, k: 4, dof: 16, printed: '4.05', longer: '4.046093061' },
    { p: 0.99, k: 3, dof: 10, printed: '5.27', longer: '5.270161537' },
    { p: 0.95, k: 2, dof: 3, printed: '4.50', longer: '4.500658726' },
    { p: 0.95, k: 3, dof: 6, printed: '4.34', longer: '4.339195477' },
    { p: 0.95, k: 3, dof: Infinity, printed: '3.31', longer: '3.314493155' },
  ])('p $p, $k means, $dof degrees: $printed', ({ p, k, dof, printed, longer }) => {
    expect(studentizedRangeQuantile(p, k, dof)).toAgreeWithPrinted(printed);
    expect(studentizedRangeQuantile(p, k, dof)).toShareDigits(longer, 8);
  });

  it('below two degrees of freedom it is never less than the true quantile (SciPy 1.17: 26.976 and 12.079)', () => {
    expect(studentizedRangeQuantile(0.95, 3, 1)).toBeGreaterThan(26.975);
    expect(studentizedRangeQuantile(0.95, 3, 1.5)).toBeGreaterThan(12.078);
  });
});

describe('all pairs of four groups of five (e-Handbook 7.4.7.1)', () => {
  const groups: Record<string, number[]> = {
    1: [6.9, 5.4, 5.8, 4.6, 4.0],
    2: [8.3, 6.8, 7.8, 9.2, 6.5],
    3: [8.0, 10.5, 8.1, 6.9, 9.3],
    4: [5.8, 3.8, 6.1, 5.6, 6.2],
  };
  const names = Object.keys(groups);
  const anova = oneWayAnova(names.map((name) => groups[name]!))!;
  const halfWidth =
    tukeyKramer({ groups: 4, dof: anova.dofWithin, coverage: 0.95 }) * anova.s * Math.sqrt(1 / 5 + 1 / 5);
  const difference = (a: string, b: string) => anova.means[names.indexOf(a)]! - anova.means[names.indexOf(b)]!;
  const separated = (a: string, b: string) => Math.abs(difference(a, b)) > halfWidth;

  it('places, counted from the lowest: 1 and 4 take 1–2, 2 and 3 take 3–4 (method from memory, pairs as printed)', () => {
    const values = new Map(names.map((name, i) => [name, anova.means[i]!]));
    expect([...rankIntervals({ values, separated }).values()]).toEqual([
      [1, 2],
      [3, 4],
      [3, 4],
      [1, 2],
    ]);
  });

  it.each([
    { pair: ['3', '1'], low: '1.13', high: '5.31', seen: 'printed' },
    { pair: ['2', '1'], low: '0.29', high: '4.47', seen: 'printed' },
    { pair: ['2', '4'], low: '0.1326', high: '4.3074', seen: 'independent script' },
    { pair: ['3', '4'], low: '0.9726', high: '5.1474', seen: 'independent script' },
    { pair: ['1', '4'], low: '-2.2474', high: '1.9274', seen: 'independent script' },
    { pair: ['2', '3'], low: '-2.9274', high: '1.2474', seen: 'independent script' },
  ] as const)('$pair: from $low to $high ($seen)', ({ pair: [a, b], low, high }) => {
    expect(difference(a, b) - halfWidth).toAgreeWithPrinted(low);
    expect(difference(a, b) + halfWidth).toAgreeWithPrinted(high);
  });

  it('has a scatter within the groups of 1.331 (printed), squared', () => {
    expect(anova.s ** 2).toAgreeWithPrinted('1.331');
  });

  it('separates all pairs but 1-4 and 2-3, and the letters say the same', () => {
    const pairs = names.flatMap((a, i) => names.slice(i + 1).map((b) => [a, b] as const));
    expect(pairs.filter(([a, b]) => !separated(a, b))).toEqual([
      ['1', '4'],
      ['2', '3'],
    ]);
    expect(Object.fromEntries(compactLetters({ order: names, separated }))).toEqual({ 1: 'a', 2: 'b', 3: 'b', 4: 'a' });
  });
});
