import type { ReachItem } from '../trial/plan-reach.ts';
import { sameFill, sameTilt, type PlacedCell } from './plan-cells.ts';
import { isFactor, pairs, type TrialCells } from './reach-article.ts';
import * as texts from './texts-reach.ts';

/** What one article does with other litres, another oil, another tilt, all else the same. */
export function ofOneArticle(of: TrialCells): ReachItem[] {
  const articles = [...new Set(of.cells.map(({ cell }) => cell.article))];
  return (['fill', 'oil', 'tilt'] as const).flatMap((kind) =>
    someCells(of, kind)
      ? articles.map((article) =>
          effect(
            of,
            kind,
            of.cells.filter(({ cell }) => cell.article === article),
          ),
        )
      : [effect(of, kind, of.cells)],
  );
}

type One = 'fill' | 'oil' | 'tilt';

const missing = { fill: texts.oneFill, oil: texts.oneOil, tilt: texts.oneTilt } as const;
const pairWords = { fill: texts.pairOf, oil: texts.pairOfOils, tilt: texts.pairOfTilts } as const;

/** Whether the trial varies it at all. */
const someCells = (of: TrialCells, kind: One): boolean =>
  pairs(of.cells, of.cells).some(([a, b]) => (kind === 'fill' ? onlyThat(of, kind, a, b) : differs(of, kind, a, b)));

function effect(of: TrialCells, kind: One, own: readonly PlacedCell[]): ReachItem {
  const articles = new Set(own.map(({ cell }) => cell.article));
  const pair = pairs(own, own).find(([a, b]) => onlyThat(of, kind, a, b));
  const factor = isFactor(of, kind);
  const estimable = pair !== undefined && factor;
  return {
    trial: of.trial,
    kind,
    of: articles.size === 1 ? own[0]!.cell.article : '',
    estimable,
    why: estimable
      ? pairWords[kind](pair[0].cell, pair[1].cell)
      : [
          ...(pair === undefined ? [hindrance(of, kind, own)] : []),
          ...(factor || pair === undefined ? [] : [texts.notNamed(kind)]),
        ].join('; '),
    cells: (pair ?? own).map(({ cell }) => cell),
  };
}

/** Two oils with nothing else the same are another thing than one oil. */
function hindrance(of: TrialCells, kind: One, own: readonly PlacedCell[]): string {
  const varied = pairs(own, own).find(([a, b]) => differs(of, kind, a, b));
  if (varied === undefined) return missing[kind];
  const [a, b] = varied;
  const others = (['fill', 'oil', 'tilt'] as const).filter((other) => other !== kind && differs(of, other, a, b));
  return texts.together([
    ...(a.cell.article === b.cell.article ? [] : ['the article']),
    ...others.map((other) => (other === 'fill' ? 'the litres' : `the ${other}`)),
  ]);
}

const onlyThat = (of: TrialCells, kind: One, a: PlacedCell, b: PlacedCell): boolean =>
  a.cell.article === b.cell.article &&
  (['fill', 'oil', 'tilt'] as const).every((one) => differs(of, one, a, b) === (one === kind));

const differs = ({ series }: TrialCells, kind: One, a: PlacedCell, b: PlacedCell): boolean =>
  kind === 'fill'
    ? !sameFill(a.cell, b.cell, series)
    : kind === 'oil'
      ? a.cell.oil !== b.cell.oil
      : !sameTilt(a.cell, b.cell, series);
