import type { PlanCell, TrialKind } from '../trial/plan.ts';
import type { ReachItem } from '../trial/plan-reach.ts';
import { inSpan } from '../statistics/rank.ts';
import { atReferenceFill, sameFill, sameLevel, sameTilt, type PlacedCell, type Planned } from './plan-cells.ts';
import * as texts from './texts-reach.ts';

/** The cells of one kind of trial. */
export interface TrialCells extends Planned {
  readonly trial: TrialKind;
  readonly cells: readonly PlacedCell[];
}

export const isFactor = ({ plan }: Planned, name: string): boolean => plan.factors.includes(name);

/** Each article in each oil and tilt against the baseline in the same: at the same litres, and at the same level. */
export function againstBaseline(of: TrialCells): ReachItem[] {
  const items = tables(of).flatMap((table) =>
    articlesBeside(table).flatMap((article): ReachItem[] => {
      const own = table.filter(({ cell }) => cell.article === article);
      const base = table.filter(({ ofBaseline }) => ofBaseline);
      return [atLitres(of, own, base), atLevel(of, own, base)];
    }),
  );
  return (['same litres', 'same level'] as const).flatMap((kind) => items.filter((item) => item.kind === kind));
}

/** Cells that share oil and tilt: one table of a standing. */
export function tables(of: TrialCells): PlacedCell[][] {
  const found: PlacedCell[][] = [];
  for (const placed of of.cells) {
    const table = found.find(
      ([first]) => first!.cell.oil === placed.cell.oil && sameTilt(first!.cell, placed.cell, of.series),
    );
    if (table === undefined) found.push([placed]);
    else table.push(placed);
  }
  return found;
}

export const articlesBeside = (cells: readonly PlacedCell[]): string[] => [
  ...new Set(cells.filter(({ ofBaseline }) => !ofBaseline).map(({ cell }) => cell.article)),
];

/** "P1 with O1, 12 % nose up" */
export const named = ({ article, oil, tilt_ratio }: PlanCell): string =>
  `${article} with ${oil}${tilt_ratio === 0 ? '' : `, ${texts.tiltName(tilt_ratio)}`}`;

function atLitres(of: TrialCells, own: readonly PlacedCell[], base: readonly PlacedCell[]): ReachItem {
  const pair = pairs(own, base).find(([a, b]) => sameFill(a.cell, b.cell, of.series));
  const nearest = Math.min(...pairs(own, base).map(([a, b]) => Math.abs(a.cell.fill_m3 - b.cell.fill_m3)));
  return item(of, own, base, {
    kind: 'same litres',
    pair,
    hindrances: base.length === 0 ? [texts.noBaselineThere] : [texts.fillApart(nearest)],
  });
}

/** A level is compared with that of the baseline at its own fill. */
function atLevel(of: TrialCells, own: readonly PlacedCell[], all: readonly PlacedCell[]): ReachItem {
  const base = all.filter((placed) => atReferenceFill(placed, of.series));
  const known = pairs(own, base).filter(([a, b]) => a.z_m !== null && b.z_m !== null);
  const pair = known.find(([a, b]) => sameLevel(a, b, of.series));
  const nearest = Math.min(...known.map(([a, b]) => Math.abs((a.z_m ?? 0) - (b.z_m ?? 0))));
  const unknown = own.every(({ z_m }) => z_m === null) ? texts.noTable : texts.noBaselineTable;
  return item(of, own, base, {
    kind: 'same level',
    pair,
    hindrances:
      all.length === 0
        ? [texts.noBaselineThere]
        : base.length === 0
          ? [texts.noBaselineAtReference]
          : [known.length === 0 ? unknown : texts.levelApart(nearest)],
  });
}

function item(
  of: TrialCells,
  own: readonly PlacedCell[],
  base: readonly PlacedCell[],
  found: {
    kind: ReachItem['kind'];
    pair: readonly [PlacedCell, PlacedCell] | undefined;
    hindrances: readonly string[];
  },
): ReachItem {
  const { kind, pair, hindrances } = found;
  const factor = isFactor(of, 'article');
  const estimable = pair !== undefined && factor;
  const without = pair === undefined && base.length > 0 ? [confounding(of, own[0]!, base[0]!)] : [];
  const why = estimable
    ? texts.pairOf(pair[0].cell, pair[1].cell)
    : [...(factor ? [] : [texts.notNamed('article')]), ...(pair ? [] : hindrances), ...without].join('; ');
  const cells = (pair ?? [...own, ...base]).map(({ cell }) => cell);
  return { trial: of.trial, kind, of: named(own[0]!.cell), estimable, why, cells };
}

/**
 * What an article's effect goes with, in a design where article, oil, tilt and litres each simply add: the contrast lies in
 * the row space of the design, or does once one of the others is left out.
 *
 * source  estimable functions of a linear model; Searle, Linear Models, 1971, chapter 5 (from memory)
 */
function confounding(of: TrialCells, own: PlacedCell, base: PlacedCell): string {
  const all = ['fill', 'oil', 'tilt'] as const;
  const told = (terms: readonly string[]): boolean => {
    const row = rowOf(of, terms);
    const contrast = row(own).map((x, i) => (i < articleColumns(of) ? x - row(base)[i]! : 0));
    return inSpan(of.cells.map(row), contrast);
  };
  if (told(all)) return texts.onlyIfAdding;
  return texts.bound(all.filter((one) => told(all.filter((other) => other !== one))).map((one) => termNames[one]));
}

const termNames = { fill: 'its litres', oil: 'its oil', tilt: 'its tilt' } as const;
const articleColumns = (of: TrialCells): number => 1 + articlesBeside(of.cells).length;

/** Mean, articles beside the baseline, then the terms that are kept; litres against those of the baseline. */
const rowOf =
  (of: TrialCells, terms: readonly string[]) =>
  ({ cell, ofBaseline }: PlacedCell): number[] => [
    1,
    ...articlesBeside(of.cells).map((article) => (!ofBaseline && cell.article === article ? 1 : 0)),
    ...(terms.includes('fill') ? [cell.fill_m3 / of.series.baseline.fill_m3 - 1] : []),
    ...(terms.includes('oil') ? oilsOf(of).map((oil) => (cell.oil === oil ? 1 : 0)) : []),
    ...(terms.includes('tilt') ? [cell.tilt_ratio] : []),
  ];

const oilsOf = (of: TrialCells): string[] =>
  [...new Set(of.cells.map(({ cell }) => cell.oil))].filter((oil) => oil !== of.series.baseline.oil);

export const pairs = <T>(a: readonly T[], b: readonly T[]): (readonly [T, T])[] =>
  a.flatMap((one) => b.map((other) => [one, other] as const));
