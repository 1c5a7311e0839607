import { churningExponents } from './churning.ts';
import type { Relation } from './relation.ts';
import type { SourceKey } from './sources.ts';

/** How churning power goes with speed and viscosity by the literature, P ~ n^p·ν^q. Of churning alone, not of bearings. */
export interface LiteratureExponents {
  readonly name: string;
  readonly speed: readonly [number, number];
  readonly viscosity: readonly [number, number];
  readonly from: readonly SourceKey[];
  /** What else is in it, that has no source of its own here. */
  readonly also: string | null;
  readonly grade: Relation['grade'];
}

export const literatureExponents: readonly LiteratureExponents[] = [
  {
    name: 'four regimes',
    speed: [churningExponents.speed.viscous, churningExponents.speed.turbulent],
    viscosity: [0, churningExponents.viscosity],
    from: ['changenet2011'],
    also: null,
    grade: 'V1',
  },
  {
    // Ends are rows of the law by the chord as written: n^1·ν² at Re^−2, n^(10/3)·ν^(−1/3) at Re^(1/3), to one decimal down.
    name: 'four laws together, unverified',
    speed: [1, 3.3],
    viscosity: [-0.3, 2],
    from: ['changenet2011', 'isoTr14179of1', 'isoTr14179of2'],
    also: 'a law by the dipping chord, recalled',
    grade: 'U',
  },
];

/** Above it exponents and a constant part share one story, and none of them is told (common practice, no source). */
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
