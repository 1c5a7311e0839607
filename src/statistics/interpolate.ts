/** A surveyed table: x strictly rising. */
export interface Table {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** y at x, linear between rows; null outside the table, where nothing was surveyed. */
export function interpolate(table: Table, x: number): number | null {
  const row = rowBelow(table.x, x);
  if (row === null) return null;
  const [x0, x1] = [table.x[row]!, table.x[row + 1]!];
  const share = (x - x0) / (x1 - x0);
  return share === 1 ? table.y[row + 1]! : table.y[row]! + share * (table.y[row + 1]! - table.y[row]!);
}

/** dy/dx of the row that x lies in; null outside. On a row the steeper of its two neighbours, so that no uncertainty is lost. */
export function slopeAt(table: Table, x: number): number | null {
  const row = rowBelow(table.x, x);
  if (row === null) return null;
  const steepness = (i: number) => (table.y[i + 1]! - table.y[i]!) / (table.x[i + 1]! - table.x[i]!);
  const neighbours = [row, ...(table.x[row] === x && row > 0 ? [row - 1] : [])].map(steepness);
  return neighbours.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
}

/** x at y, where y strictly rises or strictly falls; null outside, and where y does neither. */
export function interpolateBack(table: Table, y: number): number | null {
  if (rises(table.y)) return interpolate({ x: table.y, y: table.x }, y);
  const turned = { x: table.y.toReversed(), y: table.x.toReversed() };
  return rises(turned.x) ? interpolate(turned, y) : null;
}

export const rises = (values: readonly number[]): boolean =>
  values.length > 1 && values.every((v, i) => i === 0 || v > values[i - 1]!);

/** Index of the last row at or below x that has a row above it; null outside. */
function rowBelow(xs: readonly number[], x: number): number | null {
  if (!(xs.length > 1 && x >= xs[0]! && x <= xs.at(-1)!)) return null;
  let [low, high] = [0, xs.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle;
  }
  return low;
}
