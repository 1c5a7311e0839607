import { describe, expect, it } from 'vitest';
import { scaledI, scaledK } from '../../src/physics/bessel.ts';
import { optimumFinGapRelation, optimumFinGap_m, optimumGapFilmRelation } from '../../src/physics/fin-gap.ts';
import {
  finDecay_1_m,
  finHeightWithTip_m,
  finnedWallRelation,
  finnedWall_W_K,
  ringFinEfficiency,
  ringFinRelation,
  straightFinEfficiency,
  straightFinRelation,
} from '../../src/physics/fins.ts';
import { rayleigh } from '../../src/physics/free-convection.ts';
import { wallResistances_K_W, wallSeriesRelation, wall_W_K } from '../../src/physics/wall-series.ts';
import { agreesWithItsSources, expectNear, givesAFigureOrNone } from './agreement.ts';

describe('Bessel functions of fins (mpmath 1.3, 30 digits)', () => {
  it.each([
    [0.001, 0.99900074958351556, 0.00049950031235422134, 7.0307160023782515, 1000.9967345590685],
    [0.1, 0.9071009257823011, 0.045298446808809325, 2.6823261022628944, 10.890182683049697],
    [1, 0.46575960759364044, 0.20791041534970845, 1.144463079806895, 1.6361534862632582],
    [5, 0.18354081260932835, 0.16397226694454236, 0.54780756431351899, 0.60027385878831258],
    [29, 0.074407468222225585, 0.073113117939388365, 0.23175021980076458, 0.2357125956165557],
    [40, 0.06327827987523533, 0.062482229074442061, 0.19755558495729817, 0.20000996725443348],
    [800, 0.014106945005869184, 0.014098125406526997, 0.044304427486646012, 0.044332109111412112],
  ])('at %f, freed of their growth', (x, i0, i1, k0, k1) => {
    expectNear(scaledI(0, x), i0, 1e-14);
    expectNear(scaledI(1, x), i1, 1e-14);
    expectNear(scaledK(0, x), k0, 1e-14);
    expectNear(scaledK(1, x), k1, 1e-14);
  });

  it('keep I0 K1 + I1 K0 = 1/x', () => {
    for (const x of [1e-6, 0.3, 3, 29.999, 30, 300, 1e6]) {
      expectNear(scaledI(0, x) * scaledK(1, x) + scaledI(1, x) * scaledK(0, x), 1 / x, 1e-13);
    }
  });
});

describe('fins', () => {
  agreesWithItsSources(straightFinRelation);
  agreesWithItsSources(ringFinRelation);
  agreesWithItsSources(finnedWallRelation);
  agreesWithItsSources(optimumFinGapRelation);
  agreesWithItsSources(optimumGapFilmRelation);
  givesAFigureOrNone(straightFinRelation);
  givesAFigureOrNone(ringFinRelation);
  givesAFigureOrNone(finnedWallRelation);
  givesAFigureOrNone(optimumFinGapRelation);
  givesAFigureOrNone(optimumGapFilmRelation);

  const castFin = { film_W_m2K: 25, conductivity_W_mK: 160, thickness_m: 0.004, height_m: 0.02 };

  it('eight cast fins on a cover of 0.2 × 0.18 m: m 8.8388348 1/m, 0.0936 m², 0.99159505 as a whole, 2.3203324 against 0.9 W/K (independent script)', () => {
    expectNear(finDecay_1_m(castFin), 8.8388348, 1e-7);
    const finArea_m2 = 2 * 0.18 * finHeightWithTip_m(castFin);
    const baseArea_m2 = 0.2 * 0.18 - 8 * 0.004 * 0.18;
    expectNear(8 * finArea_m2 + baseArea_m2, 0.0936, 1e-7);
    const efficiency = straightFinEfficiency(castFin)!;
    const K = finnedWall_W_K({ fins: 8, finArea_m2, baseArea_m2, efficiency, film_W_m2K: 25 })!;
    expectNear(K, 2.3203324, 1e-7);
    expectNear(K / 25 / 0.0936, 0.99159505, 1e-7);
    const flat = finnedWall_W_K({ fins: 0, finArea_m2: 0, baseArea_m2: 0.036, efficiency: 1, film_W_m2K: 25 });
    expectNear(flat, 0.9, 1e-7);
  });

  it('the finned cylinder (Incropera & DeWitt, example 3.10, from memory): 0.0105 and 0.0716 m², 690 W with 0.95 off the chart, 236 W bare', () => {
    const { fin, ring_m2, between_m2 } = cylinder();
    expect(Math.abs(ring_m2 - 0.0105)).toBeLessThanOrEqual(0.00005);
    expect(Math.abs(5 * ring_m2 + between_m2 - 0.0716)).toBeLessThanOrEqual(0.00005);
    const shed_W = (efficiency: number) =>
      200 * finnedWall_W_K({ fins: 5, finArea_m2: ring_m2, baseArea_m2: between_m2, efficiency, film_W_m2K: 50 })!;
    expect(Math.abs(shed_W(0.95) - 690)).toBeLessThanOrEqual(0.5);
    // the efficiency itself gives 704.65582 W (independent script): the chart was read three points low
    expectNear(shed_W(ringFinEfficiency(fin)!), 704.65582, 1e-6);
    expect(Math.abs(50 * 2 * Math.PI * 0.025 * 0.15 * 200 - 236)).toBeLessThanOrEqual(0.5);
  });

  it('the upright heat sink (circulated solution): Ra 1.8e7, gap 7.5 mm, fourteen fins, 34.2 W', () => {
    // Ra is printed without α: ν²/Pr
    const Ra = rayleigh({
      expansion_1_K: 1 / 328.15,
      difference_K: 50,
      length_m: 0.18,
      nu_m2_s: 18.47e-6,
      diffusivity_m2_s: 18.47e-6 / 0.704,
    })!;
    expectNear(Ra, 1.8e7, 0.02);
    const gap_m = optimumFinGap_m({ length_m: 0.18, rayleigh: Ra })!;
    expect(Math.abs(gap_m - 0.0075)).toBeLessThanOrEqual(0.00005);
    expect(Math.floor(0.12 / (gap_m + 0.001))).toBe(14);
    const fin = { film_W_m2K: 4.83, conductivity_W_mK: 240, thickness_m: 0.001, height_m: 0.024 };
    expectNear(finHeightWithTip_m(fin), 0.0245, 1e-12);
    const finArea_m2 = 2 * 0.18 * finHeightWithTip_m(fin);
    expect(Math.abs(14 * finArea_m2 - 0.1235)).toBeLessThanOrEqual(0.00005);
    const efficiency = straightFinEfficiency(fin)!;
    const baseArea_m2 = 0.12 * 0.18 - 14 * 0.001 * 0.18;
    expect(Math.abs(baseArea_m2 - 0.0191)).toBeLessThanOrEqual(0.00005);
    const K = finnedWall_W_K({ fins: 14, finArea_m2, baseArea_m2, efficiency, film_W_m2K: 4.83 })!;
    expect(Math.abs(50 * K - 34.2)).toBeLessThanOrEqual(0.05);
  });

  it('a ring fin on a tube so wide that it is nearly flat is a straight fin', () => {
    const flat = straightFinEfficiency(castFin)!;
    expectNear(ringFinEfficiency({ ...castFin, radius_m: 20 }), flat, 1e-4);
    expect(ringFinEfficiency({ ...castFin, radius_m: 0.02 })!).toBeLessThan(flat);
  });

  it('a fin of iron in a gale is worse than one of aluminium in still air, and none is above 1', () => {
    for (const of of [straightFinEfficiency, (fin: typeof castFin) => ringFinEfficiency({ ...fin, radius_m: 0.03 })]) {
      const still = of({ ...castFin, film_W_m2K: 5 })!;
      const gale = of({ ...castFin, film_W_m2K: 100, conductivity_W_mK: 50 })!;
      expect(gale).toBeLessThan(still);
      expect(still).toBeLessThan(1);
      expect(gale).toBeGreaterThan(0.5);
    }
  });

  it('has no efficiency for a fin of no thickness, and no heat for one above 1', () => {
    expect(straightFinEfficiency({ ...castFin, thickness_m: 0 })).toBeNull();
    expect(ringFinEfficiency({ ...castFin, radius_m: 0 })).toBeNull();
    const wall = { fins: 1, finArea_m2: 0.01, baseArea_m2: 0.01, film_W_m2K: 10 };
    expect(finnedWall_W_K({ ...wall, efficiency: 1.01 })).toBeNull();
  });
});

describe('a wall in series (values computed by an independent script)', () => {
  agreesWithItsSources(wallSeriesRelation);
  givesAFigureOrNone(wallSeriesRelation);

  const cover = {
    area_m2: 0.036,
    inside_W_m2K: 300,
    thickness_m: 0.004,
    conductivity_W_mK: 50,
    outside_W_m2K: 14,
  };

  it('of iron has 0.092592593, 0.0022222222 and 1.984127 K/W, 95 percent of it outside', () => {
    const of = wallResistances_K_W(cover)!;
    expectNear(of.inside_K_W, 0.092592593, 1e-6);
    expectNear(of.metal_K_W, 0.0022222222, 1e-6);
    expectNear(of.outside_K_W, 1.984127, 1e-6);
    expect(Math.round(100 * of.outside_K_W * wall_W_K(cover)!)).toBe(95);
  });

  it('of aluminium hands over 0.073542287 percent more', () => {
    // a difference of two numbers that agree to three digits keeps twelve of fifteen
    expectNear(wall_W_K({ ...cover, conductivity_W_mK: 160 })! / wall_W_K(cover)! - 1, 0.00073542287, 1e-6);
  });

  it('hands over no more than its worst part alone, and twice as much with twice the surface', () => {
    expect(wall_W_K(cover)!).toBeLessThan(14 * 0.036);
    expect(wall_W_K({ ...cover, area_m2: 0.072 })! / wall_W_K(cover)!).toBeCloseTo(2, 12);
    expect(wall_W_K({ ...cover, outside_W_m2K: 0 })).toBeNull();
  });
});

/** Five rings of 20 × 6 mm on 150 mm of a cylinder of 50 mm. */
function cylinder() {
  const fin = { film_W_m2K: 50, conductivity_W_mK: 186, thickness_m: 0.006, height_m: 0.02, radius_m: 0.025 };
  const outer_m = fin.radius_m + finHeightWithTip_m(fin);
  return {
    fin,
    ring_m2: 2 * Math.PI * (outer_m ** 2 - fin.radius_m ** 2),
    between_m2: 2 * Math.PI * fin.radius_m * (0.15 - 5 * fin.thickness_m),
  };
}
