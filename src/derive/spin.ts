import { combine, estimate, type Cause, type Estimate } from '../quantity/estimate.ts';
import type { LogLogLine } from '../physics/viscosity.ts';
import { meanOf, nuAt } from './readings-of.ts';
import { isSteady, slope } from '../statistics/series.ts';
import type { Plan } from '../trial/plan.ts';
import type { Result, Window } from '../trial/derived.ts';
import { calibration, gather, modelSpread, readingScatter, zeroDrift } from './causes.ts';
import { broughtToStep, type BroughtToStep } from './held-speed.ts';
import { outputSpeed, ratioOf, type Reading } from './reading.ts';
import { givenOf, stepsOf } from './spin-working.ts';
import { lastPart, plateaus, windowOf } from './windows.ts';

/** Mean torque, sump and speed of one steady window; torque is stated for the speed of its step. */
export interface SpinPoint {
  readonly step_rad_s: number;
  readonly level_K: number;
  readonly torque: Estimate;
  readonly torque_Nm: number;
  /** As it was held, before it was brought to the speed of its step; how it was, and why not. */
  readonly held_Nm: number;
  readonly held_ratio: number;
  readonly toStep: BroughtToStep['way'];
  readonly note: string | null;
  readonly u_Nm: number;
  readonly raw_Nm: number;
  readonly sump_K: number;
  readonly uSump_K: number;
  readonly nu_m2_s: number;
  readonly window: Window;
  readonly rows: readonly [number, number];
}

export interface SpinDerived {
  readonly points: readonly SpinPoint[];
  readonly results: readonly Result[];
  readonly windows: readonly Window[];
  readonly causes: readonly Cause[];
  /** Windows at a planned step and temperature that were not steady and are not used. */
  readonly restless: readonly string[];
  /** Planned steps and temperatures for which no window was found at all. */
  readonly unseen: readonly { readonly step_rad_s: number; readonly level_K: number }[];
}

/**
 * Net spin torque and spin power at each planned speed and reference temperature.
 *
 *   T(ν_ref) = Σ_i T_i·L_i(ln ν_ref)          Lagrange through the windows of one speed, in ln ν
 *   P        = T·ω_pinion
 *
 * The windows lie within a kelvin or two of the reference temperature, so that the neighbouring windows give only the slope.
 * `notAt` names the steps whose sump reading does not count (probe above level): nothing is given there.
 */
export function deriveSpin(input: {
  reading: Reading;
  plan: Plan;
  line: LogLogLine;
  reference_K: readonly number[];
  notAt_rad_s: readonly number[];
  /** How far a held speed may be off its step and still be brought to it. */
  speedWithin_ratio: number | null;
}): SpinDerived {
  const { reading, plan, line, reference_K, notAt_rad_s } = input;
  const { points, windows, causes, restless } = spinPoints(reading, plan, line, input.speedWithin_ratio);
  const usable = points.filter((p) => !notAt_rad_s.some((w) => Math.abs(w - p.step_rad_s) < 1e-9));
  const found = plan.steps_rad_s.flatMap((step) => {
    const here = usable.filter((p) => p.step_rad_s === step);
    return reference_K.flatMap((ref_K) => atReference({ here, ref_K, step, reading, line }) ?? []);
  });
  const unseen = plan.temperatures_K.flatMap((level_K) =>
    plan.steps_rad_s
      .filter((step) => !points.some((p) => p.step_rad_s === step && p.level_K === level_K))
      .filter((step) => !restless.includes(windowName(step, level_K)))
      .map((step_rad_s) => ({ step_rad_s, level_K })),
  );
  return {
    points: usable,
    results: found.flatMap((f) => f.results),
    windows,
    causes: [...causes, ...found.flatMap((f) => f.causes)],
    restless,
    unseen,
  };
}

const windowName = (step_rad_s: number, level_K: number): string =>
  `${Math.round((step_rad_s * 30) / Math.PI)} rpm, ${Math.round(level_K - 273.15)} °C`;

function spinPoints(
  reading: Reading,
  plan: Plan,
  line: LogLogLine,
  within_ratio: number | null,
): { points: SpinPoint[]; windows: Window[]; causes: Cause[]; restless: string[] } {
  const { log, run } = reading;
  const speed = outputSpeed(reading);
  const measured = reading.channel('torque-in');
  const sump = reading.channel('sump');
  const raw = log.channels.get('torque-in');
  if (speed === null || measured === null || sump === null || raw === undefined)
    return { points: [], windows: [], causes: [], restless: [] };
  // A signed torque turns its sign with the rotation; loss is positive either way.
  const torque = measured.map((v, i) => (speed[i]! < 0 ? -v : v));
  const instruments = { torque: reading.instrument('torque-in'), sump: reading.instrument('sump') };
  const points = new Map<string, SpinPoint>();
  const windows: Window[] = [];
  const causes: Cause[] = [];
  const restless = new Set<string>();
  for (const plateau of plateaus({
    time_s: log.time_s,
    speed_rad_s: speed,
    steps_rad_s: plan.steps_rad_s,
    least_s: 0.75 * plan.hold_s,
  })) {
    const rows = lastPart(plateau, log.time_s, plan.steadyWindow_s);
    const cut = (values: Float64Array): Float64Array => values.subarray(...rows);
    const t = meanOf(cut(torque));
    const temperature = meanOf(cut(sump));
    if (t.n < 8 || temperature.n < 8) continue;
    const level_K = nearestOf(plan.temperatures_K, temperature.mean);
    const rate = slope({ t: cut(log.time_s), y: cut(sump) });
    const steady = rate !== null && isSteady({ ...rate, limit: plan.steadySlope_K_s });
    const step_rad_s = plateau.step_rad_s;
    const name = windowName(step_rad_s, level_K);
    if (Math.abs(temperature.mean - level_K) > 2) continue;
    if (!steady) {
      if (!points.has(`${step_rad_s}|${level_K}`)) restless.add(name);
      continue;
    }
    restless.delete(name);
    const found = gather([
      { of: readingScatter({ run: run.id, what: `torque at ${name}`, u: t.u, dof: t.dof }), sensitivity: 1 },
      { of: instruments.torque && calibration(instruments.torque, t.mean), sensitivity: 1 },
      { of: instruments.torque && zeroDrift(run, instruments.torque), sensitivity: 1 },
    ]);
    causes.push(...found.causes);
    const window = windowOf({ name, log, rows, outputSpeed_rad_s: step_rad_s, sump_K: temperature.mean, steady });
    points.set(`${step_rad_s}|${level_K}`, {
      step_rad_s,
      level_K,
      torque: estimate(t.mean, found.parts),
      ...{ torque_Nm: t.mean, held_Nm: t.mean, toStep: null, note: null },
      held_ratio: Math.abs(meanOf(cut(speed)).mean) / step_rad_s,
      u_Nm: t.u,
      raw_Nm: meanOf(cut(raw)).mean,
      sump_K: temperature.mean,
      uSump_K: temperature.u,
      nu_m2_s: nuAt(line, temperature.mean),
      window,
      rows,
    });
  }
  const held = [...points.values()].map((p) => ({ ...p, name: p.window.name }));
  const brought = broughtToStep(run.id, held, within_ratio);
  const kept = [...points.values()].map((p, i): SpinPoint => {
    const { torque, way, note } = brought[i]!;
    return { ...p, torque, torque_Nm: torque.value, toStep: way, note };
  });
  causes.push(...brought.flatMap((b) => b.causes));
  windows.push(...kept.map((p) => p.window));
  if (instruments.sump) causes.push(calibration(instruments.sump, 333).cause);
  return { points: kept, windows, causes, restless: [...restless] };
}

function atReference(input: {
  here: readonly SpinPoint[];
  ref_K: number;
  step: number;
  reading: Reading;
  line: LogLogLine;
}): { results: Result[]; causes: readonly Cause[] } | null {
  const { here, ref_K, step, reading, line } = input;
  const nearest = here.find((p) => Math.abs(p.sump_K - ref_K) <= 2);
  if (nearest === undefined) return null;
  const x = Math.log(nuAt(line, ref_K));
  const xs = here.map((p) => Math.log(p.nu_m2_s));
  const weight = (at: number): number[] => xs.map((xi, i) => lagrange(xs, i, at) * (Number.isNaN(xi) ? NaN : 1));
  const weights = weight(x);
  const value = here.reduce((sum, p, i) => sum + p.torque_Nm * weights[i]!, 0);
  if (!Number.isFinite(value)) return null;
  const alone = here.length < 2;
  // Of one temperature the slope is not known: torque goes with ν to a power of 0 to 0.6 (common practice, no source).
  const perLnNu = alone ? 0.3 * value : slopeAt(here, xs, x);
  const uncorrected = modelSpread({
    run: reading.run.id,
    what: `torque at ${windowName(step, ref_K)}`,
    u: alone ? (0.6 * value * Math.abs(x - xs[0]!)) / Math.sqrt(3) : 0,
  });
  const lnNuPerK = (Math.log(nuAt(line, ref_K + 0.5)) - x) / 0.5;
  const sump = reading.instrument('sump');
  const torque = combine(
    value,
    here.map((p, i) => ({ of: p.torque, sensitivity: weights[i]! })),
  );
  const probe = gather([
    { of: sump && calibration(sump, ref_K), sensitivity: -perLnNu * lnNuPerK },
    { of: alone ? uncorrected : null, sensitivity: 1 },
  ]);
  const all = estimate(value, [...torque.parts, ...probe.parts]);
  const omega = step * ratioOf(reading.rig);
  const common = {
    at: { outputSpeed_rad_s: step, sump_K: ref_K },
    bound: null,
    class: 'derived from measurement',
    method: 'spin/lagrange-in-ln-viscosity',
    notes: [
      ...(alone ? ['one temperature only: not corrected to the reference'] : []),
      ...(nearest.note === null ? [] : [nearest.note]),
    ],
    given: givenOf(nearest, reading, omega),
  } as const;
  const steps = stepsOf({ nearest, value, ref_K, perLnNu, x, alone });
  const results: Result[] = [
    { ...common, quantity: 'spin-torque', relation: 'net-torque', estimate: all, steps },
    {
      ...common,
      quantity: 'spin-power',
      relation: 'shaft-power',
      estimate: combine(value * omega, [{ of: all, sensitivity: omega }]),
      steps: [...steps, { says: 'Power at the input shaft', formula: 'P = T·ω', value: value * omega, unit: 'W' }],
    },
  ];
  return { results, causes: probe.causes };
}

/** Weight of point i of the polynomial through all points, at x. One point has weight one. */
const lagrange = (xs: readonly number[], i: number, x: number): number =>
  xs.reduce((product, xj, j) => (j === i ? product : (product * (x - xj)) / (xs[i]! - xj)), 1);

function slopeAt(here: readonly SpinPoint[], xs: readonly number[], x: number): number {
  const step = 1e-3;
  const at = (v: number): number => here.reduce((sum, p, i) => sum + p.torque_Nm * lagrange(xs, i, v), 0);
  return here.length < 2 ? 0 : (at(x + step) - at(x - step)) / (2 * step);
}

const nearestOf = (list: readonly number[], value: number): number =>
  list.reduce((best, v) => (Math.abs(v - value) < Math.abs(best - value) ? v : best), list[0] ?? value);
