import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { belowSurface, dippedSegment, heightAt, knownStretch } from '../../../src/charts/oil-area.ts';

type Point = readonly [number, number];
const areaOf = (outline: readonly Point[]): number =>
  Math.abs(outline.reduce((sum, [x, y], i) => sum + x * outline.at(i - 1)![1] - y * outline.at(i - 1)![0], 0)) / 2;
const fixed = { seed: 20260302, numRuns: 300 };

describe('oil under a surface', () => {
  const square: readonly Point[] = [
    [0, -1],
    [2, -1],
    [2, 1],
    [0, 1],
  ];
  it('fills half of a square that stands half in it', () => {
    expect(areaOf(belowSurface(square, { z: 0, tilt: 0 }))).toBeCloseTo(2, 12);
    expect(belowSurface(square, { z: -2, tilt: 0 })).toEqual([]);
    expect(areaOf(belowSurface(square, { z: 5, tilt: 0 }))).toBeCloseTo(4, 12);
  });
  it('that leans through the middle of a square still halves it; through its corner it leaves a triangle', () => {
    // source: elementary geometry: a line through the centre of a square halves it
    for (const tilt of [-0.5, 0.12, 0.7]) expect(areaOf(belowSurface(square, { z: -tilt, tilt }))).toBeCloseTo(2, 12);
    expect(areaOf(belowSurface(square, { z: -1, tilt: 1 }))).toBeCloseTo(2, 12);
    expect(areaOf(belowSurface(square, { z: -1, tilt: 0.5 }))).toBeCloseTo(1, 12);
  });
  it('covers of the ring what geometry says of a circular segment: R² acos(d/R) − d √(R² − d²)', () => {
    // source: elementary geometry, no source; d is the distance of the centre from the surface, z / √(1 + tilt²);
    // tolerance: a polygon of 36 sides lies a little inside its arc
    const radius = 124;
    for (const { z, tilt } of [
      { z: -53.3, tilt: 0 },
      { z: -53.3, tilt: 0.12 },
      { z: -53.3, tilt: -0.12 },
      { z: 30, tilt: 0.5 },
    ]) {
      const depth = -z / Math.hypot(1, tilt);
      const exact = radius ** 2 * Math.acos(depth / radius) - depth * Math.sqrt(radius ** 2 - depth ** 2);
      const share = areaOf(dippedSegment(radius, { z, tilt })) / exact;
      expect(share).toBeGreaterThan(0.99);
      expect(share).toBeLessThanOrEqual(1);
    }
    expect(dippedSegment(radius, { z: -radius - 1, tilt: 0 })).toEqual([]);
    expect(dippedSegment(radius, { z: -2 * radius, tilt: 0.1 })).toEqual([]);
  });
  it('lies under its surface, at any tilt', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -140, max: 140, noNaN: true }),
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        (z, tilt) => {
          for (const [x, height] of dippedSegment(124, { z, tilt }))
            expect(height).toBeLessThanOrEqual(heightAt({ z, tilt }, x) + 1e-9);
        },
      ),
      fixed,
    );
  });
});

describe('the known stretch of a surface', () => {
  const wall: readonly Point[] = [
    [40, -128],
    [128, -80],
    [140, -20],
  ];
  it('reaches from the rim of the ring ahead to the wall behind, both on the surface', () => {
    const surface = { z: -53.3, tilt: 0.12 };
    const { from, to } = knownStretch(wall, 124, surface)!;
    // source: the circle x² + z² = R², and the straight piece of wall between its two surveyed points
    expect(Math.hypot(from, heightAt(surface, from))).toBeCloseTo(124, 9);
    expect(from).toBeLessThan(0);
    expect(heightAt(surface, to)).toBeCloseTo(-80 + ((to - 128) / 12) * 60, 9);
  });
  it('ends at the rim behind as well where no wall is known', () => {
    expect(knownStretch([], 124, { z: -53.3, tilt: 0 })).toEqual({
      from: expect.closeTo(-Math.sqrt(124 ** 2 - 53.3 ** 2), 9) as number,
      to: expect.closeTo(Math.sqrt(124 ** 2 - 53.3 ** 2), 9) as number,
    });
  });
  it('is none for a surface under everything that is known', () => {
    expect(knownStretch([], 124, { z: -130, tilt: 0 })).toBeNull();
  });
});
