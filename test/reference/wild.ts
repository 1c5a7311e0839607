import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Inputs, Relation } from '../../src/physics/relation.ts';

const wildNumber = fc.oneof(
  fc.double({ min: -1e3, max: 1e3 }),
  fc.double({ min: 1e-9, max: 10 }),
  fc.constantFrom(0, -1, NaN, Infinity, -Infinity, 1e300, 1e-300, Number.MIN_VALUE),
);

/** Whatever numbers it is given, it answers with a finite number or with none, and does not throw. */
export function answersOrNot<I extends Inputs>(relation: Relation<I>): void {
  it(`${relation.title}: wild numbers give a finite figure or none`, () => {
    const keys = relation.symbols.flatMap(({ key }) => (key === null ? [] : [key]));
    const wild = fc.record(Object.fromEntries(keys.map((key) => [key, wildNumber])));
    fc.assert(
      fc.property(wild, (inputs) => {
        // The keys are those of the relation's own symbols, which relation.test.ts holds against its inputs.
        const value = relation.of(inputs as unknown as I);
        expect(value === null || Number.isFinite(value)).toBe(true);
      }),
      { seed: 20260302, numRuns: 300 },
    );
  });
}
