import { describe, expect, it } from 'vitest';
import { levelByArea_m, volumeByArea_m3 } from '../../src/physics/area-table.ts';
import { densityByVcf_kg_m3 } from '../../src/physics/density.ts';
import { immersionRelation, levelRelation, tiltDropRelation } from '../../src/physics/immersion.ts';
import {
  halfAngleRelation,
  immersedFace_m2,
  immersedFaceRelation,
  wettedSurface_m2,
} from '../../src/physics/wetted.ts';
import { agreesWithItsSources, expectNear } from './agreement.ts';

const table = [
  { h_m: 0, area_m2: 0.01 },
  { h_m: 0.02, area_m2: 0.018 },
  { h_m: 0.06, area_m2: 0.026 },
  { h_m: 0.1, area_m2: 0.028 },
];

describe('level and immersion (definitions)', () => {
  agreesWithItsSources(levelRelation);
  agreesWithItsSources(immersionRelation);
  agreesWithItsSources(tiltDropRelation);

  it('a table of surfaces holds 0.91 L below 50 mm, and 1.5 L stand at 72.916504 mm (computed by an independent script)', () => {
    expectNear(volumeByArea_m3({ table, h_m: 0.05 }), 0.00091, 1e-7);
    expectNear(levelByArea_m({ table, volume_m3: 0.0015 }), 0.072916504, 1e-7);
  });

  it('1.5 L of cold oil stand 4.4715208 mm higher at 120 °C (computed by an independent script, housing rigid)', () => {
    const cold = densityByVcf_kg_m3({ density15_kg_m3: 870, oil_K: 293.15 });
    const hot = densityByVcf_kg_m3({ density15_kg_m3: 870, oil_K: 393.15 });
    const volume_m3 = (0.0015 * cold) / hot;
    expectNear(volume_m3, 0.0016196472, 1e-6);
    const rise_m = levelByArea_m({ table, volume_m3 })! - levelByArea_m({ table, volume_m3: 0.0015 })!;
    expectNear(rise_m, 0.0044715208, 1e-6);
  });
});

describe('wetted wheel (geometry; values computed by an independent script)', () => {
  agreesWithItsSources(halfAngleRelation);
  agreesWithItsSources(immersedFaceRelation);

  it('the reference axle, 45 mm in the oil, wets 0.011235906 m² of faces and 0.029817426 m² in all', () => {
    const wheel = {
      radius_m: 0.111,
      face_m: 0.035,
      teeth: 41,
      toothDepth_m: 0.0108,
      pressureAngle_rad: (20 * Math.PI) / 180,
      spiralAngle_rad: (30 * Math.PI) / 180,
    };
    expectNear(2 * immersedFace_m2({ radius_m: 0.111, immersion_m: 0.045 })!, 0.011235906, 1e-7);
    expectNear(wettedSurface_m2({ wheel, immersion_m: 0.045 }), 0.029817426, 1e-7);
    const bandOnly = { ...wheel, teeth: 0 };
    const faces = 2 * immersedFace_m2({ radius_m: 0.111, immersion_m: 0.045 })!;
    expectNear(wettedSurface_m2({ wheel: bandOnly, immersion_m: 0.045 })! - faces, 0.0072574519, 1e-7);
  });

  it('wholly in the oil, one face is the whole disc', () => {
    expect(immersedFace_m2({ radius_m: 0.111, immersion_m: 0.222 })).toBeCloseTo(Math.PI * 0.111 ** 2, 12);
  });
});
