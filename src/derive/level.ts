import { estimate, type Cause } from '../quantity/estimate.ts';
import { volumeAt20_m3, volumeMoved_m3 } from '../physics/density.ts';
import {
  equalLevelVolume_m3,
  immersion_m,
  immersionRelation,
  level_z_m,
  levelSlope_1_m2,
} from '../physics/immersion.ts';
import { outsideRange } from '../physics/relation.ts';
import type { Article, LevelTable } from '../trial/article.ts';
import type { Given, Result } from '../trial/derived.ts';
import type { Oil } from '../trial/oil.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import { calibration, gather } from './causes.ts';

export interface LevelDerived {
  readonly volume20_m3: number;
  /** Null when the litres lie outside the level table. */
  readonly level_z_m: number | null;
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
}

/**
 * Litres at 20 °C from the mass weighed in (or the volume poured at its temperature), the static level by the article's
 * own table, the immersion of the ring gear, and the litres that would give this article the baseline's level.
 */
export function deriveLevel(input: {
  run: Run;
  rig: Rig;
  oil: Oil;
  table: LevelTable | null;
  baseline: { readonly table: LevelTable; readonly volume_m3: number } | null;
}): LevelDerived {
  const { run, rig, oil, table, baseline } = input;
  const { fill } = run;
  const volume20_m3 =
    fill.mass_kg !== null
      ? volumeAt20_m3({ mass_kg: fill.mass_kg, ...oil })
      : volumeMoved_m3({ volume_m3: fill.volume_m3 ?? NaN, from_K: fill.temperature_K, to_K: 293.15, ...oil });
  const scale = rig.instruments.find((i) => i.measures === 'mass');
  const rule = rig.instruments.find((i) => i.measures === 'level');
  const z = table === null ? null : level_z_m({ survey: table.rows, volume_m3: volume20_m3 });
  const perVolume = table === null ? null : levelSlope_1_m2({ survey: table.rows, volume_m3: volume20_m3 });
  const weighed = scale && fill.mass_kg !== null ? calibration(scale, fill.mass_kg) : null;
  const perMass = volume20_m3 / (fill.mass_kg ?? Infinity);
  const surveyed = rule ? calibration(rule, 0) : null;
  const litres = gather([{ of: weighed, sensitivity: perMass }]);
  const height = gather([
    { of: weighed, sensitivity: perMass * (perVolume ?? 0) },
    { of: surveyed, sensitivity: 1 },
  ]);
  const given: Given[] = [fillGiven(run), ...tableGiven(z, input.table)];
  const shared = {
    at: {},
    bound: null,
    class: 'derived from measurement',
    notes: [],
    steps: [],
  } as const;
  const results: Result[] = [
    {
      ...shared,
      quantity: 'fill-volume',
      estimate: estimate(volume20_m3, litres.parts),
      relation: 'volume-at-20',
      method: 'fill/litres-at-20',
      given: [fillGiven(run)],
    },
  ];
  if (z !== null) {
    results.push(
      {
        ...shared,
        quantity: 'static-level',
        estimate: estimate(z, height.parts),
        relation: 'static-level',
        method: 'fill/level-table',
        given,
      },
      {
        ...shared,
        quantity: 'immersion',
        estimate: estimate(immersion_m({ ringRadius_m: rig.ringRadius_m, z_m: z }), height.parts),
        relation: 'immersion',
        method: 'fill/level-table',
        notes: [
          ...outsideRange(immersionRelation, { ringRadius_m: rig.ringRadius_m, z_m: z }),
          ...(z > rig.ringRadius_m ? ['the ring gear is under oil whole, so that more level is no more dip'] : []),
        ],
        given,
      },
    );
  }
  const equal =
    table === null || baseline === null
      ? null
      : equalLevelVolume_m3({
          survey: table.rows,
          baseline: baseline.table.rows,
          baselineVolume_m3: baseline.volume_m3,
        });
  const perVolumeThere = table && equal && levelSlope_1_m2({ survey: table.rows, volume_m3: equal });
  // Two tables are read against each other, each row with the rule; a table against itself is not.
  const surveys = gather([
    {
      of:
        surveyed && table !== baseline?.table ? { cause: surveyCause(run.article), u: surveyed.u * Math.SQRT2 } : null,
      sensitivity: perVolumeThere ? 1 / perVolumeThere : 0,
    },
  ]);
  if (equal !== null)
    results.push({
      ...shared,
      quantity: 'equal-level-volume',
      estimate: estimate(equal, surveys.parts),
      relation: 'static-level',
      method: 'fill/equal-level',
      given: tableGiven(z, table),
    });
  return { volume20_m3, level_z_m: z, results, causes: [...litres.causes, ...height.causes, ...surveys.causes] };
}

const surveyCause = (article: string): Cause => ({
  id: `survey:${article}`,
  name: `level tables of ${article} and of the baseline`,
  kind: 'offset',
  distribution: 'rectangular',
  dof: Infinity,
  scope: 'series',
});

/** The table a run's article stands on: its own, or that of the article it is a window copy of (already resolved by notes). */
export const tableOf = (article: Article | undefined): LevelTable | null => article?.levelTable ?? null;

const fillGiven = (run: Run): Given => {
  const weighed = run.fill.mass_kg !== null;
  const path = weighed ? 'fill.mass-in' : 'fill.volume';
  const place = run.places.get(path) ?? { file: run.file, line: 1, column: 1 };
  return {
    symbol: weighed ? 'm' : 'V',
    name: weighed ? 'mass of oil weighed in' : 'volume poured in',
    value: weighed ? run.fill.mass_kg * 1e3 : (run.fill.volume_m3 ?? NaN) * 1e3,
    u: null,
    unit: weighed ? 'g' : 'L',
    from: { kind: 'note', place, typed: run.typed.get(path) ?? '' },
  };
};

const tableGiven = (z: number | null, table: LevelTable | null): Given[] =>
  z === null || table === null
    ? []
    : [
        {
          symbol: 'z',
          name: `level table of the article, ${table.rows.length} rows`,
          value: z * 1e3,
          u: null,
          unit: 'mm',
          from: { kind: 'constant', text: `surveyed by ${table.method.replaceAll('_', ' ')}` },
        },
      ];
