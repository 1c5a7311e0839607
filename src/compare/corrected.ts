import { combine, type Estimate } from '../quantity/estimate.ts';
import type { Correction } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { Group, Reduced } from './group.ts';

/** Ambient that loaded runs are brought to, and whether the series states it or it is the mean of its runs. */
export interface Reference {
  readonly ambient_K: number;
  readonly stated: boolean;
}

/**
 * The group with every loaded run brought to load and speed of the plan, and to the reference ambient, by its own measured
 * slope of total heat. A run without a
 * measured slope, or without shed or final temperature, stays as it is; no slope and no sign is taken for granted.
 *
 *   T_ref = T − ΔT_a·K/(K − s),   θ_ref = θ + ΔT_a·[1 − K/(K − s)],   Q_ref = Q − s·ΔT_a·K/(K − s),   ΔT_a = T_a − T_a,ref
 *
 * Load and speed of the plan come before it, by the watts ΔQ that the run's own spin and mesh loss say: they move final
 * temperature and rise by ΔQ/(K − s), heat made by ΔQ·K/(K − s).
 *
 * K shed, s = dQ/dT of the heat made at the final temperature, T_a the ambient that the final temperature is stated for. Shed stays as it is, and
 * so does a time to a limit, of which the answer to ambient is a cause.
 *
 * source  steady state of an axle whose heat changes with its temperature; d T/d T_a = K/(K − s) by implicit derivative
 */
export function corrected(group: Group, to: Reference): Group {
  if (group.trial !== 'heat-up' || !answers.has(group.quantity)) return group;
  return { ...group, reduced: group.reduced.map((r) => correctedRun(r, group.quantity, to)) };
}

const answers: ReadonlySet<QuantityName> = new Set(['final-temperature', 'final-rise', 'heat-made']);

function correctedRun(r: Reduced, quantity: QuantityName, to: Reference): Reduced {
  const { run, estimate } = r;
  const slope = run.heatSlope_W_K;
  const [final, rise, shed] = (['final-temperature', 'final-rise', 'shed'] as const).map((q) => valueOf(run, q));
  if (slope === null || final == null || rise == null || shed == null) return r;
  const [K, s] = [shed.value, slope.value];
  if (!(K - s > 0)) return r;
  const off_K = final.value - rise.value - to.ambient_K;
  const at = { off_K, watts: run.toLoad?.by_W.value ?? 0, K, s };
  const by = moved(quantity, at);
  const d = slopesOf(quantity, at);
  const inputs = [
    { of: shed, sensitivity: d.perShed },
    { of: slope, sensitivity: d.perSlope },
    { of: final, sensitivity: d.perAmbient },
    { of: rise, sensitivity: -d.perAmbient },
    ...(run.toLoad === null ? [] : [{ of: run.toLoad.by_W, sensitivity: d.perWatt }]),
  ];
  return {
    run,
    estimate: combine(estimate.value + by, [{ of: estimate, sensitivity: 1 }, ...inputs]),
    corrected: {
      ...to,
      ...{ run: run.run, from_K: to.ambient_K + off_K, slope_W_K: s, answer: K / (K - s), toLoad: run.toLoad, by },
    },
  };
}

/** How far a run stands off: ambient in K, heat made in W at its own temperature; its shed and slope, W/K. */
interface Off {
  readonly off_K: number;
  readonly watts: number;
  readonly K: number;
  readonly s: number;
}

/** What is added to the figure of a run. */
function moved(quantity: QuantityName, { off_K, watts, K, s }: Off): number {
  if (quantity === 'heat-made') return ((watts - s * off_K) * K) / (K - s);
  return watts / (K - s) + (quantity === 'final-rise' ? off_K * (1 - K / (K - s)) : (-off_K * K) / (K - s));
}

/** How that changes with what it was made from; `perAmbient` for a kelvin of ambient. */
function slopesOf(
  quantity: QuantityName,
  { off_K, watts, K, s }: Off,
): Readonly<Record<'perShed' | 'perSlope' | 'perAmbient' | 'perWatt', number>> {
  const square = (K - s) ** 2;
  if (quantity === 'heat-made') {
    const whole = watts - s * off_K;
    return {
      perShed: (-whole * s) / square,
      perSlope: (-off_K * K) / (K - s) + (whole * K) / square,
      perAmbient: (-s * K) / (K - s),
      perWatt: K / (K - s),
    };
  }
  // The answer K/(K − s) falls by s/(K − s)² for one of shed and rises by K/(K − s)² for one of slope.
  return {
    perShed: (-watts + off_K * s) / square,
    perSlope: (watts - off_K * K) / square,
    perAmbient: quantity === 'final-rise' ? 1 - K / (K - s) : -K / (K - s),
    perWatt: 1 / (K - s),
  };
}

const valueOf = (run: DerivedRun, quantity: QuantityName): Estimate | null =>
  run.results.find((r) => r.quantity === quantity)?.estimate ?? null;

/** Corrections of the runs of a cell, in their order. */
export const correctionsOf = (runs: readonly Reduced[]): readonly Correction[] =>
  runs.flatMap(({ corrected: by }) => by ?? []);
