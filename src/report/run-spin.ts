import type { Figure } from '../ledger/figure.ts';
import type { Run } from '../trial/run.ts';
import { cited, runFigures, inCelsius } from './cite.ts';
import { numberText } from './digits.ts';
import type { Block, Page, Span, SpeedData } from './page.ts';
import { headOf, mainPower, speedOf, steppedTable } from './spin-figures.ts';
import { besideFigures, expectedBand, modelsSection, oilSection } from './spin-models.ts';
import { conditionsSection, rawFileNote } from './run-conditions.ts';
import { beforePower, givesSection, howSure, leadOf, remarksNote, runPage } from './run-parts.ts';
import { fold, listed, row, section, table } from './spans.ts';
import { besideTheRun } from './supply.ts';
import { derivedOf, groupBy, type View } from './view.ts';

/** Spin loss at stepped speeds: power against speed, a line a temperature. */
export function spinPage(view: View, run: Run): Page {
  const powers = runFigures(view, run.id, 'spin-power');
  const stepped = ({ at }: Figure): boolean => speedOf(at) !== null && at.sump !== undefined;
  const pivoted = powers.filter(stepped);
  const torques = runFigures(view, run.id, 'spin-torque').filter(stepped);
  const elsewhere = new Set([...pivoted, ...torques, ...besideFigures(view, run)].map(({ id }) => id));
  const main = mainPower(view, powers);
  return runPage(view, run, {
    lead: leadOf(view, run, () => spinLead(view, powers, main)),
    sections: [
      section('picture', null, [powerChart(view, run, pivoted)], [beforePower(view, run), besideTheRun(view, run)]),
      givesSection(
        view,
        run,
        ({ id }) => elsewhere.has(id),
        [howSure(view, main), remarksNote(derivedOf(view, run.id)), rawFileNote(view, run)],
        [
          ...steppedTable(
            view,
            pivoted,
            'spin-power',
            'Spin power, ± half a 95 % interval. Each number leads to its working.',
          ),
          ...(torques.length === 0
            ? []
            : [
                fold(
                  'Spin torque at the input, that it is made of',
                  ...steppedTable(view, torques, 'spin-torque', 'Net of its zero, ± half a 95 % interval.'),
                ),
              ]),
        ],
      ),
      modelsSection(view, run),
      oilSection(view, run),
      conditionsSection(view, run),
    ],
  });
}

/** "At 290 wheel rpm it takes 241 ± 8 W with the sump at 60 °C, 341 ± 9 W at 40 °C and 192 ± 7 W at 80 °C." */
function spinLead(view: View, powers: readonly Figure[], main: Figure | undefined): Span[] {
  if (main === undefined) return ['No spin power could be formed from its steps.'];
  const speed = speedOf(main.at);
  const others = powers.filter(({ id, at }) => id !== main.id && speedOf(at) === speed && at.sump !== undefined);
  const named = [main, ...others];
  return [
    speed === null ? 'It takes ' : `At ${String(speed)} ${view.speed} it takes `,
    ...listed(named.map((f, i) => [cited(view, f), ` ${sumpWords(f, i === 0)}`])),
    '.',
  ];
}

const sumpWords = ({ at }: Figure, first: boolean): string =>
  at.sump === 'own'
    ? 'at its own running temperature'
    : `${first ? 'with the sump ' : ''}at ${inCelsius(at.sump ?? '')}`;

function powerChart(view: View, run: Run, figures: readonly Figure[]): Block | null {
  const lines: SpeedData['lines'] = [...groupBy(figures, ({ at }) => at.sump ?? '')].map(([sump, list]) => ({
    label: headOf(sump),
    mark: view.marks.get(run.article) ?? 0,
    points: list.flatMap(pointOf).sort((a, b) => a.x - b.x),
  }));
  if (lines.every(({ points }) => points.length === 0)) return null;
  const band = expectedBand(view, run);
  const behind = band === null ? '' : ` Behind them lies the band of ${band.label}.`;
  return {
    kind: 'chart',
    chart: {
      id: 'power-by-speed',
      title: `Spin power of ${run.id} against ${view.speed}`,
      alternative: `Spin power in watts against ${view.speed}, one line for each of ${lines.map(({ label }) => label).join(', ')}, with intervals.${behind} The table below holds the same numbers.`,
      caption: [
        'Bars are 95 % intervals of each figure alone.',
        ...(band === null ? [] : [` The pale band is ${band.label}, no measurement and no prediction of this axle.`]),
      ],
      data: {
        ...{ kind: 'speed', yTitle: 'spin power, W', xTitle: view.speed, lines },
        ...(band === null ? {} : { band }),
      },
      table: speedTable('power-by-speed-table', view.speed, lines, 'W'),
    },
  };
}

/** A figure as a mark with its interval, in the unit of its quantity. */
export function pointOf(figure: Figure): { x: number; y: number; low: number; high: number }[] {
  const x = speedOf(figure.at);
  const { value, interval } = figure;
  return x === null || value === null ? [] : [{ x, y: value, low: interval[0] ?? value, high: interval[1] ?? value }];
}

export function speedTable(
  id: string,
  speed: string,
  lines: SpeedData['lines'],
  unit: string,
): ReturnType<typeof table> {
  return table(
    id,
    [`number ${speed}`, 'line', `number ${unit}`, 'number from', 'number to'],
    lines.flatMap(({ label, points }) =>
      points.map(({ x, y, low, high }) =>
        row(numberText(x, 0), label, numberText(y, 1), numberText(low, 1), numberText(high, 1)),
      ),
    ),
  );
}
