import { describe, expect, it } from 'vitest';
import {
  final_K,
  finalRelation,
  leftOver_W,
  oneStoreAt_K,
  oneStoreRelation,
  remainingRiseRelation,
  storeOfParts_J_K,
  timeConstant_s,
  timeToLimit,
  timeToLimitRelation,
} from '../../src/physics/lumped.ts';
import { logMeanRelation, riseSplit } from '../../src/physics/rise-split.ts';
import {
  fastConstantRelation,
  slowConstantRelation,
  twoStoreAt,
  twoStoreFinal,
  twoStoreFinalRelation,
} from '../../src/physics/two-store.ts';
import { coverShareRelation } from '../../src/physics/cover-share.ts';
import { agreesWithItsSources, expectNear } from './agreement.ts';

const axle = { start_K: 295.15, ambient_K: 295.15, heat_W: 900, shed_W_K: 11, store_J_K: 22000 };

/** Classical Runge–Kutta, fixed step; local to this test, so that nothing of the product integrates. */
function integrated(
  rate: (y: readonly number[]) => readonly number[],
  start: readonly number[],
  to_s: number,
  steps: number,
): readonly number[] {
  const h = to_s / steps;
  const moved = (y: readonly number[], k: readonly number[], by: number) => y.map((v, i) => v + by * k[i]!);
  let y = start;
  for (let i = 0; i < steps; i++) {
    const k1 = rate(y);
    const k2 = rate(moved(y, k1, h / 2));
    const k3 = rate(moved(y, k2, h / 2));
    const k4 = rate(moved(y, k3, h));
    y = y.map((v, j) => v + (h / 6) * (k1[j]! + 2 * k2[j]! + 2 * k3[j]! + k4[j]!));
  }
  return y;
}

describe('one store (Incropera & DeWitt, chapter 5; values computed by an independent script)', () => {
  agreesWithItsSources(oneStoreRelation);
  agreesWithItsSources(finalRelation);
  agreesWithItsSources(timeToLimitRelation);
  agreesWithItsSources(remainingRiseRelation);

  it('has a time constant of 2000 s from 22 kJ/K and 11 W/K', () => {
    expectNear(timeConstant_s(axle), 2000, 1e-7);
  });

  it('says "not reached" for 95 °C with 700 W, and that it ends at 85.636364 °C', () => {
    const answer = timeToLimit({ ...axle, heat_W: 700, limit_K: 368.15 });
    expect(answer?.kind).toBe('not reached');
    if (answer?.kind === 'not reached') expectNear(answer.final_K - 273.15, 85.636364, 1e-7);
  });

  it('a thermocouple bead of 0.706 mm answers in 1 s (Incropera & DeWitt, example 5.1, from memory)', () => {
    const perArea = { store_J_K: (8500 * 400 * 0.000706) / 6, shed_W_K: 400 };
    // 0.000706 is 0.00070588 rounded
    expectNear(timeConstant_s(perArea), 1, 0.001);
  });

  it('38 kg of iron and 1.74 kg of oil store 21047 J/K, 16.947784 % of it in the oil', () => {
    const oil = { mass_kg: 1.74, specificHeat_J_kgK: 2050 };
    const all = storeOfParts_J_K([{ mass_kg: 38, specificHeat_J_kgK: 460 }, oil]);
    expectNear(all, 21047, 1e-7);
    expectNear(storeOfParts_J_K([oil]) / all, 0.16947784, 1e-7);
  });

  it('a worm gear given 1006 W, 0.657 of it passed on, rises 50 K through 23 W/(m²·K) on 0.3 m² (textbook numerical on thermal rating)', () => {
    const rise_K = final_K({ ambient_K: 293.15, heat_W: 1006 * (1 - 0.657), shed_W_K: 23 * 0.3 })! - 293.15;
    // 0.657 is printed to three digits: half of its last moves the rise by 0.07 K
    expect(Math.abs(rise_K - 50)).toBeLessThanOrEqual(0.08);
  });

  it('agrees with a Runge–Kutta solution of its own differential equation', () => {
    const [T] = integrated(([t]) => [(900 - 11 * (t! - 295.15)) / 22000], [295.15], 1800, 180);
    expectNear(oneStoreAt_K({ ...axle, time_s: 1800 }), T!, 1e-11);
  });

  it('leaves nothing over in the energy balance of its own curve', () => {
    const at = (time_s: number) => oneStoreAt_K({ ...axle, time_s })!;
    const rate_K_s = (at(1801) - at(1799)) / 2;
    const left_W = leftOver_W({ ...axle, rate_K_s, rise_K: at(1800) - 295.15 });
    // a central difference over 2 s is 1/24 of a millionth off the slope
    expect(Math.abs(left_W)).toBeLessThanOrEqual(1e-4);
  });
});

describe('two stores (derived; whole seconds computed by an independent script)', () => {
  agreesWithItsSources(twoStoreFinalRelation);
  agreesWithItsSources(fastConstantRelation);
  agreesWithItsSources(slowConstantRelation);

  const stores = { oilStore_J_K: 6000, housingStore_J_K: 16000, coupling_W_K: 60, shed_W_K: 11 };
  const run = { ...stores, ambient_K: 295.15, heat_W: 900 };

  it('ends with the oil 15 K above the housing: 900 W through 60 W/K', () => {
    const end = twoStoreFinal(run)!;
    expect(end.oil_K - end.housing_K).toBeCloseTo(15, 9);
  });

  it.each([60, 600, 3600])('agrees with a Runge–Kutta solution of its own equations at %i s', (time_s) => {
    const start = { oil_K: 295.15, housing_K: 300.15 };
    const rate = ([T1, T2]: readonly number[]) => [
      (900 - 60 * (T1! - T2!)) / 6000,
      (60 * (T1! - T2!) - 11 * (T2! - 295.15)) / 16000,
    ];
    const [oil_K, housing_K] = integrated(rate, [start.oil_K, start.housing_K], time_s, time_s);
    const at = twoStoreAt({ ...run, start, time_s })!;
    expectNear(at.oil_K, oil_K!, 1e-10);
    expectNear(at.housing_K, housing_K!, 1e-10);
  });
});

describe('makes less, sheds more (log-mean identity)', () => {
  agreesWithItsSources(logMeanRelation);
  agreesWithItsSources(coverShareRelation);

  it('the two parts add up to the difference of rise, exactly', () => {
    const split = riseSplit({ baseline: { heat_W: 1010, rise_K: 84 }, other: { heat_W: 860, rise_K: 66 } })!;
    expect(split.byHeatMade_K + split.byShed_K).toBeCloseTo(66 - 84, 12);
  });

  it('with the same shed all of it is heat made, with the same heat all of it is shed', () => {
    const sameShed = riseSplit({ baseline: { heat_W: 1000, rise_K: 80 }, other: { heat_W: 900, rise_K: 72 } })!;
    expect(sameShed.byHeatMade_K).toBeCloseTo(-8, 12);
    expect(sameShed.byShed_K).toBeCloseTo(0, 12);
    const sameHeat = riseSplit({ baseline: { heat_W: 1000, rise_K: 80 }, other: { heat_W: 1000, rise_K: 72 } })!;
    expect(sameHeat.byShed_K).toBeCloseTo(-8, 12);
    expect(sameHeat.byHeatMade_K).toBeCloseTo(0, 12);
  });
});
