import type { SectionData } from '../report/page.ts';
import type { Sheet } from './section-sheet.ts';
import { pathOn } from './section-sheet.ts';
import { shroudLine } from './shroud.ts';
import { element } from './svg.ts';
import { ink, markOf } from './theme.ts';

/** The inside of the housing behind the axle, as far as it was measured. */
export const walls = (data: SectionData, sheet: Sheet): string =>
  data.wall.length === 0
    ? ''
    : element('path', {
        d: pathOn(sheet, data.wall),
        fill: 'none',
        stroke: ink,
        'stroke-width': 3,
        'stroke-linejoin': 'round',
      });

/** Tray and shroud in the article's own colour. */
export function insert(data: SectionData, sheet: Sheet): string {
  const look = { fill: 'none', stroke: markOf(data.mark).colour, 'stroke-width': 3, 'stroke-linecap': 'round' };
  const tray = data.tray === null ? '' : element('path', { d: pathOn(sheet, data.tray), ...look });
  return tray + (data.shroud === null ? '' : element('path', { d: pathOn(sheet, shroudLine(data.shroud)), ...look }));
}
