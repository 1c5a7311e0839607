import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeAxis, minuteAxis, roundAxis, spread, thin, tickText } from '../../../src/charts/axis.ts';

const fixed = { seed: 20260302, numRuns: 300 };

describe('labels beside a plot', () => {
  it('are never nearer to each other than asked, and stay in bounds, wherever they wanted to be', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 350, noNaN: true }), { minLength: 1, maxLength: 9 }),
        (wanted) => {
          const placed = [...spread(wanted, 15, 0, 300)].sort((a, b) => a - b);
          placed.forEach((place, i) => {
            expect(place).toBeGreaterThanOrEqual(-1e-6);
            expect(place).toBeLessThanOrEqual(300 + 1e-6);
            if (i > 0) expect(place - placed[i - 1]!).toBeGreaterThanOrEqual(15 - 1e-6);
          });
        },
      ),
      fixed,
    );
  });
  it('keep the order of what they name', () => {
    const placed = spread([80, 82, 81, 10], 15, 0, 300);
    expect([0, 1, 2, 3].sort((a, b) => placed[a]! - placed[b]!)).toEqual([3, 0, 2, 1]);
  });
  it('stay where they want to be when there is room', () => {
    expect(spread([10, 60, 200], 15, 0, 300)).toEqual([10, 60, 200]);
  });
  it('share the whole height evenly when there are too many', () => {
    expect(spread([5, 5, 5, 5], 15, 0, 30)).toEqual([0, 10, 20, 30]);
  });
});

describe('an axis', () => {
  it('holds all values between round ticks', () => {
    expect(roundAxis([-42, 31], 5).ticks).toEqual([-60, -40, -20, 0, 20, 40]);
  });
  it('without values, or with one, still has a length', () => {
    for (const values of [[], [Number.NaN], [7], [0]]) {
      const { low, high } = roundAxis(values, 5);
      expect(high).toBeGreaterThan(low);
    }
  });
  it('ends just over the highest value where an empty field would stand above it', () => {
    const { high, ticks } = closeAxis([0, 610], 5);
    expect(high).toBeGreaterThan(610);
    expect(high).toBeLessThan(700);
    expect(ticks.at(-1)).toBe(600);
  });
  it('of minutes goes by halves of an hour', () => {
    expect(minuteAxis(150, 6).ticks).toEqual([0, 30, 60, 90, 120, 150]);
  });
  it('writes a true minus and no noise of floating point', () => {
    expect([-20, 0.30000000000000004].map(tickText)).toEqual(['−20', '0.3']);
  });
});

describe('a thinned trace', () => {
  const points = Array.from({ length: 5000 }, (_, i): readonly [number, number] => [
    i,
    i === 3333 ? 900 : Math.sin(i / 300),
  ]);
  it('keeps its single spike and its last reading', () => {
    const kept = thin(points, 200);
    expect(kept.length).toBeLessThanOrEqual(202);
    expect(kept).toContainEqual([3333, 900]);
    expect(kept.at(-1)).toEqual(points.at(-1));
  });
  it('stays in the order of time', () => {
    const times = thin(points, 200).map(([x]) => x);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });
});
