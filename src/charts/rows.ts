import type { Axis } from './axis.ts';
import { tickText } from './axis.ts';
import type { Label, Layer, Piece, Plot } from './plot.ts';
import { pieceLayer, pointLayer, textLayer } from './plot.ts';
import { ink, markOf, pictureWidth, rule, soft, textSize } from './theme.ts';
import type { Width } from './theme.ts';
import { textWidth, wrapText } from './text-width.ts';

/** A picture counted in pixels from its upper left corner: for rows with bars, where two panels share one sheet. */
export const pixelSheet = (width: Width, height: number): Plot => ({
  width: pictureWidth[width],
  height,
  x: { low: 0, high: pictureWidth[width], ticks: [] },
  y: { low: height, high: 0, ticks: [] },
  padding: { left: 0, right: 0, top: 0, bottom: 0 },
  rules: 'across',
});

/** A field of horizontal bars: where it stands on the sheet and what its axis holds. */
export interface Panel {
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly axis: Axis;
}

export interface BarRow {
  readonly y: number;
  readonly mark: number;
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
}

export const along = (panel: Panel, value: number): number =>
  panel.left + ((value - panel.axis.low) / (panel.axis.high - panel.axis.low)) * panel.width;

/** Thin upright rules at the ticks, their numbers below, and the axis sentence below these. */
export function ground(sheet: Plot, panel: Panel, sentence: string, room: number): readonly Layer[] {
  const uprights = panel.axis.ticks.map((tick): Piece => [
    [along(panel, tick), panel.top],
    [along(panel, tick), panel.bottom],
  ]);
  const numbers = panel.axis.ticks.map((tick): Label => [along(panel, tick), panel.bottom + 14, tickText(tick)]);
  return [
    pieceLayer(sheet, uprights, { colour: rule, width: 1 }),
    ...textLayer(sheet, numbers, { align: 'center' }),
    ...underline(sheet, panel, sentence, room),
  ];
}

/** The axis sentence, centred under its panel and kept on the sheet. */
export function underline(
  sheet: Plot,
  panel: Pick<Panel, 'left' | 'width' | 'bottom'>,
  sentence: string,
  room: number,
): readonly Layer[] {
  const lines = wrapText(sentence, textSize, room);
  const half = Math.max(...lines.map((line) => textWidth(line, textSize))) / 2;
  const middle = Math.min(Math.max(panel.left + panel.width / 2, half + 1), sheet.width - half - 1);
  const words = lines.map((line, i): Label => [middle, panel.bottom + 36 + i * 17, line]);
  return textLayer(sheet, words, { align: 'center', colour: soft });
}

export const underlineRoom = (sentence: string, room: number): number =>
  30 + 17 * wrapText(sentence, textSize, room).length;

/** Bars with end ticks, then the marks on them. */
export const bars = (sheet: Plot, panel: Panel, rows: readonly BarRow[]): readonly Layer[] => [
  ...rows.map((row) => pieceLayer(sheet, barPieces(panel, row), { colour: markOf(row.mark).colour, width: 1.8 })),
  ...rows.map((row) => pointLayer(sheet, [[along(panel, row.value), row.y]], { ...markOf(row.mark), radius: 6.5 })),
];

function barPieces(panel: Panel, row: BarRow): readonly Piece[] {
  if (row.low === null || row.high === null) return [];
  const { y } = row;
  const [low, high] = [along(panel, row.low), along(panel, row.high)];
  const upright = (x: number): Piece => [
    [x, y - 5],
    [x, y + 5],
  ];
  return [
    [
      [low, y],
      [high, y],
    ],
    upright(low),
    upright(high),
  ];
}

/** The name of a row in ink, what belongs to it after or under it in soft ink. */
export function rowNames(
  sheet: Plot,
  rows: readonly { readonly y: number; readonly label: string; readonly detail: string }[],
  room: number,
): readonly Layer[] {
  const bold: Label[] = [];
  const plain: Label[] = [];
  for (const { y, label, detail } of rows) {
    const width = textWidth(label, textSize, true);
    if (detail === '') bold.push(...lines(label, y, room));
    else if (width + 6 + textWidth(detail, textSize) <= room) {
      bold.push([0, y, label]);
      plain.push([width + 5, y, detail]);
    } else {
      bold.push([0, y - 8, label]);
      plain.push([0, y + 8, detail]);
    }
  }
  return [...textLayer(sheet, bold, { bold: true, colour: ink }), ...textLayer(sheet, plain, { colour: soft })];
}

/** What the tallest of these names needs, px. */
export const tallestName = (labels: readonly string[], room: number): number =>
  15 * Math.max(1, ...labels.map((label) => wrapText(label, textSize, room).length)) + 6;

const lines = (label: string, y: number, room: number): readonly Label[] => {
  const broken = wrapText(label, textSize, room);
  return broken.map((line, i): Label => [0, y + (i - (broken.length - 1) / 2) * 15, line]);
};
