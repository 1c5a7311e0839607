import type { Figure } from '../ledger/figure.ts';
import { cellName, conditionsOf } from '../ledger/ids.ts';
import type { Effect, Standing, StandingRow } from '../trial/compared.ts';
import { rankOf } from './figure-order.ts';
import {
  articleSpan,
  cellDetail,
  cited,
  citedValue,
  conditionWords,
  figureNamed,
  kindOf,
  quantityWords,
  inCelsius,
} from './cite.ts';
import type { Span } from './page.ts';
import { capital, countWord, listed, verdict } from './spans.ts';
import { groupBy, type View } from './view.ts';

export const standingAnchor = ({ quantity, oil, campaign }: Pick<Standing, 'quantity' | 'oil' | 'campaign'>): string =>
  [quantity, oil, ...(campaign === undefined ? [] : [campaign])].join('-').toLowerCase();

/** Rows a reader may see: those of articles with a sheet. */
export const shownRows = (view: View, standing: Standing): readonly StandingRow[] =>
  standing.rows.filter(({ cell }) => view.articles.has(cell.article));

export const effectFigure = (view: View, effect: Effect): Figure | undefined =>
  figureNamed(view, {
    subject: { cell: effect.cell, against: effect.against },
    quantity: effect.quantity,
    at: effect.at,
  });

/** Spin power at the main condition with the baseline's oil, where there is one. */
export function mainStanding(view: View): Standing | undefined {
  return standingsInOrder(view)[0];
}

/** Spin power at the main condition first, then its other conditions, then the quantities of the heat-up. */
export function standingsInOrder(view: View): readonly Standing[] {
  const weight = (s: Standing): number =>
    (s.campaign === undefined ? 0 : 1000) +
    rankOf(s.quantity) * 4 +
    (s.oil === view.series.baseline.oil ? 0 : 2) +
    (isMain(view, s) ? 0 : 1);
  return view.input.compared.standings
    .filter((standing) => view.oils.has(standing.oil) && view.articles.has(standing.against.article))
    .map((standing, i) => ({ standing, i }))
    .sort((a, b) => weight(a.standing) - weight(b.standing) || a.i - b.i)
    .map(({ standing }) => standing);
}

/** "At 290 wheel rpm and 60 °C three of seven set-ups are separated from the baseline" */
export function standingTitle(view: View, standing: Standing): string {
  const rows = shownRows(view, standing).filter(({ effect }) => effect !== null);
  const separated = rows.filter(({ effect }) => effect?.separated === true).length;
  const where = whereWords(view, standing);
  if (rows.length === 0) return `${where} nothing can be compared yet`;
  const [only] = rows;
  if (only !== undefined && rows.length === 1)
    return `${where} ${only.cell.article}, ${cellDetail(only.cell)}, is ${separated === 1 ? '' : 'not '}separated from the baseline`;
  if (separated === 0)
    return `${where} ${rows.length === 2 ? 'neither of two set-ups' : `none of ${countWord(rows.length)} set-ups`} is separated from the baseline`;
  if (separated === rows.length)
    return `${where} ${rows.length === 2 ? 'both set-ups' : `all ${countWord(rows.length)} set-ups`} are separated from the baseline`;
  return `${where} ${countWord(separated)} of ${countWord(rows.length)} set-ups ${separated === 1 ? 'is' : 'are'} separated from the baseline`;
}

/** "At 290 wheel rpm and 60 °C", "By time to 95 °C", "By final rise above ambient" */
export function whereWords(view: View, standing: Pick<Standing, 'quantity' | 'at' | 'oil' | 'campaign'>): string {
  const later = standing.campaign === undefined ? '' : ` in ${standing.campaign}`;
  const oil = `${standing.oil === view.series.baseline.oil ? '' : ` with ${standing.oil}`}${later}`;
  const at = conditionsOf(standing.at, null, view.naming);
  if (standing.quantity === 'limit-crossing') return `By time to ${inCelsius(at.limit ?? 'the limit')}${oil}`;
  const conditions = conditionWords(at)
    .replace(', sump ', ' and ')
    .replace(/^sump /, '');
  if (standing.quantity === 'spin-power' && conditions !== '') return `At ${conditions}${oil}`;
  return `By ${quantityWords(standing.quantity)}${conditions === '' ? '' : ` at ${conditions}`}${oil}`;
}

/** "Less spin power than P0 pressed bowl: P1, 2.40 L (−33 W). Not separated: P3, 2.40 L." */
export function standingSentence(view: View, standing: Standing): Span[] {
  const rows = shownRows(view, standing).filter(({ baseline }) => !baseline);
  const named = groupBy(rows, (row) => sideOf(row));
  const words = sideWords(standing.quantity);
  const sentence = (side: string, start: readonly Span[]): Span[] => {
    const group = named.get(side);
    return group === undefined ? [] : [...start, ...listed(group.map((row) => rowSpans(view, row))), '. '];
  };
  const noun = quantityWords(standing.quantity);
  const than: Span[] = [' than ', articleSpan(view, standing.against.article), `, ${cellDetail(standing.against)}: `];
  const spans = [
    ...sentence('less', [words.less(noun), ...than]),
    ...sentence('more', [words.more(noun), ...than]),
    ...sentence('not separated', [verdict('Not separated'), ': ']),
    ...sentence('indicative', [verdict('Indicative'), ': ']),
    ...sentence('not ranked', [verdict('Not ranked'), ': ']),
  ];
  return spans.length === 0
    ? [capital(`${whereWords(view, standing)} nothing stands beside the baseline yet.`)]
    : spans;
}

/** What the row is called: the word of the verdict, and its reason when there is no difference. */
export function rowVerdict(row: StandingRow): Span[] {
  if (row.baseline) return ['baseline'];
  if (row.effect === null)
    return [
      verdict('not ranked'),
      row.refused.length === 0 ? '' : ` (${row.refused.map(reasonWords).join('; ')})`,
    ].filter((s) => s !== '');
  if (row.effect.indicative.length > 0) return [verdict('indicative')];
  return [verdict(row.effect.separated ? 'separated' : 'not separated'), ...marginWords(row.effect)];
}

/** What a margin adds to the word. That a row separated to its merit is no worse goes without saying. */
function marginWords({ margin, separated }: Effect): Span[] {
  if (margin === null) return [];
  if (margin.equal) return [', ', verdict('equal within the margin')];
  return margin.noWorse === true && !separated ? [', ', verdict('no worse than the margin')] : [];
}

function rowSpans(view: View, row: StandingRow): Span[] {
  const figure = row.effect ? effectFigure(view, row.effect) : undefined;
  return [
    articleSpan(view, row.cell.article),
    `, ${cellDetail(row.cell)}`,
    ...(figure ? [' (', citedValue(view, figure), ')'] : []),
  ];
}

/** A row that is not ranked may still be compared with something else under the same conditions: " (−38 ± 9 W from P0, 3.20 L, separated)". */
export function insteadSpans(view: View, { quantity, at }: Standing, { cell, baseline, effect }: StandingRow): Span[] {
  if (baseline || effect !== null) return [];
  const others = view.input.compared.effects
    .filter((e) => e.quantity === quantity && cellName(e.cell) === cellName(cell) && sameConditions(e.at, at))
    .filter((e) => view.articles.has(e.against.article))
    .flatMap((e): Span[][] => {
      const figure = effectFigure(view, e);
      if (figure === undefined) return [];
      const against = `${e.against.article}, ${cellDetail(e.against)}`;
      return [[cited(view, figure), ` from ${against}, `, verdict(e.separated ? 'separated' : 'not separated')]];
    });
  return others.length === 0 ? [] : [' (', ...listed(others), ')'];
}

const sameConditions = (a: Standing['at'], b: Standing['at']): boolean =>
  a.outputSpeed_rad_s === b.outputSpeed_rad_s && a.sump_K === b.sump_K && a.limit_K === b.limit_K;

/** A reason in brackets behind "not ranked" need not end with it. */
export const reasonWords = (reason: string): string => reason.replace(/: not ranked$/, '');

function sideOf({ effect }: StandingRow): string {
  if (effect === null) return 'not ranked';
  if (effect.indicative.length > 0) return 'indicative';
  if (!effect.separated) return 'not separated';
  return effect.estimate.value < 0 ? 'less' : 'more';
}

function sideWords(quantity: string): { less: (noun: string) => string; more: (noun: string) => string } {
  if (quantity === 'limit-crossing') return { less: () => 'Sooner there', more: () => 'Later there' };
  if (quantity === 'time-constant') return { less: () => 'Shorter', more: () => 'Longer' };
  if (kindOf(quantity)?.lower === 'less loss')
    return { less: (noun) => `Less ${noun}`, more: (noun) => `More ${noun}` };
  return { less: (noun) => `Lower ${noun}`, more: (noun) => `Higher ${noun}` };
}

export const isMain = (view: View, { quantity, at }: Pick<Standing, 'quantity' | 'at'>): boolean => {
  const { outputSpeed_rad_s, mainSump_K, mainLimit_K } = view.series.reference;
  if (quantity === 'limit-crossing')
    return mainLimit_K !== null && at.limit_K !== undefined && near(at.limit_K, mainLimit_K);
  return (
    (at.outputSpeed_rad_s === undefined || near(at.outputSpeed_rad_s, outputSpeed_rad_s)) &&
    (at.sump_K === undefined || (at.sump_K !== 'own' && near(at.sump_K, mainSump_K)))
  );
};

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-4 * Math.abs(b);
