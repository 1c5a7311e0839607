import { describe, expect, it } from 'vitest';
import { addressOfStep, shortName, stepAt, stepFrom, stepInAddress } from '../../../src/reader/film/steps.ts';

const steps = [
  { name: '60 rpm up', from_s: 11, to_s: 22 },
  { name: '290 rpm up', from_s: 23, to_s: 34 },
  { name: '290 rpm down', from_s: 34, to_s: 46 },
];

describe('the step that is seen', () => {
  it.each([
    [10, null],
    [10.97, '60 rpm up'],
    [22.5, null],
    [33.9, '290 rpm up'],
    [34, '290 rpm down'],
    [46, null],
  ])('at %d s of the clip is %s', (clip_s, name) => {
    expect(stepAt(steps, clip_s)?.name ?? null).toBe(name);
  });

  it('has one after it, and before it the beginning of its own when more than a second of it has run', () => {
    expect(stepFrom(steps, 11, 1)?.name).toBe('290 rpm up');
    expect(stepFrom(steps, 30, -1)?.name).toBe('290 rpm up');
    expect(stepFrom(steps, 23.4, -1)?.name).toBe('60 rpm up');
    expect(stepFrom(steps, 40, 1)).toBeNull();
    expect(stepFrom(steps, 3, -1)).toBeNull();
  });
});

describe('a step in the address', () => {
  it('is found again from the address that was written for it', () => {
    for (const step of steps) expect(stepInAddress(addressOfStep(step.name), steps)).toBe(step);
  });

  it('is read as people type it', () => {
    expect(stepInAddress('#step=290-up', steps)?.name).toBe('290 rpm up');
    expect(stepInAddress('#step=290-DOWN', steps)?.name).toBe('290 rpm down');
  });

  it.each(['', '#settle', '#step=', '#step=400-up', '#step=<b>', '#%E0%A4%A'])('is none in "%s"', (hash) => {
    expect(stepInAddress(hash, steps)).toBeNull();
  });

  it('goes by its speed and its way, the unit being said once', () => {
    expect(shortName('290 rpm up')).toBe('290 up');
    expect(shortName('after the stop')).toBe('after the stop');
  });
});
