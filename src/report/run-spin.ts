import type { Figure } from '../ledger/figure.ts';
import { rpm } from '../ledger/ids.ts';
import type { Run } from '../trial/run.ts';
import { cited, runFigures, inCelsius } from './cite.ts';
import { numberText } from './digits.ts';
import type { Block, Page, Span, SpeedData } from './page.ts';
import { conditionsSection, rawFileNote } from './run-conditions.ts';
import { beforePower, givesSection, howSure, leadOf, remarksNote, runPage } from './run-parts.ts';
import { fold, listed, row, section, table, tableBlock } from './spans.ts';
import { besideTheRun } from './supply.ts';
import { celsius } from './traces.ts';
import { derivedOf, groupBy, type View } from './view.ts';

/** Spin loss at stepped speeds: power against speed, a line a temperature. */
export function spinPage(view: View, run: Run): Page {
  const powers = runFigures(view, run.id, 'spin-power');
  const stepped = ({ at }: Figure): boolean => speedOf(at) !== null && at.sump !== undefined;
  const pivoted = powers.filter(stepped);
  const torques = runFigures(view, run.id, 'spin-torque').filter(stepped);
  const main = mainPower(view, powers);
  return runPage(view, run, {
    lead: leadOf(view, run, () => spinLead(view, powers, main)),
    sections: [
      section('picture', null, [powerChart(view, run, pivoted)], [beforePower(view, run), besideTheRun(view, run)]),
      givesSection(
        view,
        run,
        ({ id }) => [...pivoted, ...torques].some((figure) => figure.id === id),
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

export function mainPower(view: View, powers: readonly Figure[]): Figure | undefined {
  const { outputSpeed_rad_s, mainSump_K } = view.series.reference;
  const wanted = Number(rpm(outputSpeed_rad_s));
  const atSpeed = powers.filter(({ at }) => speedOf(at) === wanted);
  return (
    atSpeed.find(({ at }) => at.sump === `${String(Math.round(celsius(mainSump_K) * 10) / 10)} Cel`) ??
    atSpeed[0] ??
    powers[0]
  );
}

/** "290 rpm" → 290 */
export function speedOf(at: Figure['at']): number | null {
  const text = at['wheel-speed'] ?? at['output-speed'];
  return text === undefined ? null : Number.parseFloat(text);
}

/** Rows are speeds, columns temperatures. */
function steppedTable(view: View, figures: readonly Figure[], id: string, caption: string): Block[] {
  if (figures.length === 0) return [];
  const temperatures = [...groupBy(figures, ({ at }) => at.sump ?? '').keys()];
  const speeds = [...groupBy(figures, ({ at }) => String(speedOf(at)))];
  return [
    tableBlock(
      id,
      [`number ${view.speed}`, ...temperatures.map((sump) => `number ${headOf(sump)}`)],
      speeds.map(([speed, list]) =>
        row(
          speed,
          ...temperatures.map((sump): Span[] => list.filter(({ at }) => at.sump === sump).map((f) => cited(view, f))),
        ),
      ),
      caption,
    ),
  ];
}

const headOf = (sump: string): string => (sump === 'own' ? 'own temperature' : inCelsius(sump));

function powerChart(view: View, run: Run, figures: readonly Figure[]): Block | null {
  const lines: SpeedData['lines'] = [...groupBy(figures, ({ at }) => at.sump ?? '')].map(([sump, list]) => ({
    label: headOf(sump),
    mark: view.marks.get(run.article) ?? 0,
    points: list.flatMap(pointOf).sort((a, b) => a.x - b.x),
  }));
  if (lines.every(({ points }) => points.length === 0)) return null;
  return {
    kind: 'chart',
    chart: {
      id: 'power-by-speed',
      title: `Spin power of ${run.id} against ${view.speed}`,
      alternative: `Spin power in watts against ${view.speed}, one line for each of ${lines.map(({ label }) => label).join(', ')}, with intervals. The table below holds the same numbers.`,
      caption: ['Bars are 95 % intervals of each figure alone.'],
      data: { kind: 'speed', yTitle: 'spin power, W', xTitle: view.speed, lines },
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
