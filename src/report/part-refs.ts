import type { Finding } from '../finding/finding.ts';
import { nearest } from '../finding/nearest.ts';
import { gradeKinds } from '../trial/flow.ts';
import type { Part, PartRef } from '../trial/part.ts';
import { refSpan } from './amends.ts';
import { levelChart, sectionDrawing } from './article-drawing.ts';
import { claimCharts } from './claims-chart.ts';
import { claimPath, claimsOf } from './claims-view.ts';
import { flowSheets } from './flow-steps.ts';
import { stillsBlock, stillView } from './flow-stills.ts';
import { gridSection } from './grades-grid.ts';
import { heatChart } from './heat-chart.ts';
import type { Block, Span } from './page.ts';
import { figureSpan, movedClaim, movedFigure } from './parts-view.ts';
import { runsChart } from './runs-chart.ts';
import { link, verdict } from './spans.ts';
import { speedSection } from './speed-chart.ts';
import { standingChart } from './standing-chart.ts';
import { standingsInOrder } from './standing-words.ts';
import * as say from './texts-parts.ts';
import type { View } from './view.ts';

/** What stands in the sentence in place of a link; null where nothing of that name is known to these readers. */
export function refSpans(view: View, part: Part, ref: PartRef): Span[] | null {
  if (ref.scheme === 'figure') {
    const moved = movedFigure(view, part, ref.target);
    if (moved !== null) return [moved.then, ' then, ', ...(moved.now === null ? ['not told'] : [moved.now]), ' now'];
    const figure = view.figureById.get(ref.target);
    return figure === undefined ? null : [figureSpan(view, figure)];
  }
  if (ref.scheme === 'claim') {
    const held = claimsOf(view).find(({ claim }) => claim.id === ref.target);
    if (held === undefined) return null;
    const moved = movedClaim(view, part, ref.target);
    const name = link(claimPath(view, held), ref.words.trim() === '' ? ref.target : ref.words);
    return moved === null
      ? [name, ' (', verdict(held.judged.word), ')']
      : [name, ' (', verdict(moved.then), ' then, ', verdict(held.judged.word), ' now)'];
  }
  const span = refSpan(view, ref.target);
  if (typeof span === 'string') return null;
  return [span.kind === 'link' && ref.words.trim() !== '' ? link(span.to, ref.words) : span];
}

/** The chart or still that a picture of the note stands for; null where there is none. `place` keeps ids apart on a page. */
export function refBlock(view: View, ref: PartRef, place: number): Block | null {
  if (ref.scheme === 'still') return stillOf(view, ref.target, place);
  const [name = '', query = ''] = ref.target.split('?');
  const asked = new Map(
    query
      .split('&')
      .flatMap((pair) =>
        pair.includes('=') ? [[pair.slice(0, pair.indexOf('=')), pair.slice(pair.indexOf('=') + 1)] as const] : [],
      ),
  );
  const block = charts[name]?.(view, asked, place) ?? null;
  return block?.kind === 'chart'
    ? { kind: 'chart', chart: { ...block.chart, id: `${block.chart.id}-${place.toFixed(0)}` } }
    : block;
}

type Asked = ReadonlyMap<string, string>;

/** Charts that a part may show, by name. */
const charts: Readonly<Record<string, (view: View, asked: Asked, place: number) => Block | null>> = {
  standing: (view, asked, place) => {
    const standing = standingsInOrder(view).find(
      ({ quantity, oil }) =>
        quantity === (asked.get('of') ?? 'spin-power') && oil === (asked.get('oil') ?? view.series.baseline.oil),
    );
    return standing === undefined
      ? null
      : { kind: 'chart', chart: standingChart(view, standing, `standing-${place.toFixed(0)}`) };
  },
  heat: (view) => heatChart(view),
  claims: (view, asked) => {
    const ids = asked.get('of')?.split(',');
    return (
      claimCharts(
        view,
        claimsOf(view).filter(({ claim }) => ids === undefined || ids.includes(claim.id)),
      )[0] ?? null
    );
  },
  speed: (view) => speedSection(view)?.blocks[0] ?? null,
  section: (view, asked, place) =>
    withArticle(view, asked, (article) => sectionDrawing(view, article, `section-${place.toFixed(0)}`)),
  level: (view, asked) => withArticle(view, asked, (article) => levelChart(view, article)),
  'heat-up': (view, asked) => runsChart(view, asked.get('runs')?.split(',') ?? []),
  grades: (view, asked) => {
    const kind = gradeKinds.find((one) => one === (asked.get('of') ?? 'reach'));
    return kind === undefined ? null : (gridSection(view, flowSheets(view), kind)?.blocks[0] ?? null);
  },
};

const withArticle = (
  view: View,
  asked: Asked,
  make: (article: NonNullable<ReturnType<View['articles']['get']>>) => Block | null,
): Block | null => {
  const article = view.articles.get(asked.get('article') ?? view.series.baseline.article);
  return article === undefined ? null : make(article);
};

function stillOf(view: View, name: string, place: number): Block | null {
  const found = view.runs
    .flatMap((run) => run.stills)
    .find(({ file }) => file === name || file.replace(/\.[^.]*$/, '') === name);
  return found === undefined ? null : stillsBlock([stillView(view, found, `part-${place.toFixed(0)}-`)]);
}

/** Names that a part uses and its series does not have, with the nearest that it has; the house reads them. */
export function refFindings(view: View, part: Part): Finding[] {
  return part.refs.flatMap((ref): Finding[] => {
    const known =
      ref.scheme === 'chart' || ref.scheme === 'still'
        ? refBlock(view, ref, 0) !== null
        : part.pins?.figures.has(ref.target) === true || refSpans(view, part, ref) !== null;
    return known ? [] : [{ ...say.refUnknown(ref, nearest(ref.target, namesFor(view, ref))), place: ref.place }];
  });
}

function namesFor(view: View, { scheme }: PartRef): string[] {
  const claims = claimsOf(view).map(({ claim }) => claim.id);
  if (scheme === 'figure') return [...view.figureById.keys()];
  if (scheme === 'claim') return claims;
  if (scheme === 'chart') return Object.keys(charts);
  const stills = view.runs.flatMap((run) => run.stills.map(({ file }) => file.replace(/\.[^.]*$/, '')));
  return scheme === 'still'
    ? stills
    : [...claims, ...view.runs.map(({ id }) => id), ...view.articles.keys(), ...view.oils.keys()];
}
