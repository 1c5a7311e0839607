import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/finding/finding.ts';
import { makeBook } from '../../src/pipeline.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { filesOf } from '../scenario/demo.ts';
import { figuredRuns, smallDemo, textOf } from '../scenario/small.ts';
import { everyCase, turns } from './turns.ts';

/** The small book with every log cut to its first minutes: enough for windows, quick enough for many builds. */
const book = filesOf(
  new Map(
    smallDemo()
      .filter(({ path }) => !/^where|\/runs\/(?!S-0[178]\.|H-01\.)/.test(path))
      .map(({ path }) => [
        path,
        path.endsWith('.csv') ? textOf(path).split('\n').slice(0, 560).join('\n') : textOf(path),
      ]),
  ),
);

type Hap = (files: SourceFile[], at: { file: number; other: number; from: number; to: number }) => SourceFile[];
const changed = (files: SourceFile[], i: number, bytes: Uint8Array): SourceFile[] =>
  files.map((f, n) => (n === i ? { ...f, bytes } : f));
const cutAt = (bytes: Uint8Array, share: number): number => Math.floor(share * bytes.length);

const haps: Readonly<Record<string, Hap>> = {
  cut: (files, { file, from }) => changed(files, file, files[file]!.bytes.subarray(0, cutAt(files[file]!.bytes, from))),
  'a piece taken out': (files, { file, from, to }) => {
    const { bytes } = files[file]!;
    const [a, b] = [cutAt(bytes, Math.min(from, to)), cutAt(bytes, Math.max(from, to))];
    return changed(files, file, Uint8Array.from([...bytes.subarray(0, a), ...bytes.subarray(b)]));
  },
  doubled: (files, { file, from }) => {
    const { bytes } = files[file]!;
    return changed(files, file, Uint8Array.from([...bytes, ...bytes.subarray(cutAt(bytes, from))]));
  },
  swapped: (files, { file, other }) =>
    files.map((f, n) => ({ ...f, bytes: files[n === file ? other : n === other ? file : n]!.bytes })),
  missing: (files, { file }) => files.filter((_, n) => n !== file),
  'under another name': (files, { file, other }) =>
    files.map((f, n) => (n === file ? { ...f, path: files[other]!.path.replace(/(\.[a-z]+)$/, '-2$1') } : f)),
  'one byte wrong': (files, { file, from, to }) => {
    const bytes = Uint8Array.from(files[file]!.bytes);
    if (bytes.length > 0) bytes[Math.min(cutAt(bytes, from), bytes.length - 1)] = Math.floor(to * 255);
    return changed(files, file, bytes);
  },
};

const share = fc.double({ min: 0, max: 1, noNaN: true });
const index = fc.nat(book.length - 1);
const happens = fc.array(
  fc.record({ hap: fc.constantFrom(...Object.keys(haps)), file: index, other: index, from: share, to: share }),
  { minLength: 1, maxLength: 2 },
);

/** As an editor shows a file; after some spoiling nobody knows which encoding it was. */
const linesOf = ({ bytes }: SourceFile): string[][] =>
  ['utf-8', 'utf-16le'].map((label) => new TextDecoder(label).decode(bytes).split(/\r\n|\n|\r/));

function liesIn(place: Place, files: readonly SourceFile[]): boolean {
  const file = files.find((f) => f.path === place.file);
  // A sheet that a series needs and has not is told at its first line.
  if (file === undefined)
    return /(?:^|\/)(?:book|rig|plan)\.md$/.test(place.file) && place.line === 1 && place.column === 1;
  return linesOf(file).some((lines) => {
    const line = lines[place.line - 1];
    return line !== undefined && place.column >= 1 && place.column <= line.length + 1;
  });
}

describe('a book to which things happened', () => {
  it('has figures of each of its runs before they do', () => {
    const figured = figuredRuns(makeBook({ files: book, audience: 'house' }));
    expect([...figured].sort()).toEqual(['H-01', 'S-01', 'S-07', 'S-08']);
  });

  it('never stops the pipeline, and every finding lies inside its file', () => {
    const check = (list: { hap: string; file: number; other: number; from: number; to: number }[]): void => {
      const files = list.reduce<SourceFile[]>(
        (all, { hap, file, other, ...at }) =>
          haps[hap]!(all, { ...at, file: Math.min(file, all.length - 1), other: Math.min(other, all.length - 1) }),
        book,
      );
      for (const audience of list.length === 1 ? (['house'] as const) : (['public'] as const)) {
        const made = makeBook({ files, audience });
        expect(made.findings.filter((f) => !liesIn(f.place, files)).map((f) => [f.code, f.place])).toEqual([]);
        for (const f of made.ledgers.flatMap((l) => l.figures)) {
          const numbers = [f.value, ...f.interval].filter((v) => v !== null);
          expect(numbers.every(Number.isFinite), f.id).toBe(true);
        }
      }
    };
    everyCase('books', happens, check, { seed: 20261124, numRuns: 40 * turns });
  });
});
