type Point = readonly [number, number];

/** What of a closed outline lies at or below a height, z up (Sutherland–Hodgman against one edge). */
export function belowLevel(outline: readonly Point[], z: number): readonly Point[] {
  return outline.flatMap((point, i): readonly Point[] => {
    const before = outline.at(i - 1) ?? point;
    const crosses = before[1] <= z !== point[1] <= z;
    const share = crosses ? (z - before[1]) / (point[1] - before[1]) : 0;
    const crossing: readonly Point[] = crosses ? [[before[0] + share * (point[0] - before[0]), z]] : [];
    return point[1] <= z ? [...crossing, point] : crossing;
  });
}

/** The dipped part of a circle about the axle centre, as an outline. */
export function dippedSegment(radius: number, z: number): readonly Point[] {
  if (z <= -radius) return [];
  const half = Math.acos(Math.min(1, Math.max(-1, -z / radius)));
  const steps = 36;
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = -Math.PI / 2 - half + (2 * half * i) / steps;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}
