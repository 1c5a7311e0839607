import { describe, expect, it } from 'vitest';
import {
  carriedFlowRelation,
  carryBoundaryLayerRelation,
  carryGravityRelation,
  carryTeethRelation,
  gravityFilm_m,
  gravityFlow_m2_s,
  immersedTime_s,
} from '../../src/physics/carry-over.ts';
import {
  flatWallForceRelation,
  flingDropRelation,
  jetPowerBandRelation,
  kineticPowerRelation,
  pickUpPowerRelation,
} from '../../src/physics/jets.ts';
import { gravity_m_s2 } from '../../src/physics/speeds.ts';
import { fallingFilmRelation, filmReynoldsRelation, wallFilm_m } from '../../src/physics/wall-film.ts';
import { agreesWithItsSources, expectNear } from './agreement.ts';

const at100kmh_m_s = 8.2885305;

describe('oil that a ring gear carries (values computed by an independent script)', () => {
  agreesWithItsSources(carryGravityRelation);
  agreesWithItsSources(carryBoundaryLayerRelation);
  agreesWithItsSources(carryTeethRelation);
  agreesWithItsSources(carriedFlowRelation);

  it('a rising rim holds a film of 0.0035606072 m against gravity at 100 km/h in 15 mm²/s', () => {
    expectNear(gravityFilm_m({ nu_m2_s: 15e-6, speed_m_s: at100kmh_m_s }), 0.0035606072, 1e-7);
  });

  it('a point of the rim is in the oil for 0.025017193 s, 45 mm in', () => {
    expectNear(immersedTime_s({ radius_m: 0.111, immersion_m: 0.045, speed_m_s: at100kmh_m_s }), 0.025017193, 1e-6);
  });

  // Printed as g Q²/(3 ν U³) ≤ 4/27, the condition for a film on a turning roller (problem of Moffatt 1977).
  it.each([
    { nu_m2_s: 15e-6, speed_m_s: at100kmh_m_s },
    { nu_m2_s: 278.93613e-6, speed_m_s: 1 },
  ])('the flow against gravity is the largest that a roller supports, 4/27, at $speed_m_s m/s', (at) => {
    const flow_m2_s = gravityFlow_m2_s(at);
    expectNear((gravity_m_s2 * flow_m2_s ** 2) / (3 * at.nu_m2_s * at.speed_m_s ** 3), 4 / 27, 1e-12);
  });
});

describe('oil in flight and on the wall (momentum theorem, ballistics; values computed by an independent script)', () => {
  agreesWithItsSources(pickUpPowerRelation);
  agreesWithItsSources(kineticPowerRelation);
  agreesWithItsSources(flatWallForceRelation);
  agreesWithItsSources(flingDropRelation);
  agreesWithItsSources(jetPowerBandRelation);
  agreesWithItsSources(fallingFilmRelation);
  agreesWithItsSources(filmReynoldsRelation);

  it('a wall of 0.2 × 0.2 m holds 90 mL hot and 239 mL cold of 0.5 L/s that runs down it', () => {
    const held_mL = (nu_m2_s: number): number => wallFilm_m({ nu_m2_s, flow_m2_s: 0.5e-3 / 0.2 }) * 0.2 * 0.2 * 1e6;
    expect(Math.abs(held_mL(15e-6) - 90)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(held_mL(278.93613e-6) - 239)).toBeLessThanOrEqual(0.5);
  });
});
