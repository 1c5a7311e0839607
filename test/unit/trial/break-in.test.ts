import { describe, expect, it } from 'vitest';
import { settledBy } from '../../../src/trial/break-in.ts';

const load = (start: number, middle: number, end: number) => ({
  power_W: 22_000,
  start_ratio: start / 100,
  middle_ratio: middle / 100,
  end_ratio: end / 100,
});

// criterion: the lab's own (common practice, no source); start, middle and end as SAE J1266 reports them, read in a summary only
describe('a break-in has settled', () => {
  it.each([
    { title: 'when no load moves more than the criterion from middle to end', ends: [95.1, 94.9], settled: true },
    { title: 'when it moves by just the criterion', ends: [95.2, 94.9], settled: true },
    { title: 'not when one load still rises', ends: [95.3, 94.9], settled: false },
    { title: 'not when one load still falls', ends: [95.1, 94.5], settled: false },
  ])('$title', ({ ends: [first, second], settled }) => {
    const loads = [load(94.1, 95, first!), load(93.9, 94.8, second!)];
    expect(settledBy({ settledWithin_ratio: 0.002, loads })).toBe(settled);
  });

  it('whatever it rose by before its middle', () => {
    expect(settledBy({ settledWithin_ratio: 0.002, loads: [load(88, 95, 95)] })).toBe(true);
  });

  it('nobody knows whether, when none is recorded', () => {
    expect(settledBy(null)).toBeNull();
  });
});
