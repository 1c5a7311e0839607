import { describe, expect, it } from 'vitest';
import { chapters } from '../../src/physics/all.ts';
import { contactModulusRelation, ellipticityFitRelation, ellipticityRelation } from '../../src/physics/contact.ts';
import { dynamicViscosity_Pa_s } from '../../src/physics/dynamic-viscosity.ts';
import {
  filmChange,
  filmChangeRelation,
  filmRegime,
  inletHeating,
  lambdaRatio,
  lambdaRelation,
  thermalFilmRelation,
} from '../../src/physics/film-ratio.ts';
import {
  centralFilmRelation,
  leastFilm_m,
  leastFilmRelation,
  lineFilm_m,
  lineFilmRelation,
  lineFilmSecond_m,
  lineFilmSecondRelation,
} from '../../src/physics/film.ts';
import {
  alphaBand,
  alphaByBase_1_Pa,
  alphaByViscosity_1_Pa,
  alphaMineralRelation,
  alphaPaoRelation,
  alphaRelation,
  handbookAlphas,
} from '../../src/physics/pressure-viscosity.ts';
import { outsideRange } from '../../src/physics/relation.ts';
import { viscosityRelation } from '../../src/physics/viscosity.ts';
import { agreesWithItsSources, expectNear, givesAFigureOrNone } from './agreement.ts';

const referenceOil = { nu40_m2_s: 102e-6, nu100_m2_s: 15e-6, density15_kg_m3: 870 };
const axle = { along_m: 0.015, speed_m_s: 5, modulus_Pa: 228e9, load_N: 6000, ellipticity: 3 };
const contact = { ...axle, viscosity_Pa_s: 0.0157, alpha_1_Pa: 1.75e-8 };
const roller = {
  along_m: 0.0064,
  speed_m_s: 10.0608,
  viscosity_Pa_s: 0.01,
  alpha_1_Pa: 2.2e-8,
  modulus_Pa: 228.022e9,
  load_N: 4800,
};

describe('pressure–viscosity coefficient', () => {
  agreesWithItsSources(alphaRelation);
  agreesWithItsSources(alphaMineralRelation);
  agreesWithItsSources(alphaPaoRelation);

  it('keeps the rows of the handbook oil: 34.6, 26.3 and 19.5 1/GPa at 30, 60 and 100 °C (Table 2.3, read)', () => {
    expect(handbookAlphas.map(({ alpha_1_Pa }) => (alpha_1_Pa * 1e9).toFixed(1))).toEqual(['34.6', '26.3', '19.5']);
    expect(handbookAlphas.map(({ viscosity_Pa_s }) => viscosity_Pa_s * 1e3)).toEqual([310, 44.2, 9.4]);
    expect(handbookAlphas.map(({ oil_K }) => Math.round(oil_K - 273.15))).toEqual([30, 60, 100]);
  });

  it.each([60, 80, 100])(
    'two estimates of one mineral oil overlap at %i °C, each with its band; a PAO has less',
    (t_C) => {
      const at = { ...referenceOil, oil_K: t_C + 273.15 };
      const nu_m2_s = viscosityRelation.of(at)!;
      const byViscosity = alphaByViscosity_1_Pa({ viscosity_Pa_s: dynamicViscosity_Pa_s(at)! })!;
      const byBase = alphaByBase_1_Pa({ base: 'mineral', nu_m2_s })!;
      expect(byViscosity).toBeGreaterThan(byBase);
      expect(byViscosity * (1 - alphaBand)).toBeLessThanOrEqual(byBase * (1 + alphaBand));
      expect(alphaByBase_1_Pa({ base: 'pao', nu_m2_s })!).toBeLessThan(byBase);
    },
  );

  it('is not there for an oil so thin that none above 0 comes out, and warns outside the handbook rows', () => {
    expect(alphaByViscosity_1_Pa({ viscosity_Pa_s: 0.0002 })).toBeNull();
    expect(alphaByViscosity_1_Pa({ viscosity_Pa_s: 0 })).toBeNull();
    expect(alphaByBase_1_Pa({ base: 'mineral', nu_m2_s: -1e-6 })).toBeNull();
    expect(outsideRange(alphaRelation, { viscosity_Pa_s: 0.9 })).toHaveLength(1);
    expect(outsideRange(alphaRelation, { viscosity_Pa_s: 0.02 })).toEqual([]);
  });
});

describe('bodies in contact', () => {
  agreesWithItsSources(contactModulusRelation);
  agreesWithItsSources(ellipticityRelation);
  agreesWithItsSources(ellipticityFitRelation);

  it.each([1, 3, 10, 30])('two ways to the ellipticity of radii 1 to %i stand at most 4.3 percent apart', (ratio) => {
    const radii = { along_m: 0.01, across_m: 0.01 * ratio };
    expect(Math.abs(ellipticityFitRelation.of(radii)! / ellipticityRelation.of(radii)! - 1)).toBeLessThanOrEqual(0.043);
  });

  it('the softer body decides, and a body without a modulus has no contact', () => {
    const steel = { E1_Pa: 206e9, p1: 0.3 };
    expect(contactModulusRelation.of({ ...steel, E2_Pa: 100e9, p2: 0.3 })!).toBeLessThan(
      contactModulusRelation.of({ ...steel, E2_Pa: 206e9, p2: 0.3 })!,
    );
    expect(contactModulusRelation.of({ ...steel, E2_Pa: 0, p2: 0.3 })).toBeNull();
    expect(ellipticityRelation.of({ along_m: 0, across_m: 0.1 })).toBeNull();
  });

  it('warns of a contact that is longer along the motion than across it', () => {
    expect(outsideRange(ellipticityRelation, { along_m: 0.02, across_m: 0.01 })).toHaveLength(1);
  });
});

describe('film thickness', () => {
  agreesWithItsSources(leastFilmRelation);
  agreesWithItsSources(centralFilmRelation);
  agreesWithItsSources(lineFilmRelation);
  agreesWithItsSources(lineFilmSecondRelation);

  it('three formulas on one roller: 0.32, 0.36 and 0.39 µm, within 10 percent of their middle', () => {
    const films = [
      leastFilm_m({ ...roller, ellipticity: 1000 })!,
      lineFilmSecond_m({ ...roller, width_m: 0.016 })!,
      lineFilm_m({ ...roller, width_m: 0.016 })!,
    ];
    expect(films.map((film_m) => (film_m * 1e6).toFixed(2))).toEqual(['0.32', '0.36', '0.39']);
    const middle = (Math.min(...films) + Math.max(...films)) / 2;
    for (const film_m of films) expect(Math.abs(film_m / middle - 1)).toBeLessThanOrEqual(0.1);
  });

  // The whole chain from two viscosities and a density to the film, as an independent script computed it.
  it.each([
    { t_C: 60, alpha: 2.1368945e-8, least: 0.63778311, lambda: 0.90196152 },
    { t_C: 90, alpha: 1.753762e-8, least: 0.31091776, lambda: 0.43970411 },
    { t_C: 120, alpha: 1.4677136e-8, least: 0.17913745, lambda: 0.25333861 },
    { t_C: 140, alpha: 1.3140935e-8, least: 0.13225392, lambda: 0.18703529 },
  ])('the reference oil at $t_C °C leaves $least µm on an axle contact, $lambda of its roughness', (row) => {
    const viscosity_Pa_s = dynamicViscosity_Pa_s({ ...referenceOil, oil_K: row.t_C + 273.15 })!;
    const alpha_1_Pa = alphaByViscosity_1_Pa({ viscosity_Pa_s })!;
    const film_m = leastFilm_m({ ...axle, viscosity_Pa_s, alpha_1_Pa })!;
    expectNear(alpha_1_Pa, row.alpha, 1e-6);
    expectNear(film_m * 1e6, row.least, 1e-6);
    expectNear(lambdaRatio({ film_m, roughness1_m: 0.5e-6, roughness2_m: 0.5e-6 }), row.lambda, 1e-6);
  });

  it.each([
    { of: 'viscosity_Pa_s', exponent: 0.68 },
    { of: 'alpha_1_Pa', exponent: 0.49 },
    { of: 'speed_m_s', exponent: 0.68 },
    { of: 'load_N', exponent: -0.073 },
  ] as const)('goes with $of to the power $exponent', ({ of, exponent }) => {
    const doubled = leastFilm_m({ ...contact, [of]: 2 * contact[of] })! / leastFilm_m(contact)!;
    expectNear(Math.log2(doubled), exponent, 1e-12);
  });

  it('half the viscosity costs 38 percent of it, twice the load 5 percent', () => {
    const whole = leastFilm_m(contact)!;
    const thinner = leastFilm_m({ ...contact, viscosity_Pa_s: contact.viscosity_Pa_s / 2 })!;
    const heavier = leastFilm_m({ ...contact, load_N: 2 * contact.load_N })!;
    expect(Math.round((1 - thinner / whole) * 100)).toBe(38);
    expect(Math.round((1 - heavier / whole) * 100)).toBe(5);
  });

  it('is thicker in the middle than at its thinnest, and thickest in a contact that is wide across the motion', () => {
    for (const k of [1, 3, 10]) {
      const at = { ...contact, ellipticity: k };
      expect(centralFilmRelation.of(at)!).toBeGreaterThan(leastFilm_m(at)!);
      expect(leastFilm_m({ ...at, ellipticity: 2 * k })!).toBeGreaterThan(leastFilm_m(at)!);
    }
  });

  it('in the middle of a round contact its factor is 1.90', () => {
    // 2.69 (1 − 0.61 e^−0.73), against a contact of no end
    const round = centralFilmRelation.of({ ...contact, ellipticity: 1 })!;
    const endless = centralFilmRelation.of({ ...contact, ellipticity: 1000 })!;
    expect(Math.abs((2.69 * round) / endless - 1.9)).toBeLessThanOrEqual(0.005);
  });

  it.each([{ speed_m_s: 0 }, { load_N: 0 }, { modulus_Pa: -1 }, { viscosity_Pa_s: NaN }, { ellipticity: 0 }])(
    'is not there with %o',
    (changed) => {
      expect(leastFilm_m({ ...contact, ...changed })).toBeNull();
      expect(centralFilmRelation.of({ ...contact, ...changed })).toBeNull();
    },
  );
});

describe('film over roughness, and what changes it', () => {
  agreesWithItsSources(lambdaRelation);
  agreesWithItsSources(filmChangeRelation);
  agreesWithItsSources(thermalFilmRelation);

  it('a change of oil is the ratio of the two films', () => {
    const other = { viscosity_Pa_s: 0.0105, alpha_1_Pa: 1.6e-8 };
    const change = filmChange({
      viscosity1_Pa_s: contact.viscosity_Pa_s,
      viscosity2_Pa_s: other.viscosity_Pa_s,
      alpha1_1_Pa: contact.alpha_1_Pa,
      alpha2_1_Pa: other.alpha_1_Pa,
    });
    expectNear(change, leastFilm_m({ ...contact, ...other })! / leastFilm_m(contact)!, 1e-12);
  });

  it('stands for boundary below 1, for mixed to 3, for a full film above (common practice, no source)', () => {
    expect([0.99, 1, 3, 3.01].map(filmRegime)).toEqual(['boundary', 'mixed', 'mixed', 'full']);
    expect(lambdaRatio({ film_m: 1e-6, roughness1_m: 0, roughness2_m: 0 })).toBeNull();
  });

  const heated = {
    viscosity_Pa_s: 0.0122,
    thinning_1_K: 0.04,
    speed_m_s: 8,
    oilConductivity_W_mK: 0.13,
    slideRoll: 0.4,
    hertz_Pa: 1.2e9,
    modulus_Pa: 228e9,
  };

  it('the inlet of that check has a heating of 0.24024615 (computed by an independent script)', () => {
    expectNear(inletHeating(heated), 0.24024615, 1e-6);
  });

  it('loses nothing at a crawl, and more the faster it runs and slides', () => {
    const left = (changed: Partial<typeof heated>) => thermalFilmRelation.of({ ...heated, ...changed })!;
    expect(left({ speed_m_s: 1e-6 })).toBeCloseTo(1, 4);
    expect(left({ speed_m_s: 16 })).toBeLessThan(left({}));
    expect(left({ slideRoll: 1 })).toBeLessThan(left({}));
  });

  it('has no share where the sum falls below nothing, nor for an oil that leads no heat', () => {
    expect(thermalFilmRelation.of({ ...heated, hertz_Pa: 100e9 })).toBeNull();
    expect(thermalFilmRelation.of({ ...heated, oilConductivity_W_mK: 0 })).toBeNull();
  });
});

describe('no contact at all', () => {
  for (const relation of chapters.find(({ title }) => title === 'Film in the contact')!.relations)
    givesAFigureOrNone(relation);
});
