import type { HeatData } from '../report/page.ts';
import { roundAxis } from './axis.ts';
import type { Layer, Spec } from './plot.ts';
import { spec } from './plot.ts';
import type { Panel } from './rows.ts';
import { bars, ground, pixelSheet, rowNames, tallestName, underlineRoom } from './rows.ts';
import { pictureWidth } from './theme.ts';
import type { Width } from './theme.ts';

/** Heat made and heat shed by article: two panels that share their rows, side by side, or one over the other on a phone. */
export function heatSpec(data: HeatData, width: Width): Spec {
  const { names, rowHeight: least } = rooms[width];
  const labels = data.rows.map(({ label }) => label);
  const rowHeight = Math.max(least, tallestName(labels, names));
  const whole = pictureWidth[width];
  const across = width === 'wide' ? data.panels.length : 1;
  const panelWidth = (whole - names - 20) / across - (across === 1 ? 20 : aside);
  const tall = data.rows.length * rowHeight + 16;
  const under = Math.max(...data.panels.map(({ title }) => underlineRoom(title, panelWidth + 40)));
  const panels = data.panels.map(({ key, title }, i) => {
    const top = width === 'wide' ? 4 : i * (tall + under + 22) + 4;
    const left = names + 20 + (width === 'wide' ? i * (panelWidth + aside) : 0);
    const known = data.rows.map((row) => row[key]).filter((bar) => bar !== null);
    const axis = roundAxis(
      known.flatMap(({ low, high }) => [low, high]),
      across === 1 ? 4 : 3,
    );
    const panel: Panel = { left, width: panelWidth, top, bottom: top + tall, axis };
    return { key, title, panel, names: i % across === 0 };
  });
  const sheet = pixelSheet(width, Math.max(...panels.map(({ panel }) => panel.bottom)) + under);
  return spec(
    sheet,
    panels.flatMap(({ key, title, panel, names: named }): readonly (readonly Layer[])[] => {
      const rows = data.rows.map((row, i) => ({ ...row, detail: '', y: panel.top + 8 + (i + 0.5) * rowHeight }));
      const drawn = rows.flatMap(({ y, mark, [key]: bar }) => (bar === null ? [] : [{ ...bar, y, mark }]));
      return [
        ground(sheet, panel, title, panelWidth + 40),
        named ? rowNames(sheet, rows, names) : [],
        bars(sheet, panel, drawn),
      ];
    }),
  );
}

/** Between two panels side by side, px: their outer numbers must not touch. */
const aside = 46;
const rooms = { wide: { names: 170, rowHeight: 33 }, narrow: { names: 104, rowHeight: 36 } } as const;
