import { airAt, film_K } from './air.ts';
import { allAbove0, answer } from './answer.ts';
import { airReynolds, filmCoefficient_W_m2K } from './film-coefficient.ts';
import { crossFlowNusselt } from './forced-convection.ts';
import { cylinderNusselt, rayleigh } from './free-convection.ts';
import { radiationCoefficient_W_m2K } from './radiation.ts';
import { input, output, type Relation } from './relation.ts';

/** How far convection on a real casting under a vehicle is from a law for a plain tube; common practice, no source. */
export const castingSpread = 0.4;

interface Bare {
  readonly area_m2: number;
  /** Of the tube or housing, across the air. */
  readonly diameter_m: number;
  readonly surface_K: number;
  readonly ambient_K: number;
  readonly pressure_Pa: number;
}

type InAir = Bare & { readonly air_m_s: number };
type At = InAir & { readonly emissivity: number; readonly spread: number };

/**
 * Film coefficient of the air on a bare axle taken as a level tube: the larger of moving air across it and still air.
 *
 *   h = max(Nu_cross, Nu_free) k/D
 *
 * Both at once are at most a quarter more, where they are equal (sum of cubes, from memory), which the spread covers.
 *
 * diameter     [m], air [m/s], surface, ambient [K], pressure [Pa]
 * returns      h [W/(m²·K)]; null for a diameter, pressure or temperature that is not above 0, or air below 0
 * range        that of the laws for cross flow and still air
 * source       churchillBernstein1977, churchillChu1975      check: still air of 55 °C
 */
export function bareFilm_W_m2K(at: Omit<InAir, 'area_m2'>): number | null {
  if (!allAbove0(at.diameter_m, at.surface_K, at.ambient_K)) return null;
  const mean_K = film_K(at);
  const air = airAt({ film_K: mean_K, pressure_Pa: at.pressure_Pa });
  if (air === null) return null;
  const length_m = at.diameter_m;
  const reynolds = airReynolds({ air_m_s: at.air_m_s, length_m, nu_m2_s: air.nu_m2_s });
  const Ra = rayleigh({ ...air, expansion_1_K: 1 / mean_K, difference_K: at.surface_K - at.ambient_K, length_m });
  const cross = reynolds === null ? null : crossFlowNusselt({ reynolds, prandtl: air.prandtl });
  const free = Ra === null ? null : cylinderNusselt({ rayleigh: Ra, prandtl: air.prandtl });
  if (cross === null || free === null) return null;
  return filmCoefficient_W_m2K({
    nusselt: Math.max(cross, free),
    conductivity_W_mK: air.conductivity_W_mK,
    length_m,
  });
}

/**
 * Heat from the bare surface of an axle: an estimate, never a result of a trial.
 *
 *   Q = A [(1 + s) h + h_r] (Ts − Ta)
 *
 * area         [m²], as bareFilm_W_m2K, emissivity [1], s how far the casting is from the law [1]
 * returns      Q [W], negative where the surface is colder than the air; null as the film and the radiation, and for s ≤ −1
 * range        s from −0.4 to 0.4 (common practice, no source); air at the axle is 0.2 to 0.6 of road speed (common practice)
 * source       commonPractice      check: by hand from the parts
 */
export function bareSurfaceHeat_W(at: At): number | null {
  const air_W_m2K = bareFilm_W_m2K(at);
  const radiation_W_m2K = radiationCoefficient_W_m2K(at);
  if (air_W_m2K === null || radiation_W_m2K === null || !allAbove0(at.area_m2, 1 + at.spread)) return null;
  return answer(at.area_m2 * ((1 + at.spread) * air_W_m2K + radiation_W_m2K) * (at.surface_K - at.ambient_K));
}

/** From and to; a band, since neither air under a vehicle nor the state of a surface is one number. */
export interface Limits {
  readonly low: number;
  readonly high: number;
}

/**
 * The same as a band: least air and emissivity with the law taken low, most of both with the law taken high. Heat taken in by
 * a surface colder than the air is negative, and the band still runs from its lesser to its greater number.
 *
 * returns      Q and K = Q/(Ts − Ta); null as bareSurfaceHeat_W, for limits that are the wrong way round, and without a rise
 */
export function bareSurfaceBand(at: Bare & { readonly air_m_s: Limits; readonly emissivity: Limits }): {
  readonly low_W: number;
  readonly high_W: number;
  readonly low_W_K: number;
  readonly high_W_K: number;
} | null {
  const { air_m_s: air, emissivity, ...bare } = at;
  if (!(air.low <= air.high) || !(emissivity.low <= emissivity.high)) return null;
  const least_W = bareSurfaceHeat_W({ ...bare, air_m_s: air.low, emissivity: emissivity.low, spread: -castingSpread });
  const most_W = bareSurfaceHeat_W({ ...bare, air_m_s: air.high, emissivity: emissivity.high, spread: castingSpread });
  const rise_K = at.surface_K - at.ambient_K;
  if (least_W === null || most_W === null || rise_K === 0) return null;
  return {
    low_W: Math.min(least_W, most_W),
    high_W: Math.max(least_W, most_W),
    low_W_K: least_W / rise_K,
    high_W_K: most_W / rise_K,
  };
}

const script = 'computed by an independent script';
const axle = { area_m2: 0.7, diameter_m: 0.25, surface_K: 363.15, ambient_K: 293.15, pressure_Pa: 1e5 };

export const bareSurfaceRelation: Relation<Readonly<Record<keyof At, number>>> = {
  id: 'bare-surface-heat',
  title: 'Heat from the bare surface of an axle, an estimate',
  formula: {
    latex: String.raw`Q=A\left[(1+s)\,\frac kD\max(\mathrm{Nu}_\mathrm{cross},\mathrm{Nu}_\mathrm{free})+h_r\right](T_s-T_a)`,
    plain: 'Q = A [(1 + s) (k/D) max(Nu cross, Nu free) + hr] (Ts − Ta)',
  },
  symbols: [
    input('area_m2', 'A', 'outside surface of the axle', 'm²'),
    input('diameter_m', 'D', 'diameter of tube or housing, across the air', 'm'),
    input('air_m_s', 'v', 'speed of the air at the axle, 0.2 to 0.6 of road speed', 'm/s'),
    input('emissivity', 'ε', 'emissivity', '1'),
    input('surface_K', 'Ts', 'surface temperature', 'K'),
    input('ambient_K', 'Ta', 'air and surroundings', 'K'),
    input('pressure_Pa', 'p', 'air pressure', 'Pa'),
    input('spread', 's', 'how far the casting is from the law of a plain tube', '1'),
    output('Q', 'heat from the surface', 'W'),
  ],
  range: [
    { symbol: 's', from: -castingSpread, to: castingSpread, why: 'on a casting under a vehicle (common practice)' },
    { symbol: 'Ts', from: 250, to: 450, why: 'air was compared with handbook rows from 250 K to 400 K' },
    { symbol: 'Ta', from: 230, to: 330, why: 'air was compared with handbook rows from 250 K to 400 K' },
  ],
  source: 'commonPractice',
  grade: 'VC',
  checks: [
    {
      source: `5 m/s, dark, ${script}`,
      seen: 'computed',
      inputs: { ...axle, air_m_s: 5, emissivity: 0.9, spread: 0 },
      printed: '1275.4651',
    },
    {
      source: `still air, dark, ${script}`,
      seen: 'computed',
      inputs: { ...axle, air_m_s: 0, emissivity: 0.9, spread: 0 },
      printed: '634.4441',
    },
    {
      source: `5 m/s, shiny, the law taken 40 % low, ${script}`,
      seen: 'computed',
      inputs: { ...axle, air_m_s: 5, emissivity: 0.1, spread: -0.4 },
      printed: '590.51568',
    },
  ],
  of: (at) => bareSurfaceHeat_W(at),
};
