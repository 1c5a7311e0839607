import { describe, expect, it } from 'vitest';
import { interpolate, interpolateBack, slopeAt } from '../../../src/statistics/interpolate.ts';

/** Litres against level in mm, invented. */
const table = { x: [-60, -50, -30], y: [1.9, 2.1, 2.7] };

describe('a surveyed table', () => {
  it('is read between its rows and at them', () => {
    expect(interpolate(table, -55)).toBeCloseTo(2, 12);
    expect(table.x.map((x) => interpolate(table, x))).toEqual(table.y);
  });

  it('is refused outside its rows and for no number', () => {
    expect([-60.1, -29.9, NaN].map((x) => interpolate(table, x))).toEqual([null, null, null]);
    expect(slopeAt(table, -70)).toBeNull();
    expect(interpolate({ x: [1], y: [1] }, 1)).toBeNull();
  });

  it('is read backwards, rising or falling, and refused outside or where it turns', () => {
    expect(interpolateBack(table, 2.4)).toBeCloseTo(-40, 12);
    expect(interpolateBack({ x: table.x, y: table.y.map((y) => -y) }, -2.4)).toBeCloseTo(-40, 12);
    expect(interpolateBack(table, 3)).toBeNull();
    expect(interpolateBack({ x: [0, 1, 2], y: [0, 1, 0] }, 0.5)).toBeNull();
    expect(interpolateBack({ x: [0, 1, 2], y: [0, 0, 1] }, 0)).toBeNull();
  });

  it('has the slope of its row, and at a row the steeper of the two', () => {
    expect(slopeAt(table, -55)).toBeCloseTo(0.02, 12);
    expect(slopeAt(table, -50)).toBeCloseTo(0.03, 12);
    expect(slopeAt(table, -30)).toBeCloseTo(0.03, 12);
  });
});
