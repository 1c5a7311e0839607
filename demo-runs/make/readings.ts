import type { Calibration } from './instruments.ts';
import type { Stream } from './random.ts';
import { channels, type Channel, type Digits, type Recording } from './recording.ts';

/** Which instrument reads a column, and how much one reading scatters. */
export interface Reader {
  readonly instrument: string;
  readonly sd: number;
  /** Calibration error as a fraction of the reading. */
  readonly relative?: true;
  readonly zero?: number;
}

export type Readers = Readonly<Partial<Record<Channel, Reader>>>;

const common: Readers = {
  n_in: { instrument: 'enc-in', sd: 0.3, relative: true },
  n_out_l: { instrument: 'enc-out', sd: 0.3, relative: true },
  tq_out_l: { instrument: 'torque-out-l', sd: 0.25, zero: 1.8 },
  tq_out_r: { instrument: 'torque-out-r', sd: 0.25, zero: -0.9 },
  T_sump: { instrument: 'tc-sump', sd: 0.05 },
  T_skin: { instrument: 'tc-skin', sd: 0.05 },
  T_pb: { instrument: 'tc-race', sd: 0.05 },
  T_amb: { instrument: 'tc-ambient', sd: 0.05 },
  u_air: { instrument: 'vane', sd: 0.03 },
  lvl: { instrument: 'level-eye', sd: 0.2 },
};

export const lowReaders: Readers = { ...common, tq_in: { instrument: 'torque-low', sd: 0.015 } };
export const highReaders: Readers = { ...common, tq_in: { instrument: 'torque-high', sd: 0.25 } };

/** Indicated = true + calibration error + zero + scatter. A shaft at rest reads nothing but nought, and air never less. */
export function readings(
  truth: Recording,
  readers: Readers,
  given: { calibration: Calibration; quiet: boolean; from: Stream; inputZero: { before: number; after: number } },
): Recording {
  const values = { ...truth.values };
  for (const channel of channels) {
    const reader = readers[channel];
    const real = truth.values[channel];
    if (!reader || Number.isNaN(real[0])) continue;
    const error = given.quiet ? 0 : given.calibration[reader.instrument]!;
    const drift = channel === 'tq_in' ? given.inputZero : { before: reader.zero ?? 0, after: reader.zero ?? 0 };
    values[channel] = real.map((value, row) => {
      if (reader.relative) return value < 1 ? 0 : value * (1 + error) + given.from.normal(reader.sd);
      const zero = drift.before + ((drift.after - drift.before) * row) / (truth.rows - 1);
      const read = value + error + zero + given.from.normal(reader.sd);
      return channel === 'u_air' ? Math.max(0, read) : read;
    });
  }
  return { ...truth, values };
}

export type Recorder = 'low' | 'high';

export const digitsOf = (input: Recorder, quiet: boolean): Digits => {
  const more = quiet ? 3 : 0;
  const compact: Digits = {
    ...{ n_in: 1, tq_in: input === 'low' ? 3 : 2, n_out_l: 1, tq_out_l: 2, tq_out_r: 2 },
    ...{ T_sump: 2, T_skin: 2, T_pb: 2, T_amb: 2, u_air: 2, lvl: 1 },
  };
  return Object.fromEntries(channels.map((c) => [c, compact[c] + more])) as Record<Channel, number>;
};
