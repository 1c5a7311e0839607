import { describe, expect, it } from 'vitest';
import { lossRelation, shaftPowerRelation } from '../../src/physics/power.ts';
import {
  centrifugalRatio,
  centrifugalRatioRelation,
  pinionAtRoadSpeedRelation,
  pitchLineRelation,
  ringReynolds,
  ringReynoldsRelation,
  ringSpeed_rad_s,
  roadSpeed_m_s,
  rollingRadius_m,
  wheelSpeed_rad_s,
} from '../../src/physics/speeds.ts';
import { expectNear, agreesWithItsSources } from './agreement.ts';

const rpm = Math.PI / 30;

describe('speeds (definitions; values computed by an independent script)', () => {
  agreesWithItsSources(pinionAtRoadSpeedRelation);
  agreesWithItsSources(pitchLineRelation);
  agreesWithItsSources(centrifugalRatioRelation);
  agreesWithItsSources(ringReynoldsRelation);

  it('100 km/h on a radius of 0.372 m turns the wheel at 74.671446 rad/s, 713.05978 rpm', () => {
    const output_rad_s = wheelSpeed_rad_s({ road_m_s: 100 / 3.6, rollingRadius_m: 0.372 })!;
    expectNear(output_rad_s, 74.671446, 1e-7);
    expectNear(output_rad_s / rpm, 713.05978, 1e-7);
  });

  it('690 turns a mile are a rolling radius of 0.37121022 m', () => {
    expectNear(rollingRadius_m({ distance_m: 1609.344, turns: 690 }), 0.37121022, 1e-7);
  });

  it('60 mph with 690 turns a mile is 690 rpm, for 60 mph is a mile a minute', () => {
    const rollingRadius = rollingRadius_m({ distance_m: 1609.344, turns: 690 })!;
    expectNear(wheelSpeed_rad_s({ road_m_s: 60 * 0.44704, rollingRadius_m: rollingRadius })! / rpm, 690, 1e-12);
    const teeth = { teethPinion: 100, teethRing: 373, hubReduction: 1 };
    expectNear(ringSpeed_rad_s({ pinion_rad_s: 2573.7 * rpm, teeth }) / rpm, 690, 1e-12);
  });

  it('centrifugal ratio 1 on a ring of 0.111 m is 89.757393 rpm, 12.587639 km/h', () => {
    const ring_rad_s = 89.757393 * rpm;
    expectNear(centrifugalRatio({ ring_rad_s, radius_m: 0.111 }), 1, 2e-7);
    expectNear(roadSpeed_m_s({ output_rad_s: ring_rad_s, rollingRadius_m: 0.372 }) * 3.6, 12.587639, 1e-7);
  });

  it('the same gear has 18.595742 times the Reynolds number in oil of 100 °C as in oil of 20 °C', () => {
    const gear = { ring_rad_s: 74.67, radius_m: 0.111, face_m: 0.035 };
    const hot = ringReynolds({ ...gear, nu_m2_s: 15e-6 })!;
    const cold = ringReynolds({ ...gear, nu_m2_s: 278.93613e-6 })!;
    expectNear(hot / cold, 18.595742, 1e-6);
  });
});

describe('power and loss', () => {
  agreesWithItsSources(shaftPowerRelation);
  agreesWithItsSources(lossRelation);

  it('0.1 % of the input torque moves the loss of that check by 2.06 % (metrology of torque differences, printed so)', () => {
    const [check] = lossRelation.checks;
    const loss = lossRelation.of(check!.inputs)!;
    const off = lossRelation.of({ ...check!.inputs, in_Nm: check!.inputs.in_Nm * 1.001 })!;
    expect(Math.abs((off / loss - 1) * 100 - 2.06)).toBeLessThanOrEqual(0.005);
  });
});
