import { describe, expect, it } from 'vitest';
import { gravityFilm_m, gravityFlow_m2_s } from '../../src/physics/carry-over.ts';
import { dropDragRelation, dropReynoldsRelation, speedLostRelation } from '../../src/physics/drop-drag.ts';
import { outsideRange } from '../../src/physics/relation.ts';
import {
  largestRollerFlow,
  mostOnRollerRelation,
  rollerFilm,
  rollerLoad,
  rollerLoadRelation,
} from '../../src/physics/roller-film.ts';
import { capillaryLengthRelation, capillaryNumberRelation, drawnFilmRelation } from '../../src/physics/thin-film.ts';
import { agreesWithItsSources, expectNear, givesAFigureOrNone } from './agreement.ts';

const slow = { viscosity_Pa_s: 0.0887, speed_m_s: 0.05, tension_N_m: 0.03 };

/** Curvature in which the film of a slow wall ends, h‴ = (h − 1)/h³ from h 1: fourth-order steps, local to this test. */
function endingCurvature(): number {
  type State = readonly [number, number, number];
  const rate = ([h, slope, curvature]: State): State => [slope, curvature, (h - 1) / h ** 3];
  const moved = (y: State, k: State, by: number): State => [y[0] + by * k[0], y[1] + by * k[1], y[2] + by * k[2]];
  const seed = 1e-6;
  let y: State = [1 + seed, seed, seed];
  const step = 0.01;
  for (let i = 0; i < 20_000; i++) {
    const k1 = rate(y);
    const k2 = rate(moved(y, k1, step / 2));
    const k3 = rate(moved(y, k2, step / 2));
    const k4 = rate(moved(y, k3, step));
    y = moved(moved(moved(moved(y, k1, step / 6), k2, step / 3), k3, step / 3), k4, step / 6);
  }
  return y[2];
}

describe('film drawn out by a slow wall', () => {
  agreesWithItsSources(capillaryNumberRelation);
  agreesWithItsSources(capillaryLengthRelation);
  agreesWithItsSources(drawnFilmRelation);

  it('50 mm/s in cold oil: Ca 0.14783333, 0.49491153 mm by surface tension, 0.72098603 mm by weight (independent script)', () => {
    const capillary = capillaryNumberRelation.of(slow)!;
    const length_m = capillaryLengthRelation.of({ tension_N_m: 0.03, density_kg_m3: 870 })!;
    expectNear(capillary, 0.14783333, 1e-7);
    expectNear(drawnFilmRelation.of({ capillaryLength_m: length_m, capillary })! * 1e3, 0.49491153, 1e-7);
    expectNear(gravityFilm_m({ nu_m2_s: 0.0887 / 870, speed_m_s: 0.05 }) * 1e3, 0.72098603, 1e-7);
  });

  it('its factor follows from the equation of the film, solved here by steps, to 0.2 percent', () => {
    // h = κ (3 Ca)^(2/3) l/√2, for the wall's meniscus has the curvature √2/l
    const factor = (endingCurvature() * 3 ** (2 / 3)) / Math.SQRT2;
    expectNear(drawnFilmRelation.of({ capillaryLength_m: 1, capillary: 1 }), factor, 0.0021);
  });

  it('is thinner than what weight alone would let stand, and warns above a capillary number of 0.01', () => {
    for (const speed_m_s of [1e-5, 1e-4, 1e-3]) {
      const at = { capillaryLength_m: 1.875e-3, capillary: capillaryNumberRelation.of({ ...slow, speed_m_s })! };
      expect(outsideRange(drawnFilmRelation, at)).toEqual([]);
      expect(drawnFilmRelation.of(at)!).toBeLessThan(gravityFilm_m({ nu_m2_s: 0.0887 / 870, speed_m_s }));
    }
    expect(outsideRange(drawnFilmRelation, { capillaryLength_m: 1.875e-3, capillary: 0.15 })).toEqual([
      'capillary number is above the range: above it weight and not surface tension limits the film.',
    ]);
  });

  it('is not there without surface tension or for a wall that goes in', () => {
    expect(capillaryNumberRelation.of({ ...slow, tension_N_m: 0 })).toBeNull();
    expect(capillaryLengthRelation.of({ tension_N_m: 0.03, density_kg_m3: 0 })).toBeNull();
    expect(drawnFilmRelation.of({ capillaryLength_m: 1e-3, capillary: -0.001 })).toBeNull();
  });
});

describe('film on a turning roller', () => {
  agreesWithItsSources(rollerLoadRelation);
  agreesWithItsSources(mostOnRollerRelation);

  it.each([0, 0.4, 1.2, Math.PI / 2, 2.5, Math.PI])('carries its flow at %f rad', (rise_rad) => {
    for (const flow of [0.1, 0.5, largestRollerFlow]) {
      const h = rollerFilm({ flow, rise_rad })!;
      expect(h - (h ** 3 * Math.cos(rise_rad)) / 3).toBeCloseTo(flow, 9);
    }
  });

  it('is as thick as the unit where the rim rises straight, at the largest flow; the flow is that of a rising wall', () => {
    expectNear(rollerFilm({ flow: largestRollerFlow, rise_rad: 0 }), 1, 1e-7);
    const at = { nu_m2_s: 15e-6, speed_m_s: 0.5 };
    expectNear(gravityFlow_m2_s(at) / (at.speed_m_s * gravityFilm_m(at)), largestRollerFlow, 1e-12);
  });

  it('of little flow is as thick all round: 2π of it', () => {
    expectNear(rollerLoad({ flow: 1e-4 }), 2 * Math.PI * 1e-4, 1e-7);
  });

  it('more flow takes more oil, and none carries more than the largest', () => {
    const loads = [0.1, 0.3, 0.5, 0.65, largestRollerFlow].map((flow) => rollerLoad({ flow })!);
    expect([...loads].sort((a, b) => a - b)).toEqual(loads);
    expect(rollerLoad({ flow: 0.67 })).toBeNull();
    expect(rollerLoad({ flow: -0.1 })).toBeNull();
  });

  it('holds more when it is larger, faster or its oil is thicker', () => {
    const roller = { radius_m: 0.1, nu_m2_s: 100e-6, speed_m_s: 0.3 };
    const held = mostOnRollerRelation.of(roller)!;
    expectNear(mostOnRollerRelation.of({ ...roller, radius_m: 0.2 })! / held, 2, 1e-12);
    expectNear(mostOnRollerRelation.of({ ...roller, speed_m_s: 0.6 })! / held, Math.SQRT2, 1e-12);
    expectNear(mostOnRollerRelation.of({ ...roller, nu_m2_s: 400e-6 })! / held, 2, 1e-12);
    expect(mostOnRollerRelation.of({ ...roller, speed_m_s: -0.3 })).toBeNull();
  });
});

describe('drops in still air (values computed by an independent script)', () => {
  agreesWithItsSources(dropReynoldsRelation);
  agreesWithItsSources(dropDragRelation);
  agreesWithItsSources(speedLostRelation);

  const lost = (diameter_m: number, distance_m = 0.06): number => {
    const air = { air_kg_m3: 1.2, air_Pa_s: 1.8e-5 };
    const reynolds = dropReynoldsRelation.of({ diameter_m, speed_m_s: 8.29, ...air })!;
    const drag = dropDragRelation.of({ reynolds })!;
    return speedLostRelation.of({ drag, air_kg_m3: air.air_kg_m3, oil_kg_m3: 820, distance_m, diameter_m })!;
  };

  it('0.3 mm at 8.29 m/s lose 0.17417663 of their speed over 60 mm, 1 mm about 4 percent', () => {
    expectNear(lost(0.3e-3), 0.17417663, 1e-6);
    expect(Math.abs(lost(1e-3) - 0.04)).toBeLessThanOrEqual(0.005);
  });

  it('a finer drop and a longer way cost more, and never all of it', () => {
    expect(lost(0.1e-3)).toBeGreaterThan(lost(0.3e-3));
    expect(lost(0.3e-3, 0.12)).toBeGreaterThan(lost(0.3e-3));
    expect(lost(0.05e-3, 10)).toBeLessThanOrEqual(1);
    expect(lost(0.3e-3, 0)).toBe(0);
  });

  it('has no drag at rest and warns of a drop that is too fast for its law', () => {
    expect(dropDragRelation.of({ reynolds: 0 })).toBeNull();
    expect(speedLostRelation.of({ drag: 1, air_kg_m3: 1.2, oil_kg_m3: 0, distance_m: 1, diameter_m: 1 })).toBeNull();
    expect(outsideRange(dropDragRelation, { reynolds: 4000 })).toHaveLength(1);
  });
});

describe('no film and no drop at all', () => {
  givesAFigureOrNone(capillaryNumberRelation);
  givesAFigureOrNone(capillaryLengthRelation);
  givesAFigureOrNone(drawnFilmRelation);
  givesAFigureOrNone(rollerLoadRelation);
  givesAFigureOrNone(mostOnRollerRelation);
  givesAFigureOrNone(dropReynoldsRelation);
  givesAFigureOrNone(dropDragRelation);
  givesAFigureOrNone(speedLostRelation);
});
