import type { Axis } from './axis.ts';
import { face, ink, paper, rule, soft, textSize } from './theme.ts';
import { textWidth, wrapText } from './text-width.ts';

/** The part of a Vega-Lite specification that the house uses: one plot, layers with their own rows, no outside data. */
export interface Spec {
  readonly $schema: string;
  readonly width: number;
  readonly height: number;
  readonly padding: Padding;
  readonly autosize: { readonly type: 'none' };
  readonly config: object;
  readonly layer: readonly Layer[];
}

export interface Layer {
  readonly data: { readonly values: readonly Row[] };
  readonly mark: Readonly<Record<string, unknown>> & { readonly type: string };
  readonly encoding: Readonly<Record<string, Channel>>;
}

export type Row = Readonly<Record<string, number | string>>;
export type Channel = Readonly<Record<string, unknown>>;

export interface Padding {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A plotting area with its two axes. `rules` says along which axis the thin lines of the ground run. */
export interface Plot {
  readonly width: number;
  readonly height: number;
  readonly x: Axis;
  readonly y: Axis;
  readonly padding: Padding;
  readonly rules: 'across' | 'upright';
}

export const spec = (plot: Plot, layers: readonly (Layer | readonly Layer[])[]): Spec => ({
  $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
  width: plot.width,
  height: plot.height,
  padding: plot.padding,
  autosize: { type: 'none' },
  config: { view: { stroke: null }, font: face, background: 'transparent', text: { fontSize: textSize, fill: ink } },
  layer: layers.flat(),
});

/** Every layer carries the same two channels, so that they are merged without a conflict. */
const channels = (plot: Plot) => {
  const bare = { title: null, domain: false, ticks: false, labelFont: face, labelFontSize: textSize, labelColor: ink };
  const ground = { grid: true, gridColor: rule, gridWidth: 1 };
  const x = { ...bare, values: plot.x.ticks, format: '~f', labelPadding: 8, labelBound: false, labelFlush: false };
  const y = { ...bare, values: plot.y.ticks, format: '~f', labelPadding: 8, labels: plot.rules === 'across' };
  return {
    x: {
      type: 'quantitative',
      scale: { domain: [plot.x.low, plot.x.high], nice: false, zero: false },
      axis: plot.rules === 'upright' ? { ...x, ...ground } : { ...x, grid: false },
    },
    y: {
      type: 'quantitative',
      scale: { domain: [plot.y.low, plot.y.high], nice: false, zero: false },
      axis: plot.rules === 'across' ? { ...y, ...ground } : { ...y, grid: false },
    },
  };
};

const at = (plot: Plot, x = 'x', y = 'y'): Record<string, Channel> => {
  const channel = channels(plot);
  return { x: { field: x, ...channel.x }, y: { field: y, ...channel.y } };
};

export type Point = readonly [number, number];
export interface Stroke {
  readonly colour: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

const stroke = (look: Stroke) => ({
  stroke: look.colour,
  strokeWidth: look.width,
  ...(look.dash ? { strokeDash: look.dash } : {}),
});

/** A line through points in their order, by rows of their own. */
export const lineLayer = (plot: Plot, points: readonly Point[], look: Stroke): Layer => ({
  data: { values: points.map(([x, y], order) => ({ x, y, order })) },
  mark: { type: 'line', ...stroke(look), strokeJoin: 'round', interpolate: 'linear' },
  encoding: { ...at(plot), order: { field: 'order', type: 'quantitative' } },
});

/** Straight pieces from one point to another: limits, bars, ticks, leaders. */
export const pieceLayer = (plot: Plot, pieces: readonly (readonly [Point, Point])[], look: Stroke): Layer => ({
  data: { values: pieces.map(([[x, y], [x2, y2]]) => ({ x, y, x2, y2 })) },
  mark: { type: 'rule', ...stroke(look) },
  encoding: { ...at(plot), x2: { field: 'x2' }, y2: { field: 'y2' } },
});

export const boxLayer = (plot: Plot, from: Point, to: Point, colour: string): Layer => ({
  data: { values: [{ x: from[0], y: from[1], x2: to[0], y2: to[1] }] },
  mark: { type: 'rect', fill: colour, stroke: null },
  encoding: { ...at(plot), x2: { field: 'x2' }, y2: { field: 'y2' } },
});

export const pointLayer = (
  plot: Plot,
  points: readonly Point[],
  look: { readonly shape: string; readonly colour: string; readonly hollow: boolean; readonly radius: number },
): Layer => ({
  data: { values: points.map(([x, y]) => ({ x, y })) },
  mark: {
    type: 'point',
    shape: look.shape,
    size: (2 * look.radius) ** 2,
    fill: look.hollow ? paper : look.colour,
    stroke: look.hollow ? look.colour : paper,
    strokeWidth: look.hollow ? 2 : 1,
    opacity: 1,
  },
  encoding: at(plot),
});

export interface Lettering {
  readonly colour?: string;
  readonly align?: 'left' | 'center' | 'right';
  readonly bold?: boolean;
  /** A rim of paper behind the letters, where they may cross a line. */
  readonly rim?: boolean;
}

export type Label = readonly [x: number, y: number, text: string];

/** Words at places in axis units. */
export function textLayer(plot: Plot, labels: readonly Label[], look: Lettering = {}): readonly Layer[] {
  const values = labels.map(([x, y, text]) => ({ x, y, text }));
  const mark = {
    type: 'text',
    align: look.align ?? 'left',
    baseline: 'middle',
    fill: look.colour ?? ink,
    ...(look.bold === true ? { fontWeight: 600 } : {}),
  };
  const encoding = { ...at(plot), text: { field: 'text', type: 'nominal' } };
  const letters = { data: { values }, mark, encoding };
  const rim = { data: { values }, mark: { ...mark, fill: paper, stroke: paper, strokeWidth: 4 }, encoding };
  return look.rim === true ? [rim, letters] : [letters];
}

/** Pixels from the plot's upper left corner, in axis units: for words beside the plot. */
export const pixel = (plot: Plot, x: number, y: number): Point => [
  plot.x.low + (x / plot.width) * (plot.x.high - plot.x.low),
  plot.y.high - (y / plot.height) * (plot.y.high - plot.y.low),
];

/** The other way: how far from the top a height stands, px. */
export const fromTop = (plot: Plot, y: number): number =>
  ((plot.y.high - y) / (plot.y.high - plot.y.low)) * plot.height;
export const fromLeft = (plot: Plot, x: number): number => ((x - plot.x.low) / (plot.x.high - plot.x.low)) * plot.width;

/** The sentence under the lower axis, broken where it is longer than the picture. */
export function lowerTitle(plot: Plot, sentence: string): readonly Layer[] {
  const room = plot.width + plot.padding.left + plot.padding.right - 8;
  const lines = wrapText(sentence, textSize, room);
  const widest = Math.max(...lines.map((line) => textWidth(line, textSize)));
  const middle = Math.min(
    Math.max(plot.width / 2, widest / 2 - plot.padding.left + 2),
    plot.width + plot.padding.right - widest / 2 - 2,
  );
  return textLayer(
    plot,
    lines.map((line, i): Label => [...pixel(plot, middle, plot.height + 40 + i * 17), line]),
    { colour: soft, align: 'center' },
  );
}

export const lowerRoom = (sentence: string, whole: number): number =>
  34 + 17 * wrapText(sentence, textSize, whole - 8).length;

/** The name of the upright axis, level above its labels. */
export const upperTitle = (plot: Plot, name: string): readonly Layer[] =>
  textLayer(plot, [[...pixel(plot, -plot.padding.left + 2, -18), name]], { colour: soft });
