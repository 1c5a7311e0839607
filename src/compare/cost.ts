import { combine, estimate, type Estimate } from '../quantity/estimate.ts';
import { energyPerDistanceRelation, fuelFactors } from '../physics/fuel.ts';
import { outsideRange } from '../physics/relation.ts';
import type { Series } from '../trial/book.ts';
import type { Effect } from '../trial/compared.ts';
import type { Cost } from '../trial/consequences.ts';
import type { Rig } from '../trial/rig.ts';
import { cellKey } from './group.ts';
import * as texts from './texts-cost.ts';

type Duty = NonNullable<Series['duty']>;

/**
 * What a difference in spin power comes to over the duty of the series, at the main temperature. Between measured speeds the
 * difference goes along a straight line, and to nothing at standstill; a duty faster than what was run has no answer. A
 * difference that was spun without load is taken as the same under load.
 *
 *   E = Σ fᵢ·ΔP(vᵢ) / Σ fᵢ·vᵢ
 */
export function costsOf(of: {
  readonly effects: readonly Effect[];
  readonly series: Pick<Series, 'duty' | 'reference'>;
  readonly rig: Pick<Rig, 'rollingRadius_m'>;
  /** Half of the interval of an estimate. */
  readonly half: (e: Estimate) => number;
}): Cost[] {
  const { series, rig, half } = of;
  const { duty } = series;
  if (duty === null) return [];
  const asked = of.effects.filter(
    ({ quantity, at }) => quantity === 'spin-power' && at.sump_K === series.reference.mainSump_K,
  );
  const pairs = new Map<string, Effect[]>();
  for (const e of asked) {
    const key = `${cellKey(e.cell)} ${cellKey(e.against)}`;
    pairs.set(key, [...(pairs.get(key) ?? []), e]);
  }
  return [...pairs.values()].map((list): Cost => {
    const [{ cell, against }] = list as [Effect, ...Effect[]];
    const shared = {
      ...{ cell, against, sump_K: series.reference.mainSump_K, drive: duty.drive },
      runs: [...new Set(list.flatMap(({ runs, againstRuns }) => [...runs, ...againstRuns]))],
      outside: [
        ...new Set(
          duty.mix.flatMap(({ speed_m_s }) => outsideRange(energyPerDistanceRelation, { power_W: 0, speed_m_s })),
        ),
      ],
    };
    const found = rig.rollingRadius_m === null ? texts.noRadius : alongTheRoad(list, duty, rig.rollingRadius_m);
    if (typeof found === 'string') return { ...shared, energy: null, fuel: null, word: null, untold: found };
    const energy = duty.drive === 'electric' ? scaled(found, 1 / duty.driveEfficiency) : found;
    const fuel = duty.drive === 'electric' ? null : scaled(found, fuelFactors[duty.drive].perEnergy_m3_J);
    return { ...shared, energy, fuel, word: wordOf(fuel ?? energy, duty, half), untold: null };
  });
}

const scaled = (e: Estimate, by: number): Estimate => combine(e.value * by, [{ of: e, sensitivity: by }]);

/** Energy along the road, J/m, or why there is none. */
function alongTheRoad(list: readonly Effect[], duty: Duty, radius_m: number): Estimate | string {
  const known = ofOneRefit([...list].sort((a, b) => a.at.outputSpeed_rad_s! - b.at.outputSpeed_rad_s!));
  const fastest_m_s = known.at(-1)!.at.outputSpeed_rad_s! * radius_m;
  const tooFast = duty.mix.find(({ speed_m_s }) => speed_m_s > fastest_m_s * (1 + 1e-9));
  if (tooFast !== undefined) return texts.tooFast({ duty_m_s: tooFast.speed_m_s, fastest_m_s });
  const way = duty.mix.reduce((sum, { share, speed_m_s }) => sum + share * speed_m_s, 0);
  const weights = new Map<Effect, number>();
  for (const { share, speed_m_s } of duty.mix)
    for (const { effect, weight } of between(known, speed_m_s / radius_m))
      weights.set(effect, (weights.get(effect) ?? 0) + (share * weight) / way);
  const terms = [...weights].map(([effect, sensitivity]) => ({ of: effect.estimate, sensitivity }));
  return combine(
    terms.reduce((sum, t) => sum + t.of.value * t.sensitivity, 0),
    terms,
  );
}

/**
 * A refit that turns hard at one speed does so at the next: the scatter of a cell, and the drift, are one cause at all speeds.
 * The one of the slowest speed stands for them.
 */
function ofOneRefit(list: readonly Effect[]): readonly Effect[] {
  const [first] = list as [Effect, ...Effect[]];
  const standsFor = (cause: string, { cell, against }: Effect): string => {
    const kind = /^(?:scatter|drift):/.exec(cause)?.[0];
    if (kind === undefined) return cause;
    const whose = [cell, against]
      .map((c) => cause.indexOf(`:${cellKey(c)}`))
      .flatMap((from) => (from < 0 ? [] : [cause.slice(from)]))[0];
    if (kind === 'scatter:' && whose === undefined) return cause;
    return first.estimate.parts.find((p) => p.cause.startsWith(kind) && p.cause.endsWith(whose ?? ''))?.cause ?? cause;
  };
  return list.map((e) => ({
    ...e,
    estimate: estimate(
      e.estimate.value,
      e.estimate.parts.map(({ cause, u }) => ({ cause: standsFor(cause, e), u })),
    ),
  }));
}

/** The one or two measured speeds that a speed lies between, with their weights; standstill, where nothing is lost, weighs nothing. */
function between(
  known: readonly Effect[],
  speed_rad_s: number,
): readonly { readonly effect: Effect; readonly weight: number }[] {
  const speedOf = (e: Effect): number => e.at.outputSpeed_rad_s!;
  const above = known.findIndex((e) => speedOf(e) >= speed_rad_s * (1 - 1e-9));
  const high = known[above]!;
  const low = known[above - 1];
  const from = low === undefined ? 0 : speedOf(low);
  const share = Math.min(1, (speed_rad_s - from) / (speedOf(high) - from));
  return [{ effect: high, weight: share }, ...(low === undefined ? [] : [{ effect: low, weight: 1 - share }])];
}

/** Held against how far ordinary trips differ; null where the duty does not say what is used. */
function wordOf(e: Estimate, duty: Duty, half: (e: Estimate) => number): Cost['word'] {
  const uses = duty.drive === 'electric' ? duty.consumption_J_m : duty.fuel_m2;
  if (uses === null) return null;
  const scatter = uses * duty.tripScatter;
  if (Math.abs(e.value) + half(e) < scatter) return 'too small to notice';
  return Math.abs(e.value) - half(e) > scatter ? 'more than trips differ' : 'not told apart from trips';
}
