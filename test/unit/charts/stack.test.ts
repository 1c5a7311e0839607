import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stack } from '../../../src/charts/stack.ts';

const blocks = fc.array(
  fc.record({ wanted: fc.double({ min: -50, max: 450, noNaN: true }), height: fc.constantFrom(18, 33, 48) }),
  { minLength: 1, maxLength: 8 },
);

describe('words of different heights beside a drawing', () => {
  it('never overlap, keep the order of what they name, and stay in bounds as far as these have room', () => {
    fc.assert(
      fc.property(blocks, (given) => {
        const places = stack(given, 2, 400);
        const inOrder = given.map((block, i) => ({ ...block, place: places[i]! })).sort((a, b) => a.place - b.place);
        inOrder.forEach(({ place, height, wanted }, i) => {
          const before = inOrder[i - 1];
          expect(place - height / 2).toBeGreaterThanOrEqual(2 - 1e-9);
          expect(place + height / 2).toBeLessThanOrEqual(400 + 1e-9);
          if (before === undefined) return;
          expect(place - height / 2).toBeGreaterThanOrEqual(before.place + before.height / 2 - 1e-9);
          expect(wanted).toBeGreaterThanOrEqual(before.wanted);
        });
      }),
      { seed: 20260302, numRuns: 300 },
    );
  });
  it('stay where they want to be when there is room', () => {
    const given = [
      { wanted: 200, height: 48 },
      { wanted: 40, height: 18 },
    ];
    expect(stack(given, 0, 400)).toEqual([200, 40]);
  });
  it('give way evenly: two that want one place share it', () => {
    const given = [
      { wanted: 100, height: 20 },
      { wanted: 100, height: 20 },
    ];
    expect(stack(given, 0, 400)).toEqual([90, 110]);
  });
});
