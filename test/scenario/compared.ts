import { compareSeries } from '../../src/compare/series.ts';
import { deriveSeries } from '../../src/derive/series.ts';
import { buildLedger } from '../../src/ledger/build.ts';
import type { Figure } from '../../src/ledger/figure.ts';
import { readLog } from '../../src/logs/log.ts';
import { readNotes } from '../../src/notes/book.ts';
import type { ComparedSeries } from '../../src/trial/compared.ts';
import type { Log } from '../../src/trial/log.ts';
import { filesOf } from './demo.ts';

/** Notes and logger files of one series, read, reduced and compared as a build does it; ledger and pages are left out. */
export const comparedOf = (texts: ReadonlyMap<string, string>, id: string): ComparedSeries =>
  reducedOf(texts, id).compared;

/** Its figures as the ledger keeps them; without trials, which no figure of a single run has. */
export function figuresOf(texts: ReadonlyMap<string, string>, id: string): readonly Figure[] {
  const sums = new Map([...texts.keys()].map((path) => [path, '']));
  return buildLedger({ ...reducedOf(texts, id), sums, rigShown: true }).figures;
}

function reducedOf(texts: ReadonlyMap<string, string>, id: string) {
  const files = filesOf(texts);
  const notes = readNotes(files, null).series.find(({ series }) => series.id === id)!;
  const byPath = new Map(files.map((f) => [f.path, f]));
  const logs = new Map<string, Log>();
  for (const run of notes.runs) {
    const path = run.log === null ? '' : `${run.file.slice(0, run.file.lastIndexOf('/') + 1)}${run.log.file}`;
    const [file, map] = [byPath.get(path), notes.rig.maps.find((m) => m.id === run.log?.map)];
    const log = file && map ? readLog({ file: path, ...file, map }) : null;
    if (log?.ok === true) logs.set(run.id, log.value);
  }
  const record = { ...notes, logs };
  const { runs } = deriveSeries(record);
  return { record, runs, compared: compareSeries(record, runs) };
}
