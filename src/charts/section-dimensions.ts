import type { SectionData } from '../report/page.ts';
import { lettering } from './lettering.ts';
import { heightAt } from './oil-area.ts';
import type { Note } from './section-notes.ts';
import type { Box } from './section-obstacles.ts';
import { boxAround, fixedWords, holds, lineWork, overlap } from './section-obstacles.ts';
import type { Point, Sheet } from './section-sheet.ts';
import { onSheet } from './section-sheet.ts';
import { element, pathOf } from './svg.ts';
import { oilTint, paper, soft, textSize } from './theme.ts';
import { textWidth } from './text-width.ts';

/** Dimension lines with end ticks; a label that finds no free place beside its line goes to the column of words. */
export function dimensionLines(
  data: SectionData,
  sheet: Sheet,
): { readonly inside: string; readonly notes: readonly Note[] } {
  if (data.dimensions.length === 0) return { inside: '', notes: [] };
  const lines = lineWork(data, sheet);
  const taken = [...fixedWords(data, sheet)];
  const notes: Note[] = [];
  const inside = data.dimensions.map(({ from, to, label }) => {
    const [start, end] = [onSheet(sheet, from), onSheet(sheet, to)];
    const free = placesFor(label, start, end).filter(
      ({ box }) =>
        box.left > 1 &&
        box.right < sheet.edge - 16 &&
        !taken.some((other) => overlap(other, box)) &&
        !hits(box, lines.outlines),
    );
    const place = free.find(({ box }) => !hits(box, lines.thin)) ?? free[0];
    if (place === undefined) {
      notes.push({ text: label, colour: soft, from: [(start[0] + end[0]) / 2, (start[1] + end[1]) / 2] });
      return dimension(start, end);
    }
    taken.push(place.box);
    const [x, y] = place.middle;
    const rim = hits(place.box, lines.thin) ? { rim: groundAt(data, sheet, place.middle) } : {};
    return dimension(start, end) + lettering({ text: label, x, y: y + 4.5, fill: soft, anchor: 'middle', ...rim });
  });
  return { inside: inside.join(''), notes };
}

const hits = (box: Box, points: readonly Point[]): boolean => points.some((point) => holds(box, point));

/** Colour behind a word inside the ring: oil or none. */
function groundAt(data: SectionData, sheet: Sheet, [x, y]: Point): string {
  const [level] = data.levels;
  if (level === undefined || Math.hypot(x - sheet.x(0), y - sheet.y(0)) > data.ringRadius * sheet.scale) return paper;
  const behind = (x - sheet.x(0)) / sheet.scale;
  return y > sheet.y(heightAt({ z: level.z, tilt: data.tilt }, behind)) ? oilTint : paper;
}

interface Place {
  readonly middle: Point;
  readonly box: Box;
}

/** Beside the line, at its middle or nearer to an end; then past its ends. */
function placesFor(text: string, start: Point, end: Point): readonly Place[] {
  const [along, across] = directions(start, end);
  const half = (direction: Point) =>
    (Math.abs(direction[0]) * textWidth(text, textSize)) / 2 + Math.abs(direction[1]) * 7;
  const beside = [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) =>
    [1, -1].map((side): Point => {
      const off = side * (half(across) + 6);
      return [0, 1].map((i) => (start[i] ?? 0) * (1 - share) + (end[i] ?? 0) * share + (across[i] ?? 0) * off) as [
        number,
        number,
      ];
    }),
  );
  const past = [end, start].map((tip, i): Point => {
    const off = (i === 0 ? 1 : -1) * (half(along) + 8);
    return [tip[0] + along[0] * off, tip[1] + along[1] * off];
  });
  return [...beside, ...past].map((middle) => ({ middle, box: boxAround(text, middle) }));
}

/** Unit steps along the line and to its right. */
function directions([x1, y1]: Point, [x2, y2]: Point): readonly [Point, Point] {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1;
  const along: Point = [(x2 - x1) / long, (y2 - y1) / long];
  const across: Point = [-along[1], along[0]];
  return [along, across[0] < 0 ? [-across[0], -across[1]] : across];
}

function dimension(start: Point, end: Point): string {
  const [, [acrossX, acrossY]] = directions(start, end);
  const tick = ([x, y]: Point) => [
    [x - 4 * acrossX, y - 4 * acrossY] as const,
    [x + 4 * acrossX, y + 4 * acrossY] as const,
  ];
  return element('path', {
    d: [[start, end], tick(start), tick(end)].map((piece) => pathOf(piece)).join(''),
    fill: 'none',
    stroke: soft,
    'stroke-width': 1,
  });
}
