import { readInstant } from '../quantity/time.ts';
import type { Instrument } from '../trial/rig.ts';
import type { Log } from '../trial/log.ts';
import type { Run, Zero } from '../trial/run.ts';

/**
 * A copy of the channel less the zero of this run, taken before and after and drawn as a straight line between, or less the
 * one kept in the rig sheet where the run has none: what was read at rest holds all of it (common practice, no source).
 */
export function toBaseline(input: {
  raw: Float64Array;
  log: Log;
  run: Run;
  instrument: Instrument | null;
}): Float64Array {
  const { raw, log, run, instrument } = input;
  const out = Float64Array.from(raw);
  if (instrument === null) return out;
  const zero = zeroOf(run, instrument);
  const first_s = log.time_s[0] ?? 0;
  const span = Math.max(runLength_s(run), (log.time_s[log.rows - 1] ?? 0) - first_s, 1);
  for (let i = 0; i < out.length; i++) {
    const share = (log.time_s[i]! - first_s) / span;
    out[i] = out[i]! - (zero === null ? instrument.zero : zeroAt(zero, share));
  }
  return out;
}

/** From started to ended as typed; the log starts with the run, whatever its clock shows. */
const runLength_s = (run: Run): number => {
  const [from, to] = [readInstant(run.started), readInstant(run.ended)];
  return from.ok && to.ok ? to.value.epoch_s - from.value.epoch_s : 0;
};

export const zeroOf = (run: Run, instrument: Instrument): Zero | null =>
  run.zeros.find((z) => z.instrument === instrument.id) ?? null;

/** Zero at a share 0–1 of the run, N·m. With no zero after, the one before is held. */
export const zeroAt = (zero: Zero, share: number): number =>
  zero.before_Nm + ((zero.after_Nm ?? zero.before_Nm) - zero.before_Nm) * share;
