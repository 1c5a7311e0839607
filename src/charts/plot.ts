import type { Axis } from './axis.ts';
import { shareOf, valueAt } from './axis.ts';
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

export type Row = Readonly<Record<string, number | string | readonly number[]>>;
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
  config: { view: { stroke: null }, font: face, background: 'transparent', text: { fontSize: textSize } },
  layer: withAxes(plot, gathered(layers.flat())),
});

/** Every layer carries the same axes, so that they are merged without a conflict. */
function withAxes(plot: Plot, layers: readonly Layer[]): readonly Layer[] {
  const { x, y } = axes(plot);
  return layers.map((layer) => {
    const { encoding } = layer;
    return { ...layer, encoding: { ...encoding, x: { ...encoding['x'], axis: x }, y: { ...encoding['y'], axis: y } } };
  });
}

function axes(plot: Plot) {
  const bare = { title: null, domain: false, ticks: false, labelFont: face, labelFontSize: textSize, labelColor: ink };
  const shared = { ...bare, format: '~f', labelPadding: 8 };
  const ground = { grid: true, gridColor: rule, gridWidth: 1 };
  const x = { ...shared, values: plot.x.ticks, labelBound: false, labelFlush: false };
  const y = { ...shared, values: plot.y.ticks };
  return {
    x: { ...x, ...(plot.rules === 'upright' ? ground : { grid: false }) },
    y: { ...y, ...(plot.rules === 'across' ? ground : { grid: false, labels: false }) },
  };
}

const at = (plot: Plot): Record<string, Channel> => ({
  x: { field: 'x', type: 'quantitative', scale: scaleOf(plot.x) },
  y: { field: 'y', type: 'quantitative', scale: scaleOf(plot.y) },
});

const scaleOf = ({ low, high, bend }: Axis) => ({
  domain: [low, high],
  nice: false,
  zero: false,
  ...(bend === undefined ? {} : { type: 'symlog', constant: bend }),
});

/** Looks stand in the rows, as they are written, so that layers of one kind can be gathered. */
const asWritten = (...fields: readonly string[]): Record<string, Channel> =>
  Object.fromEntries(
    fields.map((field) => {
      const type = field === 'strokeWidth' ? 'quantitative' : 'nominal';
      return [field, { field, type, scale: null, legend: null }];
    }),
  );

const ends = { x2: { field: 'x2' }, y2: { field: 'y2' } };

/**
 * Tinted fields first, words last with their rims under all of them, the rest as given; then neighbours of one kind become
 * one layer. A picture of six layers is drawn three times as fast as the same of twenty.
 */
function gathered(layers: readonly Layer[]): readonly Layer[] {
  const rank = ({ mark }: Layer) =>
    mark.type === 'rect' || mark.type === 'area' ? 0 : mark.type !== 'text' ? 1 : 'stroke' in mark ? 2 : 3;
  const kind = ({ mark, encoding }: Layer) => JSON.stringify([mark, encoding]);
  const groups: Layer[] = [];
  for (const layer of [...layers].sort((a, b) => rank(a) - rank(b))) {
    const last = groups.at(-1);
    if (last === undefined || kind(last) !== kind(layer)) groups.push(layer);
    else groups[groups.length - 1] = { ...layer, data: { values: [...last.data.values, ...layer.data.values] } };
  }
  return groups;
}

export type Point = readonly [number, number];
export interface Stroke {
  readonly colour: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

const strokeRow = ({ colour, width, dash = [] }: Stroke) => ({ stroke: colour, strokeWidth: width, strokeDash: dash });
const strokeChannels = asWritten('stroke', 'strokeWidth', 'strokeDash');

/** A line through points in their order. Lines of one picture are told apart by `line`. */
export const lineLayer = (plot: Plot, points: readonly Point[], look: Stroke, line: string): Layer => ({
  data: { values: points.map(([x, y], order) => ({ x, y, order, line, ...strokeRow(look) })) },
  mark: { type: 'line', strokeJoin: 'round', interpolate: 'linear' },
  encoding: {
    ...at(plot),
    ...strokeChannels,
    detail: { field: 'line', type: 'nominal' },
    order: { field: 'order', type: 'quantitative' },
  },
});

export type Piece = readonly [from: Point, to: Point];

/** Straight pieces: limits, bars, ticks, leaders. */
export const pieceLayer = (plot: Plot, pieces: readonly Piece[], look: Stroke): Layer => ({
  data: { values: pieces.map(([[x, y], [x2, y2]]) => ({ x, y, x2, y2, ...strokeRow(look) })) },
  mark: { type: 'rule' },
  encoding: { ...at(plot), ...ends, ...strokeChannels },
});

export const boxLayer = (plot: Plot, from: Point, to: Point, colour: string): Layer => ({
  data: { values: [{ x: from[0], y: from[1], x2: to[0], y2: to[1], fill: colour }] },
  mark: { type: 'rect', stroke: null },
  encoding: { ...at(plot), ...ends, ...asWritten('fill') },
});

/** A tinted field between two lines over the same places. */
export const areaLayer = (
  plot: Plot,
  places: readonly { readonly x: number; readonly low: number; readonly high: number }[],
  colour: string,
): Layer => ({
  data: { values: places.map(({ x, low, high }) => ({ x, y: low, y2: high, fill: colour })) },
  mark: { type: 'area', interpolate: 'linear', opacity: 1 },
  encoding: { ...at(plot), y2: { field: 'y2' }, ...asWritten('fill') },
});

export const pointLayer = (
  plot: Plot,
  points: readonly Point[],
  look: { readonly shape: string; readonly colour: string; readonly hollow: boolean; readonly radius: number },
): Layer => ({
  data: {
    values: points.map(([x, y]) => ({
      x,
      y,
      shape: look.shape,
      fill: look.hollow ? paper : look.colour,
      stroke: look.hollow ? look.colour : paper,
      strokeWidth: look.hollow ? 2 : 1,
    })),
  },
  mark: { type: 'point', size: (2 * look.radius) ** 2, opacity: 1 },
  encoding: { ...at(plot), ...asWritten('shape', 'fill', 'stroke', 'strokeWidth') },
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
  if (labels.length === 0) return [];
  const fill = look.colour ?? ink;
  const mark = {
    type: 'text',
    align: look.align ?? 'left',
    baseline: 'middle',
    ...(look.bold === true ? { fontWeight: 600 } : {}),
  };
  const encoding = { ...at(plot), text: { field: 'text', type: 'nominal' }, ...asWritten('fill') };
  const rows = (colour: string) => ({ values: labels.map(([x, y, text]) => ({ x, y, text, fill: colour })) });
  const letters = { data: rows(fill), mark, encoding };
  const rim = { data: rows(paper), mark: { ...mark, stroke: paper, strokeWidth: 4 }, encoding };
  return look.rim === true ? [rim, letters] : [letters];
}

/** Pixels from the plot's upper left corner, in axis units: for words beside the plot. */
export const pixel = (plot: Plot, x: number, y: number): Point => [
  valueAt(plot.x, x / plot.width),
  valueAt(plot.y, 1 - y / plot.height),
];

/** The other way: how far from the top a height stands, px. */
export const fromTop = (plot: Plot, y: number): number => (1 - shareOf(plot.y, y)) * plot.height;
export const fromLeft = (plot: Plot, x: number): number => shareOf(plot.x, x) * plot.width;

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
