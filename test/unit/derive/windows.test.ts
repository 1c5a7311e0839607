import { describe, expect, it } from 'vitest';
import { lastPart, plateaus } from '../../../src/derive/windows.ts';

const rad = (rpm: number): number => (rpm * Math.PI) / 30;
const steps = [60, 120, 290].map(rad);
const time_s = Float64Array.from({ length: 400 }, (_, i) => 2 * i);
const found = (speed: (t: number) => number, least_s = 45) =>
  plateaus({ time_s, speed_rad_s: time_s.map(speed), steps_rad_s: steps, least_s }).map((p) => [
    Math.round((p.step_rad_s * 30) / Math.PI),
    time_s[p.rows[0]],
    time_s[p.rows[1] - 1],
  ]);

describe('stretches at a planned step', () => {
  it('are found with their rows, one after the other', () => {
    const speed = (t: number): number => rad(t < 130 ? 60 : t < 140 ? 90 : t < 270 ? 120 : 290);
    expect(found(speed)).toEqual([
      [60, 0, 128],
      [120, 140, 268],
      [290, 270, 798],
    ]);
  });
  it('may wander by 1.5 % and not by 2 %', () => {
    expect(found((t) => rad(290 * (1 + 0.014 * Math.sin(t))))).toEqual([[290, 0, 798]]);
    expect(found(() => rad(290 * 1.02))).toEqual([]);
  });
  it('shorter than the least time are none', () => {
    expect(found((t) => rad(t < 40 ? 60 : 200))).toEqual([]);
    expect(found((t) => rad(t < 48 ? 60 : 200))).toEqual([[60, 0, 46]]);
  });
  it('go on over a speed that is missing', () => {
    expect(found((t) => (t > 100 && t < 120 ? NaN : rad(120)))).toEqual([[120, 0, 798]]);
  });
  it('are the same whichever way the shaft turns', () => {
    expect(found((t) => rad(t < 130 ? -60 : -120))).toEqual([
      [60, 0, 128],
      [120, 130, 798],
    ]);
  });
  it('go on over an encoder that strays for a reading, and end where the speed has left', () => {
    expect(found((t) => rad(t % 60 === 0 ? 124 : t < 400 ? 120 : 100))).toEqual([[120, 2, 398]]);
  });
  it('give their last minute, less two readings in which the speed may already move', () => {
    const rows = lastPart({ step_rad_s: steps[0]!, rows: [0, 100] }, time_s, 60);
    expect([time_s[rows[0]], time_s[rows[1] - 1]]).toEqual([134, 194]);
    expect(lastPart({ step_rad_s: steps[0]!, rows: [0, 10] }, time_s, 60)).toEqual([0, 8]);
  });
});
