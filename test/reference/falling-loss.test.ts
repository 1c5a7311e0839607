import { describe, expect, it } from 'vitest';
import {
  fallingFinalRelation,
  fallingFinal_K,
  fallingLossRelation,
  fallingLossSlope_W_K,
  fallingLoss_W,
} from '../../src/physics/falling-loss.ts';
import {
  fallingStoreAt_K,
  fallingStoreRelation,
  fallingTimeRelation,
  fallingTimeTo_s,
} from '../../src/physics/falling-store.ts';
import { final_K, oneStoreAt_K, timeToLimit } from '../../src/physics/lumped.ts';
import { outsideRange } from '../../src/physics/relation.ts';
import {
  twoStoreFallingAt,
  twoStoreFallingFinal,
  twoStoreFallingFinalRelation,
  twoStoreFallingRelation,
} from '../../src/physics/two-store-falling.ts';
import { twoStoreAt, twoStoreFinal } from '../../src/physics/two-store.ts';
import { logLogLine } from '../../src/physics/viscosity.ts';
import { agreesWithItsSources, expectNear, givesAFigureOrNone } from './agreement.ts';

const line = logLogLine({ nu40_m2_s: 102e-6, nu100_m2_s: 15e-6 })!;
const loss = { line, standing_W: 600, viscous_W: 150, reference_m2_s: 100e-6, exponent: 0.5 };
const axle = { loss, ambient_K: 295.15, shed_W_K: 11, store_J_K: 22000, start_K: 295.15 };
const even = { ...axle, loss: { ...loss, standing_W: 900, viscous_W: 0 } };
const stores = { oilStore_J_K: 6000, housingStore_J_K: 16000, coupling_W_K: 60, shed_W_K: 11 };
const start = { oil_K: 295.15, housing_K: 295.15 };

describe('one store whose heat falls as the oil warms (25-digit solution by an independent script)', () => {
  agreesWithItsSources(fallingLossRelation);
  agreesWithItsSources(fallingFinalRelation);
  agreesWithItsSources(fallingStoreRelation);
  agreesWithItsSources(fallingTimeRelation);
  givesAFigureOrNone(fallingLossRelation);
  givesAFigureOrNone(fallingFinalRelation);
  givesAFigureOrNone(fallingStoreRelation);
  givesAFigureOrNone(fallingTimeRelation);

  it.each([10, 600, 4000, 20000])('with nothing that falls is the one store of constant heat, after %i s', (time_s) => {
    expectNear(fallingStoreAt_K({ ...even, time_s }), oneStoreAt_K({ ...even, heat_W: 900, time_s })!, 1e-12);
  });

  it('and takes its time to a limit, and ends where it ends', () => {
    const limit = timeToLimit({ ...even, heat_W: 900, limit_K: 368.15 })!;
    expect(limit.kind).toBe('reached');
    if (limit.kind === 'reached') expectNear(fallingTimeTo_s({ ...even, to_K: 368.15 }), limit.time_s, 1e-12);
    expectNear(fallingFinal_K(even), final_K({ ...even, heat_W: 900 })!, 1e-14);
  });

  it('the time to a temperature and the temperature after that time are one', () => {
    for (const to_K of [300, 330, 355]) {
      expectNear(fallingStoreAt_K({ ...axle, time_s: fallingTimeTo_s({ ...axle, to_K })! }), to_K, 1e-11);
    }
  });

  it('is warmer on the way than a store that makes its final heat throughout, and ends with it', () => {
    const heat_W = fallingLoss_W({ ...loss, oil_K: fallingFinal_K(axle)! })!;
    for (const time_s of [300, 1800, 5000]) {
      expect(fallingStoreAt_K({ ...axle, time_s })!).toBeGreaterThan(oneStoreAt_K({ ...axle, heat_W, time_s })!);
    }
    expectNear(fallingStoreAt_K({ ...axle, time_s: 1e9 }), final_K({ ...axle, heat_W })!, 1e-12);
  });

  it('ends warmer with more loss, a thicker share of it, warmer air and less shed', () => {
    const end_K = fallingFinal_K(axle)!;
    expect(fallingFinal_K({ ...axle, loss: { ...loss, standing_W: 650 } })!).toBeGreaterThan(end_K);
    expect(fallingFinal_K({ ...axle, loss: { ...loss, viscous_W: 200 } })!).toBeGreaterThan(end_K);
    expect(fallingFinal_K({ ...axle, shed_W_K: 10 })!).toBeGreaterThan(end_K);
    const warmerAir_K = fallingFinal_K({ ...axle, ambient_K: 305.15 })! - end_K;
    expect(warmerAir_K).toBeGreaterThan(5);
    // less than the air itself, for the loss falls
    expect(warmerAir_K).toBeLessThan(10);
  });

  it('the fall a kelvin is that of the heat over a tenth of a kelvin', () => {
    const at = (oil_K: number) => fallingLoss_W({ ...loss, oil_K })!;
    expectNear(fallingLossSlope_W_K({ ...loss, oil_K: 350 }), (at(349.95) - at(350.05)) / 0.1, 1e-5);
  });

  it('does not reach a limit at or above its end, nor one behind its start', () => {
    expect(fallingTimeTo_s({ ...axle, to_K: 356.3 })).toBeNull();
    expect(fallingTimeTo_s({ ...axle, to_K: fallingFinal_K(axle)! })).toBeNull();
    expect(fallingTimeTo_s({ ...axle, to_K: 290 })).toBeNull();
    expect(fallingTimeTo_s({ ...axle, to_K: 295.15 })).toBe(0);
  });

  it('has no answer for a loss below 0, an exponent below 0, no store or no shed', () => {
    expect(fallingLoss_W({ ...loss, standing_W: -1, oil_K: 350 })).toBeNull();
    expect(fallingLoss_W({ ...loss, exponent: -0.1, oil_K: 350 })).toBeNull();
    expect(fallingStoreAt_K({ ...axle, store_J_K: 0, time_s: 10 })).toBeNull();
    expect(fallingFinal_K({ ...axle, shed_W_K: 0 })).toBeNull();
    expect(fallingStoreAt_K({ ...axle, time_s: -1 })).toBeNull();
  });

  it('says outside its range where the exponent is larger than is common', () => {
    const at = { nu40_m2_s: 102e-6, nu100_m2_s: 15e-6, oil_K: 350, ...loss, exponent: 0.9 };
    expect(outsideRange(fallingLossRelation, at)).toHaveLength(1);
  });
});

describe('two stores whose heat falls as the oil warms (SciPy, DOP853, 1e-13)', () => {
  agreesWithItsSources(twoStoreFallingFinalRelation);
  agreesWithItsSources(twoStoreFallingRelation);
  givesAFigureOrNone(twoStoreFallingFinalRelation);
  givesAFigureOrNone(twoStoreFallingRelation);

  it.each([
    [60, 22.70471972],
    [600, 37.87444624],
    [3600, 73.57715801],
  ])('after %i s the housing is at %f °C', (time_s, housing_C) => {
    const at = twoStoreFallingAt({ ...stores, loss, ambient_K: 295.15, start, time_s })!;
    expect(Math.abs(at.housing_K - 273.15 - housing_C)).toBeLessThanOrEqual(1e-6);
  });

  it('rests with the housing at 82.261997 °C, and is there after a day', () => {
    const end = twoStoreFallingFinal({ ...stores, loss, ambient_K: 295.15 })!;
    expect(Math.abs(end.housing_K - 273.15 - 82.261997)).toBeLessThanOrEqual(1e-6);
    const late = twoStoreFallingAt({ ...stores, loss, ambient_K: 295.15, start, time_s: 86400 })!;
    expectNear(late.oil_K, end.oil_K, 1e-12);
    // and just before the end is taken as reached, the run is there by itself
    const before = twoStoreFallingAt({ ...stores, loss, ambient_K: 295.15, start, time_s: 60000 })!;
    expectNear(before.oil_K, end.oil_K, 1e-10);
    expectNear(before.housing_K, end.housing_K, 1e-10);
  });

  it('with nothing that falls are the two stores of constant heat', () => {
    const run = { ...stores, ambient_K: 295.15, start: { oil_K: 290, housing_K: 300 } };
    const constant = { ...run, heat_W: 900 };
    const at = twoStoreFallingAt({ ...run, loss: even.loss, time_s: 700 })!;
    expectNear(at.oil_K, twoStoreAt({ ...constant, time_s: 700 })!.oil_K, 1e-9);
    expectNear(at.housing_K, twoStoreAt({ ...constant, time_s: 700 })!.housing_K, 1e-9);
    expectNear(twoStoreFallingFinal({ ...run, loss: even.loss })!.oil_K, twoStoreFinal(constant)!.oil_K, 1e-13);
  });

  it('joined with little resistance are one store', () => {
    const time_s = 1800;
    const joined = { ...stores, coupling_W_K: 5000 };
    const two = twoStoreFallingAt({ ...joined, loss, ambient_K: 295.15, start, time_s })!;
    expect(Math.abs(two.oil_K - fallingStoreAt_K({ ...axle, time_s })!)).toBeLessThan(0.15);
  });

  it('have no answer where they would take more steps than it is worth, or without a coupling', () => {
    const run = { ...stores, loss, ambient_K: 295.15, start, time_s: 1800 };
    expect(twoStoreFallingAt({ ...run, coupling_W_K: 1e9 })).toBeNull();
    expect(twoStoreFallingAt({ ...run, coupling_W_K: 0 })).toBeNull();
  });
});
