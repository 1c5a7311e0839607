import type { ReachItem } from '../trial/plan-reach.ts';
import { atReferenceFill, sameFill, sameLevel, sameTilt, type PlacedCell } from './plan-cells.ts';
import { articlesBeside, isFactor, named, pairs, tables, type TrialCells } from './reach-article.ts';
import * as texts from './texts-reach.ts';

/** Article and litres held apart: the article and the baseline, each at the same two fills, in one oil and tilt. */
export function byFill(of: TrialCells): ReachItem[] {
  return tables(of).flatMap((table) => {
    const base = table.filter(({ ofBaseline }) => ofBaseline);
    return articlesBeside(table).map((article): ReachItem => {
      const own = table.filter(({ cell }) => cell.article === article);
      const shared = own.filter((a) => base.some((b) => sameFill(a.cell, b.cell, of.series)));
      const lacking = (['article', 'fill'] as const).filter((name) => !isFactor(of, name));
      const estimable = shared.length > 1 && lacking.length === 0;
      return {
        trial: of.trial,
        kind: 'article by fill',
        of: named(own[0]!.cell),
        estimable,
        why: estimable
          ? texts.square(shared.map(({ cell }) => cell))
          : [
              ...(shared.length > 1 ? [] : [texts.fewerSharedFills(shared.length)]),
              ...(shared.length > 1 ? lacking.map(texts.notNamed) : []),
            ].join('; '),
        cells: [...own, ...base].map(({ cell }) => cell),
      };
    });
  });
}

/** Article and oil held apart: both in two oils, at the same litres or at the same level. */
export function byOil(of: TrialCells): ReachItem[] {
  const { series } = of;
  const oils = new Set(of.cells.map(({ cell }) => cell.oil));
  if (oils.size < 2) return [];
  const matched = (a: PlacedCell, b: PlacedCell): boolean =>
    sameFill(a.cell, b.cell, series) || (sameLevel(a, b, series) && atReferenceFill(b, series));
  const partner = (one: PlacedCell): PlacedCell | undefined =>
    of.cells.find(
      (other) =>
        other.cell.oil !== one.cell.oil &&
        other.cell.article === one.cell.article &&
        sameFill(other.cell, one.cell, series) &&
        sameTilt(other.cell, one.cell, series),
    );
  return articlesBeside(of.cells).map((article): ReachItem => {
    const own = of.cells.filter(({ cell }) => cell.article === article);
    const base = of.cells.filter(({ ofBaseline }) => ofBaseline);
    const found = pairs(own, base)
      .filter(([a, b]) => a.cell.oil === b.cell.oil && sameTilt(a.cell, b.cell, series) && matched(a, b))
      .map(([a, b]) => [a, b, partner(a), partner(b)] as const)
      .find(([, , a, b]) => a !== undefined && b !== undefined && a.cell.oil === b.cell.oil && matched(a, b));
    const square = found?.filter((placed) => placed !== undefined) ?? [];
    const lacking = (['article', 'oil'] as const).filter((name) => !isFactor(of, name));
    const estimable = square.length === 4 && lacking.length === 0;
    return {
      trial: of.trial,
      kind: 'article by oil',
      of: article,
      estimable,
      why: estimable
        ? `${texts.pairOf(square[0]!.cell, square[1]!.cell)}, each with ${square[0]!.cell.oil} and ${square[2]!.cell.oil}`
        : square.length === 4
          ? lacking.map(texts.notNamed).join('; ')
          : texts.oilsNotShared,
      cells: (estimable ? square : own).map(({ cell }) => cell),
    };
  });
}
