import type { LogLogLine } from '../physics/viscosity.ts';
import { estimate, type Cause, type Estimate, type Part } from '../quantity/estimate.ts';
import { leastSquares, predict, type LinearFit } from '../statistics/least-squares.ts';
import { fitScatter, modelSpread, type Contribution } from './causes.ts';
import { lawRows, type LawRows } from './heat-law.ts';
import type { HeatSeries } from './heat-series.ts';
import { hangTogether } from './through-fit.ts';
import { nuAt } from './readings-of.ts';

/** The slope of heat made against sump temperature that a heat-up measured itself, or why it measured none. */
export interface HeatSlope {
  readonly estimate: Estimate | null;
  readonly causes: readonly Cause[];
  readonly why: string | null;
}

/** Below this span of the sump a slope is mostly noise and drift (common practice, no source). */
const leastSpan_K = 20;

/** Limits of the answer of a rise to a kelvin of ambient where no slope was measured (common practice, no source). */
const answerLimit = 0.2;

/**
 * dQ/dT at the final temperature, W/K: the derivative of the heat law of the run. Its doubt: the joint covariance of the
 * law, of which a part is that of the heat made itself; a zero that did not move along the straight line between its two
 * readings; and another law of the same kind. Held to be measured where it tells the answer to ambient better than the
 * limits that stand in for it otherwise: d/ds[K/(K − s)]·u(s) < 0.2/√3.
 */
export function heatSlope(of: {
  run: string;
  series: HeatSeries;
  line: LogLogLine;
  final_K: number;
  shed_W_K: number;
  /** Cause and standard uncertainty of the heat made from its law at the final temperature. */
  made: Contribution;
  /** What a wandering zero of each torque channel does, in W. */
  zeros: readonly { of: Contribution; sensitivity: number }[];
}): HeatSlope {
  const { run, series, line, final_K, shed_W_K, made, zeros } = of;
  const law = lawRows(series, line);
  const span_K = law === null ? 0 : Math.max(...law.sump_K) - Math.min(...law.sump_K);
  if (law === null || !(span_K >= leastSpan_K))
    return none(`the sump rose by less than ${leastSpan_K} K while torque was read`);
  const fit = leastSquares({ design: law.sump_K.map(law.row), y: law.heat_W });
  if (!fit.ok) return none(fit.why);
  const here = perKelvin(law.row, final_K);
  const slope = predict(fit, here);
  const shared = covariance(fit, law.row(final_K), here) / made.u;
  const own = Math.sqrt(Math.max((slope.u * hangTogether(fit.residuals)) ** 2 - shared ** 2, 0));
  const scatter = fitScatter({ run, what: 'slope of heat made', u: own, dof: fit.dof });
  const other = otherSlope(law, line, final_K);
  const choice = modelSpread({ run, what: 'slope of heat made', u: Math.abs(other - slope.value) / Math.sqrt(12) });
  const hump = leastSquares({ design: law.sump_K.map(law.row), y: law.time_s.map((t) => bend(t, series)) });
  const perWatt = hump.ok ? predict(hump, here).value : 0;
  const parts: Part[] = [
    { cause: made.cause.id, u: shared },
    { cause: scatter.cause.id, u: own },
    { cause: choice.cause.id, u: choice.u },
    ...zeros.map((z) => ({ cause: z.of.cause.id, u: z.of.u * z.sensitivity * perWatt })),
  ];
  const found = estimate(slope.value, parts);
  const u_W_K = Math.hypot(...found.parts.map((p) => p.u));
  const known = shed_W_K - slope.value > 2 * u_W_K;
  if (!known || (shed_W_K * u_W_K) / (shed_W_K - slope.value) ** 2 > answerLimit / Math.sqrt(3))
    return none('the scatter of heat made leaves its slope against temperature open');
  return { estimate: found, causes: [scatter.cause, choice.cause], why: null };
}

const none = (why: string): HeatSlope => ({ estimate: null, causes: [], why });

/** Derivative of a row of the design, by half a kelvin to either side. */
function perKelvin(row: LawRows['row'], at_K: number): number[] {
  const [low, high] = [row(at_K - 0.5), row(at_K + 0.5)];
  return high.map((v, i) => v - low[i]!);
}

const covariance = ({ covariance: c }: LinearFit, a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, x, i) => sum + x * b.reduce((s, y, j) => s + y * c[i]![j]!, 0), 0);

/** The same slope from a parabola in the logarithm of viscosity. */
function otherSlope(law: LawRows, line: LogLogLine, at_K: number): number {
  const row = (t: number): number[] => {
    const x = Math.log(nuAt(line, t) / nuAt(line, at_K));
    return [1, x, x * x];
  };
  const fit = leastSquares({ design: law.sump_K.map(row), y: law.heat_W });
  return fit.ok ? predict(fit, perKelvin(row, at_K)).value : NaN;
}

/** A zero that leaves the line between its readings: half a wave over the run, of mean square 1. */
const bend = (t_s: number, { time_s }: HeatSeries): number =>
  Math.SQRT2 * Math.sin((Math.PI * t_s) / (time_s.at(-1) ?? 1));
