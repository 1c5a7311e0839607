import type { ChannelKind } from '../trial/rig.ts';
import type { Log } from '../trial/log.ts';
import { rowsBetween, type Reading } from './reading.ts';

/** The part of a run under load: from the event `load on` (or the first row) to `load off` or `stop` (or the last row). */
export const underLoad = (reading: Reading): Reading =>
  partOf(reading, {
    from_s: eventTime(reading.log, /^load on\b/i) ?? -Infinity,
    to_s: eventTime(reading.log, /^(load off|stop)\b/i) ?? Infinity,
  });

/** The part after the event `stop`, or the whole where the log begins with it. */
export const afterStop = (reading: Reading): Reading =>
  partOf(reading, { from_s: eventTime(reading.log, /^stop\b/i) ?? -Infinity, to_s: Infinity });

/** Rows of a stretch as a reading of its own; its time starts at the stretch, its lines stay those of the file. */
function partOf(reading: Reading, stretch: { from_s: number; to_s: number }): Reading {
  const { log } = reading;
  const [first, last] = [log.time_s[0] ?? 0, log.time_s[log.rows - 1] ?? 0];
  // A logger may have been counting before the trial began: then the whole of it is moved too.
  if (first === 0 && stretch.from_s <= 0 && stretch.to_s >= last) return reading;
  const [from, to] = rowsBetween(log.time_s, stretch.from_s, stretch.to_s);
  const cut = <T extends Float64Array | Int32Array>(values: T): T => values.subarray(from, to) as T;
  const start = log.time_s[from] ?? 0;
  return {
    ...reading,
    log: {
      ...log,
      rows: to - from,
      time_s: cut(log.time_s).map((t) => t - start),
      line: cut(log.line),
      channels: new Map([...log.channels].map(([kind, values]): [ChannelKind, Float64Array] => [kind, cut(values)])),
    },
    channel: (kind) => {
      const values = reading.channel(kind);
      return values === null ? null : cut(values);
    },
  };
}

const eventTime = (log: Log, words: RegExp): number | null =>
  log.events.find((e) => words.test(e.text.trim()))?.time_s ?? null;
