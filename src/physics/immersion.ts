import { volumeMoved_m3 } from './density.ts';
import { input, output, type Relation } from './relation.ts';

/** Height above the axle centreline and the volume standing below it; both rise strictly from row to row. */
export interface SurveyRow {
  readonly z_m: number;
  readonly volume_m3: number;
}
export type Survey = readonly SurveyRow[];

/**
 * Static level of a volume by the article's own level table.
 *
 *   z = z_i + (V − V_i)(z_{i+1} − z_i)/(V_{i+1} − V_i)
 *
 * volume       [m³] at the temperature of the level
 * returns      z [m] above the axle centreline, negative below; null outside the surveyed rows, never extrapolated
 * range        the surveyed rows
 * source       definition      check: common practice, no source
 */
export const level_z_m = (at: { survey: Survey; volume_m3: number }): number | null =>
  between(at.survey, 'volume_m3', 'z_m', at.volume_m3)?.value ?? null;

/** Volume below a level: the table turned round; null outside the surveyed rows. */
export const volumeBelow_m3 = (at: { survey: Survey; z_m: number }): number | null =>
  between(at.survey, 'z_m', 'volume_m3', at.z_m)?.value ?? null;

/** Rise of the level a volume more, dz/dV [m/m³], in the segment the volume lies in; null outside the surveyed rows. */
export const levelSlope_1_m2 = (at: { survey: Survey; volume_m3: number }): number | null =>
  between(at.survey, 'volume_m3', 'z_m', at.volume_m3)?.slope ?? null;

/** Depth of the ring gear in oil at rest, h = R + z [m]; negative is the height its lowest tooth stands clear. */
export const immersion_m = (at: { ringRadius_m: number; z_m: number }): number => at.ringRadius_m + at.z_m;

/** Volume that gives this article the level which the baseline has with its own; null when either table ends before. */
export function equalLevelVolume_m3(at: {
  survey: Survey;
  baseline: Survey;
  baselineVolume_m3: number;
}): number | null {
  const z_m = level_z_m({ survey: at.baseline, volume_m3: at.baselineVolume_m3 });
  return z_m === null ? null : volumeBelow_m3({ survey: at.survey, z_m });
}

/**
 * How far the level drops at a point when the axle is tilted about the point where the level is read.
 *
 *   Δz = L tan(tilt)
 *
 * distance     [m], tilt [1] as a slope: 12 % is 0.12
 * returns      [m]
 * range        the pool reaches both points
 * source       definition      check: 100 mm at 5° is 8.7 mm
 */
export const tiltDrop_m = (at: { distance_m: number; tilt_ratio: number }): number => at.distance_m * at.tilt_ratio;

/** Rise of the static level when the fill warms, housing taken as rigid; null when a level is outside the table. */
export function hotRise_m(at: {
  survey: Survey;
  volume_m3: number;
  expansion_1_K: number;
  from_K: number;
  to_K: number;
}): number | null {
  const cold = level_z_m(at);
  const hot = level_z_m({ survey: at.survey, volume_m3: volumeMoved_m3(at) });
  return cold === null || hot === null ? null : hot - cold;
}

/** Linear between rows; both ends belong to the table. */
function between(
  survey: Survey,
  from: keyof SurveyRow,
  to: keyof SurveyRow,
  at: number,
): { value: number; slope: number } | null {
  const upper = survey.findIndex((row, i) => i > 0 && at <= row[from]);
  const low = survey[upper - 1];
  const high = survey[upper];
  if (low === undefined || high === undefined || !(at >= low[from])) return null;
  const slope = (high[to] - low[to]) / (high[from] - low[from]);
  return Number.isFinite(slope) ? { value: low[to] + slope * (at - low[from]), slope } : null;
}

type Level = { readonly survey: Survey; readonly volume_m3: number };
const sample: Survey = [
  { z_m: -0.13, volume_m3: 0.0002 },
  { z_m: -0.09, volume_m3: 0.001 },
  { z_m: -0.05, volume_m3: 0.002 },
];
export const levelRelation: Relation<Level> = {
  id: 'static-level',
  title: 'Static level from litres by the level table',
  formula: {
    latex: String.raw`z=z_i+(V-V_i)\,\frac{z_{i+1}-z_i}{V_{i+1}-V_i}`,
    plain: 'z = z_i + (V − V_i)(z_{i+1} − z_i)/(V_{i+1} − V_i)',
  },
  symbols: [
    input('survey', 'z_i, V_i', 'rows of the level table', 'm'),
    input('volume_m3', 'V', 'litres in the housing', 'm³'),
    output('z', 'static level above the axle centreline', 'm'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'a surveyed row gives itself back',
      seen: 'computed',
      inputs: { survey: sample, volume_m3: 0.001 },
      printed: '-90.0',
      unit: 'mm',
    },
    {
      source: 'half-way between two rows by hand',
      seen: 'computed',
      inputs: { survey: sample, volume_m3: 0.0015 },
      printed: '-70.0',
      unit: 'mm',
    },
  ],
  of: (at) => level_z_m(at),
};

export const immersionRelation: Relation<{ readonly ringRadius_m: number; readonly z_m: number }> = {
  id: 'immersion',
  title: 'Immersion of the ring gear',
  formula: { latex: String.raw`h=R+z`, plain: 'h = R + z' },
  symbols: [
    input('ringRadius_m', 'R', 'outer radius of the ring gear', 'm'),
    input('z_m', 'z', 'static level above the axle centreline', 'm'),
    output('h', 'immersion', 'm'),
  ],
  range: [{ symbol: 'h', from: 0, to: null, why: 'the gear does not reach the oil at rest' }],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'by hand: a ring gear of 111 mm over a level 66 mm below the axle',
      seen: 'computed',
      inputs: { ringRadius_m: 0.111, z_m: -0.066 },
      printed: '45',
      unit: 'mm',
    },
  ],
  of: (at) => immersion_m(at),
};

export const tiltDropRelation: Relation<{ readonly distance_m: number; readonly tilt_ratio: number }> = {
  id: 'tilt-drop',
  title: 'Drop of the level by tilt',
  formula: { latex: String.raw`\Delta z=L\tan\vartheta`, plain: 'Δz = L tan(tilt)' },
  symbols: [
    input('distance_m', 'L', 'distance from where the level is read', 'm'),
    input('tilt_ratio', 'tan ϑ', 'tilt as a slope', '1'),
    output('Δz', 'drop of the level', 'm'),
  ],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'common practice, no source: 5° of pinion angle move the level 9 mm in 100 mm',
      seen: 'computed',
      inputs: { distance_m: 0.1, tilt_ratio: Math.tan((5 * Math.PI) / 180) },
      printed: '9',
      unit: 'mm',
    },
  ],
  of: (at) => tiltDrop_m(at),
};
