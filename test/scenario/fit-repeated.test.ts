import { describe, expect, it } from 'vitest';
import { deriveSeries } from '../../src/derive/series.ts';
import { calibration, zeroDrift } from '../../src/derive/causes.ts';
import { standardUncertainty, type Estimate } from '../../src/quantity/estimate.ts';
import { fillNormal, fillRectangular, seededSource } from '../../src/statistics/seeded.ts';
import type { QuantityName } from '../../src/trial/figures.ts';
import type { Log } from '../../src/trial/log.ts';
import type { ChannelKind, Instrument } from '../../src/trial/rig.ts';
import { houseBook, smallDemo } from './small.ts';

/**
 * The trials of a series act on reduced figures. Here the reduction itself is repeated on one run, each time from logger
 * readings that every cause has moved by one draw: both ways have to tell the same standard uncertainty.
 *
 * source  JCGM 101:2008, clause 8 (linear propagation held against trials); noise from second differences (common practice, no
 *         source)
 */
const repeats = 100;
const judged = ['final-temperature', 'heat-made', 'shed', 'store'] as const satisfies readonly QuantityName[];

const { record } = houseBook(smallDemo()).series[0]!;
const alone = { ...record, runs: record.runs.filter(({ id }) => id === 'H-01') };
const { rig } = record;
const log = record.logs.get('H-01')!;
const derived = (of: Log) => deriveSeries({ ...alone, logs: new Map([['H-01', of]]) }).runs.get('H-01')!;
const once = derived(log);
const estimateOf = (run: typeof once, quantity: QuantityName): Estimate =>
  run.results.find((r) => r.quantity === quantity)!.estimate!;

/** u of the readings' own causes: what no draw of a reading moves, the choice of model, is left out. */
const linear = (e: Estimate): number =>
  standardUncertainty({ ...e, parts: e.parts.filter(({ cause }) => !cause.startsWith('model:')) });

describe('the reduction of a heat-up, repeated on readings that every cause has moved', () => {
  const told = Array.from({ length: repeats }, (_, k) => derived(moved(log, k)));

  it.each(judged)('scatters in %s as the linear uncertainty says', (quantity) => {
    const ratio = deviation(told.map((run) => estimateOf(run, quantity).value)) / linear(estimateOf(once, quantity));
    console.log(`${quantity}: ${repeats} repeats scatter by ${ratio.toFixed(2)} of the linear u`);
    // a standard deviation of 100 repeats is itself good to 7 %
    expect(ratio).toBeGreaterThan(0.8);
    expect(ratio).toBeLessThan(1.2);
  });
});

/** The log with one draw of every instrument's causes, and with its own noise laid on once more. */
function moved(of: Log, k: number): Log {
  const channels = new Map(
    [...of.channels].map(([kind, values]): [ChannelKind, Float64Array] => {
      const instrument = instrumentOf(kind);
      const { factor, offset } = instrument === null ? { factor: 1, offset: 0 } : shift(instrument, mean(values), k);
      const noise = new Float64Array(values.length);
      fillNormal(noise, seededSource('noise', kind, k));
      const u = noiseOf(values);
      return [kind, values.map((v, i) => v * factor + offset + u * noise[i]!)];
    }),
  );
  return { ...of, channels };
}

function shift(instrument: Instrument, reading: number, k: number): { factor: number; offset: number } {
  const found = [calibration(instrument, reading), zeroDrift(alone.runs[0]!, instrument)];
  return found.reduce(
    (sum, contribution) => {
      if (contribution === null) return sum;
      const { cause, u } = contribution;
      const one = new Float64Array(1);
      const source = seededSource('cause', cause.id, k);
      if (cause.distribution === 'rectangular') fillRectangular(one, source);
      else fillNormal(one, source);
      return cause.kind === 'scale'
        ? { ...sum, factor: sum.factor * (1 + (u * one[0]!) / reading) }
        : { ...sum, offset: sum.offset + u * one[0]! };
    },
    { factor: 1, offset: 0 },
  );
}

function instrumentOf(kind: ChannelKind): Instrument | null {
  const map = rig.maps.find(({ id }) => id === alone.runs[0]!.log?.map);
  const id = map?.columns.find((c) => c.is === kind)?.instrument;
  return rig.instruments.find((i) => i.id === id) ?? null;
}

/** Standard deviation of white noise on a smooth course: second differences carry six times its variance. */
function noiseOf(values: Float64Array): number {
  let [sum, n] = [0, 0];
  for (let i = 2; i < values.length; i++) {
    const second = values[i]! - 2 * values[i - 1]! + values[i - 2]!;
    if (Number.isNaN(second)) continue;
    sum += second * second;
    n++;
  }
  return Math.sqrt(sum / (6 * n));
}

function mean(values: ArrayLike<number>): number {
  const known = Array.from(values).filter((v) => !Number.isNaN(v));
  return known.reduce((a, b) => a + b, 0) / known.length;
}

function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, v) => sum + (v - middle) ** 2, 0) / (values.length - 1));
}
