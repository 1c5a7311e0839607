import type { MarkedData } from '../report/page.ts';
import { minuteTicks, roundAxis, tickText } from './axis.ts';
import { lettering } from './lettering.ts';
import { element, pathOf } from './svg.ts';
import { textWidth } from './text-width.ts';
import { ink, oil, oilTint, paper, pictureWidth, rule, soft, textSize, type Width } from './theme.ts';

const edge = { left: 52, right: 14, top: 24, bottom: 38 } as const;
const plotHeight = 92;

/** A log at a glance: its line over the run, and the stretches that figures were read from as bands with their names over them. */
export function markedDrawing(data: MarkedData, width: Width): { readonly height: number; readonly inside: string } {
  const right = pictureWidth[width] - edge.right;
  const ends = [...data.points.map(([t]) => t), ...data.marks.flatMap(({ from, to }) => [from, to])];
  const [first, last] = [Math.min(...ends), Math.max(...ends)];
  const axis = roundAxis(
    data.points.map(([, v]) => v),
    3,
  );
  const x = (t: number): number => edge.left + ((t - first) / Math.max(last - first, 1e-9)) * (right - edge.left);
  const y = (v: number): number => edge.top + (1 - (v - axis.low) / (axis.high - axis.low)) * plotHeight;
  const floor = edge.top + plotHeight;
  const across = { x1: edge.left, x2: right };
  const band = { y: edge.top, height: plotHeight, fill: oilTint, stroke: oil, 'stroke-width': 0.6 };
  const line = { d: pathOf(data.points.map(([t, v]) => [x(t), y(v)])), fill: 'none', stroke: ink, 'stroke-width': 1.3 };
  return {
    height: floor + edge.bottom,
    inside: [
      ...data.marks.map(({ from, to }) =>
        element('rect', { x: x(from), width: Math.max(2, x(to) - x(from)), ...band }),
      ),
      ...axis.ticks.map((v) => element('line', { ...across, y1: y(v), y2: y(v), stroke: rule })),
      ...axis.ticks.map((v) =>
        lettering({ text: tickText(v), x: edge.left - 6, y: y(v) + 4, fill: soft, anchor: 'end' }),
      ),
      element('path', line),
      element('line', { ...across, y1: floor, y2: floor, stroke: soft }),
      ...minuteTicks(first, last, width === 'wide' ? 8 : 4).flatMap((t) => [
        element('line', { x1: x(t), x2: x(t), y1: floor, y2: floor + 4, stroke: soft }),
        lettering({ text: tickText(t), x: x(t), y: floor + 17, fill: soft, anchor: 'middle' }),
      ]),
      lettering({ text: 'time, min', x: (edge.left + right) / 2, y: floor + 34, fill: soft, anchor: 'middle' }),
      lettering({ text: data.yTitle, x: edge.left, y: 12, fill: soft }),
      ...names(data, x, right),
    ].join(''),
  };
}

/** Names of the bands in the line over the plot, as far as one does not run into the next. */
function names(data: MarkedData, x: (t: number) => number, right: number): string[] {
  let free = edge.left + textWidth(data.yTitle, textSize) + 14;
  return [...data.marks]
    .sort((a, b) => a.from - b.from)
    .flatMap(({ from, to, label }) => {
      const half = textWidth(label, textSize) / 2;
      const middle = Math.min((x(from) + x(to)) / 2, right - half);
      if (label === '' || middle - half < free) return [];
      free = middle + half + 8;
      return [lettering({ text: label, x: middle, y: 12, fill: oil, anchor: 'middle', rim: paper })];
    });
}
