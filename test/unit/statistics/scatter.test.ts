import { describe, expect, it } from 'vitest';
import { grubbs, oneWayAnova, pooledScatter, precision } from '../../../src/statistics/scatter.ts';

describe('scatter within groups', () => {
  it('is nothing where no group has two readings', () => {
    expect(pooledScatter([])).toBeNull();
    expect(pooledScatter([[1], [2], []])).toBeNull();
  });

  it('does not see how far groups lie apart', () => {
    expect(pooledScatter([[1, 3], [1e9 + 1, 1e9 + 3]])).toEqual({ s: Math.SQRT2, dof: 2 }); // prettier-ignore
  });
});

describe('analysis of variance', () => {
  it('is nothing with one group or without a repeat', () => {
    expect(oneWayAnova([[1, 2, 3]])).toBeNull();
    expect(oneWayAnova([[1], [2]])).toBeNull();
    expect(precision([[1], [2]])).toBeNull();
  });

  it('leaves out a group without readings', () => {
    expect(oneWayAnova([[1, 2], [], [4, 6]])).toEqual(oneWayAnova([[1, 2], [4, 6]])); // prettier-ignore
  });

  it('has an endless ratio where repeats agree exactly, and none where groups do', () => {
    expect(oneWayAnova([[1, 1], [2, 2]])).toMatchObject({ ratio: Infinity, p: 0, s: 0 }); // prettier-ignore
    expect(oneWayAnova([[1, 3], [2, 2]])).toMatchObject({ ratio: 0, p: 1 }); // prettier-ignore
    expect(oneWayAnova([[2, 2], [2, 2]])).toMatchObject({ ratio: 0, p: 1, s: 0 }); // prettier-ignore
  });
});

describe('a reading far from the others', () => {
  it('is not looked for among two readings or among equal ones', () => {
    expect(grubbs({ values: [1, 9] })).toBeNull();
    expect(grubbs({ values: [4, 4, 4, 4] })).toBeNull();
  });

  it('is looked for on the side that was asked', () => {
    const values = [0, 10, 11, 12, 11, 10, 12, 11];
    expect(grubbs({ values, side: 'lower' })).toMatchObject({ index: 0, outlying: true });
    expect(grubbs({ values, side: 'upper' })).toMatchObject({ outlying: false });
    expect(grubbs({ values })).toMatchObject({ index: 0, outlying: true });
  });
});
