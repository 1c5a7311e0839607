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
  const law = lawRows(series, line);
  if (law === null) return null;
  const fit = leastSquares({ design: law.sump_K.map(law.row), y: law.heat_W });
  if (!fit.ok) return null;
  return {
    at_W: tabulated((sump_K) => predict(fit, law.row(sump_K)).value),
    u_W: (sump_K) => predict(fit, law.row(sump_K)).u,
    dof: fit.dof,
    scatter_W: fit.s,
  };
}

/** Readings that the law goes through, and the row of its design at a sump temperature. */
export interface LawRows {
  readonly row: (sump_K: number) => number[];
  readonly time_s: readonly number[];
  readonly sump_K: readonly number[];
  readonly heat_W: readonly number[];
}

/** Null with fewer than twenty bins that hold both heat and sump. */
export function lawRows(series: HeatSeries, line: LogLogLine): LawRows | null {
  const last = lastReading(series.sump_K);
  if (last === null) return null;
  const end_m2_s = nuAt(line, last);
  const held = [...series.time_s.keys()].filter((i) => !Number.isNaN(series.sump_K[i]! + series.heat_W[i]!));
  if (held.length < 20) return null;
  const of = (values: Float64Array): number[] => held.map((i) => values[i]!);
  return {
    row: (sump_K) => {
      const x = nuAt(line, sump_K) / end_m2_s;
      return [1, Math.sqrt(x), 1 / x];
    },
    time_s: of(series.time_s),
    sump_K: of(series.sump_K),
    heat_W: of(series.heat_W),
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
