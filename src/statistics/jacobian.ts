/**
 * Columns ∂f/∂p by central differences, one-sided where a limit is nearer than the step.
 *
 *   h = ε^(1/3) max(|p|, 1e-3 |start|),  or ε^(1/3) when both are 0
 *
 * source  common practice, no source
 */
export function jacobian(of: {
  readonly f: (p: readonly number[]) => Float64Array;
  readonly at: readonly number[];
  readonly start: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
}): Float64Array[] {
  return of.at.map((value, j) => {
    const h = Math.cbrt(Number.EPSILON) * (Math.max(Math.abs(value), 1e-3 * Math.abs(of.start[j]!)) || 1);
    const high = Math.min(value + h, of.upper[j]!);
    const low = Math.max(value - h, of.lower[j]!);
    const above = of.f(of.at.with(j, high));
    const below = of.f(of.at.with(j, low));
    return above.map((x, i) => (x - below[i]!) / (high - low));
  });
}
