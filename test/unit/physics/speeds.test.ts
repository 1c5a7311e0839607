import { describe, expect, it } from 'vitest';
import {
  outputSpeed_rad_s,
  overallRatio,
  pinionSpeed_rad_s,
  ringReynolds,
  ringSpeedFromOutput_rad_s,
  ringSpeed_rad_s,
  rollingRadius_m,
  wheelSpeed_rad_s,
} from '../../../src/physics/speeds.ts';

describe('the speed chain', () => {
  const teeth = { teethPinion: 9, teethRing: 41, hubReduction: 3 };

  it('goes from the pinion to the output and back through a hub reduction', () => {
    const output_rad_s = outputSpeed_rad_s({ pinion_rad_s: 410, teeth });
    expect(output_rad_s).toBeCloseTo(30, 12);
    expect(pinionSpeed_rad_s({ output_rad_s, teeth })).toBeCloseTo(410, 12);
    expect(ringSpeedFromOutput_rad_s({ output_rad_s, teeth })).toBeCloseTo(
      ringSpeed_rad_s({ pinion_rad_s: 410, teeth }),
      12,
    );
    expect(overallRatio(teeth)).toBeCloseTo(41 / 3, 12);
  });

  it('has no wheel speed without a rolling radius, no radius without turns, no Reynolds number without viscosity', () => {
    expect(wheelSpeed_rad_s({ road_m_s: 10, rollingRadius_m: 0 })).toBeNull();
    expect(rollingRadius_m({ distance_m: 1000, turns: 0 })).toBeNull();
    expect(ringReynolds({ ring_rad_s: 30, radius_m: 0.1, face_m: 0.04, nu_m2_s: 0 })).toBeNull();
  });
});
