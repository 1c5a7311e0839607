import { estimate, type Cause } from '../quantity/estimate.ts';
import type { Result } from '../trial/derived.ts';
import type { Run } from '../trial/run.ts';
import { calibration } from './causes.ts';
import { logSource, readingOf } from './reading.ts';
import * as texts from './texts-dose.ts';

/** Time that the oil spent in each band of temperature. Every stretch of the log is either in one band or in `missed_s`. */
export interface Dose {
  /** Bands that were entered, coldest first; each is ten degrees wide, with a whole ten degrees Celsius in its middle. */
  readonly bands: readonly { readonly from_K: number; readonly time_s: number }[];
  readonly counted_s: number;
  /** Gaps between rows, and rows without a reading of the sump. */
  readonly missed_s: number;
}

export interface DoseDerived {
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
}

/**
 * Benches hold at whole tens of degrees; an edge there would leave it to the last tenth of a kelvin of the probe on which side
 * an hour falls. So the tens lie in the middle of the bands.
 */
const width_K = 10;
const firstEdge = -width_K / 2;
const zeroCelsius_K = 273.15;
/** A step this many times those about it has rows missing in it, as when logs are read. Common practice, no source. */
const gapFactor = 1.8;
/** An edge of a band is an edge whatever the last bit of a conversion says. */
const grain_K = 1e-6;

/**
 * Thermal dose of one run: hours in each band of ten degrees of the sump, between two rows in a straight line. The whole log
 * counts, also before the load and after the stop, of any trial and of a run that is set aside: the oil was hot all the same.
 * So does a stretch that the note excludes, unless it excludes the sump itself. `inDoubt`: its temperatures cannot be trusted.
 */
export function deriveDose(input: Omit<Parameters<typeof readingOf>[0], 'drop'> & { inDoubt: boolean }): DoseDerived {
  const { run, log, inDoubt } = input;
  const reading = readingOf({ ...input, run: withOwnExclusions(run), drop: [] });
  const sump_K = reading.channel('sump');
  if (sump_K === null || inDoubt || run.status === 'superseded') return { results: [], causes: [] };
  const at = (shift_K: number): Dose => timeInBands({ time_s: log.time_s, sump_K, shift_K });
  const dose = at(0);
  if (dose.counted_s === 0) return { results: [], causes: [] };
  const probe = reading.instrument('sump');
  const doubt = probe && calibration(probe, hottest(dose));
  const [cold, hot] = doubt === null ? [dose, dose] : [at(-doubt.u), at(doubt.u)];
  const log_h = { value: (dose.counted_s + dose.missed_s) / 3600, unit: 'h' };
  const shared = {
    bound: null,
    class: 'derived from measurement',
    relation: 'thermal-dose',
    method: 'dose/bands-of-ten-degrees',
    notes: [texts.bySumpProbe, ...(dose.missed_s < 36 ? [] : [texts.notCounted(dose.missed_s / 3600)])],
    given: [
      {
        ...{ symbol: 't', name: 'length of the log', ...log_h, u: null },
        from: logSource(log, 'sump', [0, log.rows]),
      },
    ],
  } as const;
  const counted = {
    says: 'Time between rows that have a reading of the sump, gaps left out',
    formula: 't = Σ Δt',
    value: dose.counted_s / 3600,
    unit: 'h',
  };
  return {
    causes: doubt === null ? [] : [doubt.cause],
    results: [
      { ...shared, quantity: 'thermal-dose', at: {}, estimate: estimate(dose.counted_s, []), steps: [counted] },
      ...dose.bands.map(({ from_K, time_s }): Result => {
        // half of what the band gains when the probe reads one standard uncertainty higher instead of lower
        const u_s = (timeFrom(hot, from_K) - timeFrom(cold, from_K)) / 2;
        return {
          ...shared,
          quantity: 'thermal-dose',
          at: { band_K: [from_K, from_K + width_K] },
          estimate: estimate(time_s, doubt === null ? [] : [{ cause: doubt.cause.id, u: u_s }]),
          steps: [
            counted,
            {
              says: 'Of it, time in the band, between rows in a straight line',
              formula: 't_band = Σ Δt·share in the band',
              value: time_s / 3600,
              unit: 'h',
            },
          ],
        };
      }),
    ],
  };
}

/** Time in each band, s. Rows rise in time; a missing reading is NaN. */
export function timeInBands(of: { time_s: Float64Array; sump_K: Float64Array; shift_K?: number }): Dose {
  const { time_s, sump_K, shift_K = 0 } = of;
  const isGap = gapsIn(time_s);
  const bands = new Map<number, number>();
  const add = (band: number, dt_s: number): void => void bands.set(band, (bands.get(band) ?? 0) + dt_s);
  const celsius = (i: number): number => Math.round((sump_K[i]! - zeroCelsius_K + shift_K) / grain_K) * grain_K;
  let counted_s = 0;
  for (let i = 1; i < time_s.length; i++) {
    const dt_s = time_s[i]! - time_s[i - 1]!;
    const [from, to] = [celsius(i - 1), celsius(i)];
    if (Number.isNaN(from) || Number.isNaN(to) || isGap(i)) continue;
    counted_s += dt_s;
    const [low, high] = from < to ? [from, to] : [to, from];
    const [first, last] = [bandOf(low), bandOf(high)];
    if (first === last) {
      add(first, dt_s);
      continue;
    }
    for (let band = first; band <= last; band++) {
      const inside = Math.min(high, edgeOf(band + 1)) - Math.max(low, edgeOf(band));
      if (inside > 0) add(band, (dt_s * inside) / (high - low));
    }
  }
  return {
    bands: [...bands]
      .sort(([a], [b]) => a - b)
      .map(([band, inside_s]) => ({ from_K: edgeOf(band) + zeroCelsius_K, time_s: inside_s })),
    counted_s,
    missed_s: time_s.length < 2 ? 0 : time_s.at(-1)! - time_s[0]! - counted_s,
  };
}

const bandOf = (celsius: number): number => Math.floor((celsius - firstEdge + grain_K / 2) / width_K);
const edgeOf = (band: number): number => firstEdge + band * width_K;

/** Whether the step before a row is a gap: far longer than the usual one of the log, and than those just about it. */
function gapsIn(time_s: Float64Array): (row: number) => boolean {
  const step = (i: number): number => time_s[i]! - time_s[i - 1]!;
  const median = (from: number, to: number): number => {
    const steps = Float64Array.from({ length: Math.max(0, to - from) }, (_, i) => step(from + i)).sort();
    return steps[steps.length >> 1] ?? Infinity;
  };
  const usual = median(1, time_s.length);
  const about = 5;
  return (row) =>
    step(row) > gapFactor * usual &&
    step(row) > gapFactor * median(Math.max(1, row - about), Math.min(time_s.length, row + about + 1));
}

const withOwnExclusions = (run: Run): Run => ({
  ...run,
  exclude: run.exclude.filter(({ channels }) => channels.includes('sump')),
});

const timeFrom = ({ bands }: Dose, from_K: number): number =>
  bands.find((band) => Math.abs(band.from_K - from_K) < 1)?.time_s ?? 0;

const hottest = ({ bands }: Dose): number => (bands.at(-1)?.from_K ?? zeroCelsius_K) + width_K / 2;
