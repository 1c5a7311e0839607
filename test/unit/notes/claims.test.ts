import { describe, expect, it } from 'vitest';
import { asFiles, type Files, goodBook } from './good-book.ts';
import { readNotes } from '../../../src/notes/book.ts';
import type { Claim } from '../../../src/trial/claim.ts';
import { outcome, placed, spoil } from './spoilt.ts';

const path = 'hill-bowl/claims.md';
const read = (files: Files = goodBook) => readNotes(asFiles(files)).series[0]!;
const claim = (id: string, files?: Files): Claim => read(files).claims.find((c) => c.id === id)!;
const rpm = Math.PI / 30;

describe('a good claims.md', () => {
  it('is read without a word, in its order', () => {
    expect(outcome(goodBook).loud).toEqual([]);
    expect(read().claims.map((c) => [c.id, c.made, c.by])).toEqual([
      ['CL-1', '2026-03-01', 'supplier'],
      ['CL-2', '2026-03-19', null],
      ['CL-3', '2026-03-01', 'reader'],
      ['CL-4', '2026-03-01', 'operator'],
    ]);
    expect(read().claimsNote).toMatchObject({ file: path, shownTo: 'public' });
    expect(read().claimsNote?.body).toContain('Put before the first bowl');
  });

  it('gives the cells, the direction and the smallest difference of a claim, in SI and as typed', () => {
    expect(claim('CL-1')).toMatchObject({
      sentence: 'P1 at the same level settles at least 5 K lower than P0.',
      override: null,
      place: { file: path, line: 3 },
    });
    expect(claim('CL-1').clauses).toMatchObject([
      {
        ...{ quantity: 'final-rise', at: {}, direction: 'lower', threshold: 5, thresholdTyped: '5 K' },
        subject: { article: 'P1', oil: 'O1', fill_m3: 3.59e-3, tilt_ratio: 0 },
        against: { article: 'P0', oil: 'O1', fill_m3: 2.4e-3, tilt_ratio: 0 },
        place: { file: path, line: 3 },
      },
    ]);
  });

  it('takes any difference, and the baseline on its oil, where none is said', () => {
    const [clause] = claim('CL-2').clauses;
    expect(clause).toMatchObject({ threshold: 0, thresholdTyped: null });
    expect(clause?.subject.oil).toBe('O1');
    expect(clause?.against).toEqual({ article: 'P0', oil: 'O1', fill_m3: 2.4e-3, tilt_ratio: 0 });
  });

  it('gives each condition as plan and series have it', () => {
    const { plan, series } = read();
    expect(claim('CL-2').clauses[0]?.at).toEqual({
      outputSpeed_rad_s: plan!.steps_rad_s[3],
      sump_K: series.reference.sump_K[1],
    });
    expect(claim('CL-4').clauses[0]).toMatchObject({ at: { limit_K: plan!.limits_K[2] }, threshold: 420 });
    const near = spoil(path, '{ wheel-speed: 290 rpm, sump: 60 °C }', '{ wheel-speed: 291 rpm, sump: 140 °F }');
    expect(claim('CL-2', near).clauses[0]?.at).toEqual(claim('CL-2').clauses[0]?.at);
    const own = spoil(path, '{ wheel-speed: 290 rpm, sump: 60 °C }', '{ wheel-speed: 60 rpm, sump: own }');
    expect(claim('CL-2', own).clauses[0]?.at).toMatchObject({ outputSpeed_rad_s: 60 * rpm, sump_K: 'own' });
  });

  it('reads several clauses, and holds a tilted one against the baseline at the same tilt', () => {
    const { clauses, override } = claim('CL-3');
    expect(clauses.map((c) => [c.quantity, c.direction, c.threshold, c.place.line])).toEqual([
      ['makes-less-share', 'at-least', 0.5, 24],
      ['bearing-rise', 'within', 2, 25],
    ]);
    expect(clauses[1]).toMatchObject({ subject: { tilt_ratio: 0.12 }, against: { article: 'P0', tilt_ratio: 0.12 } });
    expect(override).toEqual({ word: 'leaning', by: 'A', on: '2026-05-02', why: 'one bowl only' });
  });

  it('takes a fill within the tolerance for the planned one, as a run’s is', () => {
    const near = spoil(path, 'of: { article: P1, fill: 3.59 L, oil: O1 }', 'of: { article: P1, fill: 3.6 L, oil: O1 }');
    expect(claim('CL-1', near).clauses[0]?.subject.fill_m3).toBe(read().plan!.cells[1]!.fill_m3);
    const far = spoil(path, 'of: { article: P1, fill: 3.59 L, oil: O1 }', 'of: { article: P1, fill: 3.0 L, oil: O1 }');
    expect(claim('CL-1', far).clauses[0]?.subject.fill_m3).toBeCloseTo(3e-3, 12);
  });

  it('knows a claim of the house by its name too', () => {
    expect(claim('CL-1', spoil(path, 'by: supplier', 'by: the house')).by).toBeNull();
  });
});

describe('a series', () => {
  it('without claims.md has no claim and no word about it', () => {
    const rest = Object.fromEntries(Object.entries(goodBook).filter(([name]) => name !== path));
    expect(read(rest)).toMatchObject({ claims: [], claimsNote: null });
    expect(placed(read(rest).findings)).toEqual(placed(read().findings));
  });

  it.each([
    ['front-matter-start claims.md:1:1', 'claims:\n'],
    ['field-missing claims.md:2:1', '---\nshown-to: public\n---\n'],
    ['list-too-short claims.md:2:9', '---\nclaims: []\n---\n'],
    ['field-shape claims.md:2:10', '---\nclaims: [P1 runs cooler]\n---\n'],
  ])('stands without its claims where the note itself cannot be read: %s', (finds, text) => {
    const { loud, runs } = outcome({ ...goodBook, [path]: text });
    expect(placed(loud)).toEqual([finds]);
    expect(loud[0]?.effect).toBe('The series is read without its claims.');
    expect(runs).toEqual(['S-07', 'S-08']);
  });
});
