import { describe, expect, it } from 'vitest';
import { loss_W, shaftPower_W } from '../../../src/physics/power.ts';

describe('loss between the shafts', () => {
  const pinion = { speed_rad_s: 138, torque_Nm: 9 };

  it('of a spin run is all that goes in', () => {
    expect(loss_W({ in: pinion, outs: [] })).toBe(shaftPower_W(pinion));
  });

  it('counts both output sides', () => {
    const side = { speed_rad_s: 30, torque_Nm: 10 };
    expect(loss_W({ in: pinion, outs: [side, side] })).toBeCloseTo(1242 - 600, 9);
  });
});
