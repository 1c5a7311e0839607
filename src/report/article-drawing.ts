import type { Article } from '../trial/article.ts';
import { shown } from '../trial/figures.ts';
import { articleWords, litresWords } from './cite.ts';
import { numberText, quantityText } from './digits.ts';
import type { Block, LevelData, SectionData } from './page.ts';
import { flat, heights, insideOf, insideWords, mm, shapeOf } from './section-shape.ts';
import { row, table } from './spans.ts';
import { derivedOf, type View } from './view.ts';

interface FillMark {
  readonly label: string;
  readonly volume_m3: number;
  readonly z_m: number;
  readonly article: string;
}

/** Section of the housing to scale, with the fills that were run standing in it. */
export function sectionDrawing(view: View, article: Article, id: string): Block | null {
  const inside = insideOf(view, article);
  if (inside === null) return null;
  const fills = fillsOf(view, article.id);
  const data: SectionData = {
    kind: 'section',
    ...flat,
    ...shapeOf(view, inside, article.id),
    levels: fills.map(({ z_m, label }) => ({ z: mm(z_m), label })),
  };
  return {
    kind: 'chart',
    chart: {
      id,
      title: `Section of ${articleWords(view, article.id)} with the ring gear, to scale`,
      alternative: `Section along the axle, to scale in millimetres: the ring gear, the inside of ${articleWords(view, article.id)} behind it, ${fills.length === 0 ? 'no fill' : `oil standing at ${fills.map(({ label }) => label).join(', ')}`}${data.lips.length === 0 ? '' : `, and ${data.lips.map(({ label }) => label).join(' and ')}`}.`,
      caption: [`To scale, seen along the axle. ${insideWords([inside])}`],
      data,
      table: table(
        `${id}-table`,
        ['wide height', 'number mm from the axle centreline'],
        [
          ...fills.map(({ label, z_m }) => row(`oil at rest, ${label}`, numberText(mm(z_m), 1))),
          ...data.lips.map(({ label, z }) => row(label, numberText(z, 0))),
          row('bottom of the ring gear', numberText(-data.ringRadius, 0)),
        ],
      ),
    },
  };
}

/** Litres against height: the surveyed rows, the baseline's beside them, and the fills that were run. */
export function levelChart(view: View, article: Article): Block | null {
  if (article.levelTable === null) return null;
  const baseline = view.articles.get(view.series.baseline.article);
  const shownArticles = [article, ...(baseline && baseline.id !== article.id && baseline.levelTable ? [baseline] : [])];
  const curves: LevelData['curves'] = shownArticles.map(({ id, levelTable }) => ({
    label: articleWords(view, id),
    mark: view.marks.get(id) ?? 0,
    points: (levelTable?.rows ?? []).map(({ volume_m3, z_m }) => [shown('fill-volume', volume_m3), mm(z_m)] as const),
  }));
  return {
    kind: 'chart',
    chart: {
      id: 'level-curve',
      title: `Where the oil stands in ${articleWords(view, article.id)}, by litres`,
      alternative: `Height of the oil at rest in millimetres from the axle centreline against litres: ${curves.map(({ label }) => label).join(' and ')}, with the fills that were run. The table below holds the surveyed rows.`,
      caption: [
        `Surveyed by ${article.levelTable.method.replaceAll('_', ' ')}; straight between rows, and refused outside them.`,
      ],
      data: {
        kind: 'level',
        xTitle: 'litres at 20 °C',
        yTitle: 'level, mm from the axle centreline',
        curves,
        fills: fillsOf(view, article.id).map(({ volume_m3, z_m, label }) => ({
          x: shown('fill-volume', volume_m3),
          y: mm(z_m),
          label,
          mark: view.marks.get(article.id) ?? 0,
        })),
        lines: heights(view).map(({ z, label }) => ({ y: z, label })),
      },
      table: table(
        'level-curve-table',
        ['number level', 'number volume'],
        article.levelTable.rows.map(({ z_m, volume_m3 }) =>
          row(quantityText(z_m, 'mm', 0, view.withUs), quantityText(volume_m3, 'L', 2, view.withUs)),
        ),
      ),
    },
  };
}

/** The fills that were run in this article, or in the window copies that stand in for it; one a nominal fill. */
export function fillsOf(view: View, article: string): readonly FillMark[] {
  const wearing = [...view.articles.values()]
    .filter(({ id, role, standsInFor }) => id === article || (role === 'window_copy' && standsInFor.includes(article)))
    .map(({ id }) => id);
  const marks = new Map<string, FillMark>();
  for (const id of [article, ...wearing])
    for (const run of view.runs.filter((r) => r.article === id)) {
      const derived = derivedOf(view, run.id);
      const { volume20_m3, level_z_m } = derived?.conditions ?? {};
      if (derived === undefined || volume20_m3 == null || level_z_m == null || derived.cell.tilt_ratio !== 0) continue;
      const label = litresWords(derived.cell);
      if (!marks.has(label)) marks.set(label, { label, volume_m3: volume20_m3, z_m: level_z_m, article: id });
    }
  return [...marks.values()].sort((a, b) => a.volume_m3 - b.volume_m3);
}
