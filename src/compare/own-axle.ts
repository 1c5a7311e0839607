import { energyPerDistanceRelation, fuelFactors } from '../physics/fuel.ts';
import { outsideRange } from '../physics/relation.ts';
import { viscosityRelation } from '../physics/viscosity.ts';
import type { AxleAnswer, AxleAsked, AxleData, AxleRow, Spread, Told } from '../trial/own-axle.ts';
import { finalOf } from './own-final.ts';
import { askedViscosity, spinOf } from './own-spin.ts';
import * as texts from './texts-own.ts';

/** Ratios closer than this turn the pinion alike. */
const sameRatio = 0.005;
/** How far the ratio may be from that of the bench (common practice, no source). */
const farRatio = 0.25;

/**
 * What the series says of a reader's own axle, article by article: only what was measured, brought no further than it carries.
 * With another ratio than the bench the pinion turns faster or slower at the same wheel speed: then figures are bands between
 * loss that goes with the ring gear alone and loss that goes with the pinion alone.
 */
export function ownAxle(data: AxleData, asked: AxleAsked): AxleAnswer {
  const road_m_s = asked.radius_m === null ? null : asked.wheel_rad_s * asked.radius_m;
  const nu_m2_s = askedViscosity(data, asked);
  const two = typeof asked.oil === 'string' ? data.oils.find(({ id }) => id === asked.oil) : asked.oil;
  return {
    road_m_s,
    pinion_rad_s: asked.wheel_rad_s * asked.ratio,
    nu_m2_s,
    rows: data.articles.map(({ id }) => rowOf(data, asked, id, road_m_s)),
    notes: [
      ...(two === undefined || nu_m2_s === null
        ? []
        : outsideRange(viscosityRelation, {
            ...{ nu40_m2_s: two.nu40_m2_s, nu100_m2_s: two.nu100_m2_s, oil_K: asked.sump_K },
          })),
      ...(road_m_s === null ? [] : outsideRange(energyPerDistanceRelation, { power_W: 0, speed_m_s: road_m_s })),
    ],
  };
}

/** The bench itself, under the conditions that the series is compared at. Of load, ambient and air nothing is told without loaded runs. */
export const referenceCase = (data: AxleData): AxleAsked => ({
  ...{ ratio: data.ratio, radius_m: data.radius_m, wheel_rad_s: data.wheel_rad_s, sump_K: data.sump_K },
  ...{ fill_m3: data.baseline.fill_m3, oil: data.baseline.oil },
  power_W: data.load?.power_W ?? NaN,
  ambient_K: data.load?.ambient_K ?? NaN,
  airflow_m_s: data.load?.airflow_m_s ?? NaN,
  ...{ drive: data.drive, driveEfficiency: data.driveEfficiency },
});

function rowOf(data: AxleData, asked: AxleAsked, article: string, road_m_s: number | null): AxleRow {
  const faster = asked.ratio / data.ratio;
  const far = !(Math.abs(faster - 1) <= farRatio);
  const turns = Math.abs(faster - 1) <= sameRatio ? [1] : [1, faster];
  const spun = turns.map((by) => spinOf(data, asked, article, asked.wheel_rad_s * by));
  const less = spun.map((s) => (typeof s === 'string' ? s : (s.less ?? texts.notCompared)));
  const why = far ? texts.ratioFar(data.ratio) : null;
  const lessTold = article === data.baseline.article ? none('the baseline') : told(less, why);
  const final = told(
    turns.map((by) => finalOf(data, asked, article, by)),
    why,
  );
  return {
    article,
    spin: told(
      spun.map((s) => (typeof s === 'string' ? s : s.power)),
      why,
    ),
    less: lessTold,
    indicative: spun.some((s) => typeof s !== 'string' && s.less !== null && s.indicative),
    cost: costOf(lessTold, asked, road_m_s),
    final,
    notes: aboveStated(data, asked, article, final),
  };
}

const none = (why: string): Told => ({ kind: 'none', why });

/** One value, or the band that holds both ways of scaling with their intervals. */
function told(list: readonly (Spread | string)[], why: string | null): Told {
  const refused = why ?? list.find((each) => typeof each === 'string');
  if (refused !== undefined) return none(refused);
  const found = list as readonly Spread[];
  if (found.length === 1) return { kind: 'value', ...found[0]! };
  return {
    kind: 'band',
    low: Math.min(...found.map(({ value, half }) => value - half)),
    high: Math.max(...found.map(({ value, half }) => value + half)),
  };
}

/** What a difference in power takes along the road; see the duty of a series for the same over a day. */
function costOf(less: Told, { drive, driveEfficiency }: AxleAsked, road_m_s: number | null): Told {
  if (less.kind === 'none') return less;
  if (road_m_s === null) return none(texts.noTyre);
  if (!(road_m_s > 0 && driveEfficiency > 0)) return none(texts.stands);
  const per = (drive === 'electric' ? 1 / driveEfficiency : fuelFactors[drive].perEnergy_m3_J) / road_m_s;
  return less.kind === 'value'
    ? { kind: 'value', value: less.value * per, half: less.half * per }
    : { kind: 'band', low: less.low * per, high: less.high * per };
}

function aboveStated({ articles, oils }: AxleData, { oil }: AxleAsked, article: string, final: Told): string[] {
  if (final.kind === 'none') return [];
  const top_K = final.kind === 'value' ? final.value + final.half : final.high;
  return [
    { of: 'the oil', limit_K: oils.find(({ id }) => id === oil)?.maxSump_K },
    { of: 'the article', limit_K: articles.find(({ id }) => id === article)?.maxSump_K },
  ].flatMap(({ of, limit_K }) => (limit_K != null && top_K > limit_K ? [texts.aboveStated(of, limit_K)] : []));
}
