import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../../src/statistics/least-squares.ts';
import { fitNonlinear } from '../../../src/statistics/nonlinear.ts';

const t = Array.from({ length: 30 }, (_, i) => i * 120);
const heating = ([start, rise, tau]: readonly number[]) => t.map((s) => start! + rise! * (1 - Math.exp(-s / tau!)));
// Readings of a channel that steps by 0.1: rounding is the only scatter.
const readings = heating([293, 60, 1500]).map((T) => Math.round(T * 10) / 10);

describe('curve fit', () => {
  it('finds a heating curve again within its uncertainty', () => {
    const fit = fitNonlinear({ model: heating, y: readings, start: [290, 40, 800] });
    expect(fit.stopped).toBe('converged');
    [293, 60, 1500].forEach((planted, i) => {
      expect(Math.abs(fit.parameters[i]! - planted)).toBeLessThan(4 * Math.sqrt(fit.covariance[i]![i]!));
    });
    // A step of 0.1 has the deviation 0.1/√12.
    expect(fit.s).toBeGreaterThan(0.02);
    expect(fit.s).toBeLessThan(0.04);
  });

  it('takes exact readings as converged', () => {
    const fit = fitNonlinear({ model: heating, y: heating([293, 60, 1500]), start: [290, 40, 800] });
    expect(fit.stopped).toBe('converged');
    expect(fit.parameters[2]).toBeCloseTo(1500, 6);
  });

  it('agrees with the linear fit on a straight line, weights in', () => {
    const x = [0, 1, 2, 3, 4, 5];
    const y = [1.1, 2.9, 5.2, 7.1, 8.8, 11.3];
    const weights = [1, 4, 1, 4, 1, 4];
    const line = leastSquares({
      design: x.map((v, i) => [Math.sqrt(weights[i]!), Math.sqrt(weights[i]!) * v]),
      y: y.map((v, i) => Math.sqrt(weights[i]!) * v),
    });
    if (!line.ok) throw new Error(line.why);
    const fit = fitNonlinear({ model: ([a, b]) => x.map((v) => a! + b! * v), y, weights, start: [0, 0] });
    line.coefficients.forEach((value, i) => {
      expect(fit.parameters[i]).toBeCloseTo(value, 9);
      for (const [j, c] of line.covariance[i]!.entries()) expect(fit.covariance[i]![j]).toBeCloseTo(c, 9);
    });
    expect(fit.s).toBeCloseTo(line.s, 9);
    expect(fit.residuals[0]).toBeCloseTo(y[0]! - line.coefficients[0]!, 9);
  });

  it('stops on a limit and settles the other parameters there', () => {
    const fit = fitNonlinear({ model: heating, y: readings, start: [290, 40, 800], upper: [300, 100, 1200] });
    expect(fit.stopped).toBe('converged');
    expect(fit.parameters[2]).toBe(1200);
    // With tau held the rest is a linear fit.
    const held = leastSquares({ design: t.map((s) => [1, 1 - Math.exp(-s / 1200)]), y: readings });
    if (!held.ok) throw new Error(held.why);
    expect(fit.parameters[0]).toBeCloseTo(held.coefficients[0]!, 6);
    expect(fit.parameters[1]).toBeCloseTo(held.coefficients[1]!, 6);
  });

  it('knows nothing of parameters that the readings do not tell apart: infinite uncertainty, infinite condition', () => {
    const fit = fitNonlinear({
      model: ([a, b]) => t.map((s) => (a! + b!) * s),
      y: t.map((s) => 2 * s + (s % 7)),
      start: [1, 0],
    });
    expect(fit.condition).toBe(Infinity);
    expect(fit.covariance[0]![0]).toBe(Infinity);
    expect(fit.parameters[0]! + fit.parameters[1]!).toBeCloseTo(2, 2);
  });

  it('knows no scatter with as many readings as parameters', () => {
    const fit = fitNonlinear({ model: ([a, b]) => [a!, a! + b!], y: [1, 3], start: [0.5, 0.5] });
    expect(fit.parameters[1]).toBeCloseTo(2, 9);
    expect(fit.dof).toBe(0);
    expect(fit.covariance[0]![0]).toBe(Infinity);
  });

  it('does not step where the model has no answer', () => {
    const fit = fitNonlinear({
      model: ([a]) => t.map((s) => Math.sqrt(a!) * s),
      y: t.map((s) => 0.1 * s + (s % 7)),
      start: [9],
    });
    expect(fit.stopped).toBe('converged');
    expect(fit.parameters[0]).toBeGreaterThan(0);
  });

  it('says limit when its iterations are used up, and no-decrease when the model has no answer at the start', () => {
    expect(fitNonlinear({ model: heating, y: readings, start: [290, 40, 800], maxIterations: 1 }).stopped).toBe(
      'limit',
    );
    const lost = fitNonlinear({ model: () => t.map(() => NaN), y: readings, start: [290, 40, 800] });
    expect(lost.stopped).toBe('no-decrease');
    expect(lost.parameters).toEqual([290, 40, 800]);
    expect(lost.covariance[0]![0]).toBe(Infinity);
  });
});
