import { coverGain } from '../physics/cover-share.ts';
import type { Estimate } from '../quantity/estimate.ts';
import type { CoverBound, Effect, Split } from '../trial/compared.ts';
import * as texts from './texts-claims.ts';

/** Outside surfaces, m²; null where a note does not state one. */
export interface Areas {
  readonly axle_m2: number | null;
  readonly article_m2: (id: string) => number | null;
}

/**
 * A cover sheds more or less than its share of the surface, by the air that reaches it: from 0.7 to 1.4 times that share.
 * Fins have an efficiency from 0.8 to 1. Both common practice, no source.
 */
const shareTimes = [0.7, 1.4] as const;
const finEfficiency = [0.8, 1] as const;

/** What the outside surface of the article alone can account for, where more is shed; what to write where it is not known. */
export function coverOf(
  effect: Effect,
  found: { readonly byShed: Estimate; readonly ends: { readonly heat0: Estimate; readonly rise0: Estimate } },
  known: { readonly areas: Areas; readonly interval: (e: Estimate) => readonly [number, number] },
): Pick<Split, 'cover' | 'coverUntold'> {
  const { areas, interval } = known;
  const { cell, against } = effect;
  const gain = interval(found.byShed);
  // Cooler is negative: a gain stands where the whole interval does.
  if (cell.article === against.article || !(gain[1] < 0)) return { cover: null, coverUntold: null };
  const missing = [
    ...[cell.article, against.article].filter((id) => areas.article_m2(id) === null),
    ...(areas.axle_m2 === null ? ['axle'] : []),
  ];
  if (missing.length > 0) return { cover: null, coverUntold: texts.noAreas(missing) };
  return { cover: boundOf(effect, found.ends, { areas, nearest_K: -gain[1] }), coverUntold: null };
}

function boundOf(
  { cell, against }: Effect,
  { heat0, rise0 }: { readonly heat0: Estimate; readonly rise0: Estimate },
  of: { readonly areas: Areas; readonly nearest_K: number },
): CoverBound | null {
  const [axle, own, base] = [
    of.areas.axle_m2!,
    of.areas.article_m2(cell.article)!,
    of.areas.article_m2(against.article)!,
  ];
  const gains = shareTimes.flatMap((times) =>
    finEfficiency.flatMap((efficiency) => {
      const plain = Math.min(own, base);
      // Only what is added beyond the surface of the other counts as fins.
      const counted = own > base ? plain + (own - plain) * efficiency : own;
      const found = coverGain({
        shed_W_K: heat0.value / rise0.value,
        heat_W: heat0.value,
        share_ratio: (times * base) / axle,
        area_ratio: counted / base,
      });
      return found === null ? [] : [found.gain_K];
    }),
  );
  if (gains.length === 0) return null;
  const [low_K, high_K] = [Math.min(...gains), Math.max(...gains)];
  return { low_K, high_K, exceeded: of.nearest_K > high_K };
}
