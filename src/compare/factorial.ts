import type { Series } from '../trial/book.ts';
import type { CellFigure, Effect } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import {
  factorialNames,
  type Factorial,
  type FactorialQuantity,
  type FillBasis,
  type Matched,
} from '../trial/factorial.ts';
import { squaresOf } from './fill-squares.ts';
import { atKey } from './group.ts';
import { heldPairs, levelOf, type HeldPairs, type Judged, type Placed } from './held-pairs.ts';
import { levelPartOf, slopesOf } from './level-part.ts';

export interface FactorialInput extends Judged {
  readonly cells: readonly CellFigure[];
  readonly effects: readonly Effect[];
  readonly runs: ReadonlyMap<string, DerivedRun>;
}

/**
 * Article and fill held apart, for each article beside the baseline article in one oil and tilt: spin power at the reference
 * speed and main temperature, final rise, heat made. Everything is made of the figures of cells with their causes, so that
 * what cells share cancels. Differences that no standing holds are given as effects of their own.
 */
export function factorialsOf(input: FactorialInput): { factorials: Factorial[]; effects: Effect[] } {
  const { series } = input;
  const pairs = heldPairs(input);
  const factorials = tablesOf(input).flatMap((placed) => {
    const isBase = ({ figure }: Placed): boolean => figure.cell.article === series.baseline.article;
    const base = placed.filter(isBase);
    const articles = [...new Set(placed.filter((p) => !isBase(p)).map(({ figure }) => figure.cell.article))].sort();
    return base.length === 0
      ? []
      : articles.map((article) =>
          factorialOf({
            own: placed.filter(({ figure }) => figure.cell.article === article),
            base,
            series,
            pairs,
            causes: input.causes,
            trials: input.trials,
          }),
        );
  });
  return { factorials, effects: pairs.made() };
}

export interface TwoArticles extends Judged {
  readonly own: readonly Placed[];
  readonly base: readonly Placed[];
  readonly pairs: HeldPairs;
}

function factorialOf(of: TwoArticles): Factorial {
  const refused = new Set<string>();
  const matched = {
    'same litres': matchedBy(of, 'same litres', refused),
    'same level': matchedBy(of, 'same level', refused),
  };
  const bases = {
    'same litres': { matched: matched['same litres'], squares: squaresOf(of, matched['same litres'], refused) },
    'same level': { matched: matched['same level'], squares: squaresOf(of, matched['same level'], refused) },
  };
  const [first] = of.own as readonly [Placed, ...Placed[]];
  const { article, oil, tilt_ratio } = first.figure.cell;
  return {
    article,
    baseline: of.series.baseline.article,
    oil,
    tilt_ratio,
    quantity: first.figure.quantity as FactorialQuantity,
    at: first.figure.at,
    bases,
    slopes: bases['same level'].squares.length > 0 ? null : slopesOf(of, refused),
    levelPart: levelPartOf(of, matched, refused),
    run: runOn(of, matched),
    refused: [...refused],
  };
}

/** Pairs that agree in litres, or in level, within the tolerance of the series; the baseline's reference fill first. */
function matchedBy(of: TwoArticles, basis: FillBasis, refused: Set<string>): Matched[] {
  const { tolerance, baseline } = of.series;
  const near = (own: Placed, base: Placed): number =>
    basis === 'same litres'
      ? Math.abs(own.figure.cell.fill_m3 - base.figure.cell.fill_m3) / tolerance.fill_m3
      : own.level === null || base.level === null
        ? Infinity
        : Math.abs(own.level.value - base.level.value) / tolerance.level_m;
  const fromReference = ({ figure }: Placed): number => Math.abs(figure.cell.fill_m3 - baseline.fill_m3);
  return [...of.base]
    .sort((a, b) => fromReference(a) - fromReference(b))
    .flatMap((base): Matched[] => {
      const own = [...of.own].sort((a, b) => near(a, base) - near(b, base))[0]!;
      if (!(near(own, base) <= 1)) return [];
      const pair = of.pairs.of(own, base);
      if (!pair.ok) {
        for (const reason of pair.reasons) refused.add(reason);
        return [];
      }
      const apart_m = own.level === null || base.level === null ? null : own.level.value - base.level.value;
      return [{ own: own.figure.cell, base: base.figure.cell, effect: pair.effect, apart_m }];
    });
}

/** What was run beside the reference fill of the baseline. */
function runOn({ series }: TwoArticles, matched: Readonly<Record<FillBasis, readonly Matched[]>>): Factorial['run'] {
  const atReference = (basis: FillBasis): Matched | undefined =>
    matched[basis].find(({ base }) => Math.abs(base.fill_m3 - series.baseline.fill_m3) <= series.tolerance.fill_m3);
  const litres = atReference('same litres');
  const level = atReference('same level');
  if (litres !== undefined && level !== undefined)
    return litres.own.fill_m3 === level.own.fill_m3 ? 'litres are level' : 'both';
  return litres !== undefined ? 'litres only' : level !== undefined ? 'level only' : 'neither';
}

/** Cells that may be compared, one list a quantity, condition, oil and tilt. */
function tablesOf({ cells, runs, series }: FactorialInput): Placed[][] {
  const tables = new Map<string, Placed[]>();
  for (const figure of cells) {
    if (figure.estimate === null || figure.unranked !== null || !isAsked(figure, series)) continue;
    const { oil, tilt_ratio } = figure.cell;
    const key = [figure.quantity, atKey(figure.at), oil, tilt_ratio].join('|');
    const placed = { figure, estimate: figure.estimate, level: levelOf(figure, runs) };
    tables.set(key, [...(tables.get(key) ?? []), placed]);
  }
  return [...tables.values()];
}

/** Spin power at the reference speed and main temperature; the final state of the loaded run as it is. */
function isAsked({ quantity, at }: CellFigure, { reference, tolerance }: Series): boolean {
  if (!(quantity in factorialNames)) return false;
  if (quantity !== 'spin-power') return true;
  return (
    Math.abs((at.outputSpeed_rad_s ?? 0) / reference.outputSpeed_rad_s - 1) <= tolerance.outputSpeed_ratio &&
    typeof at.sump_K === 'number' &&
    Math.abs(at.sump_K - reference.mainSump_K) < 0.01
  );
}
