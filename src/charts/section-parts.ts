import type { SectionData } from '../report/page.ts';
import { roundStep, tickText } from './axis.ts';
import { lettering } from './lettering.ts';
import type { Sheet } from './section-sheet.ts';
import { axisAhead, pinionName } from './section-sheet.ts';
import { element, pathOf } from './svg.ts';
import { ink, paper, soft } from './theme.ts';

/** Rim of the teeth, pitch line and axle centre. The number of teeth is not drawn: the rim is a broken line. */
export function gear({ ringRadius }: SectionData, sheet: Sheet): string {
  const [x, y] = [sheet.x(0), sheet.y(0)];
  const radius = ringRadius * sheet.scale;
  const rim = Math.max(4, radius * 0.05);
  const circle = (r: number, stroke: string, width: number, dash = '') =>
    element('circle', {
      cx: x,
      cy: y,
      r,
      fill: 'none',
      stroke,
      'stroke-width': width,
      ...(dash === '' ? {} : { 'stroke-dasharray': dash }),
      ...(width === rim ? { 'stroke-opacity': 0.45 } : {}),
    });
  return [
    circle(radius - rim / 2, soft, rim, '3.2 4.2'),
    circle(radius, ink, 1.2),
    circle(radius - rim, ink, 0.6),
    circle(radius - rim * 2.4, soft, 0.8, '10 3 2 3'),
    element('path', { d: `M${x - 9},${y}h18M${x},${y - 9}v18`, stroke: ink, 'stroke-width': 1, fill: 'none' }),
  ].join('');
}

/** The pinion's own axis, broken as axes are. */
export function pinion(data: SectionData, sheet: Sheet): string {
  if (data.pinion === null) return '';
  const y = sheet.y(data.pinion.offset);
  const ahead = axisAhead(data);
  return element('path', {
    d: pathOf([
      [sheet.x(ahead), y],
      [sheet.x(0) + 14, y],
    ]),
    fill: 'none',
    stroke: soft,
    'stroke-width': 1,
    'stroke-dasharray': '14 4 3 4',
  });
}

/** Inside the ring there is room for its own name and, unless the drawing is small, the pinion's. */
export function named(data: SectionData, sheet: Sheet): string {
  const ring = lettering({
    text: 'ring gear',
    x: sheet.x(0),
    y: sheet.y(data.ringRadius * 0.5),
    fill: soft,
    anchor: 'middle',
    rim: paper,
  });
  const name = pinionName(data, sheet);
  return name === null
    ? ring
    : ring + lettering({ text: 'pinion axis', x: name[0], y: name[1], fill: soft, rim: paper });
}

/** A plumb line beside an upright of the axle: the drawing stays with the axle, so the plumb leans. */
export function tiltSign({ tilt }: SectionData): string {
  if (tilt === 0) return '';
  const [x, top, long] = [tilt > 0 ? 4 : 12, 4, 28];
  const lean = Math.max(-10, Math.min(10, long * tilt));
  const words = `${tickText(Math.abs(tilt) * 100)} % nose ${tilt > 0 ? 'up' : 'down'}`;
  return [
    element('path', {
      d: `M${x},${top}v${long}`,
      stroke: soft,
      'stroke-width': 0.75,
      'stroke-dasharray': '2 2',
      fill: 'none',
    }),
    element('path', { d: `M${x},${top}l${lean},${long - 3}`, stroke: ink, 'stroke-width': 1.2, fill: 'none' }),
    element('circle', { cx: x + lean, cy: top + long - 1, r: 2.6, fill: ink }),
    lettering({ text: words, x: 24, y: top + 17, fill: ink }),
  ].join('');
}

export function scaleBar(sheet: Sheet): string {
  const mm = roundStep(60 / sheet.scale);
  const [x, y, long] = [2, sheet.height - 12, mm * sheet.scale];
  return [
    lettering({ text: `${mm} mm, to scale`, x: x + long + 8, y: y + 4.5, fill: soft }),
    element('path', {
      d: `M${x},${y - 4}v8M${x},${y}h${long}M${x + long},${y - 4}v8`,
      fill: 'none',
      stroke: ink,
      'stroke-width': 1.2,
    }),
  ].join('');
}
