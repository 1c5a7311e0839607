import { describe, expect, it } from 'vitest';
import { deriveSeries } from '../../../src/derive/series.ts';
import type { DerivedRun } from '../../../src/trial/derived.ts';
import { logged, recordOf } from './logged.ts';

const rpm = (n: number): number => (n * Math.PI) / 30;
const valueOf = (run: DerivedRun, quantity: string): number | undefined =>
  run.results.find(({ quantity: q }) => q === quantity)?.estimate?.value;

/** A trial of these speeds, 90 s each, with a second of nothing between two of one speed; ten minutes at rest after it. */
const runOf = (wheel: readonly number[], speed: (w: number, t: number) => number = (w) => w, start = 0) => {
  const at = (t: number): number => (t < start ? 0 : (wheel[Math.floor((t - start) / 100)] ?? 0));
  const turning = (t: number): number => ((t - start) % 100 < 90 ? at(t) : 0);
  const end_s = start + 100 * wheel.length;
  const made = {
    ...logged(
      {
        'pinion-speed': (t) => rpm((speed(turning(t), t) * 41) / 9),
        sump: () => 331.15,
        level: (t) =>
          (t < end_s - 10 ? -57e-3 : -54e-3 - 4e-3 * 2 ** (-(t - end_s + 10) / 45)) + 1e-4 * Math.sin(1.7 * t),
      },
      { length_s: end_s + 600, step_s: 1 },
    ),
    events: [],
  };
  return deriveSeries(recordOf('F-01', made)).runs.get('F-01')!;
};

describe('the course of a flow trial', () => {
  it('comes to a speed from below or from above: a dip on the way does not turn the way', () => {
    const names = (wheel: readonly number[]) => runOf(wheel).flow!.steps.map(({ name }) => name);
    expect(names([60, 120, 60, 200, 120])).toEqual(['60 rpm up', '120 rpm up', '60 rpm down', '200 rpm up', '120 rpm down']); // prettier-ignore
    expect(names([520, 390, 290])).toEqual(['520 rpm up', '390 rpm down', '290 rpm down']);
    expect(names([290])).toEqual(['290 rpm up']);
  });

  it('counts a speed that is held again after a stumble once, and says so', () => {
    const run = runOf([60, 120, 120, 60]);
    expect(run.flow!.steps.map(({ name }) => name)).toEqual(['60 rpm up', '120 rpm up', '60 rpm down']);
    const [again, ...more] = run.findings.filter(({ code }) => code === 'step-held-again');
    expect(again!.says).toBe('120 rpm up is held a second time, from 200.0 to 289.0 s of the log.');
    expect(more).toEqual([]);
    expect(run.results.filter(({ quantity }) => quantity === 'level-gap')).toHaveLength(1);
  });

  it('settles from the standstill on, whatever a single reading of the speed says after it', () => {
    const jumps = runOf([60, 120], (w, t) => (t === 400 || t === 650 ? 2 : w), 60);
    expect(jumps.flow!.settled!.stop_s).toBe(250);
    expect(jumps.flow!.settled!.before_z_m).not.toBeNull();
    expect(valueOf(jumps, 'level-half-time')).toBeCloseTo(45, 0);
    const early = runOf([60, 120], (w, t) => (t === 20 ? 2 : w), 60);
    expect(valueOf(early, 'held-up')).toBe(
      valueOf(
        runOf([60, 120], (w) => w, 60),
        'held-up',
      )!,
    );
  });

  it('is held against nothing before where the log begins turning, and not told where it never stops', () => {
    const turning = runOf([60, 120]);
    expect(turning.flow!.settled!.before_z_m).toBeNull();
    expect(valueOf(turning, 'held-up')).toBeUndefined();
    expect(valueOf(turning, 'level-half-time')).toBeCloseTo(45, 0);
    const never = runOf([60, 120], (w) => w || 30);
    expect(never.flow!.settled).toBeNull();
    expect(valueOf(never, 'air-share')).toBeUndefined();
  });
});
