type Point = readonly [number, number];

/** A surface through `z` at the axle centre that rises by `tilt` for each millimetre behind it. */
export interface Surface {
  readonly z: number;
  readonly tilt: number;
}

export const heightAt = ({ z, tilt }: Surface, x: number): number => z + tilt * x;

/** What of a closed outline lies at or below a surface (Sutherland–Hodgman against one edge). */
export function belowSurface(outline: readonly Point[], surface: Surface): readonly Point[] {
  return outline.flatMap((point, i): readonly Point[] => {
    const before = outline.at(i - 1) ?? point;
    const crossing = crossingOf(before, point, surface);
    const kept = depthOf(point, surface) <= 0;
    return [...(crossing === null ? [] : [crossing]), ...(kept ? [point] : [])];
  });
}

/** The dipped part of a circle about the axle centre, as an outline. */
export function dippedSegment(radius: number, { z, tilt }: Surface): readonly Point[] {
  // Distance of the centre from the surface; the segment is cut square to the plumb line, which leans with the tilt.
  const over = -z / Math.hypot(1, tilt);
  if (over >= radius) return [];
  const half = Math.acos(Math.max(-1, over / radius));
  const plumb = Math.atan2(-1, tilt);
  const steps = 36;
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = plumb - half + (2 * half * i) / steps;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * How far ahead of and behind the axle a surface is known to reach: to the wall where it is known, else to the rim of the ring.
 * Null where it meets neither.
 */
export function knownStretch(outline: readonly Point[], radius: number, surface: Surface): Stretch | null {
  const onWall = outline.flatMap((point, i) => {
    const crossing = i === 0 ? null : crossingOf(outline[i - 1] ?? point, point, surface);
    return crossing === null ? [] : [crossing[0]];
  });
  const met = [...onRing(radius, surface), ...onWall];
  return met.length === 0 ? null : { from: Math.min(...met), to: Math.max(...(onWall.length > 0 ? onWall : met)) };
}

/** Where the surface cuts a circle about the axle centre. */
function onRing(radius: number, { z, tilt }: Surface): readonly number[] {
  const square = 1 + tilt ** 2;
  const root = square * radius ** 2 - z ** 2;
  return root < 0 ? [] : [-1, 1].map((side) => (-z * tilt + side * Math.sqrt(root)) / square);
}

const depthOf = ([x, z]: Point, surface: Surface): number => z - heightAt(surface, x);

function crossingOf(from: Point, to: Point, surface: Surface): Point | null {
  const [before, after] = [depthOf(from, surface), depthOf(to, surface)];
  if (before <= 0 === after <= 0) return null;
  const share = before / (before - after);
  const x = from[0] + share * (to[0] - from[0]);
  return [x, heightAt(surface, x)];
}
