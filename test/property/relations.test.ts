import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allRelations } from '../../src/physics/all.ts';
import { outsideRange, type Relation } from '../../src/physics/relation.ts';

/** Numbers as they go wrong: nothing, below nothing, huge, tiny, none at all. */
const wild = fc.oneof(
  fc.constantFrom(0, -1, 1, 1e-12, 1e12, 1e300, -1e300, NaN, Infinity, -Infinity),
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
);
const numeric = (relation: Relation): readonly string[] =>
  relation.symbols.flatMap(({ key }) =>
    key !== null && typeof relation.checks[0]?.inputs[key] === 'number' ? [key] : [],
  );

describe('whatever is put into a relation', () => {
  it.each(allRelations.map((relation) => [relation.id, relation] as const))(
    '%s gives a number or nothing: never NaN, never without end, never a throw',
    (_, relation) => {
      const keys = numeric(relation);
      const base = relation.checks[0]!.inputs;
      fc.assert(
        fc.property(fc.tuple(...keys.map(() => wild)), (values) => {
          const inputs = { ...base, ...Object.fromEntries(keys.map((key, i) => [key, values[i]])) };
          const got = relation.of(inputs);
          expect(got === null || Number.isFinite(got)).toBe(true);
          expect(() => outsideRange(relation, inputs)).not.toThrow();
        }),
        { numRuns: 200, seed: 20260302 },
      );
    },
  );
});
