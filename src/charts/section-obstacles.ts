import type { SectionData } from '../report/page.ts';
import { heightAt } from './oil-area.ts';
import { stretchOf } from './section-oil.ts';
import { raceName } from './section-race.ts';
import { barNamePlaces } from './section-running.ts';
import type { Point, Sheet } from './section-sheet.ts';
import { axisAhead, onSheet, pinionName } from './section-sheet.ts';
import { shroudLine } from './shroud.ts';
import { textSize } from './theme.ts';
import { textWidth } from './text-width.ts';

/** A place for words, px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const boxAround = (text: string, [x, y]: Point): Box => {
  const half = textWidth(text, textSize) / 2;
  return { left: x - half, right: x + half, top: y - 7, bottom: y + 7 };
};

export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** A rim of two pixels is kept clear. */
export const holds = ({ left, right, top, bottom }: Box, [x, y]: Point): boolean =>
  x > left - 2 && x < right + 2 && y > top - 2 && y < bottom + 2;

export interface LineWork {
  readonly outlines: readonly Point[];
  /** Pitch line and axes, which a word may cross if it must. */
  readonly thin: readonly Point[];
}

/** Points on all lines of the drawing, near enough to each other that no word slips between them, px. */
export function lineWork(data: SectionData, sheet: Sheet): LineWork {
  const { ringRadius, race, pinion } = data;
  const leaning = [...data.levels, ...data.running].map(({ z }): readonly Point[] => {
    const surface = { z, tilt: data.tilt };
    const { from, to } = stretchOf(data, surface);
    const start = race === null ? from : Math.min(from, race.x);
    return [
      [start, heightAt(surface, start)],
      [to, heightAt(surface, to)],
    ];
  });
  const outlines: readonly (readonly Point[])[] = [
    circle([0, 0], ringRadius),
    circle([0, 0], ringRadius * 0.95),
    ...crossOf(9 / sheet.scale),
    data.wall,
    data.tray ?? [],
    data.shroud === null ? [] : shroudLine(data.shroud),
    ...(race === null ? [] : [circle([race.x, race.z], race.radius), uprightOf(race)]),
    ...leaning,
    ...data.dimensions.map(({ from, to }) => [from, to]),
  ];
  const thin: readonly (readonly Point[])[] = [
    circle([0, 0], ringRadius * 0.88),
    ...(pinion === null
      ? []
      : [[[axisAhead(data), pinion.offset] as const, [14 / sheet.scale, pinion.offset] as const]]),
  ];
  const points = (lines: readonly (readonly Point[])[]) =>
    lines.flatMap((line) => sampled(line.map((point) => onSheet(sheet, point))));
  return { outlines: points(outlines), thin: points(thin) };
}

/** Words that stand inside the drawing whatever is dimensioned. */
export function fixedWords(data: SectionData, sheet: Sheet): readonly Box[] {
  const axis = pinionName(data, sheet);
  return [
    boxAround('ring gear', onSheet(sheet, [0, data.ringRadius * 0.5])),
    ...(axis === null ? [] : [boxFrom('pinion axis', axis)]),
    ...raceName(data, sheet).map(({ text, x, y }) => boxFrom(text, [x, y])),
    ...barNamePlaces(data, sheet).map(({ text, x, y }) => boxAround(text, [x, y - 4.5])),
  ];
}

/** Of words that begin at a place. */
const boxFrom = (text: string, [left, y]: Point): Box => ({
  left,
  right: left + textWidth(text, textSize),
  top: y - 12,
  bottom: y + 3,
});

/** The cross at the centre. */
const crossOf = (arm: number): readonly (readonly Point[])[] => [
  [
    [-arm, 0],
    [arm, 0],
  ],
  [
    [0, -arm],
    [0, arm],
  ],
];

const uprightOf = ({ x, z, radius }: NonNullable<SectionData['race']>): readonly Point[] => [
  [x, z + radius],
  [x, z - radius],
];

const circle = ([x, z]: Point, radius: number): readonly Point[] =>
  Array.from({ length: 49 }, (_, i): Point => {
    const angle = (i * Math.PI) / 24;
    return [x + radius * Math.cos(angle), z + radius * Math.sin(angle)];
  });

const sampled = (line: readonly Point[]): readonly Point[] =>
  line.flatMap(([x, y], i) => {
    const [beforeX, beforeY] = line[i - 1] ?? [x, y];
    const parts = Math.max(1, Math.ceil(Math.hypot(x - beforeX, y - beforeY) / 4));
    return Array.from({ length: parts }, (_, k): Point => {
      const share = (k + 1) / parts;
      return [beforeX + share * (x - beforeX), beforeY + share * (y - beforeY)];
    });
  });
