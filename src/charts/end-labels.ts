import { spread } from './axis.ts';
import type { Label, Layer, Plot } from './plot.ts';
import { fromTop, pieceLayer, pixel, textLayer } from './plot.ts';
import { soft, textSize } from './theme.ts';
import { textWidth, wrapText } from './text-width.ts';

export interface EndLabel {
  readonly text: string;
  readonly colour: string;
  readonly bold: boolean;
  /** Where the line ends, in axis units. */
  readonly x: number;
  readonly y: number;
}

const lineHeight = 15;

/** Room that the labels need to the right of the plot, px; long ones are broken rather than eating the plot. */
export const endLabelRoom = (texts: readonly string[], widest: number): number =>
  texts.length === 0
    ? 14
    : 14 +
      Math.max(
        ...texts.flatMap((text) => wrapText(text, textSize, widest)).map((line) => textWidth(line, textSize, true)),
      );

/** Names at the ends of their lines; crowded ones are spread and keep a thin leader to their line. */
export function endLabels(plot: Plot, labels: readonly EndLabel[], widest: number): readonly Layer[] {
  const broken = labels.map((label) => wrapText(label.text, textSize, widest));
  const gap = lineHeight * Math.max(1, ...broken.map((lines) => lines.length)) + 1;
  const wanted = labels.map((label) => fromTop(plot, label.y));
  const places = spread(wanted, gap, 0, plot.height + 4);
  const leaders = labels.flatMap((label, i) => {
    const moved = Math.abs((places[i] ?? 0) - (wanted[i] ?? 0)) > 4;
    return moved ? [[[label.x, label.y], pixel(plot, plot.width + 8, places[i] ?? 0)] as const] : [];
  });
  return [
    ...(leaders.length > 0 ? [pieceLayer(plot, leaders, { colour: soft, width: 0.75 })] : []),
    ...labels.flatMap((label, i) => {
      const lines = broken[i] ?? [];
      const top = (places[i] ?? 0) - ((lines.length - 1) * lineHeight) / 2;
      const words = lines.map((line, k): Label => [...pixel(plot, plot.width + 10, top + k * lineHeight), line]);
      return textLayer(plot, words, { colour: label.colour, bold: label.bold });
    }),
  ];
}
