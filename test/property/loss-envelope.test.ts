import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Churned } from '../../src/physics/churning.ts';
import { bearingBand, churningBand, sealBand } from '../../src/physics/loss-envelope.ts';

const runs = { numRuns: 300, seed: 20260302 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rad = Math.PI / 180;

/** Ring gears of axles, light to heavy, slow enough that the law by the chord stays below its fall at Reynolds 100 000. */
const geared = fc
  .record({
    radius_m: between(0.06, 0.25),
    dipShare: between(0.05, 0.9),
    width_m: between(0.015, 0.08),
    teeth: fc.integer({ min: 20, max: 60 }),
    volume_m3: between(0.5e-3, 8e-3),
    density_kg_m3: between(750, 950),
    speed_rad_s: between(0.5, 30),
    nu_m2_s: between(40e-6, 1000e-6),
  })
  .map(({ dipShare, ...of }): Churned => ({
    ...of,
    dip_m: dipShare * of.radius_m,
    module_m: (2 * of.radius_m) / of.teeth,
    toothHeight_m: (4.4 * of.radius_m) / of.teeth,
    pressureAngle_rad: 20 * rad,
    helixAngle_rad: 30 * rad,
  }));

it('a band of churning has its low end below its high end, and both are powers', () => {
  fc.assert(
    fc.property(geared, (of) => {
      const band = churningBand(of)!;
      expect(band.low_W).toBeGreaterThan(0);
      expect(band.high_W / band.low_W).toBeGreaterThanOrEqual(4 * (1 - 1e-12));
      expect(Number.isFinite(band.high_W)).toBe(true);
    }),
    runs,
  );
});

it('a gear that dips deeper has both ends of its band higher, while the dip is less than its radius', () => {
  fc.assert(
    fc.property(geared, between(1.001, 1.1), (of, deeper) => {
      const [less, more] = [churningBand(of)!, churningBand({ ...of, dip_m: of.dip_m * deeper })!];
      expect(more.low_W).toBeGreaterThanOrEqual(less.low_W);
      expect(more.high_W).toBeGreaterThanOrEqual(less.high_W);
    }),
    runs,
  );
});

it('a band of a bearing or a seal has its ends in order, whatever oil it is in', () => {
  const turning = fc.record({
    ...{ bore_m: between(0.02, 0.1), more_m: between(0.01, 0.1), turning_Nm: between(0, 5) },
    ...{ speed_rad_s: between(0.1, 700), nu_m2_s: between(2e-6, 2e-3) },
  });
  fc.assert(
    fc.property(turning, ({ more_m, ...of }) => {
      const band = bearingBand({ ...of, outside_m: of.bore_m + more_m })!;
      expect(band.low_W).toBeGreaterThan(0);
      // Half less at f0 3 to half more at f0 4 is a factor of four; of preload alone a factor of three.
      expect(band.high_W / band.low_W).toBeGreaterThanOrEqual(3 * (1 - 1e-12));
      expect(band.high_W / band.low_W).toBeLessThanOrEqual(4 * (1 + 1e-12));
    }),
    runs,
  );
  const sealed = fc.record({
    ...{ shaft_m: between(0.02, 0.12), speed_rad_s: between(0.1, 700) },
    ...{ oil_K: between(243, 423), nu40_m2_s: between(10e-6, 700e-6) },
  });
  fc.assert(
    fc.property(sealed, (of) => {
      const band = sealBand(of)!;
      expect(band.low_W).toBeGreaterThan(0);
      expect(band.high_W).toBeGreaterThanOrEqual(band.low_W);
    }),
    runs,
  );
});
