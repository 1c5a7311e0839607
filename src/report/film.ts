import type { Standing } from '../trial/compared.ts';
import type { FilmRatio } from '../trial/consequences.ts';
import { cellName } from '../ledger/ids.ts';
import { articleSpan, cellDetail, cellFigures, cited, figureNamed } from './cite.ts';
import { relationPath } from './method-path.ts';
import type { Section, Span } from './page.ts';
import { link, prose, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** Beside the standing by final rise: what a cooler or hotter sump does to the films of this axle. */
export function filmSection(view: View, standing: Standing): Section | null {
  if (standing.quantity !== 'final-rise') return null;
  const { oil } = standing.against;
  const films = view.input.compared.films.filter(
    ({ cell, against }) => cellName(against) === cellName(standing.against) && view.articles.has(cell.article),
  );
  const rows = films.flatMap((film) => {
    const figure = figureOf(view, film);
    return figure === undefined ? [] : [{ film, figure }];
  });
  if (rows.length === 0) return null;
  const whole = section(
    `film-${oil}`.toLowerCase(),
    'Film at each one’s own temperature',
    [
      prose(
        'A cooler sump keeps a thicker oil between the teeth and in the bearings. Each film is held against that of the baseline, both at their own running temperature (',
        link(relationPath('film-change'), 'the relation'),
        '): a model estimate, as a band.',
      ),
      tableBlock(
        `film-${oil}-table`.toLowerCase(),
        ['wide article and fill', 'number own sump', 'number film over that of the baseline'],
        rows.map(({ film, figure }) =>
          row(
            [articleSpan(view, film.cell.article), `, ${cellDetail(film.cell)}`],
            temperatureSpans(view, film),
            cited(view, figure),
          ),
        ),
      ),
    ],
    [
      {
        name: 'No word on wear.',
        text: [
          'One film alone, and its margin over the roughness, is known to ± 40 % at most. A ratio on one axle is better, and still says nothing of how long a gear lasts.',
        ],
      },
    ],
  );
  return {
    ...whole,
    inIndex: `Film at each one’s own temperature${oil === view.series.baseline.oil ? '' : ` with ${oil}`}`,
  };
}

const figureOf = (view: View, { cell, against }: FilmRatio) =>
  figureNamed(view, { subject: { cell, against }, quantity: 'film-ratio', at: { sump_K: 'own' } });

function temperatureSpans(view: View, { cell }: FilmRatio): Span[] {
  const [figure] = cellFigures(view, cell, 'final-temperature');
  return figure === undefined ? ['—'] : [cited(view, figure)];
}
