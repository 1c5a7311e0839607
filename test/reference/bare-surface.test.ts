import { describe, expect, it } from 'vitest';
import {
  bareFilm_W_m2K,
  bareSurfaceBand,
  bareSurfaceHeat_W,
  bareSurfaceRelation,
  castingSpread,
} from '../../src/physics/bare-surface.ts';
import { outsideRange } from '../../src/physics/relation.ts';
import { surfaceHeat_W } from '../../src/physics/radiation.ts';
import { agreesWithItsSources, givesAFigureOrNone } from './agreement.ts';

const axle = { area_m2: 0.7, diameter_m: 0.25, surface_K: 363.15, ambient_K: 293.15, pressure_Pa: 1e5 };
const dark = { low: 0.85, high: 0.95 };

describe('the bare surface of an axle, an estimate (values computed by an independent script)', () => {
  agreesWithItsSources(bareSurfaceRelation);
  givesAFigureOrNone(bareSurfaceRelation);

  // the script took air of 55 °C from a handbook: 0.7 percent from Sutherland's in ν
  it('in 10 m/s has the film coefficient of a plain cylinder, 30 W/(m²·K)', () => {
    expect(Math.abs(bareFilm_W_m2K({ ...axle, air_m_s: 10 })! - 30)).toBeLessThanOrEqual(0.5);
  });

  it('with nothing added to the law is a surface with that film and its radiation', () => {
    const at = { ...axle, air_m_s: 4, emissivity: 0.9 };
    const film_W_m2K = bareFilm_W_m2K(at)!;
    expect(bareSurfaceHeat_W({ ...at, spread: 0 })!).toBeCloseTo(surfaceHeat_W({ ...at, film_W_m2K })!, 9);
  });

  it('sheds more with more air, more emissivity, more surface and more rise; a tube of less diameter more an area', () => {
    const at = { ...axle, air_m_s: 4, emissivity: 0.5, spread: 0 };
    const heat_W = bareSurfaceHeat_W(at)!;
    for (const more of [
      { air_m_s: 5 },
      { emissivity: 0.6 },
      { area_m2: 0.8 },
      { surface_K: 364.15 },
      { diameter_m: 0.1 },
    ])
      expect(bareSurfaceHeat_W({ ...at, ...more })!).toBeGreaterThan(heat_W);
  });

  it('does not fall below still air, and passes into moving air without a step', () => {
    const h = (air_m_s: number) => bareFilm_W_m2K({ ...axle, air_m_s })!;
    const speeds = Array.from({ length: 101 }, (_, i) => i * 0.02);
    const films = speeds.map(h);
    expect(films.every((film, i) => i === 0 || film >= films[i - 1]!)).toBe(true);
    expect(Math.max(...films.map((film, i) => (i === 0 ? 1 : film / films[i - 1]!)))).toBeLessThan(1.02);
    expect(films[10]).toBe(films[0]);
  });

  it('is a band: wider than the spread alone, holding the law as it stands, and the 8 to 20 W/K that axles in moving air have (common practice) meet it', () => {
    const band = bareSurfaceBand({ ...axle, air_m_s: { low: 3, high: 8 }, emissivity: dark })!;
    const middle_W = bareSurfaceHeat_W({ ...axle, air_m_s: 5, emissivity: 0.9, spread: 0 })!;
    expect(band.low_W).toBeLessThan(middle_W);
    expect(band.high_W).toBeGreaterThan(middle_W);
    expect(band.high_W_K * 70).toBeCloseTo(band.high_W, 9);
    expect(band.low_W_K).toBeLessThan(20);
    expect(band.high_W_K).toBeGreaterThan(8);
    const narrow = bareSurfaceBand({ ...axle, air_m_s: { low: 5, high: 5 }, emissivity: { low: 0.9, high: 0.9 } })!;
    expect(narrow.high_W - narrow.low_W).toBeGreaterThan(0);
    expect(band.high_W - band.low_W).toBeGreaterThan(narrow.high_W - narrow.low_W);
  });

  it('takes heat in where it is colder than the air, the lesser number still first', () => {
    const cold = { ...axle, surface_K: 283.15 };
    const band = bareSurfaceBand({ ...cold, air_m_s: { low: 3, high: 8 }, emissivity: dark })!;
    expect(band.low_W).toBeLessThan(band.high_W);
    expect(band.high_W).toBeLessThan(0);
    expect(band.low_W_K).toBeGreaterThan(0);
  });

  it('is not there without a rise, with limits turned round, without air pressure or for an emissivity over 1', () => {
    const air_m_s = { low: 3, high: 8 };
    expect(bareSurfaceBand({ ...axle, surface_K: 293.15, air_m_s, emissivity: dark })).toBeNull();
    expect(bareSurfaceBand({ ...axle, air_m_s: { low: 8, high: 3 }, emissivity: dark })).toBeNull();
    expect(bareSurfaceBand({ ...axle, air_m_s, emissivity: { low: 0.9, high: 1.2 } })).toBeNull();
    expect(bareSurfaceHeat_W({ ...axle, pressure_Pa: 0, air_m_s: 5, emissivity: 0.9, spread: 0 })).toBeNull();
    expect(bareSurfaceHeat_W({ ...axle, air_m_s: -1, emissivity: 0.9, spread: 0 })).toBeNull();
  });

  it('says outside its range when a casting is taken further from the law than is common', () => {
    const at = { ...axle, air_m_s: 5, emissivity: 0.9, spread: castingSpread + 0.1 };
    expect(outsideRange(bareSurfaceRelation, at)).toHaveLength(1);
  });
});
