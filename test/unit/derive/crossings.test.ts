import { describe, expect, it } from 'vitest';
import { firstSustained } from '../../../src/derive/crossings.ts';

const limit_K = 353.15;
const every2 = Float64Array.from({ length: 1801 }, (_, i) => 2 * i);
/** 1 K a minute from 60 °C: 80 °C is reached at 1200 s. */
const ramp = (t: number): number => 333.15 + t / 60;
const found = (course: (t: number) => number, sustained_s = 20) =>
  firstSustained({ time_s: every2, sump_K: every2.map(course), limit_K, sustained_s });

describe('the first sustained crossing of a limit', () => {
  it('of a straight warm-up is where the line meets it, and says how steep it is there', () => {
    const hit = found(ramp)!;
    expect(hit.t_s).toBeCloseTo(1200, 6);
    expect(hit.slope_K_s).toBeCloseTo(1 / 60, 9);
  });
  it('lies between readings where the limit does', () => {
    expect(found((t) => ramp(t) + 0.0125)!.t_s).toBeCloseTo(1200 - 0.75, 6);
  });
  it('is not a spike of less than the sustained time', () => {
    expect(found((t) => (t >= 600 && t < 616 ? 360 : ramp(t)))!.t_s).toBeCloseTo(1200, 6);
  });
  it('of a step, which no parabola follows, lies half-way from the reading before, open by half a reading', () => {
    const hit = found((t) => (t < 600 ? 340 : t < 660 ? 360 : ramp(t)))!;
    expect(hit.t_s).toBe(599);
    expect(hit.u_s).toBeCloseTo(2 / Math.sqrt(12), 9);
    expect(hit.slope_K_s).toBeCloseTo(10, 9);
  });
  it('begins anew after a reading that fell back', () => {
    const hit = found((t) => (t < 1210 ? Math.min(ramp(t), 353.4) : t < 1214 ? 353.0 : ramp(t)))!;
    expect(hit.t_s).toBeGreaterThan(1195);
    expect(hit.rows[0] * 2).toBeLessThanOrEqual(1214);
  });
  it('goes through readings that are missing', () => {
    expect(found((t) => (t % 10 === 4 ? NaN : ramp(t)))!.t_s).toBeCloseTo(1200, 6);
  });
  it('is none when the limit is never reached, or reached for less than the sustained time at the end', () => {
    expect(found(() => 353.1)).toBeNull();
    expect(found((t) => (t > 3586 ? 354 : 350))).toBeNull();
    expect(found(() => NaN)).toBeNull();
  });
});
