import { difference } from '../quantity/estimate.ts';
import type { Cell } from '../trial/derived.ts';
import type { FillSquare, Matched } from '../trial/factorial.ts';
import type { TwoArticles } from './factorial.ts';
import { cellKey } from './group.ts';
import { contrast, type Placed } from './held-pairs.ts';

/** The first pair with each of the others: four cells, two articles with two fills. */
export function squaresOf(of: TwoArticles, matched: readonly Matched[], refused: Set<string>): FillSquare[] {
  const [first, ...others] = matched;
  if (first === undefined) return [];
  const placed = (cell: Cell): Placed =>
    [...of.own, ...of.base].find(({ figure }) => cellKey(figure.cell) === cellKey(cell))!;
  return others.flatMap((second): FillSquare[] => {
    // One cell may lie near two: then there is no second fill of that article.
    if (cellKey(first.own) === cellKey(second.own)) return [];
    const [inBase, inOwn] = [
      of.pairs.of(placed(second.base), placed(first.base)),
      of.pairs.of(placed(second.own), placed(first.own)),
    ];
    for (const pair of [inBase, inOwn]) if (!pair.ok) for (const reason of pair.reasons) refused.add(reason);
    if (!inBase.ok || !inOwn.ok) return [];
    const cells = [first.base, first.own, second.base, second.own].map(placed);
    const interaction = contrast(difference(second.effect.estimate, first.effect.estimate), cells, of);
    return [{ first, second, fillInBase: inBase.effect, fillInOwn: inOwn.effect, interaction }];
  });
}
