import { airShare } from '../physics/aeration.ts';
import { density_kg_m3 } from '../physics/density.ts';
import { levelSlope_1_m2, volumeBelow_m3 } from '../physics/immersion.ts';
import { estimate, exact, type Cause } from '../quantity/estimate.ts';
import type { LevelTable } from '../trial/article.ts';
import type { Result } from '../trial/derived.ts';
import type { Oil } from '../trial/oil.ts';
import { gather, readingScatter } from './causes.ts';
import { atStep } from './flow-steps.ts';
import { logSource, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';
import { restAfter } from './settle.ts';

/** Dry air at one atmosphere, kg/m³: ideal gas with R = 287.05 J/(kg·K). */
const airDensity_kg_m3 = (air_K: number): number => 101_325 / (287.05 * air_K);

export interface AirDerived {
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
  /** Why no share of air is given; null when one is. */
  readonly untold: string | null;
}

/**
 * Share of air in the oil, where something was weighed: from a sample drawn while it ran, or from the fall of the level
 * after the stop of a fill that was weighed in. One level alone cannot tell air from oil in flight.
 */
export function deriveAir(input: { reading: Reading; oil: Oil; table: LevelTable | null }): AirDerived {
  const sample = ofSample(input.reading, input.oil);
  if (sample !== null) return { results: [sample], causes: [], untold: null };
  const { run } = input.reading;
  if (run.fill.mass_kg === null)
    return untold('the fill was not weighed in, so that air and oil held up elsewhere cannot be told apart');
  return ofLevel(input);
}

const untold = (why: string): AirDerived => ({ results: [], causes: [], untold: why });

function ofSample({ run }: Reading, oil: Oil): Result | null {
  const sample = run.airSample;
  if (sample === null) return null;
  const oil_kg_m3 = density_kg_m3({ ...oil, oil_K: sample.temperature_K });
  const share = airShare({
    oil_kg_m3,
    air_kg_m3: airDensity_kg_m3(sample.temperature_K),
    sample_kg_m3: sample.mass_kg / sample.volume_m3,
  });
  if (share === null) return null;
  const given = (symbol: string, name: string, value: number, unit: string) => ({
    ...{ symbol, name, value, u: null, unit },
    from: { kind: 'note', place: sample.place, typed: '' } as const,
  });
  return {
    quantity: 'air-share',
    at: atStep(sample.step),
    estimate: exact(share),
    bound: null,
    class: 'derived from measurement',
    relation: 'air-share',
    method: 'flow/air-sample',
    notes: ['from one weighed sample; how finely its volume was read is not stated'],
    given: [
      given('m', 'mass of the sample', sample.mass_kg * 1e3, 'g'),
      given('V', 'volume of the sample', sample.volume_m3 * 1e3, 'L'),
    ],
    steps: [
      { says: 'Density of the oil without air at that temperature', formula: 'ρo', value: oil_kg_m3, unit: 'kg/m³' },
    ],
  };
}

/** The level falls while air leaves: share = 1 − V(end)/V(highest), read from the level table, cooling taken off. */
function ofLevel({ reading, oil, table }: { reading: Reading; oil: Oil; table: LevelTable | null }): AirDerived {
  const rest = restAfter(reading);
  const level = reading.channel('level');
  if (rest === null || level === null) return untold('no level was read after the stop');
  if (table === null) return untold('the article has no level table');
  const long = rest[1] - rest[0];
  const part = Math.max(5, Math.floor(long / 20));
  const means = Array.from({ length: Math.floor(long / part) }, (_, i) => {
    const rows = [rest[0] + i * part, rest[0] + (i + 1) * part] as const;
    return { rows, ...meanOf(level.subarray(...rows)) };
  }).filter(({ n }) => n >= 3);
  const end = means.at(-1);
  const top = means.reduce<(typeof means)[number] | undefined>(
    (a, b) => (a === undefined || b.mean > a.mean ? b : a),
    undefined,
  );
  if (end === undefined || top === undefined) return untold('too few level readings after the stop');
  // The highest of twenty means stands out by chance alone: it has to stand out by more.
  if (top.mean - end.mean <= Math.max(5 * Math.hypot(top.u, end.u), 5e-4))
    return untold(
      'the level only rises after the stop: oil draining back hides what the air that leaves takes away, and no sample was weighed',
    );
  const volumes = [top, end].map(({ mean }) => volumeBelow_m3({ survey: table.rows, z_m: mean }));
  const [high, low] = volumes;
  if (high == null || low == null) return untold('the level lies outside the level table');
  const sump = reading.channel('sump');
  const cooled_K =
    sump === null ? 0 : meanOf(sump.subarray(...top.rows)).mean - meanOf(sump.subarray(...end.rows)).mean;
  const warm = low * (1 + oil.expansion_1_K * (Number.isNaN(cooled_K) ? 0 : cooled_K));
  // One glass read twice: its calibration cancels but for what the table bends between the two.
  const perLevel = (volume_m3: number): number => 1 / (levelSlope_1_m2({ survey: table.rows, volume_m3 }) ?? Infinity);
  const scatter = (what: string, of: { u: number; dof: number }) =>
    readingScatter({ run: reading.run.id, what, ...of });
  const found = gather([
    { of: scatter('highest level', top), sensitivity: (warm / high ** 2) * perLevel(high) },
    { of: scatter('level at the end', end), sensitivity: -perLevel(low) / high },
  ]);
  return {
    untold: null,
    causes: found.causes,
    results: [
      {
        quantity: 'air-share',
        at: {},
        estimate: estimate(1 - warm / high, found.parts),
        bound: null,
        class: 'derived from measurement',
        relation: 'air-from-level',
        method: 'flow/air-from-level',
        notes: [
          'at the highest level after the stop; oil still draining back makes it read low',
          'oil that leaves the sump meanwhile, into a tube or past a seal, would read as air',
        ],
        given: [top, end].map(({ mean, u, rows }, i) => ({
          symbol: i === 0 ? 'z high' : 'z end',
          name: i === 0 ? 'highest level after the stop' : 'level at the end',
          value: mean * 1e3,
          u: u * 1e3,
          unit: 'mm',
          from: logSource(reading.log, 'level', rows),
        })),
        steps: [
          { says: 'Volume under the highest level', formula: 'V(z high)', value: high * 1e3, unit: 'L' },
          {
            says: 'Volume under the end, at the same temperature',
            formula: 'V(z end)·(1 + β·ΔT)',
            value: warm * 1e3,
            unit: 'L',
          },
        ],
      },
    ],
  };
}
