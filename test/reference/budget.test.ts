import { describe, expect, it } from 'vitest';
import { combine, difference, effectiveDof, estimate, standardUncertainty } from '../../src/quantity/estimate.ts';
import type { Cause, CauseTable } from '../../src/quantity/estimate.ts';
import { coverageFactor } from '../../src/statistics/student.ts';
import '../matchers.ts';

const causes = (dofs: Readonly<Record<string, number>>): CauseTable =>
  new Map(
    Object.entries(dofs).map(([id, dof]): [string, Cause] => [
      id,
      { id, name: id, kind: 'offset', distribution: 't', dof, scope: 'run' },
    ]),
  );
const part = (cause: string, u: number) => estimate(0, [{ cause, u }]);
const sum = (parts: readonly ReturnType<typeof estimate>[]) =>
  combine(
    parts.reduce((total, p) => total + p.value, 0),
    parts.map((of) => ({ of, sensitivity: 1 })),
  );

describe('effective degrees of freedom (JCGM 100:2008 G.4.1)', () => {
  const table = causes({ a: 9, b: 4, c: 14 });
  const product = sum([part('a', 0.25), part('b', 0.57), part('c', 0.82)]);

  it('0.25, 0.57 and 0.82 % give 1.03 % with 19.0 degrees, t 2.09 and U 2.2 %', () => {
    expect(standardUncertainty(product)).toAgreeWithPrinted('1.03');
    expect(effectiveDof(product, table)).toAgreeWithPrinted('19.0');
    const k = coverageFactor(0.95, effectiveDof(product, table));
    expect(k).toAgreeWithPrinted('2.09');
    expect(k * standardUncertainty(product)).toAgreeWithPrinted('2.2');
  });
});

describe('end gauge (JCGM 100:2008 H.1)', () => {
  // nm; theta −0.1 °C, expansion 11.5e-6 /°C, rectangular halves 1e-6 /°C and 0.05 °C on 50000623 nm.
  const table = causes({
    standard: 18,
    repeat: 24,
    'comparator-random': 5,
    'comparator-bias': 8,
    expansion: 50,
    temperature: 2,
  });
  const comparison = sum([part('repeat', 5.8), part('comparator-random', 3.9), part('comparator-bias', 6.7)]);
  const length_nm = 50000623;
  const gauge = sum([
    part('standard', 25),
    comparison,
    part('expansion', (length_nm * 0.1 * 1e-6) / Math.sqrt(3)),
    part('temperature', (length_nm * 11.5e-6 * 0.05) / Math.sqrt(3)),
  ]);

  it('the comparison alone has 9.7 nm with 25.4 degrees (25.6 printed, from rounded parts)', () => {
    expect(standardUncertainty(comparison)).toAgreeWithPrinted('9.7');
    expect(effectiveDof(comparison, table)).toBeCloseTo(25.6, 0);
  });

  it('the gauge has 32 nm with 16.7 degrees, which are counted as 16: k 2.92 and U99 93 nm', () => {
    expect(standardUncertainty(gauge)).toAgreeWithPrinted('32');
    const dof = Math.floor(effectiveDof(gauge, table));
    expect(dof).toBe(16);
    expect(coverageFactor(0.99, dof)).toAgreeWithPrinted('2.92');
    expect(coverageFactor(0.99, dof) * 32).toAgreeWithPrinted('93');
  });
});

describe('a standard that all share (JCGM 100:2008 5.2.2)', () => {
  const resistors = Array.from({ length: 10 }, () => estimate(1000, [{ cause: 'standard', u: 0.1 }]));

  it('ten resistors in series have 1 Ω together, not 0.32 Ω', () => {
    expect(sum(resistors).value).toBe(10000);
    expect(standardUncertainty(sum(resistors))).toBeCloseTo(1, 12);
  });

  it('and two of them differ by nothing at all', () => {
    expect(difference(resistors[0]!, resistors[1]!)).toEqual({ value: 0, parts: [] });
  });
});

it('means of 3 and 4 runs with unlike scatter differ by −1.3 ± 0.36 with 3.2 degrees (Welch–Satterthwaite by hand; k by SciPy 1.17)', () => {
  const table = causes({ first: 2, second: 3 });
  const d = difference(
    estimate(93.9, [{ cause: 'second', u: 0.35 / Math.sqrt(4) }]),
    estimate(95.2, [{ cause: 'first', u: 0.55 / Math.sqrt(3) }]),
  );
  expect(d.value).toBeCloseTo(-1.3, 12);
  expect(standardUncertainty(d)).toAgreeWithPrinted('0.362572');
  expect(effectiveDof(d, table)).toAgreeWithPrinted('3.202427');
  expect(coverageFactor(0.95, effectiveDof(d, table))).toAgreeWithPrinted('3.071615');
});
