import { describe, expect, it } from 'vitest';
import { builtFrom, printedOf, readFrozen, sourcesOf } from '../frozen.ts';
import { makeBook } from '../../src/pipeline.ts';

/* A book that was written for format 1 is read by this version as it lies. What was printed of it then is held against what is printed
   now; that is no proof of a figure (others stand for it) but of a promise: none moves without a word in CHANGELOG.md. */
const frozen = readFrozen();

describe('a book of format 1, as it was frozen', () => {
  const made = builtFrom(frozen);
  it('is read without an error, and every page and file of it is made', () => {
    expect(made.findings.filter(({ level }) => level === 'error')).toEqual([]);
    expect(made.series.map(({ record }) => record.series.id).sort()).toEqual(['hill-bowl', 'where-the-oil-stands']);
    expect(made.pages.length).toBeGreaterThan(1000);
  });

  it('prints what it printed then: say otherwise in CHANGELOG.md first, then npx tsx test/make-frozen.ts --figures', () => {
    const now = printedOf(made);
    const moved = Object.entries(frozen.figures).flatMap(([series, figures]) =>
      Object.entries(figures).flatMap(([id, then]) =>
        now[series]?.[id] === then ? [] : [`${series} ${id}: ${then} → ${now[series]?.[id] ?? 'gone'}`],
      ),
    );
    expect(Object.values(frozen.figures).flatMap((figures) => Object.keys(figures)).length).toBeGreaterThan(4000);
    expect(moved).toEqual([]);
  });

  it('of a later format is refused by that alone, with what to do', () => {
    const later = sourcesOf(frozen)
      .filter(({ path }) => path === 'book.md' || path.startsWith('where-the-oil-stands/'))
      .map((file) =>
        file.path.endsWith('series.md')
          ? {
              ...file,
              bytes: Buffer.from(Buffer.from(file.bytes).toString().replace('format: 1', 'format: 2\nstrange: field')),
            }
          : file,
      );
    const { findings } = makeBook({ files: later, audience: 'house' });
    const told = findings.filter(({ level }) => level === 'error');
    expect(told.map(({ code, place }) => `${code} ${place.file}:${String(place.line)}`)).toEqual([
      'format-later where-the-oil-stands/series.md:2',
    ]);
    expect(told[0]!.write).toContain('list of changes');
  });
});
