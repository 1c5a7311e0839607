import { describe, expect, it } from 'vitest';
import { broughtToStep, type HeldWindow } from '../../../src/derive/held-speed.ts';
import { estimate } from '../../../src/quantity/estimate.ts';

const within = 0.01;
const steps = [6, 12, 20, 30, 40];
/** Windows whose torque goes with speed to the power e, each held off its step as told. */
const windows = (e: number, off: (step: number) => number): HeldWindow[] =>
  steps.map((step_rad_s) => {
    const held_ratio = 1 + off(step_rad_s);
    return {
      ...{ name: `${step_rad_s} rad/s`, step_rad_s, level_K: 333.15, held_ratio },
      torque: estimate(0.3 * (step_rad_s * held_ratio) ** e, [{ cause: 'calibration:flange', u: 0.01 }]),
    };
  });

describe('torque of a window held a little off its step', () => {
  it('is brought to it by the exponent of the run at that temperature: a pure power comes back exactly', () => {
    const brought = broughtToStep(
      'S-01',
      windows(0.7, (step) => (step === 20 ? 0.008 : step === 40 ? -0.005 : 0)),
      within,
    );
    for (const [i, step] of steps.entries()) expect(brought[i]!.torque.value).toBeCloseTo(0.3 * step ** 0.7, 12);
    expect(brought[2]!.way!.exponent).toBeCloseTo(0.7, 9);
    expect(brought[2]!.way!.by_Nm).toBeLessThan(0);
    expect(brought[4]!.way!.by_Nm).toBeGreaterThan(0);
  });

  it('carries what the fit leaves of that exponent as a cause that windows of one temperature share', () => {
    const bent = windows(0.7, (step) => (step === 20 ? 0.008 : step === 40 ? -0.008 : 0)).map((w, i) => ({
      ...w,
      torque: estimate(w.torque.value * (i % 2 === 0 ? 1.02 : 0.98), w.torque.parts),
    }));
    const brought = broughtToStep('S-01', bent, within);
    const part = (i: number): number =>
      brought[i]!.torque.parts.find(({ cause }) => cause.includes('exponent of torque in speed at 60 °C'))!.u;
    expect(new Set(brought.flatMap(({ causes }) => causes.map(({ id }) => id))).size).toBe(1);
    // Faster than its step and slower than it: an exponent too high takes too much off the one and adds too much to the other.
    expect(part(2)).toBeLessThan(0);
    expect(part(4)).toBeGreaterThan(0);
    expect(brought[0]!.torque.parts.map(({ cause }) => cause)).toEqual(['calibration:flange']);
    expect(Math.abs(part(2))).toBeLessThan(0.008 * brought[2]!.torque.value);
  });

  it('is left where it is beyond the tolerance of speed, says so, and has the whole way as doubt', () => {
    const asHeld = windows(0.7, (step) => (step === 20 ? 0.014 : 0));
    const far = broughtToStep('S-01', asHeld, within)[2]!;
    expect(far.torque.value).toBe(asHeld[2]!.torque.value);
    expect(far.way).toBeNull();
    expect(far.note).toContain('not brought to it');
    // Limits of the whole way, a torque in proportion to speed at most: 1.4 % over root three (JCGM 100, 4.3.7).
    expect(far.torque.parts.find(({ cause }) => cause.includes('speed off'))!.u).toBeCloseTo(
      (0.014 * far.torque.value) / Math.sqrt(3),
      12,
    );
  });

  it('is left where it is with fewer than four speeds, and no note: nothing was too far off', () => {
    const few = windows(0.7, () => 0.004).slice(0, 3);
    for (const [i, { torque, way, note }] of broughtToStep('S-01', few, within).entries()) {
      expect(torque.value).toBe(few[i]!.torque.value);
      expect([way, note]).toEqual([null, null]);
    }
  });

  it('no window gives nothing', () => {
    expect(broughtToStep('S-01', [], within)).toEqual([]);
  });
});
