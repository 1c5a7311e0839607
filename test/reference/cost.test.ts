import { describe, expect, it } from 'vitest';
import {
  co2OfGallon_g,
  co2PerDistanceRelation,
  dutyEnergy_J_m,
  electricPerDistanceRelation,
  energyPerDistanceRelation,
  fuelFactors,
  fuelPerDistanceRelation,
  mpgAfter,
} from '../../src/physics/fuel.ts';
import { fromSI, unitNamed } from '../../src/quantity/units.ts';
import { agreesWithItsSources, expectNear } from './agreement.ts';

describe('what watts cost on the road', () => {
  agreesWithItsSources(energyPerDistanceRelation);
  agreesWithItsSources(fuelPerDistanceRelation);
  agreesWithItsSources(co2PerDistanceRelation);
  agreesWithItsSources(electricPerDistanceRelation);

  it('fuel-factors-eu: 0.264, 0.280 and 0.220 L/kWh, 2330 and 2640 g/L ((EU) 2020/728, tables 2 and 3)', () => {
    const perKwh = (f: { perEnergy_m3_J: number }) => fromSI(unitNamed('L/kWh')!, f.perEnergy_m3_J);
    expect([fuelFactors.petrol, fuelFactors.petrolTurbo, fuelFactors.diesel].map(perKwh)).toEqual([
      expect.closeTo(0.264, 12),
      expect.closeTo(0.28, 12),
      expect.closeTo(0.22, 12),
    ]);
    expect([fuelFactors.petrol.co2_kg_m3, fuelFactors.diesel.co2_kg_m3]).toEqual([2330, 2640]);
  });

  it('fuel-factors-epa: 8887 and 10 180 g a US gallon are 2347.7 and 2689.3 g/L (EPA-420-F-23-014)', () => {
    const gallon_L = unitNamed('US gal')!.factor * 1e3;
    expectNear(co2OfGallon_g.petrol / gallon_L, 2347.697, 1e-7);
    expectNear(co2OfGallon_g.diesel / gallon_L, 2689.2715, 1e-7);
  });

  it('fuel-mpg: 25 miles a US gallon and 0.1467 L/100 km more are 24.616 (independent script)', () => {
    expectNear(mpgAfter({ mpg: 25, more_m2: 0.14666667e-8 }), 24.616267, 1e-7);
    expect(mpgAfter({ mpg: 25, more_m2: -1e-6 })).toBeNull();
  });

  it('a duty goes by time in both sums: an hour at 200 W and 50 km/h, one at 800 W and 100 km/h, by hand', () => {
    const duty = [
      { share: 0.5, power_W: 200, speed_m_s: 50 / 3.6 },
      { share: 0.5, power_W: 800, speed_m_s: 100 / 3.6 },
    ];
    // 1 kWh over 150 km
    expect(dutyEnergy_J_m(duty)! * 1e5).toBeCloseTo((3.6e6 * 100) / 150, 6);
    expect(dutyEnergy_J_m([{ share: 1, power_W: 100, speed_m_s: 0 }])).toBeNull();
  });
});
