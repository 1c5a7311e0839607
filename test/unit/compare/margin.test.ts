import { describe, expect, it } from 'vitest';
import { againstMargin } from '../../../src/compare/margin.ts';
import { estimate } from '../../../src/quantity/estimate.ts';
import type { QuantityName } from '../../../src/trial/figures.ts';
import { derived } from './runs.ts';

const held = (value: number, u: number, of: { declared?: string; quantity?: QuantityName } = {}) =>
  againstMargin({
    estimate: estimate(value, [{ cause: 'x', u }]),
    quantity: of.quantity ?? 'spin-power',
    runs: [derived({ startedDay: '2026-03-10' }), derived({ startedDay: '2026-03-12' })],
    series: {
      margins: {
        declared: of.declared ?? '2026-03-09',
        by: new Map([
          ['spin-power', 10],
          ['shed', 1],
        ]),
      },
      familyLevel: 0.05,
    },
    causes: new Map(),
  });

// Two one-sided tests at 5 %: the 90 % interval, 1.645 u to either side, has to lie inside.
describe('a difference against the margin that was declared before it', () => {
  it('is equal within it only when the 90 % interval lies inside', () => {
    expect(held(3, 4)!.equal).toBe(true); // 3 + 6.58 = 9.58
    expect(held(4, 4)!.equal).toBe(false); // 4 + 6.58 = 10.58
    expect(held(-4, 4)!.equal).toBe(false);
  });

  it('is no worse when its worse end lies inside, however much better it is', () => {
    expect(held(-40, 4)!.noWorse).toBe(true);
    expect(held(4, 4)!.noWorse).toBe(false);
  });

  it('has no worse side where neither way is a merit', () => {
    expect(held(0.1, 0.1, { quantity: 'shed' })!.noWorse).toBeNull();
  });

  it('is not held against a margin declared on the day of the first run or later, nor where none was declared', () => {
    expect(held(0, 1, { declared: '2026-03-10' })).toBeNull();
    expect(held(0, 1, { quantity: 'store' })).toBeNull();
  });
});
