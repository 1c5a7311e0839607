import { placeSymmetricEnds, shortestInterval, symmetricInterval } from './coverage-interval.ts';

export { shortestInterval, symmetricInterval } from './coverage-interval.ts';

/**
 * `value` is the mean of all trials, `u` their standard deviation. A trial without a number (NaN) leaves the output without
 * one; endless trials leave it its ends.
 */
export interface TrialsOf {
  readonly value: number;
  readonly u: number;
  readonly interval: readonly [number, number];
}

export interface Trials {
  readonly draws: number;
  /** False when some output had not settled to its tolerance by the last draw. */
  readonly met: boolean;
  /** In the order of the trial's. */
  readonly outputs: readonly TrialsOf[];
}

type Shape = 'symmetric' | 'shortest';

/**
 * Monte Carlo, adaptive: blocks of trials until twice the standard error over blocks of value, u and both ends is no more
 * than the tolerance, for every output. An output that does not vary is settled.
 *
 * trial     all outputs of so many trials, asked for block 0, 1, 2, …
 * digits    of u that must have settled; 2 takes some fifty times the draws of 1
 * moments   false: neither mean nor u is waited for, since a quotient whose divisor can be 0 has none; its ends still are
 * cap       draws at most, but never fewer than two blocks; lower where outputs are many, since all values are kept to the
 *           end (8 bytes each)
 *
 * source  JCGM 101:2008, 7.9                           check: its 9.2 to 9.5
 */
export function runTrials(of: {
  readonly trial: (block: number, size: number) => readonly Float64Array[];
  readonly coverage: number;
  readonly digits?: 1 | 2;
  readonly cap?: number;
  readonly shape?: Shape;
  readonly moments?: boolean;
}): Trials {
  const { coverage, digits = 2, cap = 1e6, shape = 'symmetric', moments = true } = of;
  const size = blockSize(coverage);
  const outputs: Output[] = [];
  for (let block = 0; ; block++) {
    of.trial(block, size).forEach((values, i) => {
      if (values.length !== size) throw new Error(`block of ${values.length} trials instead of ${size}`);
      const own = values.slice();
      (outputs[i] ??= { values: [], blocks: [] }).values.push(own);
      outputs[i].blocks.push(summary(own, coverage, shape));
    });
    const draws = (block + 1) * size;
    const stands = new Set(outputs.map((output) => standing(output.blocks, { size, digits, moments })));
    const full = draws + size > cap || outputs.length * (draws + size) > keptAtMost;
    const varies = stands.has('settled') || stands.has('moving') || stands.has('endless');
    if (!varies || (block > 0 && (full || !stands.has('moving')))) {
      return {
        draws,
        met: !stands.has('moving') && !stands.has('endless'),
        outputs: outputs.map(({ values }) => summary(joined(values), coverage, shape)),
      };
    }
  }
}

/**
 * Half a unit of the last of so many digits of u: u = c · 10^l with c of that many digits, δ = ½ · 10^l. 0 for u 0.
 *
 * source  JCGM 101:2008, 7.9.2                         check: its examples 1 to 3
 */
export function numericalTolerance(u: number, digits: 1 | 2): number {
  if (u === 0) return 0;
  const place = Math.floor(Math.log10(u)) - digits + 1;
  const c = Math.round(u / 10 ** place);
  // The logarithm may miss a power of ten, and 9.96 becomes 10.
  if (c >= 10 ** digits) return 0.5 * 10 ** (place + 1);
  return 0.5 * 10 ** (c < 10 ** (digits - 1) ? place - 1 : place);
}

/** Linear propagation holds where both ends of its interval lie within the tolerance of those of the trials (JCGM 101:2008, clause 8). */
export const agrees = (linear: readonly [number, number], trials: readonly [number, number], delta: number): boolean =>
  Math.abs(linear[0] - trials[0]) <= delta && Math.abs(linear[1] - trials[1]) <= delta;

interface Output {
  readonly values: Float64Array[];
  readonly blocks: TrialsOf[];
}

/** Numbers of one call in memory, 128 MB. */
const keptAtMost = 1.6e7;

/** The least hundred trials outside the interval, ten thousand at least; 100/(1 − 0.95) is 1999.9999999999982 here. */
const blockSize = (coverage: number): number => Math.max(Math.ceil(100 / (1 - coverage) - 1e-6), 1e4);

/** 'endless': no mean or no scatter, so that no tolerance can be asked of it and nobody waits for it. */
function standing(
  blocks: readonly TrialsOf[],
  { size, digits, moments }: { readonly size: number; readonly digits: 1 | 2; readonly moments: boolean },
): 'constant' | 'settled' | 'moving' | 'endless' {
  const means = spread(blocks.map((b) => b.value));
  const within = blocks.reduce((sum, b) => sum + b.u ** 2, 0) * (size - 1);
  const u = Math.sqrt((within + means.squares * size) / (blocks.length * size - 1));
  if (u === 0) return 'constant';
  if (!Number.isFinite(u)) return 'endless';
  const delta = numericalTolerance(u, digits);
  const ends = [(b: TrialsOf) => b.interval[0], (b: TrialsOf) => b.interval[1]];
  const all = moments ? [(b: TrialsOf) => b.value, (b: TrialsOf) => b.u, ...ends] : ends;
  const settled = all.every((of) => 2 * standardError(blocks.map(of)) <= delta);
  return settled ? 'settled' : 'moving';
}

function standardError(of: readonly number[]): number {
  return Math.sqrt(spread(of).squares / (of.length * (of.length - 1)));
}

/** Changes the order of the values. */
function summary(values: Float64Array, coverage: number, shape: Shape): TrialsOf {
  const { mean, squares } = spread(values);
  const u = Math.sqrt(squares / (values.length - 1));
  if (withoutNumber(values)) return { value: NaN, u: NaN, interval: [NaN, NaN] };
  const interval =
    shape === 'shortest'
      ? shortestInterval(values.sort(), coverage)
      : symmetricInterval(placeSymmetricEnds(values, coverage), coverage);
  return { value: mean, u, interval };
}

function withoutNumber(values: Float64Array): boolean {
  for (let i = 0; i < values.length; i++) if (values[i] !== values[i]) return true;
  return false;
}

/** Mean and sum of squared deviations, from the first value on, so that equal values have exactly none. */
function spread(values: ArrayLike<number>): { readonly mean: number; readonly squares: number } {
  const zero = values[0]!;
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]! - zero;
  const shift = sum / values.length;
  let squares = 0;
  for (let i = 0; i < values.length; i++) squares += (values[i]! - zero - shift) ** 2;
  return { mean: zero + shift, squares };
}

function joined(blocks: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(blocks.reduce((sum, b) => sum + b.length, 0));
  let at = 0;
  for (const block of blocks) {
    all.set(block, at);
    at += block.length;
  }
  return all;
}
