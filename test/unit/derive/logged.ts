import type { Log } from '../../../src/trial/log.ts';
import type { ChannelKind } from '../../../src/trial/rig.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { readNotes } from '../../../src/notes/book.ts';
import { demoFiles } from '../../scenario/demo.ts';

export type Course = (t_s: number) => number;

/** A log made of courses over time, a reading each `step_s`; line 2 holds the first row, columns follow the order given. */
export function logged(courses: Partial<Record<ChannelKind, Course>>, of: { length_s: number; step_s?: number }): Log {
  const { length_s, step_s = 2 } = of;
  const rows = Math.floor(length_s / step_s) + 1;
  const time_s = Float64Array.from({ length: rows }, (_, i) => i * step_s);
  const kinds = Object.keys(courses) as ChannelKind[];
  return {
    file: 'hill-bowl/runs/made.csv',
    sha256: '',
    rows,
    time_s,
    line: Int32Array.from({ length: rows }, (_, i) => i + 2),
    channels: new Map(kinds.map((kind) => [kind, time_s.map((t) => courses[kind]!(t))])),
    events: [],
    columnOf: new Map(kinds.map((kind, i) => [kind, i + 2])),
    findings: [],
    record: [],
  };
}

let read: SeriesRecord | null = null;
/** Notes of the demo series without any log. */
const demoRecord = (): SeriesRecord =>
  (read ??= { ...readNotes(demoFiles()).series.find((s) => s.series.id === 'hill-bowl')!, logs: new Map() });

/** The demo's notes with one run only, its log made here, and what is changed of both. */
export function recordOf(
  id: string,
  log: Log | null,
  change: (record: SeriesRecord) => Partial<SeriesRecord> = () => ({}),
): SeriesRecord {
  const whole = demoRecord();
  const record = {
    ...whole,
    runs: whole.runs.filter((r) => r.id === id),
    logs: new Map(log === null ? [] : [[id, log]]),
  };
  return { ...record, ...change(record) };
}
