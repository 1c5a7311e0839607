import { describe, expect, it } from 'vitest';
import { airShare, aeratedDensity_kg_m3 } from '../../../src/physics/aeration.ts';

describe('air in the oil', () => {
  it('entrained air lowers the density, and the share comes back from the weighed sample', () => {
    const sample_kg_m3 = aeratedDensity_kg_m3({ oil_kg_m3: 830, air_kg_m3: 1.1, airShare: 0.07 });
    expect(sample_kg_m3).toBeLessThan(830);
    expect(airShare({ oil_kg_m3: 830, air_kg_m3: 1.1, sample_kg_m3 })).toBeCloseTo(0.07, 12);
  });

  it('has no air share when the oil is no heavier than air', () => {
    expect(airShare({ oil_kg_m3: 1, air_kg_m3: 1, sample_kg_m3: 1 })).toBeNull();
  });
});
