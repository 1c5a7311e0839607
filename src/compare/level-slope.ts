import { combine, type Estimate } from '../quantity/estimate.ts';

/** A quantity of one cell, and the level at rest it was run at. SI. */
export interface AtLevel {
  readonly value: Estimate;
  readonly level: Estimate;
}

/**
 * Slope of the straight line through some cells by least squares, all of one weight, with the doubt of values and levels.
 *
 *   b = Σ(z_i − z̄)·y_i/S,  S = Σ(z_i − z̄)²,  ∂b/∂y_i = (z_i − z̄)/S,  ∂b/∂z_i = [y_i − ȳ − 2b·(z_i − z̄)]/S
 *
 * values [SI], levels [m]
 * returns      b [SI/m]; null with fewer than two levels
 * source       definition of the line of least squares; the sensitivities are its derivatives
 */
export function levelSlope(points: readonly AtLevel[]): Estimate | null {
  const zMean = meanOf(points.map(({ level }) => level.value));
  const yMean = meanOf(points.map(({ value }) => value.value));
  const off = points.map(({ level }) => level.value - zMean);
  const S = off.reduce((sum, dz) => sum + dz ** 2, 0);
  if (points.length < 2 || S === 0) return null;
  const b = points.reduce((sum, { value }, i) => sum + off[i]! * (value.value - yMean), 0) / S;
  return combine(
    b,
    points.flatMap(({ value, level }, i) => [
      { of: value, sensitivity: off[i]! / S },
      { of: level, sensitivity: (value.value - yMean - 2 * b * off[i]!) / S },
    ]),
  );
}

const meanOf = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;
