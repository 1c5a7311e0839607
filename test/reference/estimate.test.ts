import { describe, expect, it } from 'vitest';
import '../matchers.ts';
import {
  combine,
  difference,
  effectiveDof,
  estimate,
  mean,
  quotient,
  standardUncertainty,
  type Cause,
  type CauseTable,
  type Estimate,
} from '../../src/quantity/estimate.ts';
import { meanOfReadings } from '../../src/statistics/series.ts';
import { coverageFactor } from '../../src/statistics/student.ts';

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
const own = (cause: string, value: number, u: number) => estimate(value, [{ cause, u }]);

describe('estimates with causes against the guide (JCGM 100:2008)', () => {
  it('5.2.2: ten resistors compared with one standard of 0.1 Ω are 10 kΩ with 1 Ω in series, not 0.32 Ω', () => {
    const resistors = Array.from({ length: 10 }, () => own('standard', 1000, 0.1));
    expect(sum(resistors).value).toBe(10000);
    expect(standardUncertainty(sum(resistors))).toBeCloseTo(1.0, 12);
  });

  it('5.2.2, the wrong way of it: ten standards of their own would give 0.32 Ω', () => {
    const resistors = Array.from({ length: 10 }, (_, i) => own(`standard ${i}`, 1000, 0.1));
    expect(standardUncertainty(sum(resistors))).toAgreeWithPrinted('0.32');
  });

  it('5.2.2, in a difference: what two resistors owe to one standard cancels', () => {
    const one = own('standard', 1000, 0.1);
    expect(difference(one, one)).toEqual({ value: 0, parts: [] });
  });

  it('G.4.1: 0.25 % (9), 0.57 % (4) and 0.82 % (14) make 1.03 % with 19.0 degrees of freedom, t 2.09 and U 2.2 %', () => {
    const product = sum([own('x1', 0, 0.25), own('x2', 0, 0.57), own('x3', 0, 0.82)]);
    const dof = effectiveDof(product, causes({ x1: 9, x2: 4, x3: 14 }));
    expect(standardUncertainty(product)).toAgreeWithPrinted('1.03');
    expect(dof).toAgreeWithPrinted('19.0');
    expect(coverageFactor(0.95, dof)).toAgreeWithPrinted('2.09');
    expect(coverageFactor(0.95, dof) * standardUncertainty(product)).toAgreeWithPrinted('2.2');
  });

  it('G.4.2: a cause with firm limits has infinite degrees of freedom, and alone gives infinity', () => {
    expect(effectiveDof(own('limits', 1, 1), causes({ limits: Infinity }))).toBe(Infinity);
  });
});

describe('end gauge (JCGM 100:2008 H.1, inputs from memory)', () => {
  const standard = own('standard', 50000623, 25);
  const measured = estimate(215, [
    { cause: 'mean of five', u: 5.8 },
    { cause: 'comparator, random', u: 3.9 },
    { cause: 'comparator, systematic', u: 6.7 },
  ]);
  const length = combine(standard.value + measured.value, [
    { of: standard, sensitivity: 1 },
    { of: measured, sensitivity: 1 },
    { of: own('expansion', 0, 1e-6 / Math.sqrt(3)), sensitivity: -50000623 * -0.1 },
    { of: own('temperature', 0, 0.05 / Math.sqrt(3)), sensitivity: -50000623 * 11.5e-6 },
  ]);
  const comparator = causes({ 'mean of five': 24, 'comparator, random': 5, 'comparator, systematic': 8 });
  const dof = effectiveDof(
    length,
    new Map([...comparator, ...causes({ standard: 18, expansion: 50, temperature: 2 })]),
  );

  it('is 50 000 838 nm with 32 nm, in parts of 25, 9.7, 2.9 and 16.6 nm', () => {
    expect(length.value).toBe(50000838);
    expect(standardUncertainty(length)).toAgreeWithPrinted('32');
    const part = (cause: string) => Math.abs(length.parts.find((p) => p.cause === cause)!.u);
    expect(part('standard')).toAgreeWithPrinted('25');
    expect(standardUncertainty(measured)).toAgreeWithPrinted('9.7');
    expect(part('expansion')).toAgreeWithPrinted('2.9');
    expect(part('temperature')).toAgreeWithPrinted('16.6');
  });

  it('has 16.7 degrees of freedom, counted as 16: k 2.92 and U99 93 nm', () => {
    // Printed from rounded parts: 25.6 for 25.45 of the comparator, 16.7 for 16.75.
    expect(Math.abs(effectiveDof(measured, comparator) - 25.6)).toBeLessThan(0.2);
    expect(Math.abs(dof - 16.7)).toBeLessThan(0.1);
    const k = coverageFactor(0.99, Math.floor(dof));
    expect(k).toAgreeWithPrinted('2.92');
    expect(k * 32).toAgreeWithPrinted('93');
  });
});

describe('five simultaneous readings of voltage, current and phase (JCGM 100:2008 H.2, tables H.2 to H.4)', () => {
  const readings = {
    V: [5.007, 4.994, 5.005, 4.99, 4.999],
    I: [0.019663, 0.019639, 0.01964, 0.019685, 0.019678],
    phi: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  };
  /** What moved one set of readings moved all three: a cause a set. Or each its own, as if they had been read apart. */
  const meanOfFive = (name: keyof typeof readings, together: boolean): Estimate => {
    const middle = readings[name].reduce((total, x) => total + x, 0) / 5;
    const parts = readings[name].map((x, set) => ({
      cause: together ? `set ${set}` : `set ${set} of ${name}`,
      u: (x - middle) / Math.sqrt(5 * 4),
    }));
    return estimate(middle, parts);
  };
  const impedance = (together: boolean) => {
    const [V, I, phi] = (['V', 'I', 'phi'] as const).map((name) => meanOfFive(name, together)) as [
      Estimate,
      Estimate,
      Estimate,
    ];
    const Z = quotient(V, I);
    const turned = (share: number, slope: number) =>
      combine(Z.value * share, [
        { of: Z, sensitivity: share },
        { of: phi, sensitivity: Z.value * slope },
      ]);
    const [cos, sin] = [Math.cos(phi.value), Math.sin(phi.value)];
    return { V, I, phi, Z, R: turned(cos, -sin), X: turned(sin, cos) };
  };
  const { V, I, phi, R, X, Z } = impedance(true);
  /** Correlation as the causes give it: u²(a + b) less u²(a) and u²(b). */
  const r = (a: Estimate, b: Estimate) =>
    (standardUncertainty(sum([a, b])) ** 2 - standardUncertainty(a) ** 2 - standardUncertainty(b) ** 2) /
    (2 * standardUncertainty(a) * standardUncertainty(b));

  it.each([
    { what: 'R', of: R, value: '127.732', u: '0.071', longer: '0.07107141' },
    // Printed as 0.295, cut and not rounded.
    { what: 'X', of: X, value: '219.847', u: '0.2956', longer: '0.29558168' },
    { what: 'Z', of: Z, value: '254.260', u: '0.236', longer: '0.23633613' },
  ])('$what is $value Ω with $u Ω (longer digits by an independent script)', ({ of, value, u, longer }) => {
    expect(of.value).toAgreeWithPrinted(value);
    expect(standardUncertainty(of)).toAgreeWithPrinted(u);
    expect(standardUncertainty(of)).toAgreeWithPrinted(longer);
  });

  it('keeps the printed correlations of what went in and of what came out', () => {
    expect(r(V, I)).toAgreeWithPrinted('-0.36');
    expect(r(V, phi)).toAgreeWithPrinted('0.86');
    expect(r(I, phi)).toAgreeWithPrinted('-0.65');
    expect(r(R, X)).toAgreeWithPrinted('-0.588');
    expect(r(R, Z)).toAgreeWithPrinted('-0.485');
    expect(r(X, Z)).toAgreeWithPrinted('0.993');
  });

  it('would give R 0.19 Ω, nearly three times too much, had the three been read apart (independent script)', () => {
    expect(standardUncertainty(impedance(false).R)).toAgreeWithPrinted('0.194544454');
  });
});

it('22 daily maxima: 25.6 °C with 0.872 °C, k 2.08, from 23.8 to 27.4 °C (NIST TN 1900 example E2, data from memory)', () => {
  const maxima_C = [
    18.75, 28.25, 25.75, 28.0, 28.5, 20.75, 21.0, 22.75, 18.5, 27.25, 20.75, 26.5, 28.0, 23.25, 28.0, 21.75, 26.0, 26.5,
    28.0, 33.25, 32.0, 29.5,
  ];
  const found = meanOfReadings(maxima_C)!;
  // The example takes the days as independent; a log would be widened for days that resemble each other.
  const month = mean(maxima_C.map((x, day) => own(`day ${day}`, x, found.s)));
  const k = coverageFactor(0.95, found.n - 1);
  expect(found.s).toShareDigits('4.09234582755348', 9);
  expect(month.value).toAgreeWithPrinted('25.6');
  expect(standardUncertainty(month)).toAgreeWithPrinted('0.872');
  expect(k).toAgreeWithPrinted('2.08');
  expect(month.value - k * standardUncertainty(month)).toAgreeWithPrinted('23.8');
  expect(month.value + k * standardUncertainty(month)).toAgreeWithPrinted('27.4');
});

it('expansion of a copper bar, a small difference over a large reading: 1.727e-5 1/K with 0.18e-5 (NIST TN 1900 example E13)', () => {
  const [cold, warm] = [own('L0', 1.4999, 0.0001), own('L1', 1.5021, 0.0002)];
  const rise_K = difference(own('T1', 373.1, 0.05), own('T0', 288.15, 0.02));
  const expansion = quotient(quotient(difference(warm, cold), cold), rise_K);
  expect(expansion.value).toAgreeWithPrinted('1.727E-05');
  expect(standardUncertainty(expansion)).toAgreeWithPrinted('0.18E-05');
  expect(standardUncertainty(expansion)).toShareDigits('1.7554772808125777E-06', 7);
});

it('means of 3 and 4 runs with unlike scatter differ by −1.3 ± 0.36 with 3.2 degrees (Welch–Satterthwaite by hand; k by SciPy 1.17)', () => {
  const d = difference(own('second', 93.9, 0.35 / Math.sqrt(4)), own('first', 95.2, 0.55 / Math.sqrt(3)));
  const dof = effectiveDof(d, causes({ first: 2, second: 3 }));
  expect(d.value).toBeCloseTo(-1.3, 12);
  expect(standardUncertainty(d)).toAgreeWithPrinted('0.362572');
  expect(dof).toAgreeWithPrinted('3.202427');
  expect(coverageFactor(0.95, dof)).toAgreeWithPrinted('3.071615');
});
