import { describe, expect, it } from 'vitest';
import { atTime } from '../../../src/charts/clock.ts';
import { clipTime_s, clockText, filmed, logTime_s, timeAt_s } from '../../../src/reader/film/clocks.ts';

/** Cut from a film in two pieces that leave out a minute, and a third that follows without a gap. */
const pieces = [
  { clip_s: 0, to_clip_s: 10, offset_s: 1.6 },
  { clip_s: 10, to_clip_s: 22, offset_s: 71.6 },
  { clip_s: 22, to_clip_s: 30, offset_s: 71.6 },
];

describe('clip and log', () => {
  it.each([
    { clip: 0, log: 1.6 },
    { clip: 9.9, log: 11.5 },
    { clip: 10, log: 81.6 },
    { clip: 22, log: 93.6 },
    { clip: 30, log: 101.6 },
  ])('stand at $log s of the log when the clip is at $clip s', ({ clip, log }) => {
    expect(logTime_s(pieces, clip)).toBeCloseTo(log, 9);
    expect(clipTime_s(pieces, log)).toBeCloseTo(clip, 9);
  });

  it('have no common time before the first piece, after the last, and where they are not tied', () => {
    expect(logTime_s([{ clip_s: 5, to_clip_s: 9, offset_s: 0 }], 4.9)).toBeNull();
    expect(logTime_s(pieces, 30.1)).toBeNull();
    expect(logTime_s([], 3)).toBeNull();
  });

  it('have no film of what was cut out', () => {
    expect(clipTime_s(pieces, 40)).toBeNull();
    expect(clipTime_s([], 40)).toBeNull();
  });

  it('are drawn as one stretch where pieces follow each other, and apart where something was cut', () => {
    expect(filmed(pieces).map(({ from_s, to_s }) => [from_s, to_s])).toEqual([
      [1.6, 11.6],
      [81.6, 101.6],
    ]);
    expect(filmed([])).toEqual([]);
  });
});

describe('a place on the chart', () => {
  const across = { from: -0.5, to: 19.5, left: 46, right: 680 };
  it.each([0, 61.3, 1170])('is where the mark of %d s of the log stands', (time_s) => {
    expect(timeAt_s(across, atTime(across, time_s / 60))).toBeCloseTo(time_s, 9);
  });
});

describe('a time of the log is written in minutes, seconds and tenths', () => {
  it.each([
    [0, '0:00.0'],
    [9.96, '0:10.0'],
    [59.96, '1:00.0'],
    [261.3, '4:21.3'],
    [3600, '60:00.0'],
    [-5.2, '−0:05.2'],
    [-0.01, '0:00.0'],
  ])('%d s as %s', (time_s, text) => {
    expect(clockText(time_s)).toBe(text);
  });
});
