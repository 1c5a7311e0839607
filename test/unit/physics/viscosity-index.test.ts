import { describe, expect, it } from 'vitest';
import { referenceOils, reportedIndex, viscosityIndex } from '../../../src/physics/viscosity-index.ts';

describe('the viscosity index', () => {
  it('is not defined below 2 mm²/s at 100 °C, for an oil that thickens, and for no number', () => {
    expect(viscosityIndex({ nu40_m2_s: 5e-6, nu100_m2_s: 1.99e-6 })).toBeNull();
    expect(viscosityIndex({ nu40_m2_s: 10e-6, nu100_m2_s: 12e-6 })).toBeNull();
    expect(viscosityIndex({ nu40_m2_s: NaN, nu100_m2_s: 12e-6 })).toBeNull();
    expect(viscosityIndex({ nu40_m2_s: Infinity, nu100_m2_s: 12e-6 })).toBeNull();
    expect(referenceOils({ nu100_m2_s: Infinity })).toBeNull();
  });

  it('is defined at 2 mm²/s itself, however the unit was multiplied out', () => {
    expect(referenceOils({ nu100_m2_s: 2e-6 })).not.toBeNull();
    expect(referenceOils({ nu100_m2_s: 2 * 1e-6 })).not.toBeNull();
  });

  it('is 100 by either procedure for the reference oil of index 100, and 0 for that of index 0', () => {
    const oils = referenceOils({ nu100_m2_s: 11e-6 })!;
    expect(viscosityIndex({ nu40_m2_s: oils.H_m2_s, nu100_m2_s: 11e-6 })).toBeCloseTo(100, 9);
    expect(viscosityIndex({ nu40_m2_s: oils.H_m2_s * (1 - 1e-9), nu100_m2_s: 11e-6 })).toBeCloseTo(100, 5);
    expect(viscosityIndex({ nu40_m2_s: oils.L_m2_s, nu100_m2_s: 11e-6 })).toBeCloseTo(0, 9);
  });

  it('reports a half to the even number', () => {
    expect([92.43, 89.5, 90.5, 91.5, -0.6].map(reportedIndex)).toEqual([92, 90, 90, 92, -1]);
  });
});
