import type { StandingData } from '../report/page.ts';
import { roundAxis } from './axis.ts';
import type { Label, Layer, Plot, Spec } from './plot.ts';
import { boxLayer, pieceLayer, spec, textLayer } from './plot.ts';
import type { Panel } from './rows.ts';
import { along, bars, ground, pixelSheet, rowNames, underlineRoom } from './rows.ts';
import { pictureWidth, soft, textSize, tint } from './theme.ts';
import type { Width } from './theme.ts';
import { textWidth } from './text-width.ts';

/** Dots with intervals of the difference to the baseline; inside the tinted band nothing is separated. */
export function standingSpec(data: StandingData, width: Width): Spec {
  const { names, rowHeight, letters } = rooms[width];
  const whole = pictureWidth[width];
  const bottom = top + data.rows.length * rowHeight;
  const room = whole - (width === 'wide' ? 120 : 0);
  const sheet = pixelSheet(width, bottom + underlineRoom(data.xTitle, room));
  const values = data.rows.flatMap((row) => [row.value, row.low, row.high]).filter((value) => value !== null);
  const axis = roundAxis([0, ...(data.band ?? []), ...values], width === 'wide' ? 5 : 4, 'values');
  const panel: Panel = { left: names + 14, width: whole - names - letters - 28, top: top - 8, bottom, axis };
  const rows = data.rows.map((row, i) => ({ ...row, y: top + (i + 0.5) * rowHeight - 4 }));
  return spec(sheet, [
    band(sheet, panel, data.band),
    ground(sheet, panel, data.xTitle, room),
    zero(sheet, panel),
    rowNames(sheet, rows, names),
    bars(
      sheet,
      panel,
      rows.flatMap(({ value, ...row }) => (value === null ? [] : [{ ...row, value }])),
    ),
    unranked(sheet, panel, rows),
    groups(sheet, rows, whole),
  ]);
}

const top = 40;
const rooms = {
  wide: { names: 196, rowHeight: 35, letters: 44 },
  narrow: { names: 96, rowHeight: 46, letters: 38 },
} as const;

type Rows = readonly (StandingData['rows'][number] & { readonly y: number })[];

function band(sheet: Plot, panel: Panel, ends: StandingData['band']): readonly Layer[] {
  if (ends === null) return [];
  const [low, high] = [along(panel, ends[0]), along(panel, ends[1])];
  const words = 'not separated inside the band';
  const half = textWidth(words, textSize) / 2;
  const middle = Math.min(Math.max((low + high) / 2, half + 2), sheet.width - half - 52);
  return [
    boxLayer(sheet, [low, panel.top], [high, panel.bottom], tint),
    ...textLayer(sheet, [[middle, 14, words]], { align: 'center', colour: soft }),
  ];
}

const zero = (sheet: Plot, panel: Panel): Layer => {
  const x = along(panel, 0);
  return pieceLayer(
    sheet,
    [
      [
        [x, panel.top],
        [x, panel.bottom],
      ],
    ],
    { colour: soft, width: 1 },
  );
};

function unranked(sheet: Plot, panel: Panel, rows: Rows): readonly Layer[] {
  const labels = rows
    .filter((row) => row.value === null)
    .map((row): Label => [along(panel, 0) + 8, row.y, 'not ranked']);
  return textLayer(sheet, labels, { colour: soft, rim: true });
}

function groups(sheet: Plot, rows: Rows, whole: number): readonly Layer[] {
  const lettered = rows.filter((row) => row.letters !== '');
  if (lettered.length === 0) return [];
  const letters = lettered.map((row): Label => [whole - 1, row.y, row.letters]);
  return [
    ...textLayer(sheet, [[whole - 1, 14, 'group']], { colour: soft, align: 'right' }),
    ...textLayer(sheet, letters, { align: 'right' }),
  ];
}
