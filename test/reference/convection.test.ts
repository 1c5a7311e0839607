import { describe, expect, it } from 'vitest';
import {
  airAt,
  airConductivityRelation,
  airPrandtlRelation,
  airViscosityRelation,
  film_K,
} from '../../src/physics/air.ts';
import {
  airReynolds,
  airReynoldsRelation,
  filmCoefficientRelation,
  filmCoefficient_W_m2K,
} from '../../src/physics/film-coefficient.ts';
import {
  crossFlowNusselt,
  crossFlowRelation,
  flatPlateNusselt,
  flatPlateRelation,
  hilpertNusselt,
  hilpertRelation,
  zukauskasNusselt,
  zukauskasRelation,
} from '../../src/physics/forced-convection.ts';
import {
  cylinderNusselt,
  freeCylinderRelation,
  freePlateRelation,
  plateNusselt,
  rayleigh,
  rayleighRelation,
} from '../../src/physics/free-convection.ts';
import {
  radiationByCubeRelation,
  radiationByCube_W_m2K,
  radiationCoefficient_W_m2K,
  radiationRelation,
  surfaceHeatRelation,
  surfaceHeat_W,
} from '../../src/physics/radiation.ts';
import { outsideRange } from '../../src/physics/relation.ts';
import { agreesWithItsSources, expectNear, givesAFigureOrNone } from './agreement.ts';

const apart = (a: number, b: number): number => Math.abs(a / b - 1);

describe('air (Sutherland’s law, from memory, against a handbook table from memory)', () => {
  agreesWithItsSources(airViscosityRelation);
  agreesWithItsSources(airConductivityRelation);
  agreesWithItsSources(airPrandtlRelation);
  givesAFigureOrNone(airViscosityRelation);
  givesAFigureOrNone(airConductivityRelation);
  givesAFigureOrNone(airPrandtlRelation);

  it.each([
    { T: 250, alpha: 15.9 },
    { T: 300, alpha: 22.5 },
    { T: 350, alpha: 29.9 },
    { T: 400, alpha: 38.3 },
    { T: 328.15, alpha: 26.4 },
  ])('diffusivity at $T K is $alpha mm²/s within 1 percent', ({ T, alpha }) => {
    expect(apart(airAt({ film_K: T, pressure_Pa: 1e5 })!.diffusivity_m2_s * 1e6, alpha)).toBeLessThanOrEqual(0.01);
  });

  it('thin air on a mountain is of more kinematic viscosity and the same Prandtl number', () => {
    const [low, high] = [101325, 70000].map((pressure_Pa) => airAt({ film_K: 320, pressure_Pa })!);
    expect(high!.nu_m2_s / low!.nu_m2_s).toBeCloseTo(101325 / 70000, 12);
    expect(high!.prandtl).toBeCloseTo(low!.prandtl, 12);
  });

  it('below 250 K the figure is given and the range says so', () => {
    const cold = { film_K: 230, pressure_Pa: 1e5 };
    expect(airViscosityRelation.of(cold)).toBeGreaterThan(8e-6);
    expect(outsideRange(airViscosityRelation, cold)).toHaveLength(1);
  });
});

describe('still air (Churchill & Chu 1975)', () => {
  agreesWithItsSources(rayleighRelation);
  agreesWithItsSources(freePlateRelation);
  agreesWithItsSources(freeCylinderRelation);
  agreesWithItsSources(filmCoefficientRelation);
  givesAFigureOrNone(rayleighRelation);
  givesAFigureOrNone(freePlateRelation);
  givesAFigureOrNone(freeCylinderRelation);
  givesAFigureOrNone(filmCoefficientRelation);

  it('the wall of example 9.2 (Incropera & DeWitt): 7.0 W/(m²·K) and 1060 W from 0.71 × 1.02 m, all the way from its air', () => {
    const Ra = rayleigh({
      expansion_1_K: 0.0025,
      difference_K: 209,
      length_m: 0.71,
      nu_m2_s: 26.4e-6,
      diffusivity_m2_s: 38.3e-6,
    })!;
    const nusselt = plateNusselt({ rayleigh: Ra, prandtl: 0.69 })!;
    const h = filmCoefficient_W_m2K({ nusselt, conductivity_W_mK: 0.0338, length_m: 0.71 })!;
    expect(Math.abs(h - 7)).toBeLessThanOrEqual(0.05);
    // printed with Nu rounded to 147 and h to 7.0
    expect(Math.abs(h * 0.71 * 1.02 * 209 - 1060)).toBeLessThanOrEqual(3);
  });

  it('a tube and a wall of one height hand over the same within 15 percent, Ra 1e6 to 1e10', () => {
    for (const Ra of [1e6, 1e7, 1e8, 1e9, 1e10]) {
      const air = { rayleigh: Ra, prandtl: 0.705 };
      expect(apart(cylinderNusselt(air)!, plateNusselt(air)!)).toBeLessThan(0.15);
    }
  });

  it('falls to what still air conducts: 0.825² and 0.60²', () => {
    expect(plateNusselt({ rayleigh: 0, prandtl: 0.7 })).toBeCloseTo(0.825 ** 2, 12);
    expect(cylinderNusselt({ rayleigh: 0, prandtl: 0.7 })).toBeCloseTo(0.36, 12);
  });

  it('goes with the cube root of Ra far up: 0.387³ of the sixth root, squared', () => {
    const at = (rayleigh: number) => plateNusselt({ rayleigh, prandtl: 0.7 })!;
    expect(Math.log10(at(1e12) / at(1e11))).toBeCloseTo(1 / 3, 1);
  });

  it('a cold surface in warm air is the same as a warm one in cold air', () => {
    const air = { expansion_1_K: 1 / 320, length_m: 0.2, nu_m2_s: 18e-6, diffusivity_m2_s: 26e-6 };
    expect(rayleigh({ ...air, difference_K: -40 })).toBe(rayleigh({ ...air, difference_K: 40 }));
  });

  it('has no answer for air below Ra 0, and says where 1e12 is passed', () => {
    expect(plateNusselt({ rayleigh: -1, prandtl: 0.7 })).toBeNull();
    expect(plateNusselt({ rayleigh: 1e6, prandtl: 0 })).toBeNull();
    expect(outsideRange(freePlateRelation, { rayleigh: 1e13, prandtl: 0.7 })).toHaveLength(1);
  });
});

describe('moving air (Churchill & Bernstein 1977, Žukauskas, Hilpert; flat plate)', () => {
  agreesWithItsSources(crossFlowRelation);
  agreesWithItsSources(hilpertRelation);
  agreesWithItsSources(zukauskasRelation);
  agreesWithItsSources(flatPlateRelation);
  agreesWithItsSources(airReynoldsRelation);
  givesAFigureOrNone(crossFlowRelation);
  givesAFigureOrNone(hilpertRelation);
  givesAFigureOrNone(zukauskasRelation);
  givesAFigureOrNone(flatPlateRelation);
  givesAFigureOrNone(airReynoldsRelation);

  it('the plate of example 7.1 (Incropera & DeWitt, from memory) loses 570 W a metre of width', () => {
    const reynolds = airReynolds({ air_m_s: 10, length_m: 0.5, nu_m2_s: 5.21e-4 })!;
    const nusselt = flatPlateNusselt({ reynolds, prandtl: 0.687 })!;
    const h = filmCoefficient_W_m2K({ nusselt, conductivity_W_mK: 0.0364, length_m: 0.5 })!;
    expectNear(h * 0.5 * 273, 570, 0.003);
  });

  it('an axle as a cylinder of 0.25 m in 10 m/s, air of 55 °C, sheds 30 W/(m²·K) (independent script)', () => {
    const reynolds = airReynolds({ air_m_s: 10, length_m: 0.25, nu_m2_s: 1.86e-5 })!;
    const nusselt = crossFlowNusselt({ reynolds, prandtl: 0.705 })!;
    const h = filmCoefficient_W_m2K({ nusselt, conductivity_W_mK: 0.0284, length_m: 0.25 })!;
    expect(Math.abs(h - 30)).toBeLessThanOrEqual(0.5);
  });

  it('three laws of a rod that was measured at 102 W/(m²·K) are 15 percent from it at most (Incropera & DeWitt, example 7.4)', () => {
    const h = (nusselt: number | null, k_W_mK: number) =>
      filmCoefficient_W_m2K({ nusselt: nusselt!, conductivity_W_mK: k_W_mK, length_m: 0.0127 })!;
    // Žukauskas takes the air far off, with its own conductivity.
    const laws = [
      h(zukauskasNusselt({ reynolds: 7992, prandtl: 0.707, surfacePrandtl: 0.69 }), 0.0263),
      h(crossFlowNusselt({ reynolds: 6071, prandtl: 0.7 }), 0.03),
      h(hilpertNusselt({ reynolds: 6071, prandtl: 0.7 }), 0.03),
    ];
    for (const [i, printed] of [105, 96, 88].entries()) expect(Math.abs(laws[i]! - printed)).toBeLessThanOrEqual(0.5);
    for (const law of laws) expect(apart(law, 102)).toBeLessThanOrEqual(0.15);
  });

  it.each([4e3, 8e3, 15e3, 30e3, 60e3, 100e3])(
    'at Re %i three laws for one tube are within the 20 percent that convection laws have',
    (reynolds) => {
      const air = { reynolds, prandtl: 0.7 };
      const laws = [
        crossFlowNusselt(air)!,
        hilpertNusselt(air)!,
        zukauskasNusselt({ ...air, surfacePrandtl: 0.7 })!,
      ].sort((a, b) => a - b);
      expect(laws[2]! / laws[0]! - 1).toBeLessThan(0.2);
    },
  );

  it('Hilpert’s constants meet within 2 percent at 4e4, the plate’s laws within 0.1 percent at 5e5', () => {
    const meets = (law: (air: { reynolds: number; prandtl: number }) => number | null, reynolds: number): number =>
      apart(law({ reynolds, prandtl: 0.7 })!, law({ reynolds: reynolds * (1 + 1e-9), prandtl: 0.7 })!);
    expect(meets(hilpertNusselt, 4e4)).toBeLessThan(0.02);
    expect(meets(flatPlateNusselt, 5e5)).toBeLessThan(0.001);
  });

  it.each([1e3, 5e3, 2e4, 1e5, 3e5, 8e5])('more air sheds more, by each law, at Re %i', (reynolds) => {
    for (const law of [crossFlowNusselt, hilpertNusselt, flatPlateNusselt]) {
      expect(law({ reynolds: 1.3 * reynolds, prandtl: 0.7 })!).toBeGreaterThan(law({ reynolds, prandtl: 0.7 })!);
    }
  });

  it('goes with the speed to 0.5 to 0.8, as air past an axle does', () => {
    for (const reynolds of [1e4, 3e4, 1e5]) {
      const exponent = Math.log2(
        crossFlowNusselt({ reynolds: 2 * reynolds, prandtl: 0.7 })! / crossFlowNusselt({ reynolds, prandtl: 0.7 })!,
      );
      expect(exponent).toBeGreaterThan(0.5);
      expect(exponent).toBeLessThan(0.8);
    }
  });

  it('has no answer for air that moves backward, and says what lies outside', () => {
    for (const law of [crossFlowNusselt, hilpertNusselt, flatPlateNusselt]) {
      expect(law({ reynolds: -1, prandtl: 0.7 })).toBeNull();
    }
    expect(outsideRange(hilpertRelation, { reynolds: 1e3, prandtl: 0.7 })).toHaveLength(1);
    expect(hilpertNusselt({ reynolds: 1e3, prandtl: 0.7 })).toBeGreaterThan(0);
  });
});

describe('radiation (Incropera & DeWitt; values computed by an independent script)', () => {
  agreesWithItsSources(radiationRelation);
  agreesWithItsSources(radiationByCubeRelation);
  agreesWithItsSources(surfaceHeatRelation);
  givesAFigureOrNone(radiationRelation);
  givesAFigureOrNone(radiationByCubeRelation);
  givesAFigureOrNone(surfaceHeatRelation);

  it.each([30, 60, 90, 120])(
    'from %i °C in 20 °C the cube of the mean misses the exact form by its rounded constant and by (ΔT/2Tm)²',
    (surface_C) => {
      const at = { emissivity: 0.9, surface_K: surface_C + 273.15, ambient_K: 293.15 };
      const [exact, cube] = [radiationCoefficient_W_m2K(at)!, radiationByCube_W_m2K(at)!];
      // 0.23e-6 is 1.4 % above 4 σ; the cube leaves out (ΔT/2Tm)² of the exact form
      const left = ((at.surface_K - at.ambient_K) / (at.surface_K + at.ambient_K)) ** 2;
      expect(cube / exact).toBeCloseTo(0.23e-6 / (4 * 5.670374419e-8) / (1 + left), 9);
    },
  );

  it('paint outweighs still air: a black cover of 0.2 m radiates more than the air takes from it, a shiny one a ninth', () => {
    const at = { surface_K: 363.15, ambient_K: 293.15 };
    const air = airAt({ film_K: film_K(at), pressure_Pa: 1e5 })!;
    const Ra = rayleigh({
      expansion_1_K: 1 / film_K(at),
      difference_K: 70,
      length_m: 0.2,
      nu_m2_s: air.nu_m2_s,
      diffusivity_m2_s: air.diffusivity_m2_s,
    })!;
    const nusselt = plateNusselt({ rayleigh: Ra, prandtl: air.prandtl })!;
    const still = filmCoefficient_W_m2K({ nusselt, conductivity_W_mK: air.conductivity_W_mK, length_m: 0.2 })!;
    // 6.3 by the script, from its own air of 55 °C
    expectNear(still, 6.3050341, 0.01);
    expect(radiationCoefficient_W_m2K({ ...at, emissivity: 0.9 })!).toBeGreaterThan(still);
    expect(radiationCoefficient_W_m2K({ ...at, emissivity: 0.1 })! * 9).toBeCloseTo(
      radiationCoefficient_W_m2K({ ...at, emissivity: 0.9 })!,
      12,
    );
  });

  it('a surface colder than the air takes heat in; one at its temperature neither', () => {
    const at = { area_m2: 0.5, film_W_m2K: 10, emissivity: 0.9, ambient_K: 293.15 };
    expect(surfaceHeat_W({ ...at, surface_K: 283.15 })!).toBeLessThan(-0.5 * 10 * 10);
    expect(surfaceHeat_W({ ...at, surface_K: 293.15 })).toBe(0);
  });

  it('has no answer for an emissivity over 1 or a temperature below nothing', () => {
    expect(radiationCoefficient_W_m2K({ emissivity: 1.1, surface_K: 300, ambient_K: 290 })).toBeNull();
    expect(radiationCoefficient_W_m2K({ emissivity: 0.9, surface_K: -1, ambient_K: 290 })).toBeNull();
  });
});
