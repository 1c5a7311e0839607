import { difference } from '../quantity/estimate.ts';
import type { Cell } from '../trial/derived.ts';
import type { Factorial, FillBasis, LevelPart, LevelSlope, Matched } from '../trial/factorial.ts';
import type { TwoArticles } from './factorial.ts';
import { cellKey } from './group.ts';
import { contrast, type Placed } from './held-pairs.ts';
import { levelSlope } from './level-slope.ts';

/**
 * Whole = level part + rest: the article less the baseline at its litres is the article at those litres less the article at
 * the baseline's level, and that less the baseline. Exact, since all three are of the same three cells.
 */
export function levelPartOf(
  of: TwoArticles,
  matched: Readonly<Record<FillBasis, readonly Matched[]>>,
  refused: Set<string>,
): LevelPart | null {
  const { baseline, tolerance } = of.series;
  const isReference = ({ base }: Matched): boolean => Math.abs(base.fill_m3 - baseline.fill_m3) <= tolerance.fill_m3;
  const litres = matched['same litres'].find(isReference);
  const level = matched['same level'].find(isReference);
  if (litres === undefined || level === undefined) return null;
  if (cellKey(litres.own) === cellKey(level.own) || cellKey(litres.base) !== cellKey(level.base)) return null;
  const placed = (cell: Cell): Placed => of.own.find(({ figure }) => cellKey(figure.cell) === cellKey(cell))!;
  const pair = of.pairs.of(placed(litres.own), placed(level.own));
  if (pair.ok) return { whole: litres.effect, byLevel: pair.effect, rest: level.effect };
  for (const reason of pair.reasons) refused.add(reason);
  return null;
}

/** Slopes with the level of both articles, and their difference; null where one was run at one level only. */
export function slopesOf(of: TwoArticles, refused: Set<string>): Factorial['slopes'] {
  const base = slopeOf(of.base, of);
  const own = slopeOf(of.own, of);
  if (base === null || own === null) return null;
  const [first] = of.base;
  for (const other of [...of.base, ...of.own]) {
    const pair = of.pairs.differ(other, first!);
    if (pair.length === 0) continue;
    for (const reason of pair) refused.add(reason);
    return null;
  }
  return {
    base,
    own,
    apart: contrast(difference(own.slope.estimate, base.slope.estimate), [...of.own, ...of.base], of),
  };
}

/** Levels nearer to each other than the tolerance of the series say nothing of a slope. */
function slopeOf(cells: readonly Placed[], of: TwoArticles): LevelSlope | null {
  const points = cells
    .flatMap(({ figure, estimate, level }) => (level === null ? [] : [{ figure, value: estimate, level }]))
    .sort((a, b) => a.level.value - b.level.value);
  const [lowest, highest] = [points[0], points.at(-1)];
  if (lowest === undefined || highest === undefined) return null;
  if (highest.level.value - lowest.level.value <= of.series.tolerance.level_m) return null;
  const slope = levelSlope(points);
  if (slope === null) return null;
  return {
    cells: points.map(({ figure, level }) => ({ cell: figure.cell, level_z_m: level.value })),
    slope: contrast(slope, cells, of),
  };
}
