import { cellName } from '../ledger/ids.ts';
import type { Standing } from '../trial/compared.ts';
import type { SurfaceShed } from '../trial/consequences.ts';
import type { QuantityName } from '../trial/figures.ts';
import { articleSpan, cellDetail, cellFigures, cited, citedValue } from './cite.ts';
import { relationPath } from './method-path.ts';
import type { Section, Span } from './page.ts';
import { capital, link, listOf, prose, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** Beside the standing by final rise: what bare surfaces would shed by the laws, against the shed that was measured. */
export function surfaceSection(view: View, standing: Standing): Section | null {
  if (standing.quantity !== 'final-rise') return null;
  const names = new Set([...standing.rows.map(({ cell }) => cellName(cell)), cellName(standing.against)]);
  const sheds = view.input.compared.surfaces
    .filter(({ cell }) => names.has(cellName(cell)) && view.articles.has(cell.article))
    .sort((a, b) => (cellName(a.cell) < cellName(b.cell) ? -1 : 1));
  if (sheds.length === 0) return null;
  const told = sheds.filter(({ untold }) => untold === null);
  const untold = [...new Set(sheds.flatMap((shed) => shed.untold ?? []))];
  const { oil } = standing.against;
  const whole = section(
    `surface-${oil}`.toLowerCase(),
    'What a bare surface can shed',
    [
      prose(
        'By published laws for a plain tube in this air, from shiny to cast black, as warm as the sump (',
        link(relationPath('bare-surface-heat'), 'the relation'),
        '): model estimates, as bands. Where the measured shed lies outside the band of the whole axle, look at the air, the surface and the readings before the article.',
      ),
      told.length === 0
        ? null
        : tableBlock(
            `surface-${oil}-table`.toLowerCase(),
            [
              'wide article and fill',
              'number shed, measured',
              'number whole axle by the laws',
              'number its own surface by the laws',
              'number share of the measured shed',
            ],
            told.map((shed) =>
              row(
                [articleSpan(view, shed.cell.article), `, ${cellDetail(shed.cell)}`],
                ...(['shed', 'surface-shed', 'article-shed', 'article-shed-share'] as const).map((quantity) =>
                  figureSpans(view, shed, quantity),
                ),
              ),
            ),
          ),
      untold.length === 0 ? null : listOf(untold.map((why) => [`Not told: ${why}.`])),
    ],
    [
      {
        name: 'A small part of the surface.',
        text: [
          'Shape and colour of an article act on the share that its own surface has, and no further. Oil that it throws elsewhere acts through the whole axle.',
        ],
      },
      ...[...new Set(told.flatMap(({ outside }) => outside))].map((text) => ({
        name: 'Outside its range.',
        text: [capital(text)],
      })),
    ],
  );
  return {
    ...whole,
    inIndex: `What a bare surface can shed${oil === view.series.baseline.oil ? '' : ` with ${oil}`}`,
  };
}

function figureSpans(view: View, { cell }: SurfaceShed, quantity: QuantityName): Span[] {
  const [figure] = cellFigures(view, cell, quantity);
  // The sentence above the table says of all of them that they are model estimates.
  return figure === undefined ? ['—'] : [figure.value === null ? citedValue(view, figure) : cited(view, figure)];
}
