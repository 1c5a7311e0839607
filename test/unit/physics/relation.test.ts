import { describe, expect, it } from 'vitest';
import { allRelations } from '../../../src/physics/all.ts';
import { halfOfLastDigit, input, outsideRange, output, today, type Relation } from '../../../src/physics/relation.ts';
import { sources } from '../../../src/physics/sources.ts';
import { viscosityRelation } from '../../../src/physics/viscosity.ts';
import { unitNamed } from '../../../src/quantity/units.ts';

const half: Relation<{ readonly x_m: number }> = {
  id: 'half',
  title: 'Half',
  formula: { latex: 'y=x/2', plain: 'y = x/2' },
  symbols: [input('x_m', 'x', 'length', 'm'), output('y', 'half of it', 'm')],
  range: [{ symbol: 'x', from: 0, to: 2, why: 'the rule ends there' }],
  source: 'definition',
  grade: 'V2',
  checks: [
    { source: 'a table', seen: 'published', inputs: { x_m: 1 }, printed: '0.50' },
    { source: 'a misprint', seen: 'published', inputs: { x_m: 1 }, printed: '0.51' },
    { source: 'in millimetres', seen: 'published', inputs: { x_m: 1 }, printed: '500', unit: 'mm' },
    { source: 'no answer', seen: 'published', inputs: { x_m: -1 }, printed: '1' },
    {
      source: 'rough',
      seen: 'memory',
      inputs: { x_m: 1 },
      printed: '0.51',
      within: { relative: 0.03, why: 'read off a chart' },
    },
  ],
  of: ({ x_m }) => (x_m < 0 ? null : x_m / 2),
};

describe('a check today', () => {
  it('agrees to half of the last printed digit, in the unit of the print, or as loosely as it says', () => {
    expect(today(half).map((c) => c.agrees)).toEqual([true, false, true, false, true]);
    expect(today(half)[2]).toMatchObject({ printed: '500', got: 500, unit: 'mm' });
  });

  it('without an answer has nothing to show and does not agree', () => {
    expect(today(half)[3]).toMatchObject({ got: null, agrees: false });
  });

  it.each([
    ['8.5', 0.05],
    ['-0.0253', 0.00005],
    ['236', 0.5],
    ['1.813e9', 5e5],
  ])('half of the last digit of %s is %f', (printed, tolerance) => {
    expect(halfOfLastDigit(printed)).toBeCloseTo(tolerance, 12);
  });

  it('a print that is no number is our bug', () => {
    expect(() => halfOfLastDigit('about 8')).toThrow('printed number');
  });
});

describe('range as data', () => {
  it('is silent inside and at its ends', () => {
    expect([0, 1, 2].map((x_m) => outsideRange(half, { x_m }))).toEqual([[], [], []]);
  });

  it('says which side and why outside', () => {
    expect(outsideRange(half, { x_m: 2.1 })).toEqual(['length is above the range: the rule ends there.']);
    expect(outsideRange(half, { x_m: -0.1 })).toEqual(['length is below the range: the rule ends there.']);
  });

  it('says that a value is missing when it is no number', () => {
    expect(outsideRange(half, { x_m: NaN })).toEqual(['length has no value.']);
  });

  it('warns of the log-log line below 0 °C and below 2 mm²/s, and gives the figure all the same', () => {
    const oil = { nu40_m2_s: 102e-6, nu100_m2_s: 15e-6, oil_K: 263.15 };
    expect(outsideRange(viscosityRelation, oil)).toEqual([
      'oil temperature is below the range: below 0 °C a multigrade gear oil leaves the line.',
    ]);
    expect(viscosityRelation.of(oil)).toBeGreaterThan(1e-3);
    const thin = { nu40_m2_s: 5e-6, nu100_m2_s: 1.8e-6, oil_K: 373.15 };
    expect(outsideRange(viscosityRelation, thin)).toEqual([
      'kinematic viscosity is below the range: the simple form holds above 2 mm²/s.',
    ]);
  });
});

describe('every relation of the method page', () => {
  it('has an id of its own', () => {
    const ids = allRelations.map((r) => r.id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each(allRelations)(
    '$id names its source, has one result, units of the units table and checks that agree',
    (relation) => {
      expect(sources).toHaveProperty(relation.source);
      expect(relation.symbols.filter((s) => s.role === 'out')).toHaveLength(1);
      for (const symbol of relation.symbols) expect(unitNamed(symbol.unit), symbol.unit).not.toBeNull();
      expect(relation.checks.length).toBeGreaterThan(0);
      expect(today(relation).filter((c) => !c.agrees)).toEqual([]);
    },
  );

  it.each(allRelations)('$id has a symbol for each of its inputs, and a range only of its symbols', (relation) => {
    const keys = relation.symbols.flatMap((s) => (s.key === null ? [] : [s.key])).sort();
    for (const check of relation.checks) {
      expect(Object.keys(check.inputs).sort()).toEqual(keys);
      expect(() => outsideRange(relation, check.inputs)).not.toThrow();
    }
  });

  it.each(allRelations)('$id is unverified only when it says so on its page', (relation) => {
    expect(relation.title.includes('unverified')).toBe(relation.grade === 'U');
  });
});
