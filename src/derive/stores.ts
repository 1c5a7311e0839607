import { fitNonlinear, type NonlinearFit } from '../statistics/nonlinear.ts';
import type { HeatLaw } from './heat-law.ts';
import type { HeatSeries } from './heat-series.ts';
import { integrate } from './integrate.ts';
import { endAmbient_K, laggedAmbient, type Lagged } from './lagged.ts';
import { fitTo, hangTogether, named, root, throughFit, type Parameter } from './through-fit.ts';

/**
 * Three models of one heat-up. Each gives its final sump temperature with a standard uncertainty and its misfit; which one
 * is taken is decided in `final.ts`.
 *
 *   one-store   C·T' = Q(T) − K·(T − T_amb)
 *   two-store   C1·T1' = Q(T1) − G·(T1 − T2),   C2·T2' = G·(T1 − T2) − K2·(T2 − T_amb)
 *   tail        T = T∞ − A·exp(−t/τ)            over the last hour
 *
 * T1 is the sump, T2 the housing skin. Q(T) is the heat measured from torque and speed in the same run.
 */
export interface StoreFit {
  readonly model: 'one-store' | 'two-store' | 'tail';
  readonly final_K: number;
  readonly u_K: number;
  /** What the axle had felt of its ambient by the end: as logged, behind the time constant of this fit. */
  readonly felt: Lagged;
  /** Root mean square of what is left, sump only, K. */
  readonly misfit_K: number;
  readonly dof: number;
  /** Sum of squares and count of sump residuals, for the F test between models. */
  readonly squares: number;
  readonly count: number;
  readonly unknowns: number;
  readonly parameters: readonly Parameter[];
  readonly store: { readonly value: number; readonly u: number } | null;
  readonly shed: { readonly value: number; readonly u: number } | null;
  readonly curve_K: Float64Array;
  /** What residuals that hang together widen every uncertainty of this fit by, ≥ 1. */
  readonly widened: number;
}

export interface StoreInput {
  readonly series: HeatSeries;
  readonly heat: HeatLaw;
  /** Standard uncertainty of the skin probe's offset, K. */
  readonly skinOffset_K: number;
}

export function oneStore({ series, heat }: StoreInput): StoreFit {
  const [t0] = starts(series);
  const curve = (p: readonly number[]): Float64Array => {
    const [C = 1, K = 1, start = 0] = p;
    return integrate(series, { sump_K: start, skin_K: start }, (sump_K, _, air_K, rate) => {
      rate[0] = (heat.at_W(sump_K) - K * (sump_K - air_K)) / C;
      rate[1] = 0;
    }).sump_K;
  };
  const fit = fitTo(series.sump_K, curve, [30_000, 12, t0]);
  const [C = NaN, K = NaN] = fit.parameters;
  const felt = laggedAmbient(series, C / K);
  const air_K = endAmbient_K(series);
  const final = (p: readonly number[]): number => settle(air_K, 1 / p[1]!, heat);
  return {
    ...common('one-store', fit, final, series, curve(fit.parameters), heatShare(final(fit.parameters), air_K, heat)),
    felt,
    parameters: named(fit, [
      ['C', 'kJ/K', 1e3],
      ['K', 'W/K', 1],
    ]),
    store: { value: fit.parameters[0]!, u: root(fit, 0) },
    shed: { value: fit.parameters[1]!, u: root(fit, 1) },
  };
}

/**
 * With the skin read through at least a quarter of the run it is fitted too. Without it the sump alone tells the sum of
 * both resistances, when the housing began as cold as the oil; otherwise null.
 */
export function twoStore({ series, heat, skinOffset_K }: StoreInput): StoreFit | null {
  const skinBins = series.skin_K.filter((v) => !Number.isNaN(v)).length;
  const withSkin = skinBins >= series.skin_K.length / 4;
  const [t0, s0] = starts(series);
  if (!withSkin && !(Math.abs(t0 - series.ambient_K[0]!) <= 2)) return null;
  const both = (p: readonly number[]): readonly [Float64Array, Float64Array] => {
    const [C1 = 1, C2 = 1, G = 1, K = 1, sump = 0, skin = sump] = p;
    const run = integrate(series, { sump_K: sump, skin_K: skin }, (sump_K, skin_K, air_K, rate) => {
      const across = G * (sump_K - skin_K);
      rate[0] = (heat.at_W(sump_K) - across) / C1;
      rate[1] = (across - K * (skin_K - air_K)) / C2;
    });
    return [run.sump_K, run.skin_K];
  };
  const n = series.sump_K.length;
  // The probe's own offset is one more unknown, held by its calibration: a seventh parameter and one more residual.
  const weigh = skinOffset_K > 0 ? binNoise(series) / skinOffset_K : 1e3;
  const y = new Float64Array(2 * n + 1);
  const keep: number[] = [];
  for (let i = 0; i < n; i++) {
    if (!Number.isNaN(series.sump_K[i]!)) keep.push(i);
    if (withSkin && !Number.isNaN(series.skin_K[i]!)) keep.push(n + i);
    y[i] = series.sump_K[i]!;
    y[n + i] = series.skin_K[i]!;
  }
  const fit = fitNonlinear({
    model: (p) => {
      const [a, b] = both(p);
      const offset_K = p[6] ?? 0;
      const out = new Float64Array(keep.length + 1);
      for (let j = 0; j < keep.length; j++) {
        const at = keep[j]!;
        out[j] = at < n ? a[at]! : b[at - n]! + offset_K;
      }
      out[keep.length] = offset_K * weigh;
      return withSkin ? out : out.subarray(0, -1);
    },
    y: [...keep.map((at) => y[at]!), ...(withSkin ? [0] : [])],
    start: [15_000, 18_000, 100, 13, t0, ...(withSkin ? [Number.isNaN(s0) ? t0 : s0, 0] : [])],
    maxIterations: 100,
  });
  const resistance = (p: readonly number[]): number => 1 / p[2]! + 1 / p[3]!;
  const [C1 = NaN, C2 = NaN] = fit.parameters;
  const felt = laggedAmbient(series, (C1 + C2) * resistance(fit.parameters));
  const air_K = endAmbient_K(series);
  const final = (p: readonly number[]): number => settle(air_K, resistance(p), heat);
  const [curve] = both(fit.parameters);
  return {
    ...common('two-store', fit, final, series, curve, heatShare(final(fit.parameters), air_K, heat)),
    felt,
    parameters: named(fit, [
      ['C1', 'kJ/K', 1e3],
      ['C2', 'kJ/K', 1e3],
      ['G', 'W/K', 1],
      ['K2', 'W/K', 1],
    ]),
    store: throughFit(fit, (p) => p[0]! + p[1]!),
    shed: throughFit(fit, (p) => 1 / resistance(p)),
  };
}

/**
 * Exponential through the last hour, or the last half of a shorter run. Null when it will not settle on one. One exponential
 * through what two stores do falls short by up to a seventh of the way still to go (runs of 45 to 150 min, worked out here),
 * so a fifth of that way is open as a rectangle.
 */
export function tail({ series }: StoreInput): StoreFit | null {
  const n = series.sump_K.length;
  const end_s = series.time_s[n - 1]!;
  const from = series.time_s.findIndex((t) => t >= Math.max(end_s - 3600, end_s / 2));
  const t = series.time_s.subarray(from);
  const y = series.sump_K.subarray(from);
  const t0 = t[0]!;
  const first = y.find((v) => !Number.isNaN(v)) ?? NaN;
  const last = [...y].reverse().find((v) => !Number.isNaN(v)) ?? NaN;
  const curve = (p: readonly number[]): Float64Array =>
    t.map((at) => p[0]! - p[1]! * Math.exp(-(at - t0) / Math.max(p[2]!, 60)));
  const fit = fitTo(y, curve, [last + (last - first) / 3, ((last - first) * 4) / 3, 2400]);
  const [value = NaN, , tau = NaN] = fit.parameters;
  if (!(tau > 120 && tau < 4 * end_s && Number.isFinite(value))) return null;
  const line = curve(fit.parameters);
  const way_K = Math.abs(value - line.at(-1)!);
  const felt = laggedAmbient(series, tau);
  // It settles on what the axle has felt; a kelvin of ambient is taken as a kelvin of sump for the little way to the end's.
  const way = endAmbient_K(series) - felt.ambient_K;
  return {
    ...common('tail', fit, (p) => p[0]! + way, { ...series, sump_K: y }, line, way_K / 5 / Math.sqrt(3)),
    felt,
    parameters: named(fit, [
      ['T∞', 'K', 1],
      ['A', 'K', 1],
      ['τ', 's', 1],
    ]),
    store: null,
    shed: null,
  };
}

/** T = T_amb + R·Q(T), by fixed point: Q falls with T, so it settles. */
export function settle(ambient_K: number, resistance_K_W: number, heat: Pick<HeatLaw, 'at_W'>): number {
  let t = ambient_K + 60;
  for (let i = 0; i < 60; i++) t = 0.5 * t + 0.5 * (ambient_K + resistance_K_W * heat.at_W(t));
  return t;
}

/** What every model shares. Residuals of a slow run hang together, so the covariance is widened by their lag-1 correlation. */
function common(
  model: StoreFit['model'],
  fit: NonlinearFit,
  final: (p: readonly number[]) => number,
  series: HeatSeries,
  curve: Float64Array,
  besides_K: number,
): Omit<StoreFit, 'felt' | 'parameters' | 'store' | 'shed'> {
  const left: number[] = [];
  for (let i = 0; i < curve.length; i++) {
    const r = series.sump_K[i]! - curve[i]!;
    if (!Number.isNaN(r)) left.push(r);
  }
  const squares = left.reduce((s, r) => s + r * r, 0);
  const { value, u } = throughFit(fit, final);
  return {
    model,
    final_K: value,
    u_K: Math.hypot(u * hangTogether(left), besides_K),
    widened: hangTogether(left),
    misfit_K: Math.sqrt(squares / Math.max(1, left.length)),
    dof: fit.dof,
    squares,
    count: left.length,
    unknowns: fit.parameters.length,
    curve_K: curve,
  };
}

/** What the scatter of the heat law leaves open in a final temperature: its watts times the kelvins a watt is worth. */
const heatShare = (final_K: number, ambient_K: number, heat: HeatLaw): number =>
  (heat.u_W(final_K) * (final_K - ambient_K)) / heat.at_W(final_K);

const starts = (series: HeatSeries): readonly [number, number] => [
  series.sump_K.find((v) => !Number.isNaN(v)) ?? NaN,
  series.skin_K.find((v) => !Number.isNaN(v)) ?? NaN,
];

/** Scatter of neighbouring bins: what noise alone leaves. */
function binNoise(series: HeatSeries): number {
  const d: number[] = [];
  for (let i = 2; i < series.sump_K.length; i++) {
    const second = series.sump_K[i]! - 2 * series.sump_K[i - 1]! + series.sump_K[i - 2]!;
    if (!Number.isNaN(second)) d.push(second * second);
  }
  return d.length === 0 ? 0.01 : Math.max(1e-4, Math.sqrt(d.reduce((a, b) => a + b, 0) / d.length / 6));
}
