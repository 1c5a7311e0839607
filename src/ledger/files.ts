import type { SeriesRecord } from '../trial/series.ts';

/** Notes and logger files of these runs. */
export const filesOfRuns = (record: SeriesRecord, runs: readonly string[]): string[] =>
  runs.flatMap((id) => {
    const run = record.runs.find((r) => r.id === id);
    const log = record.logs.get(id)?.file;
    return run === undefined ? [] : [run.file, ...(log === undefined ? [] : [log])];
  });
