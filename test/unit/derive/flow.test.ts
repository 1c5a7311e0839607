import { describe, expect, it } from 'vitest';
import { deriveSeries } from '../../../src/derive/series.ts';
import { standardUncertainty } from '../../../src/quantity/estimate.ts';
import { stepGrades } from '../../../src/derive/grades.ts';
import type { DerivedRun } from '../../../src/trial/derived.ts';
import type { Clip, Graded, Observation } from '../../../src/trial/flow.ts';
import type { Log } from '../../../src/trial/log.ts';
import type { Run } from '../../../src/trial/run.ts';
import { logged, recordOf } from './logged.ts';

const place = { file: 'hill-bowl/runs/F-01.md', line: 9, column: 1 };
const rpm = (n: number): number => (n * Math.PI) / 30;

/** At rest, 60 rpm, 120 rpm, 60 rpm, at rest; 60 s at rest, holds of 90 s. */
const speeds = [0, 60, 120, 60, 0];
const starts = [0, 60, 150, 240, 330];
const stop_s = 330;
const wheelAt = (t: number): number => speeds[starts.findLastIndex((s) => t >= s)]!;
const pinion = (t: number): number => rpm((wheelAt(t) * 41) / 9);
/** Up 4 mm lower at 60 and 7 at 120; down a further 1 mm at 60. After the stop back with a half-time of 45 s, 1 mm short. */
const levelAt = (t: number): number => {
  if (t < 60) return -53e-3;
  if (t < 150) return -57e-3;
  if (t < 240) return -60e-3;
  if (t < stop_s) return -58e-3;
  return -54e-3 - 4e-3 * 2 ** (-(t - stop_s) / 45);
};
const wave = (t: number): number => (wheelAt(t) > 0 ? 2e-3 * Math.sin(1.7 * t) : 1e-4 * Math.sin(1.7 * t));

const log = (events: Log['events'] = []): Log => ({
  ...logged(
    { 'pinion-speed': pinion, sump: () => 331.15, level: (t) => levelAt(t) + wave(t) },
    { length_s: stop_s + 600, step_s: 1 },
  ),
  events,
});

function reduced(change: Partial<Run> = {}, events: Log['events'] = []): DerivedRun {
  const record = recordOf('F-01', log(events), (whole) => ({
    runs: whole.runs
      .filter(({ id }) => id === 'F-01')
      .map((run) => ({ ...run, clips: [], observations: [], settle: [], ...change })),
  }));
  return deriveSeries(record).runs.get('F-01')!;
}
const valueOf = (run: DerivedRun, quantity: string, wheel?: number, direction?: 'down'): number | undefined =>
  run.results.find(
    ({ quantity: q, at }) =>
      q === quantity &&
      at.direction === direction &&
      (wheel === undefined || Math.abs((at.outputSpeed_rad_s ?? 0) - rpm(wheel)) < 1e-6),
  )?.estimate?.value;

const allGrades = (grade: Graded): Observation['grades'] => ({
  ...{ reach: grade, side: grade, wall: grade, bubble: grade, tube: grade },
});
const observed = (more: Partial<Observation> = {}): Observation => ({
  step: { outputSpeed_rad_s: rpm(60), direction: 'up' },
  observer: 'A',
  pass: 'first',
  blind: [],
  grades: allGrades(2),
  view: 3,
  ...{ level_z_m: null, swing_m: null, foam_m: null, detach_rad: null, words: null },
  ...{ clip: null, from_s: null, to_s: null, place },
  ...more,
});
const clip = (more: Partial<Clip> = {}): Clip => ({
  ...{ file: 'F-01.webm', code: 'K7', shows: 'film', length_s: 1000, sync_s: 19.4, pieces: [{ clip_s: 0, film_s: 0 }] },
  ...{ captions: null, kept: null, place },
  ...more,
});

describe('the level of a flow trial', () => {
  const run = reduced();
  it('has each speed once on the way up and once on the way down, and the gap between them', () => {
    expect(run.flow!.steps.map(({ name }) => name)).toEqual(['60 rpm up', '120 rpm up', '60 rpm down']);
    expect(valueOf(run, 'running-level', 60)).toBeCloseTo(-57e-3, 4);
    expect(valueOf(run, 'running-level', 60, 'down')).toBeCloseTo(-58e-3, 4);
    // A wave that the window does not hold whole leaves up to a tenth of a millimetre in either mean.
    expect(Math.abs(valueOf(run, 'level-gap', 60)! - 1e-3)).toBeLessThan(2e-4);
    expect(valueOf(run, 'level-gap', 120)).toBeUndefined();
  });

  it('swings by twice its standard deviation: 2.83 mm for a wave of 2 mm', () => {
    expect(valueOf(run, 'level-swing', 60)).toBeCloseTo((2 * 2e-3) / Math.SQRT2, 4);
  });

  it('gives the gap without the calibration of the glass, which both ways share', () => {
    const gap = run.results.find(({ quantity }) => quantity === 'level-gap')!;
    expect(gap.estimate!.parts.map(({ cause }) => cause).some((c) => c.startsWith('calibration:'))).toBe(false);
  });

  it('comes back after the stop with its half-time, and says what is missing at the end', () => {
    expect(valueOf(run, 'level-half-time')).toBeCloseTo(45, 0);
    expect(valueOf(run, 'held-up')).toBeCloseTo(1e-3, 4);
    expect(run.flow!.settled!.stop_s).toBe(stop_s);
  });

  it('is told with less certainty where neighbouring readings resemble each other', () => {
    /** A slow wobble after the stop, or one of the same size that turns with every reading. */
    const halfTime = (wobble: (t: number) => number) => {
      const slow = {
        ...logged(
          { 'pinion-speed': pinion, sump: () => 331.15, level: (t) => levelAt(t) + 2e-4 * wobble(t) },
          { length_s: stop_s + 600, step_s: 1 },
        ),
        events: [],
      };
      const run = deriveSeries(recordOf('F-01', slow)).runs.get('F-01')!;
      return standardUncertainty(run.results.find(({ quantity }) => quantity === 'level-half-time')!.estimate!);
    };
    // r₁ of a wave of 0.3 rad a reading is cos 0.3 = 0.955: √((1 + r₁)/(1 − r₁)) is 6.6 times.
    expect(halfTime((t) => Math.sin(0.3 * t)) / halfTime((t) => Math.sin(2.9 * t))).toBeGreaterThan(5);
  });

  it('says how much warmer the oil was at the end, and that an end beyond the log was not read', () => {
    const notesOf = (length_s: number, warmer_K: number): string => {
      const warm = {
        ...logged(
          {
            'pinion-speed': pinion,
            sump: (t) => 331.15 + (t < 60 ? 0 : warmer_K),
            level: (t) => levelAt(t) + wave(t),
          },
          { length_s: stop_s + length_s, step_s: 1 },
        ),
        events: [],
      };
      const run = deriveSeries(recordOf('F-01', warm)).runs.get('F-01')!;
      return run.results.find(({ quantity }) => quantity === 'held-up')!.notes.join('; ');
    };
    const whole = notesOf(600, 1.5);
    expect(whole).toContain('the sump was 1.5\u202fK warmer at the end than before');
    expect(whole).not.toContain('half-times');
    // 140 s of a half-time of 45 s
    const short = notesOf(140, -0.5);
    expect(short).toContain('the sump was 0.5\u202fK cooler');
    expect(short).toContain('the log ends after 3.1 half-times: this end is where the curve would come to');
  });

  it('says of a step whose level still moves that it is not steady', () => {
    const falling = recordOf('F-01', {
      ...logged(
        { 'pinion-speed': pinion, sump: () => 331.15, level: (t) => -57e-3 - 2e-4 * t },
        { length_s: stop_s + 600, step_s: 1 },
      ),
      events: [],
    });
    expect(
      deriveSeries(falling)
        .runs.get('F-01')!
        .flow!.steps.map(({ steady }) => steady),
    ).toEqual([false, false, false]);
  });
});

describe('Bubble after the stop', () => {
  const row = (after_s: number, bubble: Graded) => ({ after_s, bubble, level_z_m: null, foam_m: null, place });
  it('is clear between the last reading above 1 and the next', () => {
    const run = reduced({ settle: [row(0, 3), row(30, 2), row(60, 1), row(120, 0)] });
    expect(run.results.find(({ quantity }) => quantity === 'bubble-clear-time')!.band).toEqual({ low: 30, high: 60 });
  });
  it('is a bound when it never cleared, and nothing when it was clear from the first', () => {
    const never = reduced({ settle: [row(0, 3), row(600, 2)] });
    expect(never.results.find(({ quantity }) => quantity === 'bubble-clear-time')!.bound).toEqual({
      side: 'above',
      at: 600,
    });
    const clear = reduced({ settle: [row(0, 1), row(10, 'ng'), row(30, 0)] });
    expect(clear.results.some(({ quantity }) => quantity === 'bubble-clear-time')).toBe(false);
  });
});

describe('what stands for a grade', () => {
  const two = (a: Graded, b: Graded) => [
    observed({ grades: allGrades(a) }),
    observed({ observer: 'B', grades: allGrades(b) }),
  ];
  it('is the first grades where they are equal, and nothing where they differ', () => {
    expect(stepGrades(two(2, 2)).reach).toMatchObject({ stands: 2, how: 'equal' });
    expect(stepGrades(two(2, 3)).reach).toMatchObject({ stands: null, how: 'differ' });
  });
  it('is the joint look where there was one, and the first grades are kept', () => {
    const joint = observed({ observer: 'A+B', pass: 'joint', grades: allGrades(3) });
    expect(stepGrades([...two(2, 3), joint]).wall).toEqual({
      stands: 3,
      how: 'joint look',
      first: [
        { observer: 'A', grade: 2 },
        { observer: 'B', grade: 3 },
      ],
    });
  });
  it('is never 0 for what could not be graded', () => {
    const run = reduced({ observations: two('ng', 'ng') });
    expect(run.flow!.steps[0]!.grades!.reach.stands).toBe('ng');
    expect(run.results.some(({ quantity }) => quantity === 'reach')).toBe(false);
  });
  it('is a figure of the step, up and down apart', () => {
    const down = { outputSpeed_rad_s: rpm(60), direction: 'down' } as const;
    const run = reduced({ observations: [observed(), observed({ step: down, grades: allGrades(4) })] });
    expect(valueOf(run, 'reach', 60)).toBe(2);
    expect(valueOf(run, 'reach', 60, 'down')).toBe(4);
  });
});

describe('camera and logger', () => {
  const sync = [{ time_s: 12, line: 14, text: 'sync' }];
  it('are tied by the flash that both saw: 19.4 s on the film and 12 s in the log are 7.4 s', () => {
    const run = reduced({ clips: [clip()] }, sync);
    expect(valueOf(run, 'camera-ahead')).toBeCloseTo(7.4, 9);
    expect(run.findings.find(({ code }) => code === 'camera-clock')).toMatchObject({ place: { line: 14 } });
    const [piece] = run.flow!.clips[0]!.pieces;
    expect(piece).toMatchObject({ clip_s: 0, to_clip_s: 1000 });
    expect(piece!.offset_s).toBeCloseTo(-7.4, 9);
  });
  it('keep their offset through the pieces of a cut clip', () => {
    const pieces = [
      { clip_s: 0, film_s: 10 },
      { clip_s: 12, film_s: 100 },
    ];
    const run = reduced({ clips: [clip({ sync_s: 12, pieces, length_s: 24 })] }, sync);
    expect(run.flow!.clips[0]!.pieces).toEqual([
      { clip_s: 0, to_clip_s: 12, offset_s: 10 },
      { clip_s: 12, to_clip_s: 24, offset_s: 88 },
    ]);
    expect(run.findings.some(({ code }) => code === 'camera-clock')).toBe(false);
  });
  it('stay untied without the event, and that is told', () => {
    const run = reduced({ clips: [clip()] });
    expect(run.findings.map(({ code }) => code)).toContain('sync-not-in-log');
    expect(run.flow!.clips[0]!.pieces).toEqual([]);
  });
  it('show a grade that was made at another step, which is left out', () => {
    // 70 to 80 s of the clip are 62.6 to 72.6 s of the log, in the hold at 60; 200 to 210 s are in the hold at 120.
    const inside = observed({ clip: 'F-01.webm', from_s: 70, to_s: 80 });
    const beside = observed({ clip: 'F-01.webm', from_s: 200, to_s: 210, observer: 'B' });
    const run = reduced({ clips: [clip()], observations: [inside, beside] }, sync);
    expect(run.findings.filter(({ code }) => code === 'grade-off-step')).toHaveLength(1);
    expect(run.flow!.steps[0]!.observations).toEqual([inside]);
  });
  it('tell a wrong time of the flash once, however many cues it moves', () => {
    const cues = [200, 205, 210].map((from_s, i) =>
      observed({ clip: 'F-01.webm', from_s, to_s: from_s + 10, observer: `O${i}` }),
    );
    const run = reduced({ clips: [clip()], observations: cues }, sync);
    const told = run.findings.filter(({ code }) => code === 'grade-off-step');
    expect(told.map(({ says }) => says.includes('2 more'))).toEqual([true]);
  });
  it('leave out a grade of a step that was not held', () => {
    const run = reduced({ observations: [observed({ step: { outputSpeed_rad_s: rpm(520), direction: 'up' } })] });
    expect(run.findings.filter(({ code }) => code === 'grade-step-not-held')).toHaveLength(1);
  });
});
