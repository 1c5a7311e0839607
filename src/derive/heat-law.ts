import type { LogLogLine } from '../physics/viscosity.ts';
import { nuAt } from './readings-of.ts';
import { leastSquares, predict } from '../statistics/least-squares.ts';
import type { HeatSeries } from './heat-series.ts';

/**
 * Heat made falls as the oil warms. A smooth line through the run gives it at any sump temperature:
 *
 *   Q(T) = c0 + c1·x + c2·x²,   x = ln ν(T) − ln ν at the end
 *
 * so that c0 is the heat made at the end of the run.
 */
export interface HeatLaw {
  readonly at_W: (sump_K: number) => number;
  readonly u_W: (sump_K: number) => number;
  readonly dof: number;
  readonly scatter_W: number;
}

/** Null with fewer than twenty bins that hold both heat and sump. */
export function heatLaw(series: HeatSeries, line: LogLogLine): HeatLaw | null {
  const rows: number[][] = [];
  const y: number[] = [];
  const last = lastReading(series.sump_K);
  if (last === null) return null;
  const x0 = Math.log(nuAt(line, last));
  const row = (sump_K: number): number[] => {
    const x = Math.log(nuAt(line, sump_K)) - x0;
    return [1, x, x * x];
  };
  for (let i = 0; i < series.sump_K.length; i++) {
    const [t, q] = [series.sump_K[i]!, series.heat_W[i]!];
    if (Number.isNaN(t) || Number.isNaN(q)) continue;
    rows.push(row(t));
    y.push(q);
  }
  if (y.length < 20) return null;
  const fit = leastSquares({ design: rows, y });
  if (!fit.ok) return null;
  return {
    at_W: tabulated((sump_K) => predict(fit, row(sump_K)).value),
    u_W: (sump_K) => predict(fit, row(sump_K)).u,
    dof: fit.dof,
    scatter_W: fit.s,
  };
}

/** The law is asked at every step of every model: a table each quarter kelvin from 230 to 480 K, straight between. */
function tabulated(f: (t_K: number) => number): (t_K: number) => number {
  const table = Float64Array.from({ length: 1001 }, (_, i) => f(230 + i / 4));
  return (t_K) => {
    const x = Math.min(Math.max((t_K - 230) * 4, 0), 999.999);
    const i = Math.floor(x);
    return table[i]! + (x - i) * (table[i + 1]! - table[i]!);
  };
}

function lastReading(values: Float64Array): number | null {
  for (let i = values.length - 1; i >= 0; i--) if (!Number.isNaN(values[i]!)) return values[i]!;
  return null;
}
