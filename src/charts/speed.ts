import type { SpeedData } from '../report/page.ts';
import { closeAxis, roundAxis } from './axis.ts';
import { endLabelRoom, endLabels } from './end-labels.ts';
import type { Layer, Piece, Plot, Point, Spec } from './plot.ts';
import { areaLayer, lineLayer, lowerRoom, lowerTitle, pieceLayer, pointLayer, spec, upperTitle } from './plot.ts';
import { markOf, pictureWidth, tint } from './theme.ts';
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
    ...behind(plot, data.band),
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

/** What models let one expect, without a mark or an edge; what would reach over the plot is cut off at its top. */
function behind(plot: Plot, band: SpeedData['band']): readonly Layer[] {
  if (band === undefined) return [];
  const top = Math.max(...plot.y.ticks, plot.y.high);
  return [areaLayer(plot, clipped(band.points, top), tint)];
}

/** Where an end of the band passes the top a place is put in, so that its edge keeps its way. */
function clipped(points: readonly BandPoint[], top: number): readonly BandPoint[] {
  return points.flatMap((point, i): readonly BandPoint[] => {
    const before = points[i - 1];
    const held = { ...point, low: Math.min(point.low, top), high: Math.min(point.high, top) };
    if (before === undefined || before.high > top === point.high > top) return [held];
    const share = (top - before.high) / (point.high - before.high);
    const at = (from: number, to: number): number => from + share * (to - from);
    return [{ x: at(before.x, point.x), low: Math.min(at(before.low, point.low), top), high: top }, held];
  });
}

type BandPoint = NonNullable<SpeedData['band']>['points'][number];

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
