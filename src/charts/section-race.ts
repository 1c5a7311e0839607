import type { SectionData } from '../report/page.ts';
import { lettering } from './lettering.ts';
import type { Sheet } from './section-sheet.ts';
import { element } from './svg.ts';
import { ink, soft, textSize } from './theme.ts';
import { wrapText } from './text-width.ts';

/** The front race turns about the pinion's axis and is seen edge on; the thin circle is the same race turned into the sheet. */
export function race(data: SectionData, sheet: Sheet): string {
  if (data.race === null) return '';
  const { x, z, radius } = data.race;
  const [across, top, bottom] = [sheet.x(x), sheet.y(z + radius), sheet.y(z - radius)];
  return [
    element('circle', {
      cx: across,
      cy: sheet.y(z),
      r: radius * sheet.scale,
      fill: 'none',
      stroke: soft,
      'stroke-width': 1,
    }),
    element('path', {
      d: `M${across - 4},${top}h8M${across},${top}V${bottom}M${across - 4},${bottom}h8`,
      fill: 'none',
      stroke: ink,
      'stroke-width': 2.2,
    }),
    ...raceName(data, sheet).map((line) => lettering({ ...line, fill: soft })),
  ].join('');
}

/** Its name stands over it, as wide as there is room beside the ring, px. */
export function raceName(data: SectionData, sheet: Sheet): readonly { text: string; x: number; y: number }[] {
  if (data.race === null) return [];
  const x = sheet.x(data.race.x - data.race.radius);
  const foot = sheet.y(data.race.z + data.race.radius) - 8;
  const room = sheet.x(-Math.max(data.ringRadius, data.shroud?.radius ?? 0)) - x - 6;
  const lines = wrapText('pinion bearing race', textSize, room);
  return lines.map((text, i) => ({ text, x, y: foot - 15 * (lines.length - 1 - i) }));
}
