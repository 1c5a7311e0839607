import { describe, expect, it } from 'vitest';
import { hampel, spread } from '../../src/statistics/hampel.ts';
import { rungeKutta4 } from '../../src/statistics/ode.ts';
import { effectiveReadings, meanOfReadings } from '../../src/statistics/series.ts';
import '../matchers.ts';
import { heatFlowMeter } from './tables/handbook-readings.ts';
import { lew, mavro, michelso, numAcc4 } from './tables/strd-univariate.ts';

describe('mean, deviation and lag-1 autocorrelation with certified answers (NIST StRD)', () => {
  it.each([
    { name: 'Lew', set: lew, digits: 9 },
    { name: 'Michelso', set: michelso, digits: 9 },
    { name: 'Mavro', set: mavro, digits: 9 },
    // The readings 10000000.1 and .3 are off by 1e-9 in double precision; sums of raw squares would give no digit.
    { name: 'NumAcc4', set: numAcc4, digits: 7 },
  ])('$name to $digits digits', ({ set, digits }) => {
    const found = meanOfReadings(set.values)!;
    expect(found.mean).toShareDigits(set.mean, 12);
    expect(found.s).toShareDigits(set.s, digits);
    expect(found.lag1).toShareDigits(set.lag1, digits);
  });

  it('e-Handbook 1.4.2.8, heat flow meter: 9.261460, 0.022789 and 0.281 (from memory; longer digits by an independent script)', () => {
    const found = meanOfReadings(heatFlowMeter)!;
    expect(found.n).toBe(195);
    // 9.2614608: printed cut, not rounded.
    expect(found.mean).toAgreeWithPrinted('9.261460759');
    expect(found.s).toAgreeWithPrinted('0.022789');
    expect(found.s).toShareDigits('0.02278879742484173', 9);
    expect(found.lag1).toAgreeWithPrinted('0.281');
    expect(found.lag1).toShareDigits('0.2805783505266263', 9);
  });

  it('Mavro: fifty readings at ten a second are worth 1.6, and its mean has 3.4e-4, not 6.1e-5 (n(1 − r)/(1 + r) by hand)', () => {
    const found = meanOfReadings(mavro.values)!;
    expect(found.effectiveN).toAgreeWithPrinted('1.599875');
    expect(found.u).toAgreeWithPrinted('3.39265E-04');
    expect(found.s / Math.sqrt(found.n)).toAgreeWithPrinted('6.0687E-05');
  });

  it('NumAcc4 alternates, yet is worth no more readings than it has', () => {
    expect(effectiveReadings(1001, -0.999)).toBe(1001);
  });
});

it('JCGM 100:2008 4.4.3: twenty temperatures give 100.145 °C, s 1.489 °C, u 0.333 °C', () => {
  const readings = [
    96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2,
    101.57, 101.84, 102.36, 102.72,
  ];
  const found = meanOfReadings(readings)!;
  expect(found.mean).toAgreeWithPrinted('100.145');
  expect(found.s).toAgreeWithPrinted('1.489');
  // Table 1 stands in order of size, so its order is not that of the readings: they count as twenty there.
  expect(found.s / Math.sqrt(found.n)).toAgreeWithPrinted('0.333');
});

describe('spikes', () => {
  const sump = [90.1, 90.2, 90.1, 90.3, 135, 90.2, 90.4];

  it('135.0 among sump readings near 90.2 lies 302 scaled deviations out (by hand: 44.8 / (1.4826 · 0.1))', () => {
    const { middle, scale } = spread(sump);
    expect(middle).toBe(90.2);
    expect((135 - middle) / scale).toAgreeWithPrinted('302.2');
    expect(hampel({ values: sump, resolution: 0.1 })).toEqual([4]);
  });
});

describe("Runge–Kutta of fourth order: y' = y − t² + 1, y(0) = 0.5, step 0.2", () => {
  // Burden and Faires, Numerical Analysis, section 5.4, table of the method (from memory).
  it.each([
    { t: 0.2, printed: '0.8292933' },
    { t: 0.4, printed: '1.2140762' },
    { t: 1, printed: '2.6408227' },
    { t: 2, printed: '5.3053630' },
  ])('y($t) is $printed', ({ t, printed }) => {
    const y = rungeKutta4({ f: (at, [y0]) => [y0! - at * at + 1], y0: [0.5], t0: 0, t1: t, step: 0.2 });
    expect(y[0]).toAgreeWithPrinted(printed);
  });
});
