import { describe, expect, it } from 'vitest';
import { course, sharedAt, sharedSteps } from '../../../src/reader/film/together.ts';

const first = [
  { name: '60 rpm up', from_s: 1, to_s: 12 },
  { name: '200 rpm up', from_s: 13, to_s: 24 },
  { name: '290 rpm up', from_s: 25, to_s: 36 },
];
const second = [
  { name: '290 rpm up', from_s: 14, to_s: 22 },
  { name: '60 rpm up', from_s: 2, to_s: 13 },
];
const steps = sharedSteps(first, second);

describe('two clips side by side', () => {
  it('share the steps that both hold, in the order of the first, for as long as both show them', () => {
    expect(steps).toEqual([
      { name: '60 rpm up', first_s: 1, second_s: 2, length_s: 11 },
      { name: '290 rpm up', first_s: 25, second_s: 14, length_s: 8 },
    ]);
    expect(sharedSteps(first, [])).toEqual([]);
  });

  it('run on while they are within a tenth of a second of each other', () => {
    expect(course(steps, 5, 6.09)).toEqual({ kind: 'run on' });
    expect(course(steps, 5, 5.91)).toEqual({ kind: 'run on' });
  });

  it('are lined up when they have drifted further apart, and then run on', () => {
    const next = course(steps, 5, 6.2);
    expect(next).toEqual({ kind: 'line up', first_s: 5, second_s: 6 });
    expect(course(steps, 5, 6)).toEqual({ kind: 'run on' });
  });

  it('go on to the next step that both hold when the shorter of two holds is over', () => {
    expect(course(steps, 12, 13)).toEqual({ kind: 'line up', first_s: 25, second_s: 14 });
    expect(course(steps, 18, 13)).toEqual({ kind: 'line up', first_s: 25, second_s: 14 });
  });

  it('stop after the last', () => {
    expect(course(steps, 33.01, 22)).toEqual({ kind: 'stop' });
    expect(course([], 3, 3)).toEqual({ kind: 'stop' });
  });

  it('begin at the first step when they stand before it', () => {
    expect(course(steps, 0, 0)).toEqual({ kind: 'line up', first_s: 1, second_s: 2 });
  });

  it('stand in a step that both hold, or in none', () => {
    expect(sharedAt(steps, 0.97)?.name).toBe('60 rpm up');
    expect(sharedAt(steps, 14)).toBeNull();
    expect(sharedAt(steps, 34)).toBeNull();
  });
});
