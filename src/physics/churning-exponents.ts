import { churningExponents } from './churning.ts';
import type { Relation } from './relation.ts';
import type { SourceKey } from './sources.ts';

/** How churning power goes with speed and viscosity by the literature, P ~ n^p·ν^q. Of churning alone, not of bearings. */
export interface LiteratureExponents {
  readonly name: string;
  readonly speed: readonly [number, number];
  readonly viscosity: readonly [number, number];
  readonly source: SourceKey;
  readonly grade: Relation['grade'];
}

export const literatureExponents: readonly LiteratureExponents[] = [
  {
    name: 'law with four regimes, slow rows',
    speed: [churningExponents.speed.viscous, churningExponents.speed.turbulent],
    viscosity: [0, churningExponents.viscosity],
    source: 'changenet2011',
    grade: 'V1',
  },
  {
    name: 'laws of churning taken together (unverified)',
    speed: [1, 3.3],
    viscosity: [-0.3, 2],
    source: 'isoTr14179of1',
    grade: 'U',
  },
];

/** From here on exponents and a constant part share one story, and none of them is told (common practice, no source). */
export const highestCondition = 10;

export type Beside = 'inside' | 'outside' | 'not told';

/**
 * Where a fitted exponent lies beside a range of the literature: inside or outside with its whole interval; not told where the
 * interval reaches over an end, is not known, or the fit could not tell its exponents apart.
 */
export function besideRange(of: {
  readonly interval: readonly [number | null, number | null];
  readonly condition: number;
  readonly range: readonly [number, number];
}): Beside {
  const [from, to] = of.interval;
  const [low, high] = of.range;
  if (from === null || to === null || !(of.condition <= highestCondition)) return 'not told';
  if (from >= low && to <= high) return 'inside';
  return to < low || from > high ? 'outside' : 'not told';
}
