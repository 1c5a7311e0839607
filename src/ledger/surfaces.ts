import type { ComparedSeries } from '../trial/compared.ts';
import type { Given } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { NoteHead } from '../trial/note.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { filesOfRuns } from './files.ts';
import { figureGiven } from './films.ts';
import type { Naming } from './ids.ts';
import type { SheetFigure } from './oils.ts';

/** What the surface of the axle and that of each article would shed by published laws: bands beside the measured shed. */
export const surfaceFigures = (record: SeriesRecord, compared: ComparedSeries, naming: Naming): SheetFigure[] =>
  compared.surfaces.flatMap(({ cell, whole, own, share, outside, runs }): SheetFigure[] => {
    const given = (['final-temperature', 'shed'] as const).flatMap((quantity) =>
      figureGiven(cell, quantity, compared.cells, naming),
    );
    const article = record.articles.get(cell.article);
    const areas: readonly (readonly [QuantityName, typeof whole, readonly Given[]])[] = [
      ['surface-shed', whole, areaGiven(record.rig, 'rejecting-area', record.rig.rejectingArea_m2)],
      ['article-shed', own, article ? areaGiven(article, 'outside-area', article.outsideArea_m2) : []],
      ['article-shed-share', share, article ? areaGiven(article, 'outside-area', article.outsideArea_m2) : []],
    ];
    return areas.flatMap(([quantity, band, area]): SheetFigure[] =>
      band === null
        ? []
        : [
            {
              subject: { cell },
              file: record.series.file,
              files: [...new Set([...filesOfRuns(record, runs), record.rig.file, ...(article ? [article.file] : [])])],
              ...{ quantity, at: {}, estimate: null, band },
              relation: 'bare-surface-heat',
              method: 'compare/surface',
              given: [...area, ...given],
              notes: [
                'air as on the bench, emissivity from shiny to cast black, the housing from one to one and a half ring gears across the air, the law of a plain tube 40 % either way',
                ...outside,
              ],
            },
          ],
    );
  });

function areaGiven(note: NoteHead & { readonly id: string }, path: string, area_m2: number | null): Given[] {
  if (area_m2 === null) return [];
  const place = note.places.get(path) ?? { file: note.file, line: 1, column: 1 };
  return [
    {
      symbol: 'A',
      name: `outside surface of ${path === 'rejecting-area' ? 'the axle' : note.id}`,
      ...{ value: area_m2, u: null, unit: 'm²' },
      from: { kind: 'note', place, typed: note.typed.get(path) ?? '' },
    },
  ];
}
