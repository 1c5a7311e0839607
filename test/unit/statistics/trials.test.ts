import { describe, expect, it } from 'vitest';
import { agrees, numericalTolerance, runTrials } from '../../../src/statistics/trials.ts';
import { standardDraws } from '../../../src/statistics/standard-draws.ts';

const normal = (block: number, size: number) =>
  standardDraws({
    seed: 'trials',
    cause: { id: 'x', distribution: 'normal', dof: Infinity },
    block,
    size,
  });

describe('trials are made until the figures have settled', () => {
  it('stop at two blocks of ten thousand where one digit is asked, and go on where two are', () => {
    const one = runTrials({ trial: (block, size) => [normal(block, size)], coverage: 0.95, digits: 1 });
    expect(one.met).toBe(true);
    expect(one.draws % 10000).toBe(0);
    expect(one.draws).toBeGreaterThanOrEqual(20000);
    const two = runTrials({ trial: (block, size) => [normal(block, size)], coverage: 0.95, digits: 2 });
    expect(two.met).toBe(true);
    expect(two.draws).toBeGreaterThan(one.draws);
    expect(Math.abs(two.outputs[0]!.u - 1)).toBeLessThan(0.05);
  });

  it('wait for the slowest output, and hand each back in its place', () => {
    const { outputs, met } = runTrials({
      trial: (block, size) => [normal(block, size), normal(block, size).map((z) => 100 + 5 * z)],
      coverage: 0.95,
      digits: 1,
    });
    expect(met).toBe(true);
    expect(outputs).toHaveLength(2);
    expect(outputs[1]!.value - 100).toBeCloseTo(5 * outputs[0]!.value, 9);
    expect(outputs[1]!.u).toBeCloseTo(5 * outputs[0]!.u, 9);
    expect(outputs[1]!.interval[0] - 100).toBeCloseTo(5 * outputs[0]!.interval[0], 9);
  });

  it('say so when the cap came first, and still make two blocks under a cap of one', () => {
    const few = runTrials({ trial: (block, size) => [normal(block, size)], coverage: 0.95, cap: 1 });
    expect(few).toMatchObject({ met: false, draws: 20000 });
  });

  it('need one block for an output that does not vary, and give it back without scatter', () => {
    const still = runTrials({ trial: (_, size) => [new Float64Array(size).fill(0.1)], coverage: 0.95 });
    expect(still).toEqual({ draws: 10000, met: true, outputs: [{ value: 0.1, u: 0, interval: [0.1, 0.1] }] });
  });

  it('take more than ten thousand a block where the interval leaves little outside', () => {
    const sizes = new Set<number>();
    runTrials({
      trial: (block, size) => {
        sizes.add(size);
        return [normal(block, size)];
      },
      coverage: 0.999,
      digits: 1,
    });
    expect([...sizes]).toEqual([100000]);
  });

  it('leave an output without number where a trial had none, and do not wait for it', () => {
    const { met, outputs, draws } = runTrials({
      trial: (block, size) => [normal(block, size).map((z, i) => (i === 7 ? NaN : z)), new Float64Array(size)],
      coverage: 0.95,
    });
    expect({ met, draws }).toEqual({ met: false, draws: 20000 });
    expect(outputs).toEqual([
      { value: NaN, u: NaN, interval: [NaN, NaN] },
      { value: 0, u: 0, interval: [0, 0] },
    ]);
  });

  it('keep the ends where a few trials have no end', () => {
    const { met, outputs } = runTrials({
      trial: (block, size) => [normal(block, size).map((z) => (z > 3 ? Infinity : z))],
      coverage: 0.95,
    });
    expect(met).toBe(false);
    expect(outputs[0]!.u).toBeNaN();
    expect(outputs[0]!.interval[1]).toBeGreaterThan(1.8);
    expect(outputs[0]!.interval[1]).toBeLessThan(2.1);
  });

  it('wait for the ends alone where a quotient has neither mean nor standard deviation', () => {
    const other = (block: number, size: number) =>
      standardDraws({
        seed: 'trials',
        cause: { id: 'y', distribution: 'normal', dof: Infinity },
        block,
        size,
      });
    const trial = (block: number, size: number) => {
      const under = other(block, size);
      return [normal(block, size).map((z, i) => z / under[i]!)];
    };
    const { met, outputs } = runTrials({ trial, coverage: 0.95, digits: 1, cap: 2e5, moments: false });
    expect(met).toBe(true);
    // one normal over another is Student's t with one degree of freedom: 12.706 (JCGM 100, table G.2)
    expect(Math.abs((outputs[0]!.interval[1] - outputs[0]!.interval[0]) / 2 - 12.706)).toBeLessThan(0.6);
  });

  it('do not change the numbers they are given, and take the same block to the same figures', () => {
    const mine = normal(0, 10000);
    const before = mine.slice();
    const trial = (block: number, size: number) => [block === 0 ? mine : normal(block, size)];
    const first = runTrials({ trial, coverage: 0.95, digits: 1, shape: 'shortest' });
    expect(mine).toEqual(before);
    expect(runTrials({ trial, coverage: 0.95, digits: 1, shape: 'shortest' })).toEqual(first);
  });

  it('refuse a block of another length, which is a slip of ours', () => {
    expect(() => runTrials({ trial: () => [new Float64Array(3)], coverage: 0.95 })).toThrow('instead of 10000');
  });
});

describe('the tolerance follows the digits of the uncertainty', () => {
  it.each([
    { u: 9.96, digits: 2, delta: 0.5, why: 'as 10, not as 100 tenths' },
    { u: 9.94, digits: 2, delta: 0.05, why: 'as 9.9' },
    { u: 1000, digits: 1, delta: 500, why: 'a whole power of ten' },
    { u: 0.001, digits: 2, delta: 0.00005, why: 'as 0.0010' },
    { u: 0, digits: 2, delta: 0, why: 'nothing to settle' },
  ] as const)('u $u, $digits digits: $delta, $why', ({ u, digits, delta }) => {
    expect(numericalTolerance(u, digits)).toBeCloseTo(delta, 12);
  });

  it('linear propagation holds only with both ends within it', () => {
    expect(agrees([1, 2], [1.04, 1.96], 0.05)).toBe(true);
    expect(agrees([1, 2], [1.06, 2], 0.05)).toBe(false);
    expect(agrees([1, 2], [1, 2.06], 0.05)).toBe(false);
    expect(agrees([1, 2], [NaN, NaN], 0.05)).toBe(false);
  });
});
