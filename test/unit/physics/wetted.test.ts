import { describe, expect, it } from 'vitest';
import { immersedFace_m2, immersedHalfAngle_rad, wettedSurface_m2 } from '../../../src/physics/wetted.ts';

describe('the wetted wheel', () => {
  it('clear of the oil is dry, deeper than its diameter is wholly wet', () => {
    expect(immersedHalfAngle_rad({ radius_m: 0.1, immersion_m: -0.02 })).toBe(0);
    expect(immersedHalfAngle_rad({ radius_m: 0.1, immersion_m: 0.5 })).toBe(Math.PI);
  });

  it('of no radius or at no depth has no answer', () => {
    expect(immersedHalfAngle_rad({ radius_m: 0, immersion_m: 0.1 })).toBeNull();
    expect(immersedFace_m2({ radius_m: 0.1, immersion_m: NaN })).toBeNull();
    const wheel = { radius_m: -1, face_m: 1, teeth: 9, toothDepth_m: 1, pressureAngle_rad: 0, spiralAngle_rad: 0 };
    expect(wettedSurface_m2({ wheel, immersion_m: 0.1 })).toBeNull();
  });
});
