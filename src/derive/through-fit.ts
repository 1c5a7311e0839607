import { fitNonlinear, type NonlinearFit } from '../statistics/nonlinear.ts';

/** Fits a curve to the readings that are there. */
export function fitTo(
  y: Float64Array,
  curve: (p: readonly number[]) => Float64Array,
  start: readonly number[],
): NonlinearFit {
  const keep = [...y.keys()].filter((i) => !Number.isNaN(y[i]!));
  return fitNonlinear({
    model: (p) => {
      const all = curve(p);
      return keep.map((i) => all[i]!);
    },
    y: keep.map((i) => y[i]!),
    start,
    maxIterations: 100,
  });
}

/** √((1 + r1)/(1 − r1)), at least 1: what autocorrelated readings are worth less. */
export function hangTogether(left: readonly number[]): number {
  const squares = left.reduce((s, r) => s + r * r, 0);
  const lag = left.slice(1).reduce((s, r, i) => s + r * left[i]!, 0);
  const r1 = squares === 0 ? 0 : Math.min(0.98, Math.max(0, lag / squares));
  return Math.sqrt((1 + r1) / (1 - r1));
}

/** A function of fitted parameters with its standard uncertainty from their whole covariance. */
export function throughFit(fit: NonlinearFit, f: (p: readonly number[]) => number): { value: number; u: number } {
  const p = fit.parameters;
  const gradient = p.map((v, j) => {
    const h = 1e-5 * Math.max(Math.abs(v), 1e-3);
    const at = (d: number): number => f(p.map((x, i) => (i === j ? x + d : x)));
    return (at(h) - at(-h)) / (2 * h);
  });
  const variance = gradient.reduce(
    (sum, gi, i) => sum + gradient.reduce((s, gj, j) => s + gi * gj * (fit.covariance[i]?.[j] ?? 0), 0),
    0,
  );
  return { value: f(p), u: Math.sqrt(Math.max(0, variance)) };
}

export const root = (fit: NonlinearFit, i: number): number => Math.sqrt(fit.covariance[i]?.[i] ?? 0);

export const named = (fit: NonlinearFit, list: readonly (readonly [string, string, number])[]): Parameter[] =>
  list.map(([name, unit, factor], i) => ({
    name,
    value: fit.parameters[i]! / factor,
    u: root(fit, i) / factor,
    unit,
  }));

export interface Parameter {
  readonly name: string;
  readonly value: number;
  readonly u: number;
  readonly unit: string;
}
