import { finiteOrNull, input, output, type Relation } from './relation.ts';

/**
 * Air share of running oil from the volumes under its level, running down and settled.
 *
 *   φ = 1 − V∞/V0
 *
 * volumes      [m³] from the level table, never the heights: 60 to 56 mm is 8.8 % and not 6.7 %
 * returns      φ [1]; null for a running volume that is not above 0
 * range        0 ≤ φ ≤ 1; only after drain-back has ended, which raises the level while air lowers it
 * source       definition      check: 1.16 L and 1.0576 L: 8.8 %
 */
export const airShareByLevel = (at: { running_m3: number; settled_m3: number }): number | null =>
  at.running_m3 > 0 ? finiteOrNull(1 - at.settled_m3 / at.running_m3) : null;

/** What to make of an air share; limits 2 and 8 % are common practice, no source. Null for no share. */
export function airFlag(airShare: number): 'unremarkable' | 'watch' | 'investigate' | null {
  if (!(airShare >= 0 && airShare <= 1)) return null;
  return airShare < 0.02 ? 'unremarkable' : airShare <= 0.08 ? 'watch' : 'investigate';
}

/** How an oil lets go of air in the glass, ASTM D3427, DIN 51381, ISO 9120 (from memory): minutes down to this share. */
export const airRelease = { airLeft: 0.002, temps_K: [298.15, 323.15, 348.15] } as const;

/**
 * How an oil foams in the glass, ASTM D892: millilitres after blowing and after settling, at three temperatures in turn.
 * Temperatures as read in its scope, times from memory. Neither test says how much air an axle holds: they rank oils.
 */
export const foamTest = { blown_s: 300, settled_s: 600, temps_K: [297.15, 366.65, 297.15] } as const;

export const airShareByLevelRelation: Relation<{ readonly running_m3: number; readonly settled_m3: number }> = {
  id: 'air-share-level',
  title: 'Air share from the level after the stop',
  formula: { latex: String.raw`\varphi=1-\frac{V_\infty}{V_0}`, plain: 'φ = 1 − V∞/V0' },
  symbols: [
    input('running_m3', 'V0', 'volume under the level when drain-back has ended', 'm³'),
    input('settled_m3', 'V∞', 'volume under the settled level', 'm³'),
    output('φ', 'air share', '%'),
  ],
  range: [{ symbol: 'φ', from: 0, to: 1, why: 'a share lies between nothing and all' }],
  source: 'definition',
  grade: 'V2',
  checks: [
    {
      source: 'level table of the reference axle: 60 mm is 1.16 L and 56 mm 1.0576 L, by hand',
      seen: 'computed',
      inputs: { running_m3: 1.16e-3, settled_m3: 1.0576e-3 },
      printed: '8.8',
    },
  ],
  of: (at) => airShareByLevel(at),
};
