import type { SettleData } from '../report/page.ts';
import { closeAxis } from './axis.ts';
import { endLabelRoom, endLabels } from './end-labels.ts';
import type { Label, Layer, Piece, Plot, Spec } from './plot.ts';
import { fromLeft, lineLayer, lowerRoom, lowerTitle, pieceLayer, pixel, pointLayer, spec, textLayer } from './plot.ts';
import { ink, markOf, oil, pictureWidth, soft, textSize } from './theme.ts';
import type { Width } from './theme.ts';
import { textWidth } from './text-width.ts';

/** The level after the stop against time; the first minute has room, and the grades of bubble stand over their times. */
export function settleSpec(data: SettleData, width: Width): Spec {
  const plot = settlePlot(data, width);
  const { colour } = markOf(data.mark);
  return spec(plot, [
    ticksUnder(plot),
    heights(plot, data, labelWidth[width]),
    data.fit.length === 0 ? [] : lineLayer(plot, data.fit, { colour, width: 1.6 }, 'fit'),
    data.points.length === 0 ? [] : pointLayer(plot, data.points, { ...markOf(data.mark), radius: 5.5 }),
    bubbles(plot, data),
    textLayer(plot, [[...pixel(plot, 2 - plot.padding.left, 12 - plot.padding.top), data.yTitle]], { colour: soft }),
    lowerTitle(plot, data.xTitle),
  ]);
}

const labelWidth = { wide: 150, narrow: 84 } as const;
/** Seconds within which time runs evenly; later it closes up. */
const evenFor_s = 30;
const readAt_s = [0, 10, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200] as const;

function settlePlot(data: SettleData, width: Width): Plot {
  const whole = pictureWidth[width];
  const seen = [...data.points, ...data.fit];
  const far = Math.max(60, ...seen.map(([x]) => x), ...data.bubbles.map(({ x }) => x));
  const right = endLabelRoom(
    data.lines.map(({ label }) => label),
    labelWidth[width],
  );
  const padding = {
    left: 54,
    right,
    top: data.bubbles.length === 0 ? 30 : 58,
    bottom: lowerRoom(data.xTitle, whole),
  };
  return {
    width: whole - padding.left - padding.right,
    height: width === 'wide' ? 250 : 220,
    x: { low: 0, high: far, ticks: readAt_s.filter((tick) => tick <= far), bend: evenFor_s },
    y: closeAxis([...seen.map(([, y]) => y), ...data.lines.map(({ y }) => y)], 5),
    padding,
    rules: 'across',
  };
}

/** Short strokes at the numbers: on an axis that is not even one wants to see where they stand. */
const ticksUnder = (plot: Plot): Layer =>
  pieceLayer(
    plot,
    plot.x.ticks.map((tick): Piece => {
      const across = fromLeft(plot, tick);
      return [pixel(plot, across, plot.height), pixel(plot, across, plot.height + 5)];
    }),
    { colour: soft, width: 1 },
  );

/** The level before and the one it comes back to, named at the right. */
function heights(plot: Plot, { lines }: SettleData, widest: number): readonly Layer[] {
  if (lines.length === 0) return [];
  const rules = lines.map(({ y }): Piece => [
    [plot.x.low, y],
    [plot.x.high, y],
  ]);
  const names = lines.map(({ y, label }) => ({ text: label, colour: oil, bold: false, x: plot.x.high, y }));
  return [pieceLayer(plot, rules, { colour: oil, width: 1.2, dash: [4, 3] }), ...endLabels(plot, names, widest)];
}

/** One row over the plot, each grade over its time; one that would touch its neighbour is left to the table. */
function bubbles(plot: Plot, data: SettleData): readonly Layer[] {
  if (data.bubbles.length === 0) return [];
  let taken = -Infinity;
  const drawn = [...data.bubbles]
    .sort((a, b) => a.x - b.x)
    .flatMap(({ x, text }) => {
      const across = fromLeft(plot, x);
      const half = textWidth(text, textSize, true) / 2;
      if (across - half < taken) return [];
      taken = across + half + 5;
      return [{ across, text }];
    });
  const grades = drawn.map(({ across, text }): Label => [...pixel(plot, across, -18), text]);
  const strokes = drawn.map(({ across }): Piece => [pixel(plot, across, -8), pixel(plot, across, -2)]);
  return [
    pieceLayer(plot, strokes, { colour: soft, width: 1 }),
    ...textLayer(plot, [[...pixel(plot, 2 - plot.padding.left, -18), 'Bubble']], { colour: soft }),
    ...textLayer(plot, grades, { colour: ink, align: 'center', bold: true }),
  ];
}
