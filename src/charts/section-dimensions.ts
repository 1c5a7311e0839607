import type { SectionData } from '../report/page.ts';
import { cross } from './crossing.ts';
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

/**
 * Dimension lines with end ticks. A label stands beside its line; without a free place there a little off, on a leader; without any
 * in the column of words.
 */
export function dimensionLines(
  data: SectionData,
  sheet: Sheet,
): { readonly inside: string; readonly notes: readonly Note[] } {
  if (data.dimensions.length === 0) return { inside: '', notes: [] };
  const lines = lineWork(data, sheet);
  const taken = [...fixedWords(data, sheet)];
  const isFree = ({ box }: Place): boolean =>
    within(sheet, box) && !taken.some((other) => overlap(other, box)) && !hits(box, lines.outlines);
  const words = data.dimensions.map(({ from, to, label }) => {
    const [start, end] = [onSheet(sheet, from), onSheet(sheet, to)];
    const beside = besideLine(label, start, end).filter(isFree);
    const place = beside.find(({ box }) => !hits(box, lines.thin)) ?? beside[0];
    if (place !== undefined) taken.push(place.box);
    return { label, start, end, place };
  });
  const notes: Note[] = [];
  const inside = words.map(({ label, start, end, place }) => {
    const letters = (at: Place): string => {
      const rim = hits(at.box, lines.thin) ? { rim: groundAt(data, sheet, at.middle) } : {};
      const [x, y] = at.middle;
      return lettering({ text: label, x, y: y + 4.5, fill: soft, anchor: 'middle', ...rim });
    };
    if (place !== undefined) return dimension(start, end) + letters(place);
    const middle: Point = [(start[0] + end[0]) / 2, (start[1] + end[1]) / 2];
    const others = words.flatMap((word) => (word.start === start ? [] : [[word.start, word.end] as const]));
    const off = around(label, middle).find((each) => {
      const leader = [middle, edgeOf(each.box, middle)] as const;
      const over = [...others, ...taken.map(diagonal)];
      return isFree(each) && !over.some((line) => cross(leader, line));
    });
    if (off === undefined) notes.push({ text: label, colour: soft, from: middle });
    else taken.push(off.box);
    return dimension(start, end) + (off === undefined ? '' : leaderTo(off.box, middle) + letters(off));
  });
  return { inside: inside.join(''), notes };
}

/** Between the upper edge and the bar of the scale, left of the column of words. */
const within = (sheet: Sheet, { left, right, top, bottom }: Box): boolean =>
  left > 1 && right < sheet.edge - 16 && top > 1 && bottom < sheet.height - 22;

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
function besideLine(text: string, start: Point, end: Point): readonly Place[] {
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

/** Wider and wider round a place, below first. */
function around(text: string, [x, y]: Point): readonly Place[] {
  return [26, 44, 62, 80, 98, 116, 134].flatMap((far) =>
    Array.from({ length: 16 }, (_, i): Place => {
      const angle = Math.PI / 2 + ((i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * Math.PI) / 8;
      const middle: Point = [x + far * Math.cos(angle) * 1.4, y + far * Math.sin(angle)];
      return { middle, box: boxAround(text, middle) };
    }),
  );
}

const diagonal = ({ left, right, top, bottom }: Box) =>
  [
    [left, bottom],
    [right, top],
  ] as const;

const edgeOf = ({ left, right, top, bottom }: Box, [x, y]: Point): Point => [
  Math.min(Math.max(x, left), right),
  Math.min(Math.max(y, top), bottom),
];

const leaderTo = (box: Box, from: Point): string =>
  element('path', { d: pathOf([edgeOf(box, from), from]), fill: 'none', stroke: soft, 'stroke-width': 0.75 });

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
