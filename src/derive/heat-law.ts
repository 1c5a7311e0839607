import type { LogLogLine } from '../physics/viscosity.ts';
import { nuAt } from './readings-of.ts';
import { leastSquares, predict } from '../statistics/least-squares.ts';
import type { HeatSeries } from './heat-series.ts';

/**
 * Heat made falls as the oil warms. A smooth line through the run gives it at any sump temperature:
 *
 *   Q(T) = c0 + c1·(ν/ν_end)^½ + c2·(ν_end/ν)
 *
 * One term for drag that grows with viscosity, one for friction of the mesh that grows as the film thins; ν_end is the
 * viscosity at the end of the run. A polynomial in ln ν lands 1–2 W low just beyond the last reading, where it is asked
 * (common practice, no source for the powers).
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
  const end_m2_s = nuAt(line, last);
  const row = (sump_K: number): number[] => {
    const x = nuAt(line, sump_K) / end_m2_s;
    return [1, Math.sqrt(x), 1 / x];
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
