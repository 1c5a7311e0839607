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
 * The group with every loaded run brought to the reference ambient by its own measured slope of total heat. A run without a
 * measured slope, or without shed or final temperature, stays as it is; no slope and no sign is taken for granted.
 *
 *   T_ref = T − ΔT_a·K/(K − s),   θ_ref = θ + ΔT_a·[1 − K/(K − s)],   Q_ref = Q − s·ΔT_a·K/(K − s),   ΔT_a = T_a − T_a,ref
 *
 * K shed, s = dQ/dT of the heat made at the final temperature, T_a the ambient as the axle felt it. Shed stays as it is, and
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
  const answer = K / (K - s);
  // ∂answer/∂s = K/(K − s)², ∂answer/∂K = −s/(K − s)²
  const perSlope = K / (K - s) ** 2;
  const perShed = -s / (K - s) ** 2;
  const moved = movedBy(quantity, { off_K, answer, perSlope, perShed, s });
  const ambient = [
    { of: final, sensitivity: moved.perAmbient },
    { of: rise, sensitivity: -moved.perAmbient },
  ];
  const by = combine(0, [
    { of: slope, sensitivity: moved.perSlope },
    { of: shed, sensitivity: moved.perShed },
    ...ambient,
  ]);
  return {
    run,
    estimate: combine(estimate.value + moved.by, [
      { of: estimate, sensitivity: 1 },
      { of: by, sensitivity: 1 },
    ]),
    toAmbient: { run: run.run, from_K: to.ambient_K + off_K, ...to, slope_W_K: s, answer, by: moved.by },
  };
}

/** What the correction comes to, and what it changes by with slope, shed and ambient. */
function movedBy(
  quantity: QuantityName,
  of: { off_K: number; answer: number; perSlope: number; perShed: number; s: number },
): { by: number; perSlope: number; perShed: number; perAmbient: number } {
  const { off_K, answer, perSlope, perShed, s } = of;
  switch (quantity) {
    case 'final-rise':
      return {
        by: off_K * (1 - answer),
        perSlope: -off_K * perSlope,
        perShed: -off_K * perShed,
        perAmbient: 1 - answer,
      };
    case 'heat-made':
      return {
        by: -s * off_K * answer,
        perSlope: -off_K * (answer + s * perSlope),
        perShed: -s * off_K * perShed,
        perAmbient: -s * answer,
      };
    default:
      return { by: -off_K * answer, perSlope: -off_K * perSlope, perShed: -off_K * perShed, perAmbient: -answer };
  }
}

const valueOf = (run: DerivedRun, quantity: QuantityName): Estimate | null =>
  run.results.find((r) => r.quantity === quantity)?.estimate ?? null;

/** Corrections of the runs of a cell, in their order. */
export const correctionsOf = (runs: readonly Reduced[]): readonly Correction[] =>
  runs.flatMap(({ toAmbient }) => (toAmbient === undefined ? [] : [toAmbient]));
