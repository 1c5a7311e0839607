import type { Cause, Part } from '../quantity/estimate.ts';
import type { Instrument } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import { zeroOf } from './zero.ts';

/**
 * Where each uncertainty comes from. An instrument's calibration is one cause for the whole series, so that it cancels in
 * differences; what belongs to one run carries the run's name (JCGM 100:2008, 4.3.7 for limits, 4.3.3 for a stated k).
 */
export interface Contribution {
  readonly cause: Cause;
  /** Standard uncertainty in the instrument's own SI unit. */
  readonly u: number;
}

/** `reading` in SI; used where the accuracy is stated of the reading. */
export function calibration(instrument: Instrument, reading: number): Contribution {
  const { accuracy } = instrument;
  const [low, high] = instrument.range ?? [0, 0];
  const limit =
    accuracy.of === 'absolute'
      ? accuracy.value
      : accuracy.value * (accuracy.of === 'range' ? Math.max(Math.abs(low), Math.abs(high)) : Math.abs(reading));
  return {
    cause: {
      id: `calibration:${instrument.shareGroup}`,
      name: `calibration of ${instrument.id}`,
      kind: accuracy.of === 'reading' ? 'scale' : 'offset',
      distribution: accuracy.k === null ? 'rectangular' : 'normal',
      dof: Infinity,
      scope: 'series',
    },
    u: accuracy.k === null ? limit / Math.sqrt(3) : limit / accuracy.k,
  };
}

/** Zero of a torque channel: |after − before|/√12 for what the straight line between them may miss (common practice, no
 * source), and the step it was typed to. Without a zero after, the whole of the zero is open. */
export function zeroDrift(run: Run, instrument: Instrument): Contribution | null {
  const zero = zeroOf(run, instrument);
  if (zero === null) return null;
  const drift = zero.after_Nm === null ? zero.before_Nm : zero.after_Nm - zero.before_Nm;
  return {
    cause: {
      id: `zero:${instrument.id}:${run.id}`,
      name: `zero of ${instrument.id} in ${run.id}`,
      kind: 'offset',
      distribution: 'rectangular',
      dof: Infinity,
      scope: 'run',
    },
    u: Math.hypot(drift / Math.sqrt(12), zero.step_Nm / Math.sqrt(12)),
  };
}

/** Scatter of logged readings round their mean in one stretch of one run. */
export const readingScatter = (input: { run: string; what: string; u: number; dof: number }): Contribution => ({
  cause: {
    id: `readings:${input.run}:${input.what}`,
    name: `readings of ${input.what} in ${input.run}`,
    kind: 'scatter',
    distribution: 't',
    dof: input.dof,
    scope: 'reading',
  },
  u: input.u,
});

/** What a fitted curve leaves open in one run: from the covariance of its parameters. */
export const fitScatter = (input: { run: string; what: string; u: number; dof: number }): Contribution => ({
  cause: {
    id: `fit:${input.run}:${input.what}`,
    name: `fit of ${input.what} in ${input.run}`,
    kind: 'scatter',
    distribution: 't',
    dof: input.dof,
    scope: 'run',
  },
  u: input.u,
});

/** A choice of model that other choices would answer differently. */
export const modelSpread = (input: { run: string; what: string; u: number }): Contribution => ({
  cause: {
    id: `model:${input.run}:${input.what}`,
    name: `choice of model for ${input.what} in ${input.run}`,
    kind: 'model',
    distribution: 'rectangular',
    dof: Infinity,
    scope: 'run',
  },
  u: input.u,
});

/** Gathers contributions into the parts of an estimate and keeps the causes for the table. */
export function gather(list: readonly { of: Contribution | null; sensitivity: number }[]): {
  readonly parts: readonly Part[];
  readonly causes: readonly Cause[];
} {
  const known = list.flatMap(({ of, sensitivity }) => (of === null ? [] : [{ of, sensitivity }]));
  return {
    parts: known.map(({ of, sensitivity }) => ({ cause: of.cause.id, u: of.u * sensitivity })),
    causes: known.map(({ of }) => of.cause),
  };
}
