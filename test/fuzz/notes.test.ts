import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/finding/finding.ts';
import { readNotes } from '../../src/notes/book.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { asFiles, goodBook } from '../unit/notes/good-book.ts';

const files = asFiles(goodBook);
const notes = files.filter((f) => f.path.endsWith('.md'));
const seed = 20261124;
const numRuns = 300;

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

/** Reads the book with that note in place of its own; every finding has to stand in the text of its file. */
function holds(note: SourceFile): void {
  const all = files.map((f) => (f.path === note.path ? note : f));
  const read = readNotes(all);
  const findings = [...read.findings, ...read.series.flatMap((s) => s.findings)];
  for (const finding of findings) standsInside(finding, all);
  for (const series of read.series)
    for (const run of series.runs)
      for (const [field, place] of run.places)
        standsInside({ code: field, level: 'notice', says: '', why: '', write: '', place }, all);
}

function standsInside({ code, place }: Finding, all: readonly SourceFile[]): void {
  const file = all.find((f) => f.path === place.file);
  // a note that is missing is told at the first line of where it would stand
  const lines = new TextDecoder().decode(file?.bytes ?? new Uint8Array()).split(/\r\n|\n|\r/);
  const line = lines[place.line - 1];
  const inside = line !== undefined && place.column >= 1 && place.column <= Math.max(line.length, 1) + 1;
  const covered = place.column - 1 + (place.length ?? 0) <= Math.max(line?.length ?? 0, 1) + 1;
  expect([code, place.line, place.column, inside, covered]).toEqual([code, place.line, place.column, true, true]);
}

const always = (arbitrary: fc.Arbitrary<SourceFile>): void => {
  fc.assert(fc.property(arbitrary, holds), { seed, numRuns });
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
