import { combine, estimate, type Cause } from '../quantity/estimate.ts';
import { hotRise_m, levelSlope_1_m2, tiltDrop_m } from '../physics/immersion.ts';
import type { LevelTable } from '../trial/article.ts';
import type { Given, Result } from '../trial/derived.ts';
import type { Oil } from '../trial/oil.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import { calibration, gather } from './causes.ts';
import type { LevelDerived } from './level.ts';
import { logSource, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';

/**
 * The oil surface at the front pinion bearing: the static level less what the tilt takes from it there, and how far it
 * stands over the lowest point of the race. Null without a level or without the bearing on the rig sheet.
 */
export function atThePinion(run: Run, rig: Rig, level: LevelDerived): Result[] {
  const still = level.results.find(({ quantity }) => quantity === 'static-level')?.estimate;
  const front = rig.pinionFront;
  if (still == null || front === null) return [];
  const drop_m = tiltDrop_m({ distance_m: front.ahead_m, tilt_ratio: run.tilt_ratio });
  const surface = combine(still.value - drop_m, [{ of: still, sensitivity: 1 }]);
  const lowest_m = -front.below_m - front.raceRadius_m;
  const fromRig = (path: string, symbol: string, name: string, value: number): Given => ({
    ...{ symbol, name, value, u: null, unit: 'mm' },
    from: {
      kind: 'note',
      place: rig.places.get(path) ?? { file: rig.file, line: 1, column: 1 },
      typed: rig.typed.get(path) ?? '',
    },
  });
  const given: Given[] = [
    {
      symbol: 'z',
      name: 'static level',
      value: still.value * 1e3,
      u: null,
      unit: 'mm',
      from: { kind: 'result', run: run.id, quantity: 'static-level', at: {} },
    },
    fromRig('pinion-front.ahead', 'L', 'bearing ahead of the axle', front.ahead_m * 1e3),
    {
      symbol: 'i',
      name: 'tilt, nose up',
      value: run.tilt_ratio * 100,
      u: null,
      unit: '%',
      from: {
        kind: 'note',
        place: run.places.get('tilt') ?? { file: run.file, line: 1, column: 1 },
        typed: run.typed.get('tilt') ?? 'level',
      },
    },
  ];
  const shared = {
    at: {},
    bound: null,
    class: 'derived from measurement',
    relation: 'tilt-drop',
    method: 'fill/tilt',
    notes: [
      'at rest and with the axle still; the tilt is taken about the axle centreline',
      'the ± is of the level alone: the tilt and the lengths of the rig sheet are taken as exact',
    ],
  } as const;
  const drop = { says: 'Drop of the surface there', formula: 'Δz = L·i', value: drop_m * 1e3, unit: 'mm' };
  return [
    { ...shared, quantity: 'level-at-pinion', estimate: surface, given, steps: [drop] },
    {
      ...shared,
      quantity: 'bath-over-race',
      estimate: combine(surface.value - lowest_m, [{ of: surface, sensitivity: 1 }]),
      given: [...given, fromRig('pinion-front.race-radius', 'r', 'race radius', front.raceRadius_m * 1e3)],
      steps: [drop, { says: 'Lowest point of the race', formula: '−(below + r)', value: lowest_m * 1e3, unit: 'mm' }],
    },
  ];
}

/** How much higher the oil at rest stands by being warm: from 20 °C to the mean sump of the run. */
export function hotRise(input: { reading: Reading; oil: Oil; table: LevelTable | null; volume20_m3: number }): {
  results: Result[];
  causes: Cause[];
} {
  const { reading, oil, table, volume20_m3 } = input;
  const sump = reading.channel('sump');
  const t = sump === null ? null : meanOf(sump);
  if (table === null || t === null || t.n === 0) return { results: [], causes: [] };
  const rise_m = hotRise_m({
    survey: table.rows,
    volume_m3: volume20_m3,
    expansion_1_K: oil.expansion_1_K,
    from_K: 293.15,
    to_K: t.mean,
  });
  if (rise_m === null) return { results: [], causes: [] };
  const probe = reading.instrument('sump');
  const perKelvin =
    volume20_m3 * oil.expansion_1_K * (levelSlope_1_m2({ survey: table.rows, volume_m3: volume20_m3 }) ?? 0);
  const found = gather([{ of: probe && calibration(probe, t.mean), sensitivity: perKelvin }]);
  return {
    causes: [...found.causes],
    results: [
      {
        quantity: 'hot-level-rise',
        at: {},
        estimate: estimate(rise_m, found.parts),
        bound: null,
        class: 'derived from measurement',
        relation: 'volume-at-20',
        method: 'fill/hot-level',
        notes: ['the housing is taken as rigid', 'the ± is of the temperature alone'],
        given: [
          {
            symbol: 'T',
            name: 'sump, mean of the run',
            value: t.mean - 273.15,
            u: t.u,
            unit: '°C',
            from: logSource(reading.log, 'sump', [0, reading.log.rows]),
          },
        ],
        steps: [],
      },
    ],
  };
}
