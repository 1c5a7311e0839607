import type { Finding } from '../finding/finding.ts';
import type { Run } from '../trial/run.ts';
import type { SeriesRecord } from '../trial/series.ts';
import * as texts from './texts.ts';

/** Instruments that were due before a run that used them began; one finding an instrument, at its date in the rig sheet. */
export function instrumentFindings(record: SeriesRecord): Finding[] {
  const { rig } = record;
  return rig.instruments.flatMap((instrument, i) => {
    const due = instrument.nextDue;
    const late = record.runs.filter((run) => uses(record, run, instrument.id) && overdueAt(instrument, run));
    if (due === null || late.length === 0) return [];
    const place = rig.places.get(`instruments.${i}.next-due`) ?? { file: rig.file, line: 1, column: 1 };
    return [texts.overdue({ place, run: '', instrument: instrument.id, due, runs: late.length })];
  });
}

/** A check made in place after the due date, and before the run, keeps an instrument in use. */
export const overdueAt = (instrument: { nextDue: string | null; checkedOn: string | null }, run: Run): boolean =>
  instrument.nextDue !== null &&
  run.started.slice(0, 10) > instrument.nextDue &&
  !(
    instrument.checkedOn !== null &&
    instrument.checkedOn >= instrument.nextDue &&
    instrument.checkedOn <= run.started.slice(0, 10)
  );

const uses = (record: SeriesRecord, run: Run, id: string): boolean =>
  record.rig.maps.find((m) => m.id === run.log?.map)?.columns.some((c) => c.instrument === id) ?? false;
