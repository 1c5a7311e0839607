import { describe, expect, it } from 'vitest';
import { volumeAt20_m3, volumeMoved_m3, volume_m3 } from '../../../src/physics/density.ts';

describe('density', () => {
  it('litres of a mass go there and back with the temperature', () => {
    const oil = { mass_kg: 2.152, density15_kg_m3: 900, expansion_1_K: 0.0007 };
    const at20 = volumeAt20_m3(oil);
    const at90 = volume_m3({ ...oil, oil_K: 363.15 });
    expect(at90).toBeGreaterThan(at20);
    expect(volumeMoved_m3({ volume_m3: at90, expansion_1_K: 0.0007, from_K: 363.15, to_K: 293.15 })).toBeCloseTo(
      at20,
      15,
    );
  });
});
