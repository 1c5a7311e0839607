import { conditionOf, dependentColumn, factor, inverseOfCross, rotate, solveRotated, triangle } from './householder.ts';
import type { Factored } from './householder.ts';
import { jacobian } from './jacobian.ts';

export interface NonlinearFit {
  readonly parameters: readonly number[];
  /** s² (JᵀWJ)⁻¹; infinite on its diagonal when the readings do not fix all parameters or leave no scatter to judge by. */
  readonly covariance: readonly (readonly number[])[];
  /** y less model, unweighted. */
  readonly residuals: readonly number[];
  /** √(Σ w r² / dof); Infinity without degrees of freedom. */
  readonly s: number;
  readonly dof: number;
  readonly iterations: number;
  /** converged: nothing left to gain · limit: iterations used up · no-decrease: stuck although the slope says there is more. */
  readonly stopped: 'converged' | 'limit' | 'no-decrease';
  /** Of the Jacobian with columns at unit length; Infinity when singular. */
  readonly condition: number;
}

export interface NonlinearProblem {
  /** Predicted y. May answer NaN where it cannot be computed: such a step is not taken. */
  readonly model: (p: readonly number[]) => ArrayLike<number>;
  readonly y: ArrayLike<number>;
  readonly start: readonly number[];
  /** Of the squared residual: 1/u². */
  readonly weights?: ArrayLike<number>;
  /** A parameter that ends on its limit keeps the covariance of the fit without limits. */
  readonly lower?: readonly number[];
  readonly upper?: readonly number[];
  readonly maxIterations?: number;
}

/**
 * Levenberg–Marquardt by QR on [J; √λ D], D the largest column norms seen so far.
 * J is factored once an iteration; each try of λ then costs a QR of 2p rows and one call of the model.
 *
 *   converged when ‖Qᵀr within reach‖/√p < 1e-8 ‖Qᵀr out of reach‖/√dof: the step left is 1e-8 of its own uncertainty
 *
 * source  Moré, Lecture Notes in Mathematics 630 (1978) 105; stop rule Bates and Watts, Technometrics 23 (1981) 179
 *         (from memory)                                check: StRD nonlinear sets
 */
export function fitNonlinear(problem: NonlinearProblem): NonlinearFit {
  const { start, maxIterations = 1000 } = problem;
  const root = Float64Array.from(problem.y, (_, i) => Math.sqrt(problem.weights?.[i] ?? 1));
  const y = root.map((w, i) => w * problem.y[i]!);
  const lower = problem.lower ?? start.map(() => -Infinity);
  const upper = problem.upper ?? start.map(() => Infinity);
  const inside = (value: number, j: number) => Math.min(Math.max(value, lower[j]!), upper[j]!);
  const f = (p: readonly number[]) => {
    const predicted = problem.model(p);
    return root.map((w, i) => w * predicted[i]!);
  };
  const pointAt = (p: readonly number[]): Point => {
    const r = f(p).map((predicted, i) => y[i]! - predicted);
    return { p, r, rss: squares(r) };
  };
  const slopesAt = (p: readonly number[]) => jacobian({ f, at: p, start, lower, upper });
  const exactly = (relative: number) => here.rss <= relative ** 2 * squares(y);

  let here = pointAt(start.map(inside));
  let slopes = slopesAt(here.p);
  let lambda = 1e-2;
  let iterations = 0;
  const damping = new Float64Array(start.length);
  const end = (stopped: NonlinearFit['stopped']): NonlinearFit => ({
    parameters: here.p,
    residuals: Array.from(problem.model(here.p), (predicted, i) => problem.y[i]! - predicted),
    ...judged(slopes, here),
    iterations,
    stopped,
  });

  while (iterations < maxIterations) {
    const free = freeParameters(slopes, here, lower, upper);
    const q = factor(
      free.map((j) => slopes[j]!),
      y.length,
    );
    const turned = rotate(q, here.r);
    const left = stepLeft(turned, free.length);
    if (left < 1e-8 || exactly(8 * Number.EPSILON)) return end('converged');
    q.scale.forEach((norm, i) => (damping[free[i]!] = Math.max(damping[free[i]!]!, norm)));

    const tried = tryUntilLower(here, lambda, (strength) => {
      const step = dampedStep(
        q,
        turned,
        strength,
        free.map((j) => damping[j]!),
      );
      const p = here.p.slice();
      free.forEach((j, i) => (p[j] = inside(p[j]! + step[i]!, j)));
      return pointAt(p);
    });
    if (tried === null) return end(left < 1e-4 || exactly(1e-10) ? 'converged' : 'no-decrease');
    ({ lambda, here } = tried);
    slopes = slopesAt(here.p);
    iterations++;
  }
  return end('limit');
}

interface Point {
  readonly p: readonly number[];
  readonly r: Float64Array;
  readonly rss: number;
}

/** Raises λ until the residuals fall; null when the steps have become too small to matter. */
function tryUntilLower(
  here: Point,
  lambda: number,
  at: (strength: number) => Point,
): { readonly here: Point; readonly lambda: number } | null {
  for (let strength = lambda; strength < 1e16; strength *= 2) {
    const next = at(strength);
    if (next.rss < here.rss) return { here: next, lambda: Math.max(strength / 3, 1e-16) };
    if (next.p.every((value, j) => Math.abs(value - here.p[j]!) <= Number.EPSILON * Math.abs(value))) return null;
  }
  return null;
}

/** All but those that stand on a limit and would cross it. */
function freeParameters(
  slopes: readonly Float64Array[],
  here: Point,
  lower: readonly number[],
  upper: readonly number[],
) {
  const pull = (j: number) => slopes[j]!.reduce((sum, slope, i) => sum + slope * here.r[i]!, 0);
  return here.p.flatMap((value, j) =>
    (value <= lower[j]! && pull(j) <= 0) || (value >= upper[j]! && pull(j) >= 0) ? [] : [j],
  );
}

/** Full step that the linear picture still asks for, in its own standard uncertainties. */
function stepLeft(turned: Float64Array, parameters: number): number {
  const within = squares(turned.subarray(0, parameters));
  const beyond = squares(turned.subarray(parameters));
  if (within === 0) return 0;
  return Math.sqrt(within / parameters / (beyond / Math.max(1, turned.length - parameters)));
}

/** Least squares of [J; √λ D] d = [r; 0], with R in the place of J. */
function dampedStep(q: Factored, turned: Float64Array, strength: number, damping: readonly number[]): Float64Array {
  const size = damping.length;
  const rows = triangle(q).map((column, j) => {
    const stacked = new Float64Array(2 * size);
    column.forEach((value, i) => (stacked[i] = value * q.scale[j]!));
    stacked[size + j] = Math.sqrt(strength) * damping[j]!;
    return stacked;
  });
  const damped = factor(rows, 2 * size);
  const right = new Float64Array(2 * size);
  right.set(turned.subarray(0, size));
  return solveRotated(damped, rotate(damped, right));
}

function judged(
  slopes: readonly Float64Array[],
  here: Point,
): Pick<NonlinearFit, 's' | 'dof' | 'condition' | 'covariance'> {
  const dof = here.r.length - here.p.length;
  const s = dof > 0 ? Math.sqrt(here.rss / dof) : Infinity;
  const q = factor(slopes, here.r.length);
  const told = dependentColumn(q, slopeAccuracy) === null;
  const known = told && Number.isFinite(s);
  const covariance = known
    ? inverseOfCross(q).map((row) => row.map((c) => c * s * s))
    : here.p.map((_, a) => here.p.map((__, b) => (a === b ? Infinity : 0)));
  return { s, dof, condition: told ? conditionOf(q) : Infinity, covariance };
}

/** Central differences with the step ε^(1/3) are good to about ε^(2/3) of the value; a column within that of the others is theirs. */
const slopeAccuracy = Number.EPSILON ** (2 / 3);

function squares(v: Float64Array): number {
  let sum = 0;
  for (const x of v) sum += x * x;
  return sum;
}
