import { conditionOf, dependentColumn, factor, inverseOfCross, rotate, solveRotated } from './householder.ts';
import * as texts from './texts.ts';

/** One linear fit with all that a later step needs; the off-diagonal terms matter as much as the rest. */
export interface LinearFit {
  readonly ok: true;
  readonly coefficients: readonly number[];
  /** s² (XᵀX)⁻¹ */
  readonly covariance: readonly (readonly number[])[];
  /** (XᵀX)⁻¹ */
  readonly unscaled: readonly (readonly number[])[];
  /** y less fitted y. */
  readonly residuals: readonly number[];
  readonly s: number;
  readonly dof: number;
  /** Of the design with columns at unit length: 1 when they are square to each other, past some 30 they share their story. */
  readonly condition: number;
}

/** `column`: the one that the columns before it already explain. */
export interface Refused {
  readonly ok: false;
  readonly why: string;
  readonly column?: number;
}

/** Scatter of one reading, known from elsewhere, with the degrees of freedom behind it. */
export interface Scatter {
  readonly s: number;
  readonly dof: number;
}

/**
 * Least squares of y on the rows of the design, by Householder QR with two refinements.
 * As many readings as unknowns is refused, unless the scatter is given: then s and dof are the given ones.
 *
 * source  e-Handbook 4.1.4.1; JCGM 100:2008 H.3       check: StRD Norris, Longley, Filip; JCGM 100 table H.6
 */
export function leastSquares(given: {
  readonly design: readonly (readonly number[])[];
  readonly y: readonly number[];
  readonly scatter?: Scatter;
  /** Names of the columns, for the reason of a refusal. */
  readonly names?: readonly string[];
}): LinearFit | Refused {
  const { design, y, scatter } = given;
  const unknowns = design[0]?.length ?? 0;
  if (!y.every(Number.isFinite) || !design.every((row) => row.every(Number.isFinite))) {
    return { ok: false, why: texts.notANumber };
  }
  const spare = y.length - unknowns;
  if (unknowns === 0 || spare < (scatter === undefined ? 1 : 0)) {
    return { ok: false, why: texts.tooFewReadings(y.length, unknowns) };
  }
  const columns = Array.from({ length: unknowns }, (_, j) => design.map((row) => row[j]!));
  const q = factor(columns, y.length);
  const dependent = dependentColumn(q);
  if (dependent !== null) {
    const name = given.names?.[dependent] ?? `Column ${dependent + 1}`;
    return { ok: false, why: texts.columnFollows(name), column: dependent };
  }
  const solve = (v: readonly number[]) => solveRotated(q, rotate(q, v));
  const residualsOf = (b: ArrayLike<number>) => design.map((row, i) => y[i]! - along(row, b));

  let b = solve(y);
  for (let refinement = 0; refinement < 2; refinement++) {
    const correction = solve(residualsOf(b));
    b = b.map((value, j) => value + correction[j]!);
  }
  const residuals = residualsOf(b);
  const s = scatter?.s ?? Math.sqrt(residuals.reduce((sum, r) => sum + r * r, 0) / spare);
  const unscaled = inverseOfCross(q);
  return {
    ok: true,
    coefficients: Array.from(b),
    covariance: unscaled.map((row) => row.map((c) => c * s * s)),
    unscaled,
    residuals,
    s,
    dof: scatter?.dof ?? spare,
    condition: conditionOf(q),
  };
}

/** The fitted value at a row of the design and its standard uncertainty, covariances in; the scatter of a new reading is not in. */
export function predict(
  fit: Pick<LinearFit, 'coefficients' | 'covariance'>,
  row: readonly number[],
): { readonly value: number; readonly u: number } {
  const variance = row.reduce((sum, x, i) => sum + x * along(row, fit.covariance[i]!), 0);
  return { value: along(row, fit.coefficients), u: Math.sqrt(Math.max(0, variance)) };
}

function along(row: readonly number[], b: ArrayLike<number>): number {
  let sum = 0;
  for (let j = 0; j < row.length; j++) sum += row[j]! * b[j]!;
  return sum;
}
