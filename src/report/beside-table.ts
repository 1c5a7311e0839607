import { cellName, conditionsOf } from '../ledger/ids.ts';
import type { Effect, Standing, StandingRow } from '../trial/compared.ts';
import { cellFigures, cellSpans, cited, citedValue, inCelsius } from './cite.ts';
import type { Block, MarginNote, Span } from './page.ts';
import { link, row, tableBlock } from './spans.ts';
import { effectFigure, shownRows } from './standing-words.ts';
import { bearingSpans, reachHead, reachSpans } from './supply.ts';
import type { View } from './view.ts';

/** What a loss is read with, row by row: the same at each one's own temperature, what reached the pinion, how warm its bearing ran. */
export function besideTable(view: View, standing: Standing, id: string): Block {
  const rows = shownRows(view, standing);
  const own = ownEffects(view, standing);
  const sump = conditionsOf(standing.at, null, view.naming).sump;
  const both = own.size > 0 && sump !== undefined && sump !== 'own';
  return tableBlock(
    id,
    [
      'wide article and fill',
      ...(both ? [`number at ${inCelsius(sump)}`, 'number at its own sump', 'number own sump'] : []),
      'Reach',
      'number pinion bearing',
    ],
    rows.map((of) => {
      const cells = row(
        cellSpans(view, of.cell),
        ...(both
          ? [
              differenceSpans(view, of, of.effect),
              differenceSpans(view, of, own.get(cellName(of.cell))),
              ownTemperature(view, of),
            ]
          : []),
        reachSpans(view, of.cell),
        bearingChange(view, of),
      );
      return of.baseline ? { ...cells, role: 'baseline' as const } : cells;
    }),
    `Read with it: less loss may mean less oil at the pinion${both ? ', and an article that runs cooler has thicker oil at its own temperature' : ''}. ${reachHead(view)}; pinion bearing above sump. Less the baseline, ± half a 95 % interval; of the baseline its own.`,
  );
}

/** Where a section further down tells losses of rows that stand in that table. */
export const besideAbove = (id: string): MarginNote => ({
  name: 'Beside the loss.',
  text: ['Reach and the pinion bearing of each set-up stand in ', link(`#${id}`, 'the table under the standing'), '.'],
});

export const besideId = (anchor: string): string => `${anchor}-beside`;

/** The same comparison at each one's own running temperature, where it was made. */
const ownEffects = (view: View, { quantity, at, rows }: Standing): ReadonlyMap<string, Effect> =>
  new Map(
    view.input.compared.effects
      .filter(
        (e) =>
          e.quantity === quantity &&
          e.at.sump_K === 'own' &&
          e.at.outputSpeed_rad_s === at.outputSpeed_rad_s &&
          rows.some(({ effect }) => effect !== null && cellName(effect.against) === cellName(e.against)),
      )
      .map((e) => [cellName(e.cell), e]),
  );

function differenceSpans(view: View, of: StandingRow, effect: Effect | null | undefined): Span[] {
  const figure = effect ? effectFigure(view, effect) : undefined;
  return figure === undefined ? [of.baseline ? '0' : '—'] : [cited(view, figure)];
}

/** How far the bearing stands from that of the baseline; its own value where no difference was formed. */
function bearingChange(view: View, of: StandingRow): Span[] {
  const [change] = of.effect ? cellFigures(view, of.cell, 'bearing-rise', of.effect.against) : [];
  if (change !== undefined) return [cited(view, change)];
  const own = bearingSpans(view, of);
  return of.baseline || own.every((span) => typeof span === 'string') ? own : [...own, ' in all'];
}

function ownTemperature(view: View, { cell }: StandingRow): Span[] {
  const [figure] = cellFigures(view, cell, 'final-temperature');
  return figure === undefined ? ['—'] : [citedValue(view, figure)];
}
