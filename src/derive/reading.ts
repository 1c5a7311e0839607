import type { ChannelKind, Column, ColumnMap, Instrument, Rig } from '../trial/rig.ts';
import type { Log } from '../trial/log.ts';
import type { Run } from '../trial/run.ts';
import type { Source } from '../trial/derived.ts';
import { toBaseline } from './zero.ts';

/** A run with its log, ready to be reduced: channels less their zeros, exclusions and suspect stretches taken out. */
export interface Reading {
  readonly run: Run;
  readonly rig: Rig;
  readonly log: Log;
  readonly map: ColumnMap;
  /** Missing and excluded readings are NaN. Raw arrays are never written to. */
  readonly channel: (kind: ChannelKind) => Float64Array | null;
  readonly instrument: (kind: ChannelKind) => Instrument | null;
}

/** Stretch of readings not to be used: row indices, last included. */
export interface Stretch {
  readonly kind: ChannelKind | 'all';
  readonly from: number;
  readonly to: number;
}

/** Channels in SI less zeros, with the exclusions of the note and the stretches given left out. */
export function readingOf(input: { run: Run; rig: Rig; log: Log; map: ColumnMap; drop: readonly Stretch[] }): Reading {
  const { run, rig, log, map, drop } = input;
  const columns = new Map(map.columns.map((c): [ChannelKind, Column] => [c.is, c]));
  const instrument = (kind: ChannelKind): Instrument | null => {
    const id = columns.get(kind)?.instrument;
    return rig.instruments.find((i) => i.id === id) ?? null;
  };
  const done = new Map<ChannelKind, Float64Array | null>();
  const channel = (kind: ChannelKind): Float64Array | null => {
    let values = done.get(kind);
    if (values === undefined) {
      const raw = log.channels.get(kind);
      values = raw === undefined ? null : without(toBaseline({ raw, log, run, instrument: instrument(kind) }), kind);
      done.set(kind, values);
    }
    return values;
  };
  const without = (values: Float64Array, kind: ChannelKind): Float64Array => {
    for (const x of run.exclude) {
      if (x.channels.length > 0 && !x.channels.includes(kind)) continue;
      for (let i = 0; i < values.length; i++) {
        const t = log.time_s[i]!;
        if (t >= x.from_s && t <= x.to_s) values[i] = NaN;
      }
    }
    for (const s of drop) if (s.kind === kind || s.kind === 'all') values.fill(NaN, s.from, s.to + 1);
    return values;
  };
  return { run, rig, log, map, channel, instrument };
}

/** Speed of the output shaft: from the pinion by tooth counts, or its own channel. rad/s. */
export function outputSpeed(reading: Reading): Float64Array | null {
  const values = reading.channel(speedChannel(reading));
  const ratio = speedChannel(reading) === 'pinion-speed' ? ratioOf(reading.rig) : 1;
  return values?.map((w) => w / ratio) ?? null;
}

/** The channel that speed is taken from. */
export const speedChannel = (reading: Reading): 'pinion-speed' | 'output-speed' =>
  reading.channel('pinion-speed') === null ? 'output-speed' : 'pinion-speed';

export const ratioOf = (rig: Rig): number => (rig.teethRing / rig.teethPinion) * rig.hubReduction;

/** Rows [from, to) whose time lies in the stretch. */
export function rowsBetween(time_s: Float64Array, from_s: number, to_s: number): readonly [number, number] {
  let from = 0;
  while (from < time_s.length && time_s[from]! < from_s) from++;
  let to = from;
  while (to < time_s.length && time_s[to]! <= to_s) to++;
  return [from, to];
}

export const logSource = (log: Log, kind: ChannelKind, rows: readonly [number, number]): Source => ({
  kind: 'log',
  file: log.file,
  fromLine: log.line[rows[0]] ?? 0,
  toLine: log.line[rows[1] - 1] ?? 0,
  from_s: log.time_s[rows[0]] ?? 0,
  to_s: log.time_s[rows[1] - 1] ?? 0,
  channel: kind,
});
