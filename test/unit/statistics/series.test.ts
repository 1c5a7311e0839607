import { describe, expect, it } from 'vitest';
import { isSteady, meanOfReadings, slope } from '../../../src/statistics/series.ts';

describe('mean of readings', () => {
  it('leaves out missing readings, and a gap breaks the chain of neighbours', () => {
    const whole = meanOfReadings([1, 4, 2, 3])!;
    const gapped = meanOfReadings([1, 4, NaN, 2, 3])!;
    expect([gapped.mean, gapped.n, gapped.s]).toEqual([whole.mean, 4, whole.s]);
    // Deviations −1.5, 1.5, −0.5, 0.5, squares 5: with the gap 4–2 is no pair.
    expect(whole.lag1).toBeCloseTo((-2.25 - 0.75 - 0.25) / 5, 12);
    expect(gapped.lag1).toBeCloseTo((-2.25 - 0.25) / 5, 12);
  });

  it('is nothing without a reading, and has no end to its uncertainty with one', () => {
    expect(meanOfReadings([])).toBeNull();
    expect(meanOfReadings([NaN, NaN])).toBeNull();
    expect(meanOfReadings([81.4])).toMatchObject({ mean: 81.4, n: 1, u: Infinity });
  });

  it('has no scatter when all readings are one', () => {
    expect(meanOfReadings([81.4, 81.4, 81.4])).toMatchObject({ mean: 81.4, s: 0, u: 0, lag1: 0, effectiveN: 3 });
  });
});

describe('slope of readings', () => {
  // Alternating noise on 0.5 a second: r₁ is below zero and must not make the slope look surer.
  const t = Array.from({ length: 21 }, (_, i) => i);
  const y = t.map((s) => 300 + 0.5 * s + (s % 2 === 0 ? 0.1 : -0.1));

  it('finds the slope and the mean, and is no surer than independent readings would be', () => {
    const found = slope({ t, y })!;
    expect(found.slope).toBeCloseTo(0.5, 3);
    // 5.2381 = 11 readings above and 10 below, so 0.1/21 over the middle of the line.
    expect(found.mean).toBeCloseTo(305 + 0.1 / 21, 9);
    expect(found.effectiveN).toBe(21);
    expect(found.dof).toBe(19);
  });

  it('is less sure of a slow wave than of noise of the same size', () => {
    const wave = slope({ t, y: t.map((s) => 300 + 0.5 * s + 0.1 * Math.SQRT2 * Math.sin(s / 2)) })!;
    expect(wave.effectiveN).toBeLessThan(8);
    expect(wave.u).toBeGreaterThan(slope({ t, y })!.u);
  });

  it('leaves out pairs with a gap, on either side', () => {
    const found = slope({ t: [0, 1, NaN, 3, 4, 5], y: [0, 1, 2, NaN, 4, 5] })!;
    expect(found.n).toBe(4);
    expect(found.slope).toBeCloseTo(1, 12);
  });

  it('is nothing with two readings or with all at one time', () => {
    expect(slope({ t: [0, 1], y: [0, 1] })).toBeNull();
    expect(slope({ t: [2, 2, 2], y: [0, 1, 2] })).toBeNull();
  });

  it('keeps its digits at times counted from long ago', () => {
    const late = slope({ t: t.map((s) => s + 1.7e9), y })!;
    expect(late.slope).toBeCloseTo(slope({ t, y })!.slope, 12);
  });
});

describe('steady', () => {
  it('needs the whole interval of the slope within the limit, not merely a slope near zero', () => {
    // t at 97.5 % is 2.228 for 10 degrees (JCGM 100 table G.2: 2.23).
    expect(isSteady({ slope: 0.01, u: 0.01, dof: 10, limit: 0.033 })).toBe(true);
    expect(isSteady({ slope: 0.01, u: 0.01, dof: 10, limit: 0.032 })).toBe(false);
    expect(isSteady({ slope: 0, u: 1, dof: 10, limit: 0.5 })).toBe(false);
    expect(isSteady({ slope: -0.01, u: 0.01, dof: 10, limit: 0.032 })).toBe(false);
  });
});
