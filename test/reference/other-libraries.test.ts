import { besseli, besselk } from 'bessel';
import jstat from 'jstat';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { scaledI, scaledK } from '../../src/physics/bessel.ts';
import { fallingStoreAt_K } from '../../src/physics/falling-store.ts';
import { fallingLoss_W, type FallingLoss } from '../../src/physics/falling-loss.ts';
import { oneStoreAt_K } from '../../src/physics/lumped.ts';
import { twoStoreFallingAt } from '../../src/physics/two-store-falling.ts';
import { twoStoreAt } from '../../src/physics/two-store.ts';
import { logLogLine } from '../../src/physics/viscosity.ts';
import { fTail } from '../../src/statistics/f-tail.ts';
import { leastSquares } from '../../src/statistics/least-squares.ts';
import { normalTail, tQuantile, tTail } from '../../src/statistics/student.ts';
import { studentizedRangeQuantile } from '../../src/statistics/tukey.ts';

/**
 * Held against general-purpose libraries that share no line with what is checked: mathjs 15.2 (Dormand–Prince 5(4), LU),
 * jstat 1.9 (distributions), bessel 1.0 (Bessel functions). Units against mathjs stand in test/property/quantity.test.ts.
 */
const math = create(all!);

type SolveODE = (
  f: (t: number, y: number[]) => number[],
  span: readonly [number, number],
  start: readonly number[],
  how: { readonly method: 'RK45'; readonly tol: number; readonly maxIter: number },
) => { readonly y: readonly (readonly number[])[] };

/** The last row of a solution by steps of an adaptive fifth-order method. The types of the library leave it out. */
function solved(f: (t: number, y: number[]) => number[], start: readonly number[], to_s: number): readonly number[] {
  const { solveODE } = math as unknown as { readonly solveODE: SolveODE };
  return solveODE(f, [0, to_s], [...start], { method: 'RK45', tol: 1e-9, maxIter: 1e6 }).y.at(-1)!;
}

const line = logLogLine({ nu40_m2_s: 102e-6, nu100_m2_s: 15e-6 })!;
const loss: FallingLoss = { line, standing_W: 600, viscous_W: 150, reference_m2_s: 100e-6, exponent: 0.5 };
const two = { oilStore_J_K: 15e3, housingStore_J_K: 20e3, coupling_W_K: 60, shed_W_K: 11 };
const ambient_K = 294.15;

describe('temperatures by time against an adaptive solver (mathjs, solveODE)', () => {
  it.each([300, 1800, 9000])('one store, after %i s', (time_s) => {
    const given = { store_J_K: 22e3, shed_W_K: 11, heat_W: 900, ambient_K, start_K: 293.15 };
    const [T] = solved((_, [y]) => [(900 - 11 * (y! - ambient_K)) / 22e3], [293.15], time_s);
    expect(oneStoreAt_K({ ...given, time_s })).toBeCloseTo(T!, 5);
  });

  it.each([300, 1800, 9000])('one store whose heat falls as it warms, after %i s', (time_s) => {
    const given = { loss, ambient_K, shed_W_K: 11, store_J_K: 22e3, start_K: 278.15 };
    const [T] = solved(
      (_, [y]) => [(fallingLoss_W({ ...loss, oil_K: y! })! - 11 * (y! - ambient_K)) / 22e3],
      [278.15],
      time_s,
    );
    expect(fallingStoreAt_K({ ...given, time_s })).toBeCloseTo(T!, 4);
  });

  it.each([300, 1800, 9000])('two stores under constant heat and under falling heat, after %i s', (time_s) => {
    const start = { oil_K: 293.15, housing_K: 292.15 };
    const flow =
      (heat_W: (oil_K: number) => number) =>
      (_: number, [oil, housing]: number[]) => [
        (heat_W(oil!) - two.coupling_W_K * (oil! - housing!)) / two.oilStore_J_K,
        (two.coupling_W_K * (oil! - housing!) - two.shed_W_K * (housing! - ambient_K)) / two.housingStore_J_K,
      ];
    const steady = solved(flow(() => 900), [293.15, 292.15], time_s); // prettier-ignore
    const found = twoStoreAt({ ...two, ambient_K, heat_W: 900, start, time_s })!;
    expect([found.oil_K, found.housing_K].map((T) => T.toFixed(4))).toEqual(steady.map((T) => T.toFixed(4)));
    const falling = solved(flow((oil_K) => fallingLoss_W({ ...loss, oil_K })!), [293.15, 292.15], time_s); // prettier-ignore
    const warmed = twoStoreFallingAt({ ...two, loss, ambient_K, start, time_s })!;
    expect(warmed.oil_K).toBeCloseTo(falling[0]!, 4);
    expect(warmed.housing_K).toBeCloseTo(falling[1]!, 4);
  });
});

describe('distributions against jstat', () => {
  it.each([1, 2, 3.7, 8, 30, 120])('t with %d degrees of freedom: coverage factor and tail', (dof) => {
    for (const p of [0.9, 0.95, 0.975, 0.995]) {
      expect(tQuantile(p, dof) / jstat.studentt.inv(p, dof)).toBeCloseTo(1, 7);
      expect(tTail(2.1, dof)).toBeCloseTo(2 * (1 - jstat.studentt.cdf(2.1, dof)), 8);
    }
  });

  it('normal tail, and the tail of a ratio of variances', () => {
    for (const z of [0, 0.5, 1.96, 3]) expect(normalTail(z)).toBeCloseTo(1 - jstat.normal.cdf(z, 0, 1), 7);
    for (const [ratio, above, below] of [
      [0.4, 3, 9],
      [1, 2, 2],
      [4.3, 5, 12],
      [9, 1, 20],
    ] as const)
      // prettier-ignore
      expect(fTail(ratio, { above, below })).toBeCloseTo(1 - jstat.centralF.cdf(ratio, above, below), 8);
  });

  it('studentized range, which jstat finds to some five digits', () => {
    for (const [k, dof] of [
      [3, 10],
      [5, 24],
      [11, 25],
      [4, 60],
    ] as const)
      // prettier-ignore
      expect(studentizedRangeQuantile(0.95, k, dof) / jstat.tukey.inv(0.95, k, dof)).toBeCloseTo(1, 4);
  });
});

describe('least squares against the normal equations by LU (mathjs)', () => {
  it('gives the same coefficients and covariance for a plane with a bent third column', () => {
    const x = Array.from({ length: 24 }, (_, i) => [1, i / 3, Math.sin(i)]);
    const y = x.map(([, a, b], i) => 2 + 0.7 * a! - 1.3 * b! + 0.05 * Math.cos(3 * i));
    const fit = leastSquares({ design: x, y });
    if (!fit.ok) throw new Error(fit.why);
    const X = math.matrix(x);
    const XtX = math.multiply(math.transpose(X), X);
    const b = math.multiply(math.inv(XtX), math.multiply(math.transpose(X), y)).toArray() as number[];
    const left = y.map((v, i) => v - x[i]!.reduce((sum, c, j) => sum + c * b[j]!, 0));
    const s2 = left.reduce((sum, r) => sum + r * r, 0) / (y.length - 3);
    const C = math.multiply(math.inv(XtX), s2).toArray() as number[][];
    b.forEach((coefficient, i) => {
      expect(fit.coefficients[i]).toBeCloseTo(coefficient, 10);
      b.forEach((_, j) => {
        expect(fit.covariance[i]![j]).toBeCloseTo(C[i]![j]!, 12);
      });
    });
  });
});

describe('Bessel functions of round fins against the library bessel', () => {
  it.each([0.05, 0.5, 1, 2.5, 6, 12])('I and K of order 0 and 1 at %d', (x) => {
    for (const order of [0, 1] as const) {
      expect((scaledI(order, x) * Math.exp(x)) / besseli(x, order)).toBeCloseTo(1, 6);
      expect((scaledK(order, x) * Math.exp(-x)) / besselk(x, order)).toBeCloseTo(1, 6);
    }
  });
});
