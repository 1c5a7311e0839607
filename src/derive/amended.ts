import type { Change, ChannelChange, Correction } from '../trial/amendment.ts';
import type { Log } from '../trial/log.ts';
import type { ChannelKind, Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import type { SeriesRecord } from '../trial/series.ts';
import * as texts from './texts-amended.ts';

/**
 * The record as these corrections read it: channels of logs moved, and each run that one reaches says so in every figure of it.
 * Raw files and the logs read from them stay as they are; a corrected channel is a copy. Of a correction that is not `told` to
 * these readers, no more is said than that there is one.
 */
export function amendedRecord(
  record: SeriesRecord,
  corrections: readonly Correction[],
  told: (correction: Correction) => boolean = () => true,
): SeriesRecord {
  if (corrections.every(({ changes }) => changes.length === 0)) return record;
  const logs = new Map(record.logs);
  const runs = record.runs.map((run): Run => {
    const own = corrections.flatMap((c) =>
      c.changes
        .flatMap((change) => reaching(change, c, run, record.rig))
        .map((found) => (told(c) ? found : { ...found, note: texts.untold })),
    );
    if (own.length === 0) return run;
    const log = logs.get(run.id);
    const moving = own.flatMap(({ change }) => (change.kind === 'channel' ? [change] : []));
    if (log !== undefined && moving.length > 0) logs.set(run.id, moved(log, run, record.rig, moving));
    return { ...run, amended: [...new Set(own.map(({ note }) => note))] };
  });
  return { ...record, runs, logs };
}

/** Corrections that change something of a run, by id. */
export const correctionsOf = (run: Run, rig: Rig, corrections: readonly Correction[]): readonly Correction[] =>
  corrections.filter((c) => c.changes.some((change) => reaching(change, c, run, rig).length > 0));

function reaching(
  change: Change,
  { id }: Correction,
  run: Run,
  rig: Rig,
): readonly { readonly change: Change; readonly note: string }[] {
  if (change.kind === 'field')
    return change.run === run.id ? [{ change, note: texts.fieldRead(id, change.field, change.write) }] : [];
  const day = run.started.slice(0, 10);
  const within = (change.from === null || day >= change.from) && (change.to === null || day <= change.to);
  const named = change.run === null || change.run === run.id;
  const channels = channelsOf(change, run, rig);
  return within && named && channels.length > 0
    ? [{ change, note: texts.channelRead(id, channels.join(', '), change.typed) }]
    : [];
}

/** Channels of the log of a run that a change moves. */
function channelsOf({ channel, instrument }: ChannelChange, run: Run, rig: Rig): ChannelKind[] {
  const columns = rig.maps.find(({ id }) => id === run.log?.map)?.columns ?? [];
  return columns
    .filter((c) => (channel === null || c.is === channel) && (instrument === null || c.instrument === instrument))
    .map((c) => c.is);
}

function moved(log: Log, run: Run, rig: Rig, changes: readonly ChannelChange[]): Log {
  const channels = new Map(log.channels);
  for (const change of changes)
    for (const kind of channelsOf(change, run, rig)) {
      const raw = channels.get(kind);
      if (raw !== undefined) channels.set(kind, raw.map((value) => value * change.times + change.add)); // prettier-ignore
    }
  return { ...log, channels };
}
