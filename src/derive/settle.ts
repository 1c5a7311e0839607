import { estimate, type Cause } from '../quantity/estimate.ts';
import { writeNumber, writeQuantity } from '../quantity/write.ts';
import { fitNonlinear } from '../statistics/nonlinear.ts';
import type { Result, Settled } from '../trial/derived.ts';
import { fitScatter, gather, readingScatter } from './causes.ts';
import { logSource, outputSpeed, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';

/** The ring gear stands when it turns slower than this: 1 rpm. */
const standing_rad_s = Math.PI / 30;

export interface SettleDerived {
  readonly settled: Settled | null;
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
}

/** Rows of the log from the gear's standstill to its end; null when the gear never ran, or never stopped. */
export function restAfter(reading: Reading): readonly [number, number] | null {
  const speed = ringSpeed(reading);
  if (speed === null) return null;
  const last = speed.findLastIndex((w, row) => turns(w) && turns(meanAround(speed, row - few, row)));
  return last < 0 || last + 1 >= reading.log.rows ? null : [last + 1, reading.log.rows];
}

/** Rows before the gear first turned; null when it turned from the first. */
function restBefore(reading: Reading): readonly [number, number] | null {
  const speed = ringSpeed(reading);
  const first = speed?.findIndex((w, row) => turns(w) && turns(meanAround(speed, row, row + few))) ?? -1;
  return first <= 0 ? null : [0, first];
}

const turns = (w_rad_s: number): boolean => Math.abs(w_rad_s) >= standing_rad_s;

/** One reading that jumps while the gear stands does not turn it: its neighbours have to turn with it. */
const few = 4;
const meanAround = (speed: Float64Array, from: number, to: number): number =>
  meanOf(speed.subarray(Math.max(0, from), to + 1)).mean;

const ringSpeed = (reading: Reading): Float64Array | null =>
  outputSpeed(reading)?.map((w) => w * reading.rig.hubReduction) ?? null;

/**
 * The level after the stop. Time zero is the gear's standstill. The curve z = end − depth·2^(−t/half) is drain-back; what
 * is missing at its end against the level at rest before is held up, lost, or in the tubes.
 */
export function deriveSettle(reading: Reading, airUntold: string | null): SettleDerived {
  const rest = restAfter(reading);
  const none = { settled: null, results: [], causes: [] };
  if (rest === null) return none;
  const { log, run } = reading;
  const stop_s = log.time_s[rest[0]]!;
  const level = reading.channel('level');
  const rows = level === null ? [] : readRows(level, rest);
  const fit = level === null ? null : drainBack(reading, level, rows, stop_s);
  const still = restBefore(reading);
  const before = level === null || still === null ? null : meanOf(level.subarray(...still));
  const bubbles = run.settle.flatMap(({ after_s, bubble, foam_m }) =>
    bubble === null ? [] : [{ after_s, bubble, foam_m }],
  );
  if (rows.length === 0 && bubbles.length === 0) return none;
  const results: Result[] = [];
  const causes: Cause[] = [];
  const from = logSource(log, 'level', rest);
  const tell = (result: Omit<Result, 'at' | 'class' | 'steps'>, found: { causes: readonly Cause[] }): void => {
    results.push({ at: {}, class: 'measured', steps: [], ...result });
    causes.push(...found.causes);
  };
  if (fit !== null) {
    const half = gather([
      { of: fitScatter({ run: run.id, what: 'half-time of the level', u: fit.u.half, dof: fit.dof }), sensitivity: 1 },
    ]);
    tell(
      {
        quantity: 'level-half-time',
        estimate: estimate(fit.half_s, half.parts),
        bound: null,
        relation: 'drain-back',
        method: 'flow/settle',
        notes: ['the ± is of the fit alone: one curve stands for all that drains back'],
        given: [{ symbol: 'n', name: 'level readings after the stop', value: rows.length, u: null, unit: '1', from }],
      },
      half,
    );
  }
  if (fit !== null && before !== null && before.n >= 5) {
    // One glass before and after: its calibration cancels.
    const missing = gather([
      { of: readingScatter({ run: run.id, what: 'level at rest', u: before.u, dof: before.dof }), sensitivity: 1 },
      { of: fitScatter({ run: run.id, what: 'end of the level', u: fit.u.end, dof: fit.dof }), sensitivity: -1 },
    ]);
    tell(
      {
        quantity: 'held-up',
        estimate: estimate(before.mean - fit.end_z_m, missing.parts),
        bound: null,
        relation: 'level-missing',
        method: 'flow/settle',
        notes: [
          'held up on walls and in trays, lost, or gone to the tubes',
          ...warmerNote(reading, still!, rows),
          ...beyondNote(log.time_s.at(-1)! - stop_s, fit.half_s),
        ],
        given: [
          {
            symbol: 'z0',
            name: 'level at rest before',
            value: before.mean * 1e3,
            u: before.u * 1e3,
            unit: 'mm',
            from: logSource(log, 'level', still!),
          },
          {
            symbol: 'z end',
            name: 'end of the curve after the stop',
            value: fit.end_z_m * 1e3,
            u: fit.u.end * 1e3,
            unit: 'mm',
            from,
          },
        ],
      },
      missing,
    );
  }
  const clear = clearing(reading);
  if (clear !== null) tell(clear.result, clear);
  return {
    settled: {
      stop_s,
      points: level === null ? [] : pointsOf(log.time_s, level, rows, stop_s),
      fit: fit && { end_z_m: fit.end_z_m, depth_m: fit.depth_m, half_s: fit.half_s },
      before_z_m: before === null || before.n < 5 ? null : before.mean,
      bubbles,
      airUntold,
    },
    results,
    causes,
  };
}

/** A level is told at its own temperature: how far the sump was from it before. */
function warmerNote(reading: Reading, still: readonly [number, number], rows: readonly number[]): string[] {
  const sump = reading.channel('sump');
  if (sump === null) return ['the sump was not read: warmer oil stands higher'];
  const last = rows.slice(-Math.ceil(rows.length / 5));
  const warmer_K = meanOf(last.map((row) => sump[row]!)).mean - meanOf(sump.subarray(...still)).mean;
  if (Number.isNaN(warmer_K)) return ['the sump was not read: warmer oil stands higher'];
  const by = writeQuantity(Math.abs(warmer_K), 'K', 1);
  return [`the sump was ${by} ${warmer_K < 0 ? 'cooler' : 'warmer'} at the end than before; warmer oil stands higher`];
}

/** After five half-times 3 % of the depth is still to come (our rule): before that the end lies beyond what was read. */
function beyondNote(read_s: number, half_s: number): string[] {
  const halves = read_s / half_s;
  if (halves >= 5) return [];
  return [`the log ends after ${writeNumber(halves, 1)} half-times: this end is where the curve would come to`];
}

const readRows = (level: Float64Array, [from, to]: readonly [number, number]): number[] =>
  Array.from({ length: to - from }, (_, i) => from + i).filter((row) => !Number.isNaN(level[row]!));

/** Fit of the drain-back; null when the readings hold no such curve: too few, no depth, or a half-time beyond them. */
function drainBack(reading: Reading, level: Float64Array, rows: readonly number[], stop_s: number) {
  if (rows.length < 10) return null;
  const t = rows.map((row) => reading.log.time_s[row]! - stop_s);
  const z = rows.map((row) => level[row]!);
  const end = meanOf(z.slice(-Math.ceil(z.length / 5))).mean;
  const fitted = fitNonlinear({
    model: ([end_z = 0, depth = 0, half = 1]) => t.map((s) => end_z - depth * 2 ** (-s / half)),
    y: z,
    start: [end, Math.max(1e-4, end - z[0]!), t.at(-1)! / 8],
    lower: [-Infinity, -Infinity, 1],
    upper: [Infinity, Infinity, t.at(-1)! * 2],
  });
  const [end_z_m = NaN, depth_m = NaN, half_s = NaN] = fitted.parameters;
  // Readings that follow each other, and a curve that is not quite theirs, leave residuals that hang together.
  const left = meanOf(fitted.residuals);
  const widened = Math.sqrt(left.n / left.effectiveN);
  const u = fitted.covariance.map((row, i) => Math.sqrt(row[i]!) * widened);
  const told = fitted.stopped === 'converged' && u.every(Number.isFinite) && depth_m > 3 * u[1]! && half_s < t.at(-1)!;
  return told
    ? { end_z_m, depth_m, half_s, u: { end: u[0]!, half: u[2]! }, dof: Math.max(1, left.effectiveN - 3) }
    : null;
}

/** Readings as points of a chart: means over stretches that grow, since most happens at first. */
function pointsOf(time_s: Float64Array, level: Float64Array, rows: readonly number[], stop_s: number) {
  const edges = [
    0, 3, 6, 10, 15, 20, 30, 40, 50, 60, 80, 100, 120, 150, 180, 240, 300, 360, 420, 480, 540, 600, 900, 1200,
  ];
  return edges.flatMap((from, i) => {
    const to = edges[i + 1] ?? Infinity;
    const own = rows.filter((row) => time_s[row]! - stop_s >= from && time_s[row]! - stop_s < to);
    if (own.length === 0) return [];
    const mean = (of: (row: number) => number): number => own.reduce((sum, row) => sum + of(row), 0) / own.length;
    return [{ after_s: mean((row) => time_s[row]! - stop_s), level_z_m: mean((row) => level[row]!) }];
  });
}

/** Time to Bubble 1 or less for good: between the last reading above it and the next; a bound when it never came. */
function clearing(
  reading: Reading,
): { result: Omit<Result, 'at' | 'class' | 'steps'>; causes: readonly Cause[] } | null {
  const { run } = reading;
  const read = run.settle.flatMap((row) =>
    row.bubble === null || row.bubble === 'ng' ? [] : [{ ...row, bubble: row.bubble }],
  );
  const last = read.findLastIndex(({ bubble }) => bubble > 1);
  const above = read[last];
  // Clear at the first reading: there was no time to be told.
  if (above === undefined) return null;
  const clear = read[last + 1];
  const shared = {
    quantity: 'bubble-clear-time',
    relation: 'between-readings',
    method: 'flow/settle',
    notes: ['by the Bubble grades after the stop; not the air release of a bench test'],
    given: [above, ...(clear === undefined ? [] : [clear])].map((row, i) => ({
      symbol: `t${i + 1}`,
      name: `Bubble ${row.bubble} at this time after the stop`,
      value: row.after_s,
      u: null,
      unit: 's',
      from: { kind: 'note', place: row.place, typed: String(row.bubble) } as const,
    })),
  } as const;
  if (clear === undefined)
    return { result: { ...shared, estimate: null, bound: { side: 'above', at: above.after_s } }, causes: [] };
  // It happened between the two; either end is as likely as the middle, so there is no mark in it.
  return {
    result: { ...shared, estimate: null, bound: null, band: { low: above.after_s, high: clear.after_s } },
    causes: [],
  };
}
