import { describe, expect, it } from 'vitest';
import {
  flingDrop_m,
  jetPowerBand_W,
  jetPowerBandRelation,
  kineticPower_W,
  pickUpPower_W,
} from '../../../src/physics/jets.ts';
import { filmReynolds, filmReynoldsRelation } from '../../../src/physics/wall-film.ts';
import { outsideRange } from '../../../src/physics/relation.ts';

const gear = {
  ring_rad_s: 74.671446,
  radius_m: 0.111,
  face_m: 0.035,
  toothHeight_m: 0.0108,
  immersion_m: 0.045,
  nu_m2_s: 15e-6,
  density_kg_m3: 820,
};

describe('power in the oil that a gear throws', () => {
  it('is paid twice over when oil comes back at rest: once into the stream, once lost where it is picked up', () => {
    const jet = { density_kg_m3: 820, flow_m3_s: 5e-4, speed_m_s: 8 };
    expect(pickUpPower_W({ ...jet, return_m_s: 0 })).toBe(2 * kineticPower_W(jet));
  });

  it('is not paid at all when oil comes back at the speed of the gear, and is more than from rest when it comes against it', () => {
    const jet = { density_kg_m3: 820, flow_m3_s: 5e-4, speed_m_s: 8 };
    expect(pickUpPower_W({ ...jet, return_m_s: 8 })).toBe(0);
    expect(pickUpPower_W({ ...jet, return_m_s: -8 })).toBe(2 * pickUpPower_W({ ...jet, return_m_s: 0 }));
  });

  it('is a band of tens of watts at 100 km/h on the reference axle, from the relation of the method page', () => {
    const band = jetPowerBand_W(gear)!;
    expect(band).toEqual({
      low_W: jetPowerBandRelation.of({ ...gear, fill: 0.1 }),
      high_W: jetPowerBandRelation.of({ ...gear, fill: 0.6 }),
    });
    expect(band.low_W).toBeGreaterThan(10);
    expect(band.high_W).toBeLessThan(100);
  });

  it('grows with the third power of speed where the gaps of the teeth carry most of it', () => {
    const twice = { ...gear, ring_rad_s: 2 * gear.ring_rad_s };
    const ratio = jetPowerBand_W(twice)!.high_W / jetPowerBand_W(gear)!.high_W;
    expect(ratio).toBeGreaterThan(2 ** 2.5);
    expect(ratio).toBeLessThan(2 ** 3);
  });

  it.each([{ immersion_m: -0.01 }, { immersion_m: 0.3 }, { ring_rad_s: 0 }, { density_kg_m3: 0 }, { nu_m2_s: NaN }])(
    'is not there for %o',
    (changed) => {
      expect(jetPowerBand_W({ ...gear, ...changed })).toBeNull();
      expect(jetPowerBandRelation.of({ ...gear, ...changed, fill: 0.3 })).toBeNull();
    },
  );
});

describe('oil on its way', () => {
  it('does not fall from a gear at rest, for none is thrown', () => {
    expect(flingDrop_m({ speed_m_s: 0, distance_m: 0.06, angle_rad: 0 })).toBeNull();
  });

  it('runs down a wall in a film that is no longer laminar above Reynolds number 1500, and the relation says so', () => {
    const thin = { nu_m2_s: 5e-6, flow_m2_s: 2.5e-3 };
    expect(outsideRange(filmReynoldsRelation, thin)).toEqual([
      'film Reynolds number is above the range: above it the film is no longer laminar.',
    ]);
    expect(filmReynolds({ ...thin, nu_m2_s: 0 })).toBeNull();
  });
});
