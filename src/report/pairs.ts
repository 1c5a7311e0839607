import { litres } from '../ledger/ids.ts';
import type { Run } from '../trial/run.ts';
import { litresWords, tiltWords } from './cite.ts';
import { quantityText } from './digits.ts';
import { flowMenu } from './flow-menu.ts';
import { flowSheets, sameStep, type FlowSheet } from './flow-steps.ts';
import type { Span } from './page.ts';
import { link } from './spans.ts';
import type { View } from './view.ts';

/** Two flow trials that may stand side by side: one oil, one tilt, and the same litres or the same level. */
export interface FlowPair {
  readonly left: FlowSheet;
  readonly right: FlowSheet;
  readonly basis: 'same litres' | 'same level' | 'same litres and level';
  /** Address below the site's root. */
  readonly path: string;
}

export interface NoPair {
  readonly left: FlowSheet;
  readonly right: FlowSheet;
  readonly reasons: readonly string[];
}

/** Every two flow trials, the baseline's first in each; those that may not stand side by side say why. */
export function pairsOf(view: View): { readonly pairs: readonly FlowPair[]; readonly apart: readonly NoPair[] } {
  if (!flowMenu(view.input).sideBySide) return { pairs: [], apart: [] };
  const sheets = [...flowSheets(view)].sort((a, b) => inOrder(view, a, b));
  const both = sheets.flatMap((left, i) => sheets.slice(i + 1).map((right) => ({ left, right })));
  return {
    pairs: both.flatMap(({ left, right }): FlowPair[] => {
      const basis = basisOf(view, left, right);
      if (basis === null || reasonsOf(view, left, right).length > 0) return [];
      return [{ left, right, basis, path: `${view.base}side-by-side/${left.run.id}~${right.run.id}/` }];
    }),
    apart: both.flatMap(({ left, right }): NoPair[] => {
      const reasons = reasonsOf(view, left, right);
      return reasons.length === 0 ? [] : [{ left, right, reasons }];
    }),
  };
}

/** The baseline or its window copy first, then by article, then as they were run. */
function inOrder(view: View, a: FlowSheet, b: FlowSheet): number {
  const rank = ({ run }: FlowSheet): number => Number(!standsForBaseline(view, run));
  const [left, right] = [a.run.article, b.run.article];
  return rank(a) - rank(b) || (left < right ? -1 : left > right ? 1 : 0) || a.run.order - b.run.order;
}

function standsForBaseline(view: View, run: Run): boolean {
  const baseline = view.series.baseline.article;
  return run.article === baseline || (view.articles.get(run.article)?.standsInFor.includes(baseline) ?? false);
}

function basisOf(view: View, left: FlowSheet, right: FlowSheet): FlowPair['basis'] | null {
  const sameLitres = litres(left.derived.cell.fill_m3) === litres(right.derived.cell.fill_m3);
  const [a, b] = [left, right].map(({ derived }) => derived.conditions.level_z_m);
  const sameLevel = a != null && b != null && Math.abs(a - b) <= view.series.tolerance.level_m;
  if (sameLitres) return sameLevel ? 'same litres and level' : 'same litres';
  return sameLevel ? 'same level' : null;
}

function reasonsOf(view: View, left: FlowSheet, right: FlowSheet): string[] {
  const [a, b] = [left.derived, right.derived];
  const tilts = Math.abs(a.cell.tilt_ratio - b.cell.tilt_ratio) > view.series.tolerance.tilt_ratio;
  const shared = left.flow.steps.some(({ step }) => right.flow.steps.some((other) => sameStep(step, other.step)));
  return [
    tilts ? `one is ${tiltName(left)}, the other ${tiltName(right)}` : '',
    a.cell.oil === b.cell.oil ? '' : `oils differ: ${a.cell.oil} and ${b.cell.oil}`,
    basisOf(view, left, right) === null
      ? `neither the litres are the same (${litresWords(a.cell)} and ${litresWords(b.cell)}) nor the levels (${levelName(left)} and ${levelName(right)})`
      : '',
    a.rigState === b.rigState ? '' : `rig states differ: ${a.rigState} and ${b.rigState}`,
    a.conditions.rotation === b.conditions.rotation ? '' : 'they turned in opposite directions',
    shared ? '' : 'no step in common',
  ].filter((reason) => reason !== '');
}

const tiltName = ({ derived: { cell } }: FlowSheet): string => tiltWords(cell).slice(2) || 'level';

const levelName = ({ derived: { conditions } }: FlowSheet): string =>
  conditions.level_z_m === null ? 'not known' : quantityText(conditions.level_z_m, 'mm', 1);

/** "P4w 2.40 L (F-02)" for each run that stands beside this one, linked to their page. */
export const pairLinks = (view: View, run: Run): readonly (readonly Span[])[] =>
  pairsOf(view).pairs.flatMap(({ left, right, path }): Span[][] => {
    const other = left.run.id === run.id ? right : right.run.id === run.id ? left : null;
    return other === null ? [] : [[link(path, sheetName(other))]];
  });

/** "P4w 2.40 L (F-02)" */
export const sheetName = ({ run, derived }: FlowSheet): string =>
  `${run.article} ${litresWords(derived.cell)} (${run.id})`;

/** Pairs that an article is in, itself or behind its window copy. */
export const pairsWith = (view: View, article: string): readonly FlowPair[] =>
  pairsOf(view).pairs.filter((pair) =>
    [pair.left, pair.right].some(
      ({ run }) => run.article === article || (view.articles.get(run.article)?.standsInFor.includes(article) ?? false),
    ),
  );
