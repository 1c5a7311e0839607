import { describe, expect, it } from 'vitest';
import {
  boundaryLayerFlow_m2_s,
  carriedFlow_m3_s,
  carriedFlowAt_m3_s,
  carriedFlowRelation,
  gravityFlow_m2_s,
  immersedTime_s,
  pocketFill,
  toothPocketFlow_m3_s,
  type TurningGear,
} from '../../../src/physics/carry-over.ts';
import { outsideRange } from '../../../src/physics/relation.ts';
import { centrifugalRatio, gravity_m_s2, pitchLineSpeed_m_s } from '../../../src/physics/speeds.ts';

const gear: TurningGear = {
  ring_rad_s: 9,
  radius_m: 0.111,
  face_m: 0.035,
  toothHeight_m: 0.0108,
  immersion_m: 0.045,
  nu_m2_s: 15e-6,
};
/** Without its teeth: what the films alone carry, a width of face. */
const films_m2_s = (at: TurningGear): number => carriedFlowAt_m3_s({ ...at, fill: 0 })! / at.face_m;
const rim = (at: TurningGear) => ({ ...at, speed_m_s: pitchLineSpeed_m_s(at) });
/** Speed at which the ring gear has this centrifugal ratio. */
const at = (ratio: number): TurningGear => ({ ...gear, ring_rad_s: Math.sqrt((ratio * gravity_m_s2) / gear.radius_m) });

describe('oil carried out of the bath', () => {
  it('is held by gravity up to centrifugal ratio 1 and by what was set moving above it, though that is more', () => {
    const [slow, fast] = [at(0.999), at(1.001)];
    expect(centrifugalRatio(slow)).toBeLessThan(1);
    expect(films_m2_s(slow)).toBeCloseTo(gravityFlow_m2_s(rim(slow)), 12);
    expect(films_m2_s(fast)).toBeCloseTo(boundaryLayerFlow_m2_s(rim(fast))!, 12);
    // √(18 θ/π) at 45 mm in: the two flows would be equal at that centrifugal ratio only.
    expect(films_m2_s(fast) / films_m2_s(slow)).toBeCloseTo(Math.sqrt((18 * 0.93403499) / Math.PI), 2);
  });

  it('is never more than was set moving: a gear that only touches the oil is not limited by gravity at any speed', () => {
    const touching = { ...at(0.9), immersion_m: 1e-4 };
    expect(boundaryLayerFlow_m2_s(rim(touching))!).toBeLessThan(gravityFlow_m2_s(rim(touching)));
    expect(films_m2_s(touching)).toBeCloseTo(boundaryLayerFlow_m2_s(rim(touching))!, 12);
  });

  it('lies between gaps that are a tenth and six tenths full', () => {
    const band = carriedFlow_m3_s(gear)!;
    expect(band.low_m3_s).toBe(carriedFlowAt_m3_s({ ...gear, fill: pocketFill.low }));
    const meanDiameter_m = 2 * gear.radius_m - gear.toothHeight_m;
    expect(band.high_m3_s - band.low_m3_s).toBeCloseTo(
      toothPocketFlow_m3_s({ ...gear, meanDiameter_m, fill: 0.5 }),
      15,
    );
  });

  it('says outside its range when gaps are taken fuller than common practice has them', () => {
    expect(outsideRange(carriedFlowRelation, { ...gear, fill: 0.8 })).toEqual([
      'fill of the tooth gaps is above the range: common practice, no source.',
    ]);
  });

  it.each<{ what: string; changed: Partial<TurningGear> }>([
    { what: 'clear of the oil', changed: { immersion_m: 0 } },
    { what: 'standing over the oil', changed: { immersion_m: -0.01 } },
    { what: 'wholly in the oil', changed: { immersion_m: 0.222 } },
    { what: 'at rest', changed: { ring_rad_s: 0 } },
    { what: 'without a face', changed: { face_m: 0 } },
    { what: 'without teeth', changed: { toothHeight_m: 0 } },
    { what: 'whose teeth are longer than the gear is wide', changed: { toothHeight_m: 0.3 } },
    { what: 'in oil of no viscosity', changed: { nu_m2_s: 0 } },
    { what: 'whose immersion is not known', changed: { immersion_m: NaN } },
  ])('is not there for a gear $what', ({ changed }) => {
    expect(carriedFlow_m3_s({ ...gear, ...changed })).toBeNull();
  });

  it('has no time in the oil at rest', () => {
    expect(immersedTime_s({ radius_m: 0.1, immersion_m: 0.05, speed_m_s: 0 })).toBeNull();
    expect(boundaryLayerFlow_m2_s({ radius_m: 0, immersion_m: 0.05, speed_m_s: 1, nu_m2_s: 1e-5 })).toBeNull();
  });
});
