import { input, output, type Relation } from './relation.ts';

/** A cover on an axle, and one with another outside surface. */
export type CoverChange = {
  readonly shed_W_K: number;
  readonly heat_W: number;
  /** Share of the shed that goes through the cover, 0–1. */
  readonly share_ratio: number;
  /** Outside surface of the other cover over that of the first, fins counted with their efficiency. */
  readonly area_ratio: number;
};

/**
 * How much cooler an axle can settle by the outside surface of its cover alone.
 *
 *   K′ = K·[1 + s·(a − 1)],   ΔT = Q·(1/K − 1/K′)
 *
 * shed K [W/K], heat Q [W], share s and ratio of areas a [1]
 * returns      K′ [W/K] and ΔT [K]; null unless K, Q and K′ are above 0
 * range        the same air over both; heat made taken as unchanged
 * source       conductances side by side     check: 11 W/K, 4.58 %, 2.6 times the area at 99 %, 900 W: 11.79 W/K and 5.50 K
 */
export function coverGain(of: CoverChange): { readonly shed_W_K: number; readonly gain_K: number } | null {
  const shed_W_K = of.shed_W_K * (1 + of.share_ratio * (of.area_ratio - 1));
  if (!(of.shed_W_K > 0) || !(of.heat_W > 0) || !(shed_W_K > 0)) return null;
  return { shed_W_K, gain_K: of.heat_W * (1 / of.shed_W_K - 1 / shed_W_K) };
}

export const coverShareRelation: Relation<CoverChange> = {
  id: 'cover-share',
  title: 'What a cover’s outside surface alone can account for',
  formula: {
    latex: String.raw`K'=K\,[1+s(a-1)],\quad\Delta T=Q\left(\frac1K-\frac1{K'}\right)`,
    plain: 'K′ = K·[1 + s·(a − 1)], ΔT = Q·(1/K − 1/K′)',
  },
  symbols: [
    input('shed_W_K', 'K', 'shed of the axle', 'W/K'),
    input('heat_W', 'Q', 'heat made', 'W'),
    input('share_ratio', 's', 'share of the shed through the cover', '1'),
    input('area_ratio', 'a', 'outside surface over that of the first cover, fins with their efficiency', '1'),
    output('ΔT', 'cooler by', 'K'),
  ],
  range: [],
  source: 'derived',
  grade: 'VC',
  checks: [
    {
      source: 'worked by an independent script: 11 W/K, 0.504 W/K through the cover, 2.6 times the area at 99 %, 900 W',
      seen: 'computed',
      inputs: { shed_W_K: 11, heat_W: 900, share_ratio: 0.504 / 11, area_ratio: 2.6 * 0.99 },
      printed: '5.5036',
    },
  ],
  of: (change) => coverGain(change)?.gain_K ?? null,
};
