import { describe, expect, it } from 'vitest';
import '../matchers.ts';
import {
  combine,
  difference,
  effectiveDof,
  estimate,
  standardUncertainty,
  type Cause,
  type CauseTable,
  type Estimate,
} from '../../src/quantity/estimate.ts';

const causes = (dof: Readonly<Record<string, number>>): CauseTable =>
  new Map(
    Object.entries(dof).map(([id, nu]): [string, Cause] => [
      id,
      { id, name: id, kind: 'offset', distribution: 'normal', dof: nu, scope: 'series' },
    ]),
  );
const sum = (list: readonly Estimate[]): Estimate =>
  combine(
    list.reduce((total, e) => total + e.value, 0),
    list.map((of) => ({ of, sensitivity: 1 })),
  );

describe('estimates with causes against the guide (JCGM 100:2008)', () => {
  it('5.2.2: ten resistors compared with one standard of 0.1 Ω are 10 kΩ with 1 Ω in series, not 0.32 Ω', () => {
    const resistors = Array.from({ length: 10 }, () => estimate(1000, [{ cause: 'standard', u: 0.1 }]));
    expect(sum(resistors).value).toBe(10000);
    expect(standardUncertainty(sum(resistors))).toBeCloseTo(1.0, 12);
  });

  it('5.2.2, the wrong way of it: ten standards of their own would give 0.32 Ω', () => {
    const resistors = Array.from({ length: 10 }, (_, i) => estimate(1000, [{ cause: `standard ${i}`, u: 0.1 }]));
    expect(standardUncertainty(sum(resistors))).toAgreeWithPrinted('0.32');
  });

  it('5.2.2, in a difference: what two resistors owe to one standard cancels', () => {
    const one = estimate(1000, [{ cause: 'standard', u: 0.1 }]);
    expect(difference(one, one)).toEqual({ value: 0, parts: [] });
  });

  it('G.4.1: 0.25 % (9), 0.57 % (4) and 0.82 % (14) make 1.03 % with 19.0 degrees of freedom', () => {
    const product = estimate(100, [
      { cause: 'x1', u: 0.25 },
      { cause: 'x2', u: 0.57 },
      { cause: 'x3', u: 0.82 },
    ]);
    expect(standardUncertainty(product)).toAgreeWithPrinted('1.03');
    expect(effectiveDof(product, causes({ x1: 9, x2: 4, x3: 14 }))).toAgreeWithPrinted('19.0');
  });

  it('H.1: the end gauge is 50 000 838 nm with 32 nm and 16.7 degrees of freedom (inputs from memory)', () => {
    const standard = estimate(50000623, [{ cause: 'standard', u: 25 }]);
    const measured = estimate(215, [
      { cause: 'mean of five', u: 5.8 },
      { cause: 'comparator, random', u: 3.9 },
      { cause: 'comparator, systematic', u: 6.7 },
    ]);
    const expansion = estimate(0, [{ cause: 'expansion', u: 1e-6 / Math.sqrt(3) }]);
    const warmth = estimate(0, [{ cause: 'temperature', u: 0.05 / Math.sqrt(3) }]);
    const length = combine(standard.value + measured.value, [
      { of: standard, sensitivity: 1 },
      { of: measured, sensitivity: 1 },
      { of: expansion, sensitivity: -50000623 * -0.1 },
      { of: warmth, sensitivity: -50000623 * 11.5e-6 },
    ]);
    expect(length.value).toBe(50000838);
    expect(standardUncertainty(measured)).toAgreeWithPrinted('9.7');
    expect(standardUncertainty(length)).toAgreeWithPrinted('32');

    // The guide merges the three of the comparator first: 25.6 degrees of freedom printed from rounded parts (25.4 unrounded).
    const comparator = causes({ 'mean of five': 24, 'comparator, random': 5, 'comparator, systematic': 8 });
    const merged = effectiveDof(measured, comparator);
    expect(Math.abs(merged - 25.6)).toBeLessThan(0.2);
    const table = new Map([...comparator, ...causes({ standard: 18, expansion: 50, temperature: 2 })]);
    // Merged first or not, Welch–Satterthwaite gives the same. The guide rounds its parts on the way: 16.75 unrounded.
    expect(Math.abs(effectiveDof(length, table) - 16.7)).toBeLessThan(0.1);
  });

  it('G.4.2: a cause with firm limits has infinite degrees of freedom, and alone gives infinity', () => {
    expect(effectiveDof(estimate(1, [{ cause: 'limits', u: 1 }]), causes({ limits: Infinity }))).toBe(Infinity);
  });
});
