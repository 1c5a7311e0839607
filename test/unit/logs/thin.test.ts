import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanBuckets, thin } from '../../../src/logs/thin.ts';

const value = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: -1000, max: 1000 }) },
  { weight: 1, arbitrary: fc.constant(NaN) },
);
const trace = fc
  .array(value, { maxLength: 300 })
  .map((values) => ({ time_s: values.map((_, at) => at / 2), value: values }));

// What must hold of any thinning follows from its purpose; no expected value is taken from it.
describe('a trace thinned for drawing', () => {
  it('has at most as many points as asked, keeps its extremes, its ends and its order, and invents none', () => {
    const check = (full: { time_s: number[]; value: number[] }, n: number): void => {
      const drawn = thin(full, n);
      const read = full.value.filter((v) => !Number.isNaN(v));
      expect(drawn.value.length).toBe(drawn.time_s.length);
      expect(drawn.value.length).toBeLessThanOrEqual(Math.max(n, 0));
      expect(drawn.time_s).toEqual([...drawn.time_s].sort((a, b) => a - b));
      expect(drawn.time_s.every((t, at) => full.value[t * 2] === drawn.value[at])).toBe(true);
      if (read.length === 0 || n < 4) return;
      expect([Math.min(...drawn.value), Math.max(...drawn.value)]).toEqual([Math.min(...read), Math.max(...read)]);
      expect([drawn.value[0], drawn.value.at(-1)]).toEqual([read[0], read.at(-1)]);
    };
    fc.assert(fc.property(trace, fc.integer({ min: 0, max: 60 }), check), { seed: 20260302, numRuns: 500 });
  });

  it('of no readings is no points', () => {
    expect(thin({ time_s: [0, 1], value: [NaN, NaN] }, 10)).toEqual({ time_s: [], value: [] });
  });
});

describe('means of equal spans of time', () => {
  it('are the means of the readings in each, with their number', () => {
    const means = meanBuckets({ time_s: [0, 1, 2, 8, 9, 10], value: [1, 2, 3, NaN, 6, 8] }, 2);
    expect(means).toEqual({ time_s: [1, 9.5], value: [2, 7], count: [3, 2] });
  });

  it('weigh together to the mean of the whole', () => {
    const check = (full: { time_s: number[]; value: number[] }, n: number): void => {
      const read = full.value.filter((v) => !Number.isNaN(v));
      const { value: means, count } = meanBuckets(full, n);
      expect(count.reduce((a, b) => a + b, 0)).toBe(read.length);
      expect(means.reduce((sum, mean, at) => sum + mean * count[at]!, 0)).toBeCloseTo(
        read.reduce((a, b) => a + b, 0),
        6,
      );
    };
    fc.assert(fc.property(trace, fc.integer({ min: 1, max: 40 }), check), { seed: 20260302, numRuns: 300 });
  });
});
