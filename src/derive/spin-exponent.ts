import { estimate, type Cause, type Estimate } from '../quantity/estimate.ts';
import { leastSquares } from '../statistics/least-squares.ts';
import type { Result } from '../trial/derived.ts';
import { fitScatter } from './causes.ts';

/** A power is fitted to four speeds or more (common practice, no source). */
const leastSpeeds = 4;

/**
 * How spin power goes with speed round the loaded one, P ~ ω^p, at the hottest temperature of this run:
 *
 *   ln P = c + p·ln(ω/ω0) + q·ln²(ω/ω0)
 *
 * The parabola because a constant part of the torque bends the line. Null with fewer than four speeds at that temperature.
 */
export function spinExponent(of: {
  run: string;
  results: readonly Result[];
  /** The loaded speed, rad/s. */
  speed_rad_s: number;
}): { readonly estimate: Estimate; readonly causes: readonly Cause[] } | null {
  const points = of.results.flatMap(({ quantity, at, estimate: e }) =>
    quantity === 'spin-power' && typeof at.sump_K === 'number' && at.outputSpeed_rad_s !== undefined && e !== null
      ? [{ sump_K: at.sump_K, x: Math.log(at.outputSpeed_rad_s / of.speed_rad_s), power_W: e.value }]
      : [],
  );
  const hottest_K = Math.max(...points.map((p) => p.sump_K));
  const hot = points.filter((p) => p.sump_K === hottest_K && p.power_W > 0);
  if (hot.length < leastSpeeds) return null;
  const fit = leastSquares({
    design: hot.map(({ x }) => [1, x, x * x]),
    y: hot.map(({ power_W }) => Math.log(power_W)),
  });
  if (!fit.ok) return null;
  const scatter = fitScatter({
    run: of.run,
    what: 'exponent of speed',
    u: Math.sqrt(fit.covariance[1]![1]!),
    dof: fit.dof,
  });
  return {
    estimate: estimate(fit.coefficients[1]!, [{ cause: scatter.cause.id, u: scatter.u }]),
    causes: [scatter.cause],
  };
}
