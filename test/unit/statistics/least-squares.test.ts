import { describe, expect, it } from 'vitest';
import { leastSquares, predict } from '../../../src/statistics/least-squares.ts';

describe('least squares', () => {
  it('refuses a column that the others already explain, and names it', () => {
    const fit = leastSquares({
      design: [
        [1, 0, 1],
        [1, 0, 1],
        [0, 1, 1],
        [0, 1, 1],
      ],
      y: [1, 2, 3, 4],
      names: ['P0', 'P1', 'Drift'],
    });
    expect(fit).toMatchObject({ ok: false, column: 2, why: expect.stringContaining('Drift') as string });
  });

  it('refuses a column of zeros', () => {
    expect(leastSquares({ design: [[1, 0], [1, 0], [1, 0]], y: [1, 2, 3] })).toMatchObject({ ok: false, column: 1 }); // prettier-ignore
  });

  it('refuses as many readings as unknowns, and takes them when the scatter is known from elsewhere', () => {
    const line = { design: [[1, 0], [1, 2]], y: [3, 7] }; // prettier-ignore
    expect(leastSquares(line)).toMatchObject({ ok: false, why: expect.stringContaining('2 readings') as string });
    const fit = leastSquares({ ...line, scatter: { s: 0.5, dof: 9 } });
    if (!fit.ok) throw new Error(fit.why);
    expect(fit.coefficients[1]).toBeCloseTo(2, 12);
    expect(fit.dof).toBe(9);
    // By hand: the slope between two readings 2 apart has s √2 / 2.
    expect(Math.sqrt(fit.covariance[1]![1]!)).toBeCloseTo((0.5 * Math.SQRT2) / 2, 12);
  });

  it('refuses no readings, and readings that are not numbers', () => {
    expect(leastSquares({ design: [], y: [] }).ok).toBe(false);
    expect(leastSquares({ design: [[1], [1], [1]], y: [1, NaN, 3] }).ok).toBe(false);
    expect(leastSquares({ design: [[1], [Infinity], [1]], y: [1, 2, 3] }).ok).toBe(false);
  });

  it('gives the mean and its uncertainty for a single column of ones', () => {
    const fit = leastSquares({ design: [[1], [1], [1], [1]], y: [10, 12, 14, 16] });
    if (!fit.ok) throw new Error(fit.why);
    expect(predict(fit, [1]).value).toBeCloseTo(13, 12);
    expect(predict(fit, [1]).u).toBeCloseTo(Math.sqrt(20 / 3) / 2, 12);
    expect(fit.condition).toBeCloseTo(1, 12);
  });
});
