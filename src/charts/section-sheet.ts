import type { SectionData } from '../report/page.ts';
import { shroudLine } from './shroud.ts';
import { pathOf } from './svg.ts';
import { pictureWidth, textSize } from './theme.ts';
import { textWidth } from './text-width.ts';
import type { Width } from './theme.ts';

export type Point = readonly [number, number];

/** Where millimetres stand on the sheet. */
export interface Sheet {
  readonly scale: number;
  readonly height: number;
  /** Right edge of the drawing and start of the words beside it, px. */
  readonly edge: number;
  /** Room for these words, px. */
  readonly room: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
}

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const labelRoom = { wide: 190, narrow: 98 } as const;
const tallest = { wide: 400, narrow: 330 } as const;
/** Past the outlines, mm. */
const rim = 6;
/** The pinion's axis is drawn this far ahead of the ring where its race is not known, mm. */
const pinionAhead = 30;

/** Drawings that share a frame share a scale. */
export function sheetFor(data: SectionData, width: Width): Sheet {
  const extent = framed(extentOf(data), data.frame);
  const left = Math.max(rim - extent.left, data.pinion === null ? 0 : data.ringRadius + pinionAhead + 4);
  const [across, up] = [left + extent.right, extent.top - extent.bottom];
  const room = pictureWidth[width] - labelRoom[width] - 26;
  const scale = Math.min(room / across, tallest[width] / up);
  const start = width === 'wide' ? Math.max(0, (room - scale * across) / 3) : 0;
  // The sign of the tilt hangs over the drawing.
  const upper = data.tilt === 0 ? 12 : 40;
  return {
    scale,
    height: Math.round(upper + scale * up + 46),
    edge: start + scale * across + 26,
    room: labelRoom[width],
    x: (mm) => start + (left + mm) * scale,
    y: (mm) => upper + (extent.top - mm) * scale,
  };
}

/** All that is drawn, mm from the axle centre. */
function extentOf(data: SectionData): Frame {
  const points: readonly Point[] = [
    ...[-data.ringRadius, data.ringRadius].flatMap((r): Point[] => [
      [r, 0],
      [0, r],
    ]),
    ...data.wall,
    ...(data.tray ?? []),
    ...(data.shroud === null ? [] : shroudLine(data.shroud)),
    ...data.lips.map(({ z }): Point => [0, z]),
    ...data.dimensions.flatMap(({ from, to }) => [from, to]),
    ...(data.race === null ? [] : cornersOf(data.race)),
  ];
  const xs = points.map(([x]) => x);
  const zs = points.map(([, z]) => z);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.max(...zs), bottom: Math.min(...zs) };
}

const cornersOf = ({ x, z, radius }: NonNullable<SectionData['race']>): readonly Point[] => [
  [x - radius, z - radius],
  [x + radius, z + radius],
];

/** Nothing is cut off, even when the frame is too small for it. */
const framed = (own: Frame, frame: SectionData['frame']): Frame =>
  frame === null
    ? own
    : {
        left: Math.min(own.left, frame.left),
        right: Math.max(own.right, frame.right),
        top: Math.max(own.top, frame.top),
        bottom: Math.min(own.bottom, frame.bottom),
      };

export const onSheet = (sheet: Sheet, [x, z]: Point): Point => [sheet.x(x), sheet.y(z)];

export const pathOn = (sheet: Sheet, points: readonly Point[], closed = false): string =>
  pathOf(
    points.map((point) => onSheet(sheet, point)),
    closed,
  );

/** How far ahead the pinion's axis is drawn: through its race where that is known, mm. */
export const axisAhead = ({ ringRadius, race }: SectionData): number =>
  race === null ? -ringRadius - pinionAhead : race.x - race.radius;

/** Where the axis is named: left of the cross at the centre; null where there is no room for it, px. */
export function pinionName({ ringRadius, pinion }: SectionData, sheet: Sheet): Point | null {
  if (pinion === null) return null;
  const [x, y] = onSheet(sheet, [-ringRadius * 0.82, pinion.offset]);
  return x + textWidth('pinion axis', textSize) + 12 > sheet.x(0) ? null : [x, y - 6];
}
