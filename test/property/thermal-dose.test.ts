import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { timeInBands } from '../../src/derive/thermal-dose.ts';

/** A log as it may come: steps of any length, readings that jump or are missing. */
const anyLog = fc
  .array(
    fc.record({
      step_s: fc.double({ min: 0.01, max: 100, noNaN: true }),
      sump_K: fc.oneof(fc.double({ min: 230, max: 450, noNaN: true }), fc.constantFrom(NaN, 338.15, 328.15)),
    }),
    { minLength: 1, maxLength: 200 },
  )
  .map((rows) => {
    let now_s = 0;
    return {
      time_s: Float64Array.from(rows, ({ step_s }) => (now_s += step_s)),
      sump_K: Float64Array.from(rows, ({ sump_K }) => sump_K),
    };
  });
const runs = { numRuns: 300, seed: 20260302 };

describe('the thermal dose of whatever log', () => {
  it('has bands that come to the time counted, and with what was missed to the length of the log', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        const { bands, counted_s, missed_s } = timeInBands(log);
        const length_s = log.time_s.at(-1)! - log.time_s[0]!;
        expect(bands.reduce((sum, { time_s }) => sum + time_s, 0)).toBeCloseTo(counted_s, 6);
        expect(counted_s + missed_s).toBeCloseTo(length_s, 6);
        expect(missed_s).toBeGreaterThan(-1e-9 * (1 + length_s));
        for (const { time_s } of bands) expect(time_s).toBeGreaterThan(0);
      }),
      runs,
    );
  });

  it('is the same when the log is read backwards', () => {
    fc.assert(
      fc.property(anyLog, ({ time_s, sump_K }) => {
        const back = { time_s: time_s.map((t) => -t).reverse(), sump_K: sump_K.slice().reverse() };
        const [one, other] = [timeInBands({ time_s, sump_K }), timeInBands(back)];
        expect(other.counted_s).toBeCloseTo(one.counted_s, 6);
        expect(other.bands.map((b) => b.from_K)).toEqual(one.bands.map((b) => b.from_K));
        for (const [i, { time_s: own }] of other.bands.entries()) expect(own).toBeCloseTo(one.bands[i]!.time_s, 6);
      }),
      runs,
    );
  });
});
