import type { SpeedData } from '../report/page.ts';
import { closeAxis, roundAxis } from './axis.ts';
import { endLabelRoom, endLabels } from './end-labels.ts';
import type { Piece, Plot, Point, Spec } from './plot.ts';
import { lineLayer, lowerRoom, lowerTitle, pieceLayer, pointLayer, spec, upperTitle } from './plot.ts';
import { markOf, pictureWidth } from './theme.ts';
import type { Width } from './theme.ts';

/** Spin power against wheel speed: a line an article, bars with end ticks, neighbours set a little aside. */
export function speedSpec(data: SpeedData, width: Width): Spec {
  const plot = speedPlot(data, width);
  const middle = (data.lines.length - 1) / 2;
  const lines = data.lines.map((line, i) => {
    const aside = ((i - middle) * (width === 'wide' ? 3 : 2) * (plot.x.high - plot.x.low)) / plot.width;
    const points = line.points.map((point) => ({ ...point, x: point.x + aside }));
    return { mark: markOf(line.mark), points, places: points.map(({ x, y }): Point => [x, y]) };
  });
  return spec(plot, [
    ...lines.map(({ mark, places }, i) => lineLayer(plot, places, { colour: mark.colour, width: 1.6 }, `${i}`)),
    ...lines.map(({ mark, points }) =>
      pieceLayer(
        plot,
        points.flatMap(({ x, low, high }) => uprightBar(plot, x, low, high)),
        { colour: mark.colour, width: 1.4 },
      ),
    ),
    ...lines.map(({ mark, places }) => pointLayer(plot, places, { ...mark, radius: width === 'wide' ? 5 : 4 })),
    endLabels(
      plot,
      data.lines.flatMap((line) => {
        const end = line.points.at(-1);
        return end ? [{ text: line.label, colour: markOf(line.mark).colour, bold: true, x: end.x, y: end.y }] : [];
      }),
      labelWidth[width],
    ),
    upperTitle(plot, data.yTitle),
    lowerTitle(plot, data.xTitle),
  ]);
}

const labelWidth = { wide: 150, narrow: 84 } as const;

function speedPlot(data: SpeedData, width: Width): Plot {
  const points = data.lines.flatMap((line) => line.points);
  const xs = points.map(({ x }) => x);
  const whole = pictureWidth[width];
  const right = endLabelRoom(
    data.lines.map((line) => line.label),
    labelWidth[width],
  );
  const padding = { left: 44, right: right + 6, top: 34, bottom: lowerRoom(data.xTitle, whole) };
  // A power starts from zero; a level below the centreline is read by its own changes.
  const ends = points.flatMap(({ low, high }) => [low, high]);
  const y = closeAxis(ends.every((end) => end < 0) ? ends : [0, ...ends], 5);
  const far = Math.max(1, ...xs);
  return {
    width: whole - padding.left - padding.right,
    height: width === 'wide' ? 320 : 280,
    x: { low: 0, high: far * 1.02, ticks: measured(xs, far, whole - padding.left - padding.right) },
    y,
    padding,
    rules: 'across',
  };
}

/** The speeds that were run are the ticks, as long as their numbers do not touch. */
function measured(xs: readonly number[], far: number, width: number): readonly number[] {
  const speeds = [...new Set(xs)].sort((a, b) => a - b);
  const near = speeds.some((speed, i) => i > 0 && ((speed - (speeds[i - 1] ?? 0)) / far) * width < 30);
  return near || speeds.length === 0 ? roundAxis([0, far], 4).ticks.filter((tick) => tick <= far) : speeds;
}

function uprightBar(plot: Plot, x: number, low: number, high: number): readonly Piece[] {
  const half = (4 / plot.width) * (plot.x.high - plot.x.low);
  const level = (y: number): Piece => [
    [x - half, y],
    [x + half, y],
  ];
  return [
    [
      [x, low],
      [x, high],
    ],
    level(low),
    level(high),
  ];
}
