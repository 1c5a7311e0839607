import fc from 'fast-check';
import { expect, it } from 'vitest';
import { today, type Inputs, type Relation } from '../../src/physics/relation.ts';

/** One test a check of the relation: its source in the title, the printed digits as tolerance unless the check says why not. */
export function agreesWithItsSources<I extends Inputs>(relation: Relation<I>): void {
  it.each(today(relation))(
    `${relation.title}: $source ($seen) prints $printed $unit`,
    ({ got, printed, tolerance }) => {
      expect(got).not.toBeNull();
      expect(Math.abs(got! - Number(printed))).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
    },
  );
}

/** For rows that give more digits than a source prints: agreement to a stated share of the value. */
export function expectNear(got: number | null, expected: number, relative: number): void {
  expect(got).not.toBeNull();
  expect(Math.abs(got! - expected)).toBeLessThanOrEqual(Math.abs(expected) * relative);
}

const anyNumber = fc.oneof(
  fc.double(),
  fc.double({ min: -1e3, max: 1e3 }),
  fc.constantFrom(0, -0, 1, -1, 1e-6, 300, NaN, Infinity, -Infinity),
);

/** Whatever numbers go in, a figure comes out or none: not NaN, not infinity, no throw. */
export function givesAFigureOrNone(relation: Relation): void {
  const keys = relation.symbols.flatMap((symbol) => (symbol.key === null ? [] : [symbol.key]));
  const inputs = fc.record(Object.fromEntries(keys.map((key) => [key, anyNumber])));
  it(`${relation.title}: any numbers give a figure or none`, () => {
    const holds = (given: Inputs) => {
      const out = relation.of(given);
      expect(out === null || Number.isFinite(out)).toBe(true);
    };
    fc.assert(fc.property(inputs, holds), { seed: 20261124, numRuns: 500 });
  });
}
