import { createHash } from 'node:crypto';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeBook, type Made } from '../../src/pipeline.ts';
import { readFolder } from '../../src/host/disk/book.ts';
import type { Figure } from '../../src/ledger/figure.ts';
import type { SourceFile } from '../../src/trial/series.ts';

/** The demo book as it lies in the repository. */
export const demoFiles = (): SourceFile[] => readFolder('demo-runs');

/** The note of an oil without its samples: in a part of the demo the runs that they were drawn after may be missing. */
export const withoutSamples = (note: string): string => note.replace(/^samples:\n(?: .*\n)*/m, '');

/** The same in a copy of the demo on the disk, and corrections of runs that are not in it. */
export function takeSamplesOut(book: string): void {
  for (const folder of ['amendments', 'parts', 'reports'])
    rmSync(join(book, 'hill-bowl', folder), { recursive: true, force: true });
  for (const oil of ['O1', 'O2']) {
    const note = join(book, 'hill-bowl', 'oils', `${oil}.md`);
    writeFileSync(note, withoutSamples(readFileSync(note, 'utf8')));
  }
}

/** Files as a map of path → text, for a book that never touches the disk. */
export const filesOf = (texts: ReadonlyMap<string, string>): SourceFile[] =>
  [...texts].map(([path, text]) => {
    const bytes = new TextEncoder().encode(text);
    return { path, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
  });

/** What was planted when the demo was made. Only tests read it. */
export interface Truth {
  readonly faults: readonly {
    readonly fault: string;
    readonly run: string;
    readonly file: string;
    readonly line: number;
    readonly lastLine: number;
    readonly channel: string;
    readonly treatment: string;
  }[];
  readonly banners: readonly { readonly run: string; readonly banner: string }[];
  readonly runs: readonly {
    readonly run: string;
    readonly truth: readonly {
      readonly quantity: string;
      readonly at: Readonly<Record<string, string>>;
      readonly value: number | null;
      readonly bound?: 'above' | 'below';
    }[];
  }[];
}

export const demoTruth = (): Truth => JSON.parse(readFileSync('demo-runs/hill-bowl/truth.json', 'utf8')) as Truth;

let made: Made | null = null;
/** One build of the demo, shared by the tests of this process. */
export const demoMade = (): Made => (made ??= makeBook({ files: demoFiles(), audience: 'house' }));

/** Quantities whose truth the issue of the main job asks for. */
export const judged = ['final-temperature', 'shed', 'store', 'heat-made', 'limit-crossing', 'spin-power'] as const;

export interface Rate {
  readonly quantity: string;
  readonly inside: number;
  readonly of: number;
}

/** How many runs have their truth inside the stated interval, quantity by quantity. Left-out runs and steps have no figure. */
export function insideRates(figures: readonly Figure[], truth: Truth): Rate[] {
  const byKey = new Map(
    figures.filter((f) => f.subject.run !== undefined).map((f) => [key(f.subject.run!, f.quantity, f.at), f]),
  );
  // Its ambient is planted wrong and stays so until the correction that tells of it: what rests on ambient is not judged.
  const wrongAmbient = truth.faults.filter((f) => f.fault.startsWith('ambient')).map((f) => f.run);
  return judged.map((quantity) => {
    let inside = 0;
    let of = 0;
    for (const run of truth.runs)
      for (const t of run.truth.filter((x) => x.quantity === quantity)) {
        const figure = byKey.get(key(run.run, quantity, t.at));
        if (figure === undefined || (quantity === 'shed' && wrongAmbient.includes(run.run))) continue;
        of++;
        if (holds(figure, t.value)) inside++;
      }
    return { quantity, inside, of };
  });
}

/** A bound holds when the truth lies beyond it too. */
export function holds(figure: Figure, truth: number | null): boolean {
  const [low, high] = figure.interval;
  if (truth === null) return figure.bound === 'above';
  return (low === null || truth >= low) && (high === null || truth <= high);
}

const key = (run: string, quantity: string, at: object): string =>
  JSON.stringify([
    run,
    quantity,
    ...Object.entries(at)
      .filter(([name]) => name !== 'tilt')
      .sort(),
  ]);
