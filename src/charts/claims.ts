import type { ClaimsData } from '../report/page.ts';
import { roundAxis } from './axis.ts';
import type { Label, Layer, Piece, Plot, Spec } from './plot.ts';
import { pieceLayer, spec, textLayer } from './plot.ts';
import type { Panel } from './rows.ts';
import { along, bars, ground, pixelSheet, rowNames, underlineRoom } from './rows.ts';
import { oil, pictureWidth, soft } from './theme.ts';
import type { Width } from './theme.ts';

/** What was found for each claim, with its own interval, and dashed beside it the threshold that the claim sets. */
export function claimsSpec(data: ClaimsData, width: Width): Spec {
  const { names, rowHeight, words } = rooms[width];
  const whole = pictureWidth[width];
  const bottom = top + data.rows.length * rowHeight;
  const room = whole - (width === 'wide' ? 120 : 0);
  const sheet = pixelSheet(width, bottom + underlineRoom(data.xTitle, room));
  const ends = data.rows.flatMap(({ value, low, high, thresholds }) => [value, low, high, ...thresholds]);
  const axis = roundAxis([0, ...ends], width === 'wide' ? 5 : 4, 'values');
  const panel: Panel = { left: names + 14, width: whole - names - words - 28, top: top - 8, bottom, axis };
  const rows = data.rows.map((row, i) => ({ ...row, y: top + (i + 0.5) * rowHeight + (width === 'wide' ? -4 : 6) }));
  return spec(sheet, [
    ground(sheet, panel, data.xTitle, room),
    upright(sheet, panel, 0),
    thresholds(sheet, panel, rows, width === 'wide' ? rowHeight : 28),
    width === 'wide' ? rowNames(sheet, rows, names) : overhead(sheet, rows, whole),
    bars(sheet, panel, rows),
    width === 'wide'
      ? textLayer(
          sheet,
          rows.map(({ y, word }): Label => [whole - 1, y, word]),
          { align: 'right' },
        )
      : [],
  ]);
}

const top = 12;
/** On a phone a row has its name and its word over it. */
const rooms = {
  wide: { names: 186, rowHeight: 38, words: 92 },
  narrow: { names: 0, rowHeight: 58, words: 10 },
} as const;

/** Claim and pair on the left, the word on the right, over the interval. */
const overhead = (
  sheet: Plot,
  rows: readonly (ClaimsData['rows'][number] & { readonly y: number })[],
  whole: number,
): Layer[] => [
  ...textLayer(
    sheet,
    rows.map(({ y, label, detail }): Label => [0, y - 17, `${label}  ${detail}`]),
    { align: 'left' },
  ),
  ...textLayer(
    sheet,
    rows.map(({ y, word }): Label => [whole - 1, y - 17, word]),
    { align: 'right' },
  ),
];

const upright = (sheet: Plot, panel: Panel, value: number): Layer => {
  const x = along(panel, value);
  const line: Piece = [
    [x, panel.top],
    [x, panel.bottom],
  ];
  return pieceLayer(sheet, [line], { colour: soft, width: 1 });
};

const thresholds = (
  sheet: Plot,
  panel: Panel,
  rows: readonly (ClaimsData['rows'][number] & { readonly y: number })[],
  rowHeight: number,
): Layer =>
  pieceLayer(
    sheet,
    rows.flatMap(({ y, thresholds: marks }) =>
      marks.map((mark): Piece => {
        const x = along(panel, mark);
        return [
          [x, y - rowHeight / 2 + 3],
          [x, y + rowHeight / 2 - 3],
        ];
      }),
    ),
    { colour: oil, width: 1.8, dash: [4, 3] },
  );
