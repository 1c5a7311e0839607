/** Outlines of the window views, mm: x behind the axle centre, z above it; the front of the axle is on the left. */

export type Point = readonly [x: number, z: number];

export interface Shape {
  /** Inside of the bowl, from its front edge low down to its front edge on top. */
  readonly bowl: readonly Point[];
  readonly tray: readonly [Point, Point] | null;
  readonly shroud: { readonly radius: number; readonly from_deg: number; readonly to_deg: number } | null;
}

const pressed: readonly Point[] = [
  ...[[40, -128] as const, [95, -118] as const, [128, -80] as const, [140, -20] as const],
  ...[[138, 30] as const, [118, 85] as const, [80, 120] as const, [40, 132] as const],
];
const deep: readonly Point[] = [
  ...[[40, -128] as const, [60, -158] as const, [120, -158] as const, [158, -120] as const, [166, -20] as const],
  ...[[150, 60] as const, [118, 95] as const, [80, 122] as const, [40, 132] as const],
];

const shapes: Readonly<Record<string, Shape>> = {
  P0w: { bowl: pressed, tray: null, shroud: null },
  P1w: { bowl: deep, tray: null, shroud: null },
  P2w: {
    bowl: pressed,
    tray: [
      [72, 18],
      [122, 36],
    ],
    shroud: null,
  },
  P4w: { bowl: pressed, tray: null, shroud: { radius: 131, from_deg: -60, to_deg: 150 } },
};
export const shapeOf = (article: string): Shape => shapes[article]!;

/** The carrier in front of the bowl, drawn from no measure: over the top, the pocket's roof, the nose, back along the floor. */
export const carrier: readonly Point[] = [
  ...[[40, 132] as const, [-30, 134] as const, [-98, 112] as const, [-131, 74] as const, [-150, 47] as const],
  ...[[-176, 42] as const, [-176, -92] as const, [-148, -96] as const, [-118, -100] as const, [-72, -126] as const],
  [40, -128],
];
export const pinion = { z: -32, race: 45, from: -176, to: -96 };
export const ring = { radius: 124, tooth: 11.6, teeth: 41, face: 38 };
export const tubeLip_mm = 38;

/** Where the sheet goes from the rim into the pocket above the pinion bearing. */
export const pocket: readonly [Point, Point, Point] = [
  [-107, 62],
  [-128, 54],
  [-158, 24],
];

/** Clockwise from the top as the window shows it, at a radius. */
export const clock = (deg: number, radius: number): Point => {
  const rad = (deg * Math.PI) / 180;
  return [radius * Math.sin(rad), radius * Math.cos(rad)];
};

/** Scale and origin of the two views on a canvas of 480 × 360. */
export const scale = 0.9;
export const px = (x: number): number => 176.5 + x * scale;
export const py = (z: number): number => 165.5 - z * scale;
export const at = ([x, z]: Point): string => `${px(x).toFixed(1)},${py(z).toFixed(1)}`;
export const path = (points: readonly Point[], closed = false): string =>
  `M${points.map(at).join('L')}${closed ? 'Z' : ''}`;

/** An arc about the axle centre, from one clock angle to another, as a run of points. */
export const arc = (from_deg: number, to_deg: number, radius: number): Point[] => {
  const n = Math.max(2, Math.ceil(Math.abs(to_deg - from_deg) / 4));
  return Array.from({ length: n + 1 }, (_, i) => clock(from_deg + ((to_deg - from_deg) * i) / n, radius));
};
