import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const rows = 360_000;
/** Each is read so often, in turn, and its quickest counts: what else the machine does only ever adds. */
const turns = 3;

/** Our intake beside a strict csv-parse read of the same generated file, an hour at 100 Hz, each in a process of its own. */
export async function intakeBench(): Promise<readonly { name: string; value: number; unit: string }[]> {
  const folder = await mkdtemp(join(tmpdir(), 'dipmark-intake-'));
  const file = join(folder, 'hour.csv');
  try {
    await child('write', file);
    let ours = await child('ours', file);
    let theirs = await child('csv-parse', file);
    if (ours.sum !== theirs.sum) throw new Error(`the two reads differ: ${ours.sum} and ${theirs.sum}`);
    for (let again = 1; again < turns; again++) {
      ours = quicker(ours, await child('ours', file));
      theirs = quicker(theirs, await child('csv-parse', file));
    }
    return [
      { name: 'log intake', value: Math.round(rows / ours.time_s), unit: 'rows/s' },
      { name: 'log intake, peak memory', value: Math.round(ours.peak_MB), unit: 'MB' },
      { name: 'csv-parse strict', value: Math.round(rows / theirs.time_s), unit: 'rows/s' },
      { name: 'csv-parse strict, peak memory', value: Math.round(theirs.peak_MB), unit: 'MB' },
      { name: 'log intake against csv-parse', value: times(theirs.time_s, ours.time_s), unit: 'times' },
      { name: 'the same by processor time', value: times(theirs.processor_s, ours.processor_s), unit: 'times' },
    ];
  } finally {
    await rm(folder, { recursive: true });
  }
}

interface Measured {
  readonly time_s: number;
  /** What other work on the machine does not lengthen. */
  readonly processor_s: number;
  readonly peak_MB: number;
  /** Sum of the sump column, K, so that both reads are seen to have read the same. */
  readonly sum: number;
}

const times = (theirs: number, ours: number): number => Number((theirs / ours).toFixed(2));
const quicker = (a: Measured, b: Measured): Measured => (a.time_s <= b.time_s ? a : b);

async function child(task: 'write' | 'ours' | 'csv-parse', file: string): Promise<Measured> {
  const script = fileURLToPath(new URL('intake-child.ts', import.meta.url));
  const { stdout } = await promisify(execFile)(process.execPath, ['--import', 'tsx', script, task, file, `${rows}`]);
  return JSON.parse(stdout) as Measured;
}
