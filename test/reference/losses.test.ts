import { describe, expect, it } from 'vitest';
import {
  bearingDrag,
  bearingDragRelation,
  bearingLoadRelation,
  bearingViscousRelation,
} from '../../src/physics/bearing-drag.ts';
import {
  bearingFriction,
  bearingQuickRelation,
  bearingRollingRelation,
  bearingSlidingRelation,
  taperedSeries,
} from '../../src/physics/bearings.ts';
import {
  chordChurning_Nm,
  enclosedDiscRelation,
  enclosedRegimes,
  freeDiscLaminarRelation,
  freeDiscTurbulentRelation,
  hydraulicTorqueRelation,
} from '../../src/physics/churning-others.ts';
import {
  churning,
  churningExponents,
  churningPowerRelation,
  churningTorqueRelation,
  type Churned,
} from '../../src/physics/churning.ts';
import {
  lossFactorRelation,
  meanFrictionRelation,
  meshCoastRelation,
  meshCoefficientRelation,
  meshDriveRelation,
  meshSlidingRelation,
} from '../../src/physics/mesh.ts';
import { sealPowerRelation, sealTorqueRelation } from '../../src/physics/seals.ts';
import { agreesWithItsSources, expectNear } from './agreement.ts';

const rpm = 30 / Math.PI;
const rad = Math.PI / 180;
const axle: Omit<Churned, 'speed_rad_s' | 'nu_m2_s'> = {
  ...{ radius_m: 0.111, dip_m: 0.045, width_m: 0.035, module_m: 0.0054, teeth: 41, toothHeight_m: 0.0108 },
  ...{ pressureAngle_rad: 20 * rad, helixAngle_rad: 30 * rad, volume_m3: 0.002, density_kg_m3: 820 },
};
const roadSpeed = 74.6714456392;
const at = (speed_rad_s: number, nu_m2_s: number) => churning({ ...axle, speed_rad_s, nu_m2_s })!;

describe('churning by four regimes (Changenet, Leprince, Ville and Velex 2011, coefficients as read in an open implementation)', () => {
  agreesWithItsSources(churningTorqueRelation);
  agreesWithItsSources(churningPowerRelation);

  it('churn-4r-*: the groups of a road axle, by an independent script', () => {
    const hot = at(roadSpeed, 15e-6);
    expectNear(hot.Re, 19339.904, 1e-6);
    expectNear(hot.Fr, 63.111924, 1e-6);
    expectNear(hot.gamma_m_s2, 153.78148, 1e-6);
    expectNear(hot.coefficient, 0.0055479829, 1e-6);
    const fast = at(230, 15e-6);
    expectNear(fast.gamma_m_s2, 1458.9842, 1e-6);
    expectNear(fast.coefficient, 0.0042135217, 1e-6);
    expectNear(at(roadSpeed, 150e-6).coefficient, 0.0064719105, 1e-6);
  });

  it('churn-continuity-4000: the two rows meet at Reynolds 4000, as published pairs 1.366 and 0.239, 20.797 and 3.644', () => {
    expectNear(1.366 * 4000 ** -0.21, 0.239, 0.0015);
    expectNear(20.797 * 4000 ** -0.21, 3.644, 0.0015);
    const nu = (roadSpeed * axle.radius_m * axle.width_m) / 4000;
    expectNear(at(roadSpeed, nu * 1.0001).coefficient, at(roadSpeed, nu * 0.9999).coefficient, 0.0015);
  });

  it('churn-2007-equivalence: the older slow law is the same when its Reynolds number goes with R times D', () => {
    const [R, D, nu] = [0.111, 0.222, 150e-6];
    const older = (Re: number): number =>
      1.366 * (0.045 / D) ** 0.45 * (0.002 / D ** 3) ** 0.1 * ((roadSpeed ** 2 * R) / 9.80665) ** -0.6 * Re ** -0.21;
    expectNear(older((roadSpeed * R * D) / nu), at(roadSpeed, nu).coefficient, 1e-6);
    expectNear(older((roadSpeed * R * R) / nu) / older((roadSpeed * R * D) / nu), 1.1566882, 1e-6);
  });

  it('churn-exponents: power goes with speed to 1.8 hot and 1.59 cold, with viscosity to 0.21, and 1.24 when fast', () => {
    const slope = (a: number, b: number, x: number): number => Math.log(b / a) / Math.log(x);
    expect(slope(at(60, 15e-6).power_W, at(66, 15e-6).power_W, 1.1)).toBeCloseTo(churningExponents.speed.turbulent, 9);
    expect(slope(at(60, 250e-6).power_W, at(66, 250e-6).power_W, 1.1)).toBeCloseTo(churningExponents.speed.viscous, 9);
    expect(slope(at(60, 250e-6).power_W, at(60, 275e-6).power_W, 1.1)).toBeCloseTo(churningExponents.viscosity, 9);
    expect(slope(at(240, 15e-6).power_W, at(264, 15e-6).power_W, 1.1)).toBeCloseTo(churningExponents.speed.fast, 9);
    expect([churningExponents.speed.turbulent, churningExponents.speed.viscous, churningExponents.speed.fast]).toEqual([
      1.8, 1.59, 1.24,
    ]);
  });

  it('between the two regimes lies on the straight line of its ends', () => {
    const gammaOf = (speed: number): number => at(speed, 15e-6).gamma_m_s2;
    const speedFor = (gamma: number): number => roadSpeed * Math.sqrt(gamma / gammaOf(roadSpeed));
    expect(gammaOf(speedFor(1000))).toBeCloseTo(1000, 6);
    const middle = at(speedFor(1000), 15e-6);
    expect(middle.torque_Nm).toBeGreaterThan(at(speedFor(749), 15e-6).torque_Nm);
    expect(middle.torque_Nm).toBeLessThan(at(speedFor(1251), 15e-6).torque_Nm);
    // the card of the project: 0.97 and 3.66 N·m at the two ends, hot reference oil
    expect(at(speedFor(750), 15e-6).torque_Nm).toBeCloseTo(0.97, 2);
    expect(at(speedFor(1250), 15e-6).torque_Nm).toBeCloseTo(3.66, 2);
  });

  it('has no answer for a gear that does not dip, is covered whole, or stands still', () => {
    expect(churning({ ...axle, speed_rad_s: 70, nu_m2_s: 15e-6, dip_m: 0 })).toBeNull();
    expect(churning({ ...axle, speed_rad_s: 70, nu_m2_s: 15e-6, dip_m: 0.3 })).toBeNull();
    expect(churning({ ...axle, speed_rad_s: 0, nu_m2_s: 15e-6 })).toBeNull();
  });
});

describe('other laws of churning and discs (recalled; digits by an independent script)', () => {
  agreesWithItsSources(hydraulicTorqueRelation);
  agreesWithItsSources(freeDiscLaminarRelation);
  agreesWithItsSources(freeDiscTurbulentRelation);
  agreesWithItsSources(enclosedDiscRelation);

  it('churn-boness: a law by the chord gives seven times the one by four regimes', () => {
    const chord = chordChurning_Nm({ ...axle, speed_rad_s: roadSpeed, nu_m2_s: 15e-6 });
    expectNear(chord, 3.7042496, 1e-6);
    expect(chord! / at(roadSpeed, 15e-6).torque_Nm).toBeGreaterThan(7);
  });

  it('churn-iso14179-2: 1.029 N·m are 76.9 W at the same speed', () => {
    const T = hydraulicTorqueRelation.of({
      shape: 1,
      dip_m: 0.045,
      otherDip_m: 0,
      width_m: 0.035,
      pitchSpeed_m_s: 8.2885305,
    });
    expectNear(T! * roadSpeed, 76.855654, 1e-6);
  });

  it('churn-disc-enclosed: the four regimes, and the largest governs; a wall close by drags less than none', () => {
    const regimes = enclosedRegimes({ Re: 1e5, gapRatio: 0.1 });
    [0.00062831853, 0.0092939798, 0.0066032335, 0.008102148].forEach((expected, i) => {
      expectNear(regimes[i]!, expected, 1e-7);
    });
    expect(enclosedDiscRelation.of({ Re: 1e5, gapRatio: 0.1 })!).toBeLessThan(freeDiscLaminarRelation.of({ Re: 1e5 })!);
  });

  it('laws for one hot road axle lie apart by more than five times, so that none is a loss of an axle', () => {
    const inputs = { ...axle, speed_rad_s: roadSpeed, nu_m2_s: 15e-6 };
    const all = [at(roadSpeed, 15e-6).torque_Nm, chordChurning_Nm(inputs)!, 1.0292509];
    expect(Math.max(...all) / Math.min(...all)).toBeGreaterThan(5);
  });
});

describe('the mesh', () => {
  for (const relation of [meshDriveRelation, meshCoastRelation]) agreesWithItsSources(relation);
  agreesWithItsSources(meshSlidingRelation);
  agreesWithItsSources(meanFrictionRelation);
  agreesWithItsSources(lossFactorRelation);
  agreesWithItsSources(meshCoefficientRelation);

  it.each([
    [0.03, 50, 30, 1.89],
    [0.03, 45, 32, 1.16],
    [0.05, 50, 30, 3.07],
    [0.08, 40, 34, 1.31],
  ])('at friction %f and angles of %f and %f° it loses %f %% (card of the project)', (friction, one, two, percent) => {
    const eta = meshDriveRelation.of({
      ...{ friction, pressureAngle_rad: 20 * rad },
      ...{ pinionSpiral_rad: one * rad, ringSpiral_rad: two * rad },
    })!;
    expect(100 * (1 - eta)).toBeCloseTo(percent, 2);
  });

  it('mesh-Hv: a spur pair at 0.05 loses 0.84 %', () => {
    const Hv = lossFactorRelation.of({ pinionTeeth: 20, gearRatio: 2, helix_rad: 0, approach: 0.8, recess: 0.85 });
    expectNear(0.05 * Hv!, 0.0083939429, 1e-7);
  });

  it('coasting costs more than driving, and more friction costs more', () => {
    const eta = (friction: number, relation = meshDriveRelation) =>
      relation.of({ friction, pressureAngle_rad: 20 * rad, pinionSpiral_rad: 50 * rad, ringSpiral_rad: 30 * rad })!;
    expect(eta(0.05, meshCoastRelation)).toBeLessThan(eta(0.05));
    expect(eta(0.08)).toBeLessThan(eta(0.05));
  });
});

describe('bearings and seals', () => {
  agreesWithItsSources(bearingQuickRelation);
  agreesWithItsSources(bearingRollingRelation);
  agreesWithItsSources(bearingSlidingRelation);
  agreesWithItsSources(bearingDragRelation);
  agreesWithItsSources(bearingViscousRelation);
  agreesWithItsSources(bearingLoadRelation);
  agreesWithItsSources(sealTorqueRelation);
  agreesWithItsSources(sealPowerRelation);
  const bearing = {
    ...{ bore_m: 0.035, outside_m: 0.072, radial_N: 5000, axial_N: 3000, axialFactor: 1.6 },
    ...{ speed_rad_s: 2000 / rpm, nu_m2_s: 15e-6, ...taperedSeries['322']! },
  };

  it('brg: the factors of the catalogue model, by an independent script', () => {
    const found = bearingFriction(bearing)!;
    expectNear(found.G_rr, 0.88020286, 1e-6);
    expectNear(found.G_sl, 6868.7145, 1e-6);
    expectNear(found.heating, 0.9722722, 1e-6);
    expectNear(found.starving, 0.97295137, 1e-6);
    expectNear(found.mixing, 0.075919406, 1e-6);
    expectNear(found.sliding, 0.01095849, 1e-6);
  });

  it('brg: the factors of its drag, by an independent script', () => {
    const found = bearingDrag({
      ...{ bore_m: 0.035, outside_m: 0.072, width_m: 0.02425, oilHeight_m: 0.02, chartFactor: 2e-4 },
      ...{ speed_rad_s: 2000 / rpm, nu_m2_s: 15e-6 },
    })!;
    expectNear(found.K_roll, 1.2145946e-11, 1e-6);
    expectNear(found.C_w, 0.67413456, 1e-6);
    expectNear(found.angle_rad, 2.3685967, 1e-6);
    expectNear(found.R_s, 1493.1775, 1e-6);
  });

  it('two respectable models of one bearing lie within ± 50 % of their middle', () => {
    const { rolling_Nm, sliding_Nm } = bearingFriction(bearing)!;
    const other =
      bearingViscousRelation.of({ f0: 4, meanDiameter_m: 0.0535, speed_rad_s: 2000 / rpm, nu_m2_s: 15e-6 })! +
      bearingLoadRelation.of({ f1: 4e-4, load_N: 9600, meanDiameter_m: 0.0535 })!;
    const middle = (rolling_Nm + sliding_Nm + other) / 2;
    expect(Math.abs(other - middle) / middle).toBeLessThan(0.5);
    // 264.58 N·mm at 2000 rpm are 55.4 W (independent script)
    expectNear(other * (2000 / rpm), 55.41315, 1e-6);
  });

  it('the two branches of the classical law meet within a percent', () => {
    const of = (product: number) =>
      bearingViscousRelation.of({ f0: 4, meanDiameter_m: 0.0535, speed_rad_s: product / 15 / rpm, nu_m2_s: 15e-6 })!;
    expectNear(of(1999.99), of(2000.01), 0.01);
  });

  it('seal-14179-1: 0.22422 N·m at 2000 rpm are 46.96 W; the two reports lie within a factor of two', () => {
    const first = sealTorqueRelation.of({ constant_N: 3.737, shaft_m: 0.06 })! * (2000 / rpm);
    expectNear(first, 46.960527, 1e-6);
    const second = sealPowerRelation.of({ oil_K: 363.15, nu40_m2_s: 102e-6, shaft_m: 0.06, speed_rad_s: 2000 / rpm })!;
    expect(second / first).toBeGreaterThan(1);
    expect(second / first).toBeLessThan(2);
  });
});
