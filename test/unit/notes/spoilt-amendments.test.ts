import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import { asFiles, type Files, goodBook } from './good-book.ts';

const file = 'hill-bowl/amendments/C-01.md';
const changes = 'changes:\n  - { run: S-07, channel: sump, add: -0.5 K }\n';
const note = `---
id: C-01
kind: input
found-on: 2026-07-16
found-by: reader
published-on: 2026-07-20
since: 2026-03-17
what: "The sump of S-07 was read too warm."
cause: "A wrong plug."
${changes}---
As found.
`;
const withNote = (was = '', is = ''): Files => {
  if (!note.includes(was)) throw new Error(`the note does not hold ${was}`);
  return { ...goodBook, [file]: note.replace(was, () => is) };
};
const read = (files: Files) => {
  const { findings, series } = readNotes(asFiles(files));
  const own = [...findings, ...series.flatMap((s) => s.findings)].filter((f) => f.place.file === file);
  return { own, corrections: series[0]!.corrections, objections: series[0]!.objections, runs: series[0]!.runs };
};

describe('a correction', () => {
  it('is read in SI, with nothing to find', () => {
    const { own, corrections } = read(withNote());
    expect(own).toEqual([]);
    expect(corrections).toMatchObject([
      {
        id: 'C-01',
        publishedOn: '2026-07-20',
        changes: [{ kind: 'channel', run: 'S-07', channel: 'sump', add: -0.5, times: 1 }],
      },
    ]);
  });

  it('reads a field of a run otherwise than it was typed, and leaves the place where it was typed', () => {
    const { own, runs } = read(withNote(changes, 'changes:\n  - { run: S-07, field: refit, write: "7" }\n'));
    expect(own).toEqual([]);
    const run = runs.find(({ id }) => id === 'S-07')!;
    expect(run.refit).toBe(7);
    expect(run.places.get('refit')).toEqual(
      read(withNote())
        .runs.find(({ id }) => id === 'S-07')!
        .places.get('refit'),
    );
  });

  it.each([
    ['a change of nothing', changes, 'changes:\n  - { channel: sump, add: -0.5 K }\n', 'change-of-what', 11],
    [
      'a field without its run',
      changes,
      'changes:\n  - { instrument: tc-1, field: refit, write: "7" }\n',
      'change-of-what',
      11,
    ],
    ['a change that does not say how', changes, 'changes:\n  - { run: S-07, channel: sump }\n', 'change-how', 11],
    [
      'a channel and a field at once',
      changes,
      'changes:\n  - { run: S-07, channel: sump, field: refit, write: "7" }\n',
      'change-how',
      11,
    ],
    ['an amount without its channel', changes, 'changes:\n  - { instrument: tc-1, add: 1 K }\n', 'change-channel', 11],
    ['an amount in another unit', '-0.5 K', '-0.5 L', 'unit-of-other-kind', 11],
    [
      'a field that the note does not have',
      changes,
      'changes:\n  - { run: S-07, field: colour, write: red }\n',
      'change-field',
      11,
    ],
    ['a run that is not there', 'run: S-07', 'run: S-77', 'run-unknown', 11],
    ['publication before it was found', 'published-on: 2026-07-20', 'published-on: 2026-07-01', 'amendment-days', 6],
    ['no word of who found it', 'found-by: reader\n', '', 'field-missing', 3],
    ['an id that is not its file', 'id: C-01', 'id: C-02', 'id-not-file', 2],
  ] as const)('with %s is one finding at its line, and corrects nothing', (_, was, is, code, line) => {
    const { own, corrections } = read(withNote(was, is));
    expect(own.map((f) => [f.code, f.place.line])).toEqual([[code, line]]);
    expect(own[0]!.write).not.toBe('');
    expect(corrections).toEqual([]);
  });
});

describe('an id that a run has too', () => {
  it('is refused, since a link to it could lead to either', () => {
    const path = 'hill-bowl/amendments/S-07.md';
    const { series } = readNotes(asFiles({ ...goodBook, [path]: note.replace('id: C-01', 'id: S-07') }));
    const found = series[0]!.findings.filter((f) => f.place.file === path);
    expect(found.map(({ code, place }) => [code, place.line])).toEqual([['id-twice', 2]]);
    expect(series[0]!.corrections).toEqual([]);
  });
});

describe('an objection', () => {
  const objection = '---\nid: OB-01\nkind: objection\nreceived: 2026-07-14\nfrom-role: reader\ntext: "Why?"\n---\n';
  it('needs what it says and whose it is, and is open unless said', () => {
    const path = 'hill-bowl/amendments/OB-01.md';
    const of = (text: string) => {
      const { series } = readNotes(asFiles({ ...goodBook, [path]: text }));
      return { objections: series[0]!.objections, found: series[0]!.findings.filter((f) => f.place.file === path) };
    };
    expect(of(objection)).toMatchObject({ objections: [{ id: 'OB-01', state: 'open', answer: null }], found: [] });
    const without = of(objection.replace('from-role: reader\n', ''));
    expect(without.objections).toEqual([]);
    expect(without.found.map(({ code, place }) => [code, place.line])).toEqual([['field-missing', 3]]);
  });
});
