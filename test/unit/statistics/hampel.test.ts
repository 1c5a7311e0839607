import { describe, expect, it } from 'vitest';
import { hampel } from '../../../src/statistics/hampel.ts';

describe('spikes', () => {
  it('stand out at the first and last reading too', () => {
    expect(hampel({ values: [250, 80, 81, 80, 82, 81, 80, 81, 82, -40], resolution: 0.1 })).toEqual([0, 9]);
  });

  it('are no steady rise, however steep', () => {
    expect(hampel({ values: Array.from({ length: 50 }, (_, i) => 20 * i), resolution: 0.1 })).toEqual([]);
  });

  it('are judged by the resolution where readings stand still: two steps stay, four go', () => {
    const still = (value: number) => [80, 80, 80, value, 80, 80, 80];
    expect(hampel({ values: still(80.25), resolution: 0.125 })).toEqual([]);
    expect(hampel({ values: still(80.5), resolution: 0.125 })).toEqual([3]);
  });

  it('are not looked for among missing readings, nor in fewer readings than a window', () => {
    expect(hampel({ values: [80, NaN, 81, 80, 135, NaN, 80, 81, 80], resolution: 1 })).toEqual([4]);
    expect(hampel({ values: [80, 80, 135, 80, 80, 80], resolution: 0.1 })).toEqual([]);
  });
});
