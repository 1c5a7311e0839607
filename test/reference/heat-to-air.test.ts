import { describe, expect, it } from 'vitest';
import { besselI, besselK } from '../../src/physics/bessel.ts';
import {
  crossFlowPowerRelation,
  crossFlowRelation,
  filmCoefficientRelation,
  flatPlateRelation,
  freeCylinderRelation,
  freePlateRelation,
  rayleighRelation,
} from '../../src/physics/convection.ts';
import {
  annularFinRelation,
  finnedConductanceRelation,
  finSpacingRelation,
  straightFinRelation,
} from '../../src/physics/fins.ts';
import {
  blackBodyRelation,
  radiationCubicRelation,
  radiationRelation,
  stefanBoltzmann,
} from '../../src/physics/radiation.ts';
import { wallRelation } from '../../src/physics/wall.ts';
import { agreesWithItsSources, expectNear } from './agreement.ts';

describe('air at a warm surface', () => {
  agreesWithItsSources(rayleighRelation);
  agreesWithItsSources(freePlateRelation);
  agreesWithItsSources(freeCylinderRelation);
  agreesWithItsSources(crossFlowRelation);
  agreesWithItsSources(crossFlowPowerRelation);
  agreesWithItsSources(flatPlateRelation);
  agreesWithItsSources(filmCoefficientRelation);

  it('ht-cc-plate-inc92: a fire screen of 0.71 by 1.02 m sheds 1060 W (Incropera and DeWitt, Example 9.2)', () => {
    const Nu = freePlateRelation.of({ Ra: 1.813e9, Pr: 0.69 })!;
    const h = filmCoefficientRelation.of({ Nu, conductivity_W_mK: 0.0338, length_m: 0.71 })!;
    expectNear(h * 0.71 * 1.02 * (232 - 23), 1060, 0.005);
  });

  it('ht-plate-inc71: a plate of 0.5 m sheds 570 W a metre (Incropera and DeWitt, Example 7.1, recalled)', () => {
    expectNear((10 * 0.5) / 0.000521, 9597, 1e-4);
    const Nu = flatPlateRelation.of({ Re: 9597, Pr: 0.687 })!;
    const h = filmCoefficientRelation.of({ Nu, conductivity_W_mK: 0.0364, length_m: 0.5 })!;
    expectNear(h * 0.5 * (300 - 27), 570, 0.003);
  });

  it('two laws for one cylinder lie within a quarter of each other over their common range', () => {
    for (const Re of [4e3, 6071, 2e4, 3.9e4, 4.1e4, 2e5, 4e5]) {
      const [one, two] = [crossFlowRelation.of({ Re, Pr: 0.7 })!, crossFlowPowerRelation.of({ Re, Pr: 0.7 })!];
      expect(Math.abs(one / two - 1), String(Re)).toBeLessThan(0.25);
    }
  });

  it('more air carries off more, and no air nothing but a little', () => {
    expect(crossFlowRelation.of({ Re: 2e4, Pr: 0.7 })!).toBeGreaterThan(crossFlowRelation.of({ Re: 1e4, Pr: 0.7 })!);
    expect(freePlateRelation.of({ Ra: 0, Pr: 0.7 })).toBeCloseTo(0.825 ** 2, 12);
  });
});

describe('radiation', () => {
  agreesWithItsSources(blackBodyRelation);
  agreesWithItsSources(radiationRelation);
  agreesWithItsSources(radiationCubicRelation);

  it('ht-radconv-inc12: a pipe of 70 mm at 200 °C loses 998 W a metre (Incropera and DeWitt, Example 1.2, recalled)', () => {
    const h = radiationRelation.of({ surface_K: 473, around_K: 298, emissivity: 0.8 })!;
    expectNear(Math.PI * 0.07 * (15 + h) * 175, 998, 0.002);
  });

  it('ht-rad-14179-2: the short form is four sigma, within 0.3 %', () => {
    expectNear(0.23e-6, 4 * stefanBoltzmann, 0.015);
    const inputs = { surface_K: 363.15, around_K: 293.15, emissivity: 0.9 };
    expectNear(radiationCubicRelation.of(inputs), radiationRelation.of(inputs)!, 0.003);
  });
});

describe('fins and walls', () => {
  agreesWithItsSources(straightFinRelation);
  agreesWithItsSources(annularFinRelation);
  agreesWithItsSources(finnedConductanceRelation);
  agreesWithItsSources(finSpacingRelation);
  agreesWithItsSources(wallRelation);

  it.each([0.1, 0.5, 1, 2.3, 5, 12])('the Bessel functions keep their Wronskian at %f (DLMF 10.28.2)', (x) => {
    expectNear(besselI(0, x) * besselK(1, x) + besselI(1, x) * besselK(0, x), 1 / x, 1e-11);
  });

  it.each([
    [0, 1, 1.2660658778, 0.4210244382],
    [1, 1, 0.565159104, 0.6019072302],
    [0, 2, 2.2795853023, 0.1138938727],
    [1, 2, 1.5906368546, 0.1398658818],
  ] as const)(
    'order %i at %f: I %f, K %f (Abramowitz and Stegun, tables 9.8 and 9.9, from memory)',
    (order, x, I, K) => {
      expectNear(besselI(order, x), I, 1e-9);
      expectNear(besselK(order, x), K, 1e-9);
    },
  );

  it('ht-finarray-natural: fourteen fins shed 34.2 W (circulated solution, after Bar-Cohen and Rohsenow 1984)', () => {
    // its correction: each fin is 24.5 mm high with its tip
    const [h, N] = [4.83, 14];
    const eta = straightFinRelation.of({
      transfer_W_m2K: h,
      conductivity_W_mK: 240,
      thickness_m: 0.001,
      height_m: 0.024,
    })!;
    const hA = finnedConductanceRelation.of({
      transfer_W_m2K: h,
      fins_m2: N * 2 * 0.0245 * 0.18,
      base_m2: 0.0191,
      finEfficiency: eta,
    })!;
    expectNear(hA * 50, 34.2, 0.02);
  });

  it('ht-annfins: with the chart’s 0.95 a finned cylinder sheds 690 W, bare 236 W (Incropera and DeWitt, Example 3.10, recalled)', () => {
    const hA = finnedConductanceRelation.of({
      transfer_W_m2K: 50,
      fins_m2: 5 * 0.0105,
      base_m2: 0.0191,
      finEfficiency: 0.95,
    })!;
    expectNear(hA * 200, 690, 0.005);
    expectNear(50 * Math.PI * 0.05 * 0.15 * 200, 236, 0.005);
  });

  it('ht-finned-cover: fins of one height raise the shed 2.6 times at one coefficient (independent script)', () => {
    const eta = straightFinRelation.of({
      transfer_W_m2K: 25,
      conductivity_W_mK: 160,
      thickness_m: 0.004,
      height_m: 0.02,
    })!;
    const fins_m2 = 8 * 2 * 0.022 * 0.18;
    const hA = finnedConductanceRelation.of({
      transfer_W_m2K: 25,
      fins_m2,
      base_m2: 0.0936 - fins_m2,
      finEfficiency: eta,
    })!;
    expectNear(hA, 2.3203324, 1e-6);
    expectNear(hA / (25 * 0.2 * 0.18), 2.578, 1e-3);
  });

  it('ht-wall-series: 95 % of the resistance is outside, and aluminium gains 0.07 %', () => {
    const wall = { area_m2: 0.036, inside_W_m2K: 300, thickness_m: 0.004, outside_W_m2K: 14 };
    const [iron, aluminium] = [50, 160].map((conductivity_W_mK) => wallRelation.of({ ...wall, conductivity_W_mK })!);
    expectNear(aluminium! / iron! - 1, 0.00073542287, 1e-5);
    expectNear((1 / (14 * 0.036)) * iron!, 0.954, 0.001);
  });
});
