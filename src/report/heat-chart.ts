import type { Figure } from '../ledger/figure.ts';
import { cellName } from '../ledger/ids.ts';
import type { Cell } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import { articleWords, cellDetail, cellFigures, citedValue, doubtOf, runFigures } from './cite.ts';
import type { Bar, Block, HeatData } from './page.ts';
import { row, table } from './spans.ts';
import { besideCells, reachHead } from './supply.ts';
import { derivedOf, groupBy, type View } from './view.ts';

interface HeatRow {
  readonly cell: Cell;
  readonly made: Figure | undefined;
  readonly shed: Figure | undefined;
}

/** Heat made and shed, a row a cell that was heated up; null where there was no heat-up. */
export function heatChart(view: View): Block | null {
  const rows = heatRows(view);
  if (rows.length === 0) return null;
  const label = ({ cell }: HeatRow): string => `${articleWords(view, cell.article)}, ${cellDetail(cell)}, ${cell.oil}`;
  const data: HeatData = {
    kind: 'heat',
    panels: [
      { title: 'heat made, W', key: 'made' },
      { title: 'shed, W/K', key: 'shed' },
    ],
    rows: rows.map((r) => ({
      label: label(r),
      mark: view.marks.get(r.cell.article) ?? 0,
      made: barOf(r.made),
      shed: barOf(r.shed),
    })),
  };
  return {
    kind: 'chart',
    chart: {
      id: 'heat',
      title: 'Heat made and shed of each article and fill',
      alternative:
        'Two panels that share their rows: heat made in watts, and shed in watts per kelvin of rise, each with its interval. The table below holds the same numbers.',
      caption: ['Intervals are of each value alone; a shared torque flange cancels in a difference and not here.'],
      data,
      table: table(
        'heat-table',
        [
          'wide article and fill',
          'number heat made',
          'number 95 %',
          'number shed',
          'number 95 %',
          `number ${reachHead(view)}`,
          'number pinion bearing above sump',
        ],
        rows.map((r) =>
          row(
            label(r),
            ...[r.made, r.shed].flatMap((figure) =>
              figure ? [citedValue(view, figure), doubtOf(figure)] : ['not formed', '—'],
            ),
            ...besideCells(view, r.cell),
          ),
        ),
      ),
    },
  };
}

/** The cell's own figure where the ledger holds one, else that of its run. */
function heatRows(view: View): readonly HeatRow[] {
  const cells = view.runs
    .filter(({ trial }) => trial === 'heat-up')
    .map(({ id }) => derivedOf(view, id))
    .filter((derived) => derived !== undefined)
    .filter((derived) => derived.leftOut === null && view.articles.has(derived.cell.article));
  return [...groupBy(cells, ({ cell }) => cellName(cell))]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, runs]) => {
      const cell = runs[0]!.cell;
      const figure = (quantity: QuantityName): Figure | undefined =>
        cellFigures(view, cell, quantity)[0] ?? runs.flatMap(({ run }) => runFigures(view, run, quantity))[0];
      return { cell, made: figure('heat-made'), shed: figure('shed') };
    })
    .filter(({ made, shed }) => made !== undefined || shed !== undefined);
}

function barOf(figure: Figure | undefined): Bar | null {
  if (figure?.value == null) return null;
  const [low, high] = figure.interval;
  return { value: figure.value, low: low ?? figure.value, high: high ?? figure.value };
}
