import type { FilmData } from '../report/page.ts';
import type { Axis } from './axis.ts';
import { minuteTicks, roundAxis, shareOf, thin, tickText } from './axis.ts';
import type { Clock } from './clock.ts';
import { atTime } from './clock.ts';
import { stepNameLayers, stepNameRoom, stepNames } from './film-steps.ts';
import type { Label, Layer, Piece, Plot, Point, Spec } from './plot.ts';
import { boxLayer, lineLayer, pieceLayer, spec, textLayer } from './plot.ts';
import { pixelSheet, underline, underlineRoom } from './rows.ts';
import { markOf, pictureWidth, rule, soft, tint } from './theme.ts';
import type { Width } from './theme.ts';

/** What the logger wrote while the film ran: panels under each other on one axis of time, holds tinted and named on top. */
export function filmSpec(data: FilmData, width: Width): { readonly spec: Spec; readonly clock: Clock } {
  const whole = pictureWidth[width];
  const [from, to] = timeOf(data);
  const names = stepNames(data.steps, { from, to, left, right: whole - rightRoom });
  const top = stepNameRoom(names);
  const panelTop = (i: number): number => top + timeRoom + i * (panelHeight[width] + titleRoom) + titleRoom;
  const bottom = panelTop(data.panels.length - 1) + panelHeight[width];
  const clock: Clock = { from, to, left, right: whole - rightRoom, top, bottom };
  const sheet = pixelSheet(width, bottom + underlineRoom(data.xTitle, whole - 8));
  return {
    clock,
    spec: spec(sheet, [
      ...data.steps.map((step) => hold(sheet, clock, step)),
      ...data.panels.map((panel, i) => onePanel(sheet, clock, panel, panelTop(i), panelHeight[width], i)),
      stepNameLayers(sheet, top, names),
      timeNumbers(sheet, clock, width),
      underline(sheet, { left, width: clock.right - left, bottom }, data.xTitle, whole - 8),
    ]),
  };
}

const left = 46;
const rightRoom = 10;
const titleRoom = 32;
/** Over the first title: the time that a mark on the picture writes. */
const timeRoom = 10;
const panelHeight = { wide: 96, narrow: 84 } as const;
/** Noise alone does not fill a panel: it shows this many of its units (mm, °C, rpm) at least. */
const leastSpan = 4;

function timeOf({ panels, steps }: FilmData): readonly [number, number] {
  const times = [...panels.flatMap(({ points }) => points.map(([x]) => x)), ...steps.flatMap((s) => [s.from, s.to])];
  const known = times.filter(Number.isFinite);
  const [from, to] = known.length === 0 ? [0, 1] : [Math.min(...known), Math.max(...known)];
  return [from, to > from ? to : from + 1];
}

const hold = (sheet: Plot, clock: Clock, step: FilmData['steps'][number]): Layer =>
  boxLayer(sheet, [atTime(clock, step.from), clock.top], [atTime(clock, step.to), clock.bottom], tint);

function onePanel(
  sheet: Plot,
  clock: Clock,
  panel: FilmData['panels'][number],
  top: number,
  height: number,
  order: number,
): readonly Layer[] {
  const axis = panelAxis(panel.points.map(([, y]) => y));
  const y = (value: number): number => top + (1 - shareOf(axis, value)) * height;
  const rules = axis.ticks.map((tick): Piece => [
    [clock.left, y(tick)],
    [clock.right, y(tick)],
  ]);
  const numbers = axis.ticks.map((tick): Label => [clock.left - 8, y(tick), tickText(tick)]);
  const line = thin(panel.points, 300).map(([time, value]): Point => [atTime(clock, time), y(value)]);
  return [
    pieceLayer(sheet, rules, { colour: rule, width: 1 }),
    ...textLayer(sheet, numbers, { align: 'right' }),
    ...(line.length === 0
      ? []
      : [lineLayer(sheet, line, { colour: markOf(panel.mark).colour, width: 1.6 }, `${order}`)]),
    ...textLayer(sheet, [[2, top - 15, panel.yTitle]], { colour: soft }),
  ];
}

/** The field ends just beyond what was read, so that panels need no empty fields between them. */
function panelAxis(values: readonly number[]): Axis {
  const known = values.filter(Number.isFinite);
  if (known.length === 0) return roundAxis([], 3);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const middle = (least + most) / 2;
  const half = Math.max(leastSpan, most - least) / 2;
  return roundAxis([middle - half * 1.08, middle + half * 1.08], 3, 'values');
}

const timeNumbers = (sheet: Plot, clock: Clock, width: Width): readonly Layer[] => {
  const ticks = minuteTicks(clock.from, clock.to, width === 'wide' ? 8 : 5);
  const labels = ticks.map((tick): Label => [atTime(clock, tick), clock.bottom + 14, tickText(tick)]);
  return textLayer(sheet, labels, { align: 'center' });
};
