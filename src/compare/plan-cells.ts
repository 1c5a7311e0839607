import { level_z_m } from '../physics/immersion.ts';
import type { Article } from '../trial/article.ts';
import type { Series } from '../trial/book.ts';
import type { Plan, PlanCell, TrialKind } from '../trial/plan.ts';
import type { SeriesRecord } from '../trial/series.ts';

/** What is asked of a series to judge its plan; none of it was measured yet. */
export type Planned = Pick<SeriesRecord, 'series' | 'articles' | 'oils'> & { readonly plan: Plan };

/** A planned cell with the level it will stand at, and what it is held against. */
export interface PlacedCell {
  readonly cell: PlanCell;
  /** By the article's own table; null without one, or outside it. */
  readonly z_m: number | null;
  /** The baseline article, or what stands in for it behind a window. */
  readonly ofBaseline: boolean;
}

/** Cells of articles and oils that are known; others have findings of their own. */
export const placedCells = ({ plan, series, articles, oils }: Planned): PlacedCell[] =>
  plan.cells.flatMap((cell) => {
    const article = articles.get(cell.article);
    if (article === undefined || !oils.has(cell.oil)) return [];
    const rows = article.levelTable?.rows ?? null;
    return [
      {
        cell,
        z_m: rows === null ? null : level_z_m({ survey: rows, volume_m3: cell.fill_m3 }),
        ofBaseline: isOfBaseline(article, series),
      },
    ];
  });

const isOfBaseline = (article: Article, { baseline }: Series): boolean =>
  article.id === baseline.article || article.standsInFor.includes(baseline.article);

export const sameFill = (a: PlanCell, b: PlanCell, { tolerance }: Series): boolean =>
  Math.abs(a.fill_m3 - b.fill_m3) <= tolerance.fill_m3;

export const sameTilt = (a: PlanCell, b: PlanCell, { tolerance }: Series): boolean =>
  Math.abs(a.tilt_ratio - b.tilt_ratio) <= tolerance.tilt_ratio;

export const sameLevel = (a: PlacedCell, b: PlacedCell, { tolerance }: Series): boolean =>
  a.z_m !== null && b.z_m !== null && Math.abs(a.z_m - b.z_m) <= tolerance.level_m;

/** At the fill that the series names as its baseline, whatever the oil and the tilt. */
export const atReferenceFill = ({ cell, ofBaseline }: PlacedCell, { baseline, tolerance }: Series): boolean =>
  ofBaseline && Math.abs(cell.fill_m3 - baseline.fill_m3) <= tolerance.fill_m3;

/** The cell that brackets a trial: baseline article, fill and oil, level. */
export const isBaselineCell = (placed: PlacedCell, series: Series): boolean =>
  atReferenceFill(placed, series) &&
  placed.cell.oil === series.baseline.oil &&
  Math.abs(placed.cell.tilt_ratio) <= series.tolerance.tilt_ratio;

/** Kinds of trial that the plan holds, in its own order. */
export const trialsOf = (cells: readonly PlacedCell[]): TrialKind[] => [
  ...new Set(cells.map(({ cell }) => cell.trial)),
];
