import { describe, expect, it } from 'vitest';
import { logLogLine, temperatureFor_K, viscosityAt_m2_s, viscositySlope_1_K } from '../../../src/physics/viscosity.ts';

describe('the log-log line', () => {
  it.each([
    { why: 'a viscosity of 0.3 mm²/s', nu40_m2_s: 10e-6, nu100_m2_s: 0.3e-6 },
    { why: 'a negative viscosity', nu40_m2_s: -10e-6, nu100_m2_s: 5e-6 },
    { why: 'an oil that does not thin', nu40_m2_s: 15e-6, nu100_m2_s: 15e-6 },
    { why: 'an oil that thickens', nu40_m2_s: 15e-6, nu100_m2_s: 102e-6 },
    { why: 'no number', nu40_m2_s: NaN, nu100_m2_s: 15e-6 },
  ])('is not drawn for $why', ({ nu40_m2_s, nu100_m2_s }) => {
    expect(logLogLine({ nu40_m2_s, nu100_m2_s })).toBeNull();
  });

  const line = logLogLine({ nu40_m2_s: 102e-6, nu100_m2_s: 15e-6 })!;

  it('has no viscosity at a temperature that is none, nor near 0 K where it runs beyond any number', () => {
    for (const oil_K of [0, -5, NaN, 1]) {
      expect(viscosityAt_m2_s({ line, oil_K })).toBeNull();
      expect(viscositySlope_1_K({ line, oil_K })).toBeNull();
    }
  });

  it('turned round gives the temperature back, and none for 0.3 mm²/s and less', () => {
    const oil_K = 351.2;
    expect(temperatureFor_K({ line, nu_m2_s: viscosityAt_m2_s({ line, oil_K })! })).toBeCloseTo(oil_K, 9);
    expect(temperatureFor_K({ line, nu_m2_s: 0.3e-6 })).toBeNull();
  });

  it('warmer oil is thinner, and the thinner the slower it thins', () => {
    const at = (oil_K: number) => [viscosityAt_m2_s({ line, oil_K })!, viscositySlope_1_K({ line, oil_K })!] as const;
    const [cool, warm] = [at(313.15), at(363.15)];
    expect(warm[0]).toBeLessThan(cool[0]);
    expect(cool[1]).toBeLessThan(warm[1]);
    expect(warm[1]).toBeLessThan(0);
  });

  it('its slope is what a small step of temperature does', () => {
    const nu = (oil_K: number) => Math.log(viscosityAt_m2_s({ line, oil_K })!);
    expect(viscositySlope_1_K({ line, oil_K: 333.15 })).toBeCloseTo((nu(333.16) - nu(333.14)) / 0.02, 7);
  });
});
