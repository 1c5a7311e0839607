import { cellName } from '../ledger/ids.ts';
import { dutyWords } from '../ledger/costs.ts';
import type { Standing } from '../trial/compared.ts';
import type { Cost } from '../trial/consequences.ts';
import type { QuantityName } from '../trial/figures.ts';
import { besideAbove, besideId } from './beside-table.ts';
import { articleSpan, cellDetail, cited, figureNamed } from './cite.ts';
import { numberText } from './digits.ts';
import { relationPath } from './method-path.ts';
import type { Section, Span } from './page.ts';
import { capital, link, listOf, prose, row, section, tableBlock, verdict } from './spans.ts';
import { standingAnchor } from './standing-words.ts';
import type { View } from './view.ts';

/** Beside the standing by spin power: what the differences come to over the duty of the series, and whether anybody would notice. */
export function costSection(view: View, standing: Standing): Section | null {
  const { duty } = view.series;
  if (standing.quantity !== 'spin-power' || duty === null) return null;
  const costs = [...view.input.compared.costs]
    .filter(
      ({ cell, against }) =>
        cell.oil === standing.oil &&
        cellName(against) === cellName(standing.against) &&
        view.articles.has(cell.article),
    )
    .sort((a, b) => (cellName(a.cell) < cellName(b.cell) ? -1 : 1));
  if (costs.length === 0) return null;
  const electric = duty.drive === 'electric';
  const told = costs.filter(({ untold }) => untold === null);
  const worded = costs.some(({ word }) => word !== null);
  const whole = section(
    `cost-${standing.oil}`.toLowerCase(),
    'What it costs on the road',
    [
      prose(
        `${capital(dutyWords(duty))}. Differences in spin power with the sump at ${numberText(costs[0]!.sump_K - 273.15, 0)} °C, between the measured speeds, `,
        electric
          ? `through an electric drive of ${numberText(duty.driveEfficiency * 100, 0)} % from the battery to the axle (`
          : 'with the marginal fuel of the engine (',
        link(relationPath(electric ? 'electric-per-distance' : 'fuel-per-distance'), 'the relation and its source'),
        ').',
      ),
      tableBlock(
        `cost-${standing.oil}-table`.toLowerCase(),
        [
          'wide article and fill',
          'number energy along the road',
          ...(electric ? [] : ['number fuel along the road']),
          ...(worded ? ['wide against ordinary trips'] : []),
        ],
        told.map((cost) =>
          row(
            [articleSpan(view, cost.cell.article), `, ${cellDetail(cost.cell)}`],
            figureSpans(view, cost, 'energy-cost'),
            ...(electric ? [] : [figureSpans(view, cost, 'fuel-cost')]),
            ...(worded ? [cost.word === null ? '—' : verdict(cost.word)] : []),
          ),
        ),
      ),
      costs[0]!.outside.length === 0
        ? null
        : prose(`Outside of the relation’s range: ${costs[0]!.outside.join(' ')} The sum is given all the same.`),
      told.length === costs.length
        ? null
        : listOf(
            costs
              .filter(({ untold }) => untold !== null)
              .map(({ cell, untold }) => [
                articleSpan(view, cell.article),
                `, ${cellDetail(cell)}: not told, since ${untold ?? ''}.`,
              ]),
          ),
    ],
    [
      besideAbove(besideId(standingAnchor(standing))),
      {
        name: 'Ordinary trips.',
        text: [
          worded
            ? `Trips of one vehicle differ by ${numberText(duty.tripScatter * 100, 0)} % of ${usesText(duty)}, as the series states. A saving within that is not seen at the ${electric ? 'socket' : 'pump'}.`
            : 'The series does not say what the vehicle uses in all, so a saving is not held against it.',
        ],
      },
    ],
  );
  const oil = standing.oil === view.series.baseline.oil ? '' : ` with ${standing.oil}`;
  return { ...whole, inIndex: `What it costs on the road${oil}` };
}

type Duty = NonNullable<View['series']['duty']>;

const usesText = ({ drive, consumption_J_m, fuel_m2 }: Duty): string =>
  drive === 'electric'
    ? `${numberText((consumption_J_m ?? NaN) / 36, 0)} kWh/100 km`
    : `${numberText((fuel_m2 ?? NaN) * 1e8, 1)} L/100 km`;

function figureSpans(view: View, { cell, against, sump_K }: Cost, quantity: QuantityName): Span[] {
  const figure = figureNamed(view, { subject: { cell, against }, quantity, at: { sump_K } });
  return figure === undefined ? ['—'] : [cited(view, figure)];
}
