import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/finding/finding.ts';
import { readNotes } from '../../src/notes/book.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { flowBook } from '../unit/notes/flow-book.ts';
import { asFiles } from '../unit/notes/good-book.ts';
import { everyCase, turns } from './turns.ts';

const files = asFiles(flowBook);
const notes = files.filter((f) => f.path.endsWith('.md'));
const seed = 20261124;
const numRuns = 60 * turns;

/** A note of the good book, and its bytes after something happened to them. */
const spoilt = (happens: (bytes: Uint8Array, at: number, to: number) => Uint8Array) =>
  fc
    .tuple(
      fc.constantFrom(...notes),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    )
    .map(([file, a, b]): SourceFile => {
      const [at, to] = [Math.floor(Math.min(a, b) * file.bytes.length), Math.ceil(Math.max(a, b) * file.bytes.length)];
      return { ...file, bytes: happens(file.bytes, at, to) };
    });

const joined = (...parts: readonly Uint8Array[]): Uint8Array => Uint8Array.from(parts.flatMap((p) => [...p]));

/** Reads the book with that note in place of its own; every place that is told or kept has to stand in its text. */
function holds(note: SourceFile): void {
  const read = readNotes(files.map((f) => (f.path === note.path ? note : f)));
  const findings = [...read.findings, ...read.series.flatMap((s) => s.findings)];
  const kept = read.series.flatMap((s) =>
    s.runs.flatMap((run) => [...run.places.values(), ...run.observations.map(({ place }) => place)]),
  );
  const lines = new Map(good).set(note.path, linesOf(note));
  const outside = [...findings.map((f) => f.place), ...kept].filter((place) => !isInside(place, lines));
  expect(outside).toEqual([]);
}

const linesOf = ({ bytes }: SourceFile): string[] => new TextDecoder().decode(bytes).split(/\r\n|\n|\r/);
const good = new Map(files.map((f) => [f.path, linesOf(f)]));

/** An empty line has one place: the caret under its end. A note that is missing has its first line. */
function isInside({ file, line, column, length = 1 }: Place, lines: ReadonlyMap<string, readonly string[]>): boolean {
  const text = (lines.get(file) ?? [''])[line - 1];
  return text !== undefined && column >= 1 && length >= 1 && column - 1 + length <= Math.max(text.length + 1, 1);
}

const always = (arbitrary: fc.Arbitrary<SourceFile>): void => {
  everyCase('notes in their book', arbitrary, holds, { seed, numRuns });
};

describe('no note throws, and each finding stands inside its text', () => {
  it('when a note is cut', () => {
    always(spoilt((bytes, at) => bytes.subarray(0, at)));
  });
  it('when a piece is taken out', () => {
    always(spoilt((bytes, at, to) => joined(bytes.subarray(0, at), bytes.subarray(to))));
  });
  it('when a piece is doubled', () => {
    always(spoilt((bytes, at, to) => joined(bytes.subarray(0, to), bytes.subarray(at))));
  });
  it('when it is mis-encoded', () => {
    always(spoilt((bytes, at, to) => bytes.map((byte, i) => (i >= at && i < to && byte > 127 ? byte & 0xbf : byte))));
  });
  it('when it ends its lines with CR or CRLF and begins with a byte order mark', () => {
    const crlf = (text: string, end: string): Uint8Array =>
      new TextEncoder().encode(`\uFEFF${text.replaceAll('\n', end)}`);
    always(spoilt((bytes, at) => crlf(new TextDecoder().decode(bytes.subarray(0, at)), at % 2 ? '\r\n' : '\r')));
  });
  it('when signs of YAML are put in', () => {
    const signs = fc.array(
      fc.constantFrom(...Array.from('&*!|>%@`{}[],:#?-\'"\t\n \0\u2028é°'), '---', '...', '<<: ', '*a', '&a '),
      { maxLength: 6 },
    );
    always(
      fc
        .tuple(
          spoilt((bytes) => bytes),
          signs,
          fc.nat(),
        )
        .map(([file, put, n]) => {
          const text = new TextDecoder().decode(file.bytes);
          const at = n % (text.length + 1);
          return { ...file, bytes: new TextEncoder().encode(text.slice(0, at) + put.join('') + text.slice(at)) };
        }),
    );
  });
  it('when it is any text between two fences', () => {
    const text = fc.string({ unit: 'binary', maxLength: 400 });
    always(
      fc
        .tuple(fc.constantFrom(...notes), text)
        .map(([file, t]) => ({ ...file, bytes: new TextEncoder().encode(`---\n${t}\n---\n`) })),
    );
  });
  it('when it is any bytes', () => {
    always(
      fc
        .tuple(fc.constantFrom(...notes), fc.uint8Array({ maxLength: 400 }))
        .map(([file, bytes]) => ({ ...file, bytes })),
    );
  });
});
