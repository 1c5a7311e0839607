import type { SectionData } from '../report/page.ts';
import type { Stretch, Surface } from './oil-area.ts';
import { belowSurface, dippedSegment, heightAt, knownStretch } from './oil-area.ts';
import type { Point, Sheet } from './section-sheet.ts';
import { pathOn } from './section-sheet.ts';
import { element } from './svg.ts';
import { oil, oilTint } from './theme.ts';

/** Under the first level: what the wall holds behind the axle, and the dipped part of the ring. Ahead of it nothing is known. */
export function oilArea(data: SectionData, sheet: Sheet): string {
  const [level] = data.levels;
  if (level === undefined) return '';
  const surface = { z: level.z, tilt: data.tilt };
  return [belowSurface(data.wall, surface), dippedSegment(data.ringRadius, surface)]
    .filter((outline) => outline.length > 2)
    .map((outline) =>
      element('path', { d: pathOn(sheet, outline, true), fill: oilTint, stroke: oilTint, 'stroke-width': 0.5 }),
    )
    .join('');
}

/** Where a surface of the drawing is known; where it meets no outline at all, a short stretch about the axle. */
export const stretchOf = (data: SectionData, surface: Surface): Stretch =>
  knownStretch(data.wall, data.ringRadius, surface) ?? { from: -data.ringRadius / 3, to: data.ringRadius / 3 };

/** Surfaces at rest, as far as wall and ring are known; thin and broken on to the pinion race, where that is known. */
export const surfaces = (data: SectionData, sheet: Sheet): string =>
  data.levels
    .map(({ z }, i) => {
      const surface = { z, tilt: data.tilt };
      const known = stretchOf(data, surface);
      const look = i === 0 ? { width: 1.6 } : { width: 1, dash: '4 3' };
      const rest = surfaceLine(sheet, surface, known, look);
      if (data.race === null || data.race.x >= known.from) return rest;
      return rest + surfaceLine(sheet, surface, { from: data.race.x, to: known.from }, { width: 0.9, dash: '3 3' });
    })
    .join('');

interface Look {
  readonly width: number;
  readonly dash?: string;
}

export function surfaceLine(sheet: Sheet, surface: Surface, { from, to }: Stretch, { width, dash = '' }: Look): string {
  const ends: readonly Point[] = [
    [from, heightAt(surface, from)],
    [to, heightAt(surface, to)],
  ];
  return element('path', {
    d: pathOn(sheet, ends),
    fill: 'none',
    stroke: oil,
    'stroke-width': width,
    ...(dash === '' ? {} : { 'stroke-dasharray': dash }),
  });
}
