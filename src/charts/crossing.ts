type Point = readonly [number, number];
type Line = readonly [Point, Point];

/** Whether two straight pieces cross: the ends of each lie on different sides of the other. */
export const cross = (a: Line, b: Line): boolean =>
  side(a, b[0]) * side(a, b[1]) < 0 && side(b, a[0]) * side(b, a[1]) < 0;

const side = ([[x1, y1], [x2, y2]]: Line, [x, y]: Point): number => (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
