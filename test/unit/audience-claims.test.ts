import { describe, expect, it } from 'vitest';
import { publicPart, type Shown } from '../../src/audience.ts';
import { readNotes } from '../../src/notes/book.ts';
import { asFiles, type Files, goodBook } from './notes/good-book.ts';
import { spoil } from './notes/spoilt.ts';

const path = 'hill-bowl/claims.md';
const house = (text: string | Uint8Array | undefined): string => String(text).replace('shown-to: public\n', '');

/** The book with its notes for the public, but for the articles named. */
const open = (files: Files, hidden: readonly string[] = []): Files =>
  Object.fromEntries(
    Object.entries(files).map(([name, text]) => {
      const held = hidden.some((id) => name.endsWith(`/${id}.md`));
      return [
        name,
        /(articles|oils)\//.test(name) && !held ? String(text).replace('---\n', '---\nshown-to: public\n') : text,
      ];
    }),
  );

function shown(files: Files): Shown {
  const one = readNotes(asFiles(files)).series[0]!;
  return publicPart({ ...one, logs: new Map() }, one.findings)!;
}
const idsOf = ({ record }: Shown): string[] => record.claims.map((c) => c.id);

describe('the claims of a public build', () => {
  it('are those of a note that is shown to the public, and nobody’s initials stand beside an override', () => {
    const part = shown(open(goodBook));
    expect(idsOf(part)).toEqual(['CL-1', 'CL-2', 'CL-3', 'CL-4']);
    expect(part.held.claims).toBe(0);
    expect(part.record.claims[2]?.override).toEqual({
      ...{ word: 'leaning', by: 'the house', on: '2026-05-02', why: 'one bowl only' },
    });
    expect(part.record.claimsNote?.body).toContain('Put before');
  });

  it('are none where the note is for the house, which is so unless it says otherwise', () => {
    const part = shown(open({ ...goodBook, [path]: house(goodBook[path]) }));
    expect([idsOf(part), part.record.claimsNote, part.held.claims]).toEqual([[], null, 4]);
    expect(JSON.stringify(part.record.claims) + JSON.stringify(part.findings)).not.toContain('CL-');
  });

  it('leave out and count what names an article held back, in a cell or in words', () => {
    const part = shown(
      open(spoil(path, 'fill: 2.40 L, oil: O1 }\n    quantity', 'fill: 2.40 L }\n    quantity'), ['P0w']),
    );
    expect([idsOf(part).length, part.held.claims]).toEqual([4, 0]);
    const named = shown(open(spoil(path, 'P1 takes longer to 95 °C.', 'P1, as in P0w, takes longer.'), ['P0w']));
    expect([idsOf(named), named.held.claims]).toEqual([['CL-1', 'CL-2', 'CL-3'], 1]);
    const cell = shown(open(spoil(path, 'against: { article: P0,', 'against: { article: P0w,'), ['P0w']));
    expect([idsOf(cell), cell.held.claims]).toEqual([['CL-2', 'CL-3', 'CL-4'], 1]);
    expect(JSON.stringify(cell.record.claims)).not.toContain('P0w');
    expect([...cell.record.claimsNote!.typed.keys()]).toEqual(['shown-to']);
  });

  it('leave out what was found in a claim that names what is held back', () => {
    const told = 'P1 proves less than P0.';
    const files = spoil(path, 'P1 spins with less than P0.', told);
    const codes = (part: Shown): string[] => part.findings.map((f) => f.code);
    expect(codes(shown(open(files)))).toContain('word-not-plain');
    const held = shown(
      open({ ...files, [path]: String(files[path]).replace(told, 'P1 proves less, as P0w.') }, ['P0w']),
    );
    expect(codes(held)).not.toContain('word-not-plain');
  });
});

describe('a claim that could not be read', () => {
  const spoilt = spoil(path, 'quantity: final-rise', 'quantity: durability');

  it('stops a public build and stands on no page, since nobody knows what it names', () => {
    const part = shown(open(spoilt));
    expect(part.stops.map((f) => f.code)).toContain('word-unknown');
    expect(part.findings.map((f) => f.place.file)).not.toContain(path);
  });

  it('stops none where the note is for the house', () => {
    const part = shown(open({ ...spoilt, [path]: house(spoilt[path]) }));
    expect([...part.findings, ...part.stops].filter((f) => f.place.file === path)).toEqual([]);
  });
});
