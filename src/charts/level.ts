import type { LevelData } from '../report/page.ts';
import { roundAxis, spread } from './axis.ts';
import { endLabelRoom, endLabels } from './end-labels.ts';
import type { Label, Layer, Plot, Point, Spec } from './plot.ts';
import {
  fromLeft,
  fromTop,
  lineLayer,
  lowerRoom,
  lowerTitle,
  pieceLayer,
  pixel,
  pointLayer,
  spec,
  textLayer,
  upperTitle,
} from './plot.ts';
import { markOf, oil, pictureWidth, textSize } from './theme.ts';
import type { Width } from './theme.ts';
import { textWidth } from './text-width.ts';

/** Level curve: litres across, height up; the fills in use marked on it, lips and plugs as dashed heights. */
export function levelSpec(data: LevelData, width: Width): Spec {
  const plot = levelPlot(data, width);
  return spec(plot, [
    heights(plot, data),
    ...data.curves.map((curve, i) =>
      lineLayer(plot, curve.points, { colour: markOf(curve.mark).colour, width: 2 }, `${i}`),
    ),
    endLabels(
      plot,
      data.curves.flatMap((curve) => {
        const end = curve.points.at(-1);
        return end ? [{ text: curve.label, colour: markOf(curve.mark).colour, bold: true, x: end[0], y: end[1] }] : [];
      }),
      labelWidth[width],
    ),
    fills(plot, data),
    upperTitle(plot, data.yTitle),
    lowerTitle(plot, data.xTitle),
  ]);
}

const labelWidth = { wide: 150, narrow: 88 } as const;

function levelPlot(data: LevelData, width: Width): Plot {
  const points = [...data.curves.flatMap((curve) => curve.points), ...data.fills.map(({ x, y }): Point => [x, y])];
  const whole = pictureWidth[width];
  const right = endLabelRoom(
    data.curves.map((curve) => curve.label),
    labelWidth[width],
  );
  const padding = { left: 46, right, top: 34, bottom: lowerRoom(data.xTitle, whole) };
  const y = roundAxis(
    [...points.map(([, height]) => height), ...data.lines.map((line) => line.y)],
    width === 'wide' ? 6 : 5,
  );
  const x = roundAxis([0, ...points.map(([litres]) => litres)], width === 'wide' ? 6 : 4);
  const far = Math.max(...points.map(([litres]) => litres));
  return {
    width: whole - padding.left - padding.right,
    height: width === 'wide' ? 280 : 250,
    x: { low: 0, high: far, ticks: x.ticks.filter((tick) => tick <= far) },
    y,
    padding,
    rules: 'across',
  };
}

function heights(plot: Plot, data: LevelData): readonly Layer[] {
  if (data.lines.length === 0) return [];
  const rules = data.lines.map(({ y }): readonly [Point, Point] => [
    [plot.x.low, y],
    [plot.x.high, y],
  ]);
  const places = spread(
    data.lines.map(({ y }) => fromTop(plot, y) - 9),
    15,
    0,
    plot.height,
  );
  const words = data.lines.map(({ label }, i): Label => [...pixel(plot, 6, places[i] ?? 0), label]);
  return [
    pieceLayer(plot, rules, { colour: oil, width: 1.2, dash: [4, 3] }),
    ...textLayer(plot, words, { colour: oil, rim: true }),
  ];
}

/** Right of and below their mark, where a rising curve leaves room. */
function fills(plot: Plot, data: LevelData): readonly Layer[] {
  const places = spread(
    data.fills.map(({ y }) => fromTop(plot, y) + 15),
    16,
    0,
    plot.height - 8,
  );
  const words = data.fills.map(({ x, label }, i): Label => {
    const left = Math.min(fromLeft(plot, x) + 8, plot.width - textWidth(label, textSize) + plot.padding.right);
    return [...pixel(plot, left, places[i] ?? 0), label];
  });
  return [
    ...data.fills.map(({ x, y, mark }) => pointLayer(plot, [[x, y]], { ...markOf(mark), radius: 6 })),
    ...textLayer(plot, words, { rim: true }),
  ];
}
