import type { Figure } from '../ledger/figure.ts';
import { cellName } from '../ledger/ids.ts';
import type { Cell } from '../trial/derived.ts';
import { cellDetail, cellFigures, cellSpans, cited } from './cite.ts';
import { exactText } from './digits.ts';
import type { Block, Section, Span, SpeedData } from './page.ts';
import { pointOf } from './run-spin.ts';
import { speedOf } from './spin-figures.ts';
import { row, section, table } from './spans.ts';
import { besideCells, reachHead } from './supply.ts';
import { celsius } from './traces.ts';
import { groupBy, type View } from './view.ts';

/** Spin power against speed at the main temperature, a line a cell of the baseline's oil. */
export function speedSection(view: View): Section | null {
  const sump = exactText(celsius(view.series.reference.mainSump_K));
  const cells = [...groupBy(view.input.compared.cells.filter(counts(view)), ({ cell }) => cellName(cell)).values()].map(
    ([first]) => first!.cell,
  );
  const lines = cells
    .map((cell) => ({
      cell,
      figures: cellFigures(view, cell, 'spin-power').filter(
        ({ at }) => at.sump === `${sump} Cel` && speedOf(at) !== null,
      ),
    }))
    .filter(({ figures }) => figures.length > 1);
  if (lines.length === 0) return null;
  return section(
    'by-speed',
    'Spin power against speed',
    [speedChart(view, lines, sump)],
    [
      {
        name: 'Beside the loss.',
        text: [`${reachHead(view)} and the rise of the pinion bearing stand in its table, cell by cell.`],
      },
      {
        name: 'Absolute.',
        text: ['A shared torque flange moves all lines together; it cancels in the differences above.'],
      },
    ],
  );
}

const counts =
  (view: View) =>
  ({ cell, quantity }: { cell: Cell; quantity: string }): boolean =>
    quantity === 'spin-power' &&
    cell.oil === view.series.baseline.oil &&
    cell.tilt_ratio === 0 &&
    view.articles.has(cell.article);

function speedChart(view: View, lines: readonly { cell: Cell; figures: readonly Figure[] }[], sump: string): Block {
  const data: SpeedData = {
    kind: 'speed',
    yTitle: 'spin power, W',
    xTitle: `${view.speed}, sump ${sump} °C, oil ${view.series.baseline.oil}`,
    lines: lines.map(({ cell, figures }) => ({
      label: `${cell.article} ${cellDetail(cell)}`,
      mark: view.marks.get(cell.article) ?? 0,
      points: figures.flatMap(pointOf),
    })),
  };
  const speeds = [...new Set(lines.flatMap(({ figures }) => figures.map(({ at }) => speedOf(at)!)))].sort(
    (a, b) => a - b,
  );
  return {
    kind: 'chart',
    chart: {
      id: 'power-by-speed',
      title: `Spin power against ${view.speed} by article and fill`,
      alternative: `Spin power in watts against ${view.speed} with the sump at ${sump} °C, one line for each of ${data.lines.map(({ label }) => label).join(', ')}, with intervals. The table below holds the same numbers.`,
      caption: ['Means of the refits of each article and fill; bars are 95 % intervals of each value alone.'],
      data,
      table: table(
        'power-by-speed-table',
        [
          'wide article and fill',
          ...speeds.map((speed) => `number ${String(speed)} ${view.speed}`),
          `number ${reachHead(view)}`,
          'number pinion bearing above sump',
        ],
        lines.map(({ cell, figures }) =>
          row(
            cellSpans(view, cell),
            ...speeds.map((speed): Span[] =>
              figures.filter(({ at }) => speedOf(at) === speed).map((f) => cited(view, f)),
            ),
            ...besideCells(view, cell),
          ),
        ),
      ),
    },
  };
}
