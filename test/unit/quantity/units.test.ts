import { describe, expect, it } from 'vitest';
import { readingsOf, unitNamed, units } from '../../../src/quantity/units.ts';

describe('the table of units', () => {
  it('has no spelling that means two units of one kind', () => {
    const lost = units.filter((unit) =>
      [unit.name, ...unit.spellings].some((spelling) => unitNamed(spelling, unit.dimension) !== unit),
    );
    expect(lost.map((unit) => unit.name)).toEqual([]);
  });

  it('has no spelling that means units of two kinds, but for the kelvin', () => {
    const twice = units.filter((unit) =>
      [unit.name, ...unit.spellings].some((spelling) => unitNamed(spelling)?.dimension !== unit.dimension),
    );
    expect(new Set(twice.map((unit) => unit.name))).toEqual(new Set(['K']));
  });

  it('knows none of the words that mean several units of a kind', () => {
    for (const word of ['pt', 'qt', 'gal', 'gallons', 'fl oz']) expect(unitNamed(word, 'volume')).toBeNull();
    expect(unitNamed('hp')).toBeNull();
    expect(readingsOf('Quarts', 'volume')).toEqual(['US qt', 'imp qt']);
    expect(readingsOf('L', 'volume')).toBeNull();
  });

  it('offers only units that it has', () => {
    for (const word of ['pt', 'qt', 'gal', 'oz'])
      for (const name of readingsOf(word, 'volume')!) expect(unitNamed(name, 'volume')?.name).toBe(name);
    for (const name of readingsOf('hp', 'power')!) expect(unitNamed(name, 'power')?.name).toBe(name);
  });

  it('tells milliwatts from megawatts and minutes from metres by their letters', () => {
    expect(unitNamed('mW')?.factor).toBe(1e-3);
    expect(unitNamed('MW')).toBeNull();
    expect(unitNamed('m')?.dimension).toBe('length');
  });
});
