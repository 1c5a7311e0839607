import type { SectionData } from '../report/page.ts';
import { roundStep, spread } from './axis.ts';
import { belowLevel, dippedSegment } from './oil-area.ts';
import type { Attributes } from './svg.ts';
import { element, escapeXml, pathOf } from './svg.ts';
import { face, ink, markOf, oil, oilTint, pictureWidth, soft, textSize } from './theme.ts';
import type { Width } from './theme.ts';
import { wrapText } from './text-width.ts';

type Point = readonly [number, number];

/** Where millimetres stand on the sheet. */
interface Sheet {
  readonly scale: number;
  readonly height: number;
  /** Right edge of the drawing and start of the words beside it, px. */
  readonly edge: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
}

/** Section of the housing to scale, seen along the axle: only what is known is drawn. Gives the inside of an `svg`. */
export function sectionDrawing(data: SectionData, width: Width): { readonly height: number; readonly inside: string } {
  const sheet = sheetFor(data, width);
  const inside = [
    oilArea(data, sheet),
    gear(data, sheet),
    pinion(data, sheet),
    surfaces(data, sheet),
    walls(data, sheet),
    insert(data, sheet),
    named(data, sheet),
    words(data, sheet, width),
    scaleBar(sheet),
  ].join('');
  return { height: sheet.height, inside };
}

const labelRoom = { wide: 190, narrow: 98 } as const;
const upperMargin = 12;

function sheetFor(data: SectionData, width: Width): Sheet {
  const points = [...data.wall, ...(data.tray ?? [])];
  const reach = data.shroud?.radius ?? 0;
  const right = Math.max(data.ringRadius, reach, ...points.map(([x]) => x));
  const left = Math.max(data.ringRadius, reach) + (data.pinion === null ? 6 : 34);
  const top = Math.max(data.ringRadius, reach, ...points.map(([, z]) => z));
  const bottom = Math.max(data.ringRadius, reach, ...points.map(([, z]) => -z));
  const across = pictureWidth[width] - labelRoom[width] - 26;
  const scale = Math.min(across / (left + right), (width === 'wide' ? 400 : 330) / (top + bottom));
  const start = width === 'wide' ? Math.max(0, (across - scale * (left + right)) / 3) : 0;
  return {
    scale,
    height: Math.round(upperMargin + scale * (top + bottom) + 46),
    edge: start + scale * (left + right) + 26,
    x: (mm) => start + (left + mm) * scale,
    y: (mm) => upperMargin + (top - mm) * scale,
  };
}

const path = (points: readonly Point[], sheet: Sheet, closed = false): string =>
  pathOf(
    points.map(([x, z]): Point => [sheet.x(x), sheet.y(z)]),
    closed,
  );

/** Under the first level: what the wall holds behind the axle, and the dipped part of the ring. Ahead of it nothing is known. */
function oilArea(data: SectionData, sheet: Sheet): string {
  const level = data.levels[0];
  if (level === undefined) return '';
  const held = belowLevel(data.wall, level.z);
  const outlines = [held, dippedSegment(data.ringRadius, level.z)].filter((outline) => outline.length > 2);
  return outlines
    .map((outline) =>
      element('path', { d: path(outline, sheet, true), fill: oilTint, stroke: oilTint, 'stroke-width': 0.5 }),
    )
    .join('');
}

/** Rim of the teeth, pitch line and axle centre. The number of teeth is not drawn: the rim is a broken line. */
function gear(data: SectionData, sheet: Sheet): string {
  const centre = { cx: sheet.x(0), cy: sheet.y(0), fill: 'none' };
  const radius = data.ringRadius * sheet.scale;
  const rim = Math.max(4, radius * 0.05);
  const [x, y] = [sheet.x(0), sheet.y(0)];
  return [
    element('circle', {
      ...centre,
      r: radius - rim / 2,
      stroke: soft,
      'stroke-width': rim,
      'stroke-dasharray': '3.2 4.2',
      'stroke-opacity': 0.45,
    }),
    element('circle', { ...centre, r: radius, stroke: ink, 'stroke-width': 1.2 }),
    element('circle', { ...centre, r: radius - rim, stroke: ink, 'stroke-width': 0.6 }),
    element('circle', {
      ...centre,
      r: radius - rim * 2.4,
      stroke: soft,
      'stroke-width': 0.8,
      'stroke-dasharray': '10 3 2 3',
    }),
    element('path', { d: `M${x - 9},${y}h18M${x},${y - 9}v18`, stroke: ink, 'stroke-width': 1, fill: 'none' }),
  ].join('');
}

function pinion(data: SectionData, sheet: Sheet): string {
  if (data.pinion === null) return '';
  const y = sheet.y(data.pinion.offset);
  const from = sheet.x(-data.ringRadius) - 30 * sheet.scale;
  return element('path', {
    d: pathOf([
      [from, y],
      [sheet.x(0) + 14, y],
    ]),
    ...thinLine(soft),
    'stroke-dasharray': '14 4 3 4',
  });
}

const thinLine = (stroke: string): Attributes => ({ fill: 'none', stroke, 'stroke-width': 1 });

/** Surface at rest, drawn as far as wall and ring are known; lips as short marks at the right. */
function surfaces(data: SectionData, sheet: Sheet): string {
  const left = sheet.x(-data.ringRadius * 0.98);
  return [
    ...data.levels.map(({ z }, i) =>
      element('path', {
        d: pathOf([
          [left, sheet.y(z)],
          [sheet.x(wallAt(data, z)), sheet.y(z)],
        ]),
        fill: 'none',
        stroke: oil,
        'stroke-width': i === 0 ? 1.6 : 1,
        ...(i === 0 ? {} : { 'stroke-dasharray': '4 3' }),
      }),
    ),
  ].join('');
}

/** How far behind the axle the wall stands at a height; the ring's rim where no wall is known there. */
function wallAt(data: SectionData, z: number): number {
  const crossings = data.wall.flatMap((point, i) => {
    const before = data.wall[i - 1];
    if (before === undefined || before[1] <= z === point[1] <= z) return [];
    return [before[0] + ((z - before[1]) / (point[1] - before[1])) * (point[0] - before[0])];
  });
  return crossings.length > 0 ? Math.max(...crossings) : Math.sqrt(Math.max(0, data.ringRadius ** 2 - z ** 2));
}

const walls = (data: SectionData, sheet: Sheet): string =>
  data.wall.length === 0
    ? ''
    : element('path', {
        d: path(data.wall, sheet),
        fill: 'none',
        stroke: ink,
        'stroke-width': 3,
        'stroke-linejoin': 'round',
      });

/** Tray and shroud in the article's own colour. Angles from straight back, upward positive. */
function insert(data: SectionData, sheet: Sheet): string {
  const look = { fill: 'none', stroke: markOf(data.mark).colour, 'stroke-width': 3, 'stroke-linecap': 'round' };
  const tray = data.tray === null ? '' : element('path', { d: path(data.tray, sheet), ...look });
  return tray + (data.shroud === null ? '' : element('path', { d: path(shroudLine(data.shroud), sheet), ...look }));
}

const shroudLine = ({ radius, from, to }: NonNullable<SectionData['shroud']>): readonly Point[] =>
  Array.from({ length: 41 }, (_, i): Point => {
    const angle = ((from + ((to - from) * i) / 40) * Math.PI) / 180;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });

/** Inside the ring there is room for its own name and the pinion's. */
function named(data: SectionData, sheet: Sheet): string {
  const ring = lettering('ring gear', sheet.x(0), sheet.y(data.ringRadius * 0.5), soft, 'middle');
  if (data.pinion === null) return ring;
  const left = sheet.x(-data.ringRadius * 0.82);
  return ring + lettering('pinion axis', left, sheet.y(data.pinion.offset) - 6, soft);
}

interface Note {
  readonly text: string;
  readonly colour: string;
  /** What it names, px. */
  readonly from: Point;
}

/** All words stand in one column at the right, each with a leader to what it names. */
function words(data: SectionData, sheet: Sheet, width: Width): string {
  const notes = notesOf(data, sheet).sort((a, b) => a.from[1] - b.from[1]);
  const broken = notes.map((note) => wrapText(note.text, textSize, labelRoom[width]));
  const gap = 15 * Math.max(1, ...broken.map((lines) => lines.length)) + 3;
  const places = spread(
    notes.map((note) => note.from[1]),
    gap,
    10,
    sheet.height - 16,
  );
  return notes
    .map((note, i) => {
      const y = places[i] ?? 0;
      const lines = broken[i] ?? [];
      const leader = pathOf([note.from, [sheet.edge - 14, y], [sheet.edge - 5, y]]);
      const top = y - ((lines.length - 1) * 15) / 2 + 4.5;
      return [
        element('path', { d: leader, fill: 'none', stroke: note.colour, 'stroke-width': 0.75 }),
        ...lines.map((line, k) => lettering(line, sheet.edge, top + 15 * k, note.colour)),
      ].join('');
    })
    .join('');
}

function notesOf(data: SectionData, sheet: Sheet): Note[] {
  const beside = (x: number, z: number): Point => [sheet.x(x) + 4, sheet.y(z)];
  const right = (points: readonly Point[]): Point => [...points].sort((a, b) => b[0] - a[0])[0] ?? [0, 0];
  return [
    ...data.levels.map(({ z, label }) => ({ text: label, colour: oil, from: beside(wallAt(data, z), z) })),
    ...data.lips.map(({ z, label }) => ({ text: label, colour: soft, from: beside(wallAt(data, z), z) })),
    ...(data.tray === null
      ? []
      : [{ text: 'tray', colour: markOf(data.mark).colour, from: beside(...right(data.tray)) }]),
    ...(data.shroud === null
      ? []
      : [{ text: 'shroud', colour: markOf(data.mark).colour, from: beside(...shroudAt(data.shroud, 35)) }]),
  ];
}

const shroudAt = ({ radius, from, to }: NonNullable<SectionData['shroud']>, wanted: number): Point => {
  const angle = (Math.min(Math.max(wanted, from), to) * Math.PI) / 180;
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
};

const lettering = (text: string, x: number, y: number, fill: string, anchor = 'start'): string =>
  element('text', { x, y, fill, 'font-family': face, 'font-size': textSize, 'text-anchor': anchor }, escapeXml(text));

function scaleBar(sheet: Sheet): string {
  const mm = roundStep(60 / sheet.scale);
  const [x, y, long] = [2, sheet.height - 12, mm * sheet.scale];
  return [
    element('path', {
      d: `M${x},${y - 4}v8M${x},${y}h${long}M${x + long},${y - 4}v8`,
      fill: 'none',
      stroke: ink,
      'stroke-width': 1.2,
    }),
    lettering(`${mm} mm, to scale`, x + long + 8, y + 4.5, soft),
  ].join('');
}
