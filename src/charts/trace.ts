import type { TraceData } from '../report/page.ts';
import { closeAxis, minuteAxis, thin } from './axis.ts';
import { endLabelRoom, endLabels } from './end-labels.ts';
import type { Label, Layer, Plot, Point, Spec, Stroke } from './plot.ts';
import {
  boxLayer,
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
import { ink, markOf, oil, pictureWidth, soft, textSize, tint } from './theme.ts';
import type { Width } from './theme.ts';
import { textWidth } from './text-width.ts';

/** Sump temperature against time: limits dashed, sustained crossings as hollow circles, names at the line ends. */
export function traceSpec(data: TraceData, width: Width): Spec {
  const plot = tracePlot(data, width);
  return spec(plot, [
    ...data.excluded.map((gap) => excludedBand(plot, gap)),
    excludedLabels(plot, data),
    limitRules(plot, data),
    ...data.lines.map((line, i) => lineLayer(plot, thin(line.points, 200), strokeOf(line), `${i}`)),
    endLabels(plot, lineEnds(data), labelWidth[width]),
    limitLabels(plot, data),
    crossings(plot, data),
    upperTitle(plot, data.yTitle),
    lowerTitle(plot, data.xTitle),
  ]);
}

const labelWidth = { wide: 150, narrow: 88 } as const;

function tracePlot(data: TraceData, width: Width): Plot {
  const xs = data.lines.flatMap((line) => line.points.map(([x]) => x));
  const ys = [...data.lines.flatMap((line) => line.points.map(([, y]) => y)), ...data.limits.map(({ y }) => y)];
  const whole = pictureWidth[width];
  const right = endLabelRoom(
    data.lines.map((line) => line.label),
    labelWidth[width],
  );
  const padding = { left: 40, right, top: 34, bottom: lowerRoom(data.xTitle, whole) };
  return {
    width: whole - padding.left - padding.right,
    height: width === 'wide' ? 280 : 250,
    x: minuteAxis(Math.max(0, ...xs), width === 'wide' ? 6 : 4),
    y: closeAxis(ys, 5),
    padding,
    rules: 'across',
  };
}

type Line = TraceData['lines'][number];

const strokeOf = (line: Line): Stroke => {
  const colour = line.role === 'baseline' ? ink : markOf(line.mark).colour;
  if (line.role === 'main') return { colour, width: 2.4 };
  if (line.role === 'second') return { colour, width: 1.1 };
  return line.role === 'baseline' ? { colour, width: 1.5, dash: [6, 4] } : { colour: soft, width: 1.6, dash: [1.5, 3] };
};

const lineEnds = (data: TraceData) =>
  data.lines.flatMap((line) => {
    const end = line.points.at(-1);
    const colour = line.role === 'baseline' ? ink : line.role === 'fit' ? soft : markOf(line.mark).colour;
    return end ? [{ text: line.label, colour, bold: line.role === 'main', x: end[0], y: end[1] }] : [];
  });

const limitRules = (plot: Plot, data: TraceData): readonly Layer[] =>
  data.limits.length === 0
    ? []
    : [
        pieceLayer(
          plot,
          data.limits.map(
            ({ y }) =>
              [
                [plot.x.low, y],
                [plot.x.high, y],
              ] as const,
          ),
          { colour: oil, width: 1.2, dash: [4, 3] },
        ),
      ];

/** Above their rules at the left, where the traces are still low; one that would sit on its neighbour steps aside. */
function limitLabels(plot: Plot, data: TraceData): readonly Layer[] {
  let before = { top: Infinity, right: 0 };
  const labels = [...data.limits]
    .sort((a, b) => a.y - b.y)
    .map(({ y, label }): Label => {
      const top = fromTop(plot, y) - 9;
      const left = before.top - top < 16 ? before.right + 12 : 6;
      before = { top, right: left + textWidth(label, textSize) };
      return [...pixel(plot, left, top), label];
    });
  return textLayer(plot, labels, { colour: oil, rim: true });
}

function crossings(plot: Plot, data: TraceData): readonly Layer[] {
  if (data.crossings.length === 0) return [];
  const places = data.crossings.map(({ x, y }): Point => [x, y]);
  const labels = data.crossings.map(({ x, y, label }): Label => {
    // Right of the circle and under it; at the right edge straight under it.
    const width = textWidth(label, textSize, true);
    const left = Math.min(fromLeft(plot, x) + 9, plot.width - width - 2);
    const under = left < fromLeft(plot, x) + 6 ? 18 : 14;
    return [...pixel(plot, left, fromTop(plot, y) + under), label];
  });
  const circle = { ...markOf(0), colour: oil, radius: 6 };
  return [pointLayer(plot, places, circle), ...textLayer(plot, labels, { rim: true, bold: true })];
}

/** At least two pixels wide, so that a gap of seconds in hours is still seen. */
const excludedBand = (plot: Plot, gap: TraceData['excluded'][number]): Layer => {
  const least = (2 / plot.width) * (plot.x.high - plot.x.low);
  return boxLayer(plot, [gap.from, plot.y.low], [Math.max(gap.to, gap.from + least), plot.y.high], tint);
};

/** Over the plot, left to right; one without room is left to the table beside the picture. */
function excludedLabels(plot: Plot, data: TraceData): readonly Layer[] {
  let taken = textWidth(data.yTitle, textSize) - plot.padding.left + 12;
  const labels = [...data.excluded]
    .sort((a, b) => a.from - b.from)
    .flatMap(({ from, to, label }): readonly Label[] => {
      const wide = textWidth(label, textSize);
      const middle = Math.min(fromLeft(plot, (from + to) / 2), plot.width + plot.padding.right - wide / 2);
      if (middle - wide / 2 < taken) return [];
      taken = middle + wide / 2 + 10;
      return [[...pixel(plot, middle, -10), label]];
    });
  return textLayer(plot, labels, { colour: soft, align: 'center' });
}
