/** Height and free surface at it; height rises strictly, surface is above 0 and linear between rows. */
export interface AreaRow {
  readonly h_m: number;
  readonly area_m2: number;
}

/**
 * Volume below a height from a table of surfaces: exact trapezoids.
 *
 *   V(h) = Σ ½ (A_i + A_{i+1}) (h_{i+1} − h_i)
 *
 * height       [m]
 * returns      V [m³] above the first row; null outside the table
 * range        the rows of the table
 * source       definition      check: 50 mm of the sample table hold 0.91 L (computed by another program)
 */
export function volumeByArea_m3(at: { table: readonly AreaRow[]; h_m: number }): number | null {
  for (const segment of segments(at.table)) {
    const up = at.h_m - segment.low.h_m;
    if (up >= 0 && at.h_m <= segment.high.h_m)
      return segment.below_m3 + up * (segment.low.area_m2 + 0.5 * segment.s * up);
  }
  return null;
}

/**
 * Height of a volume, the same turned round by the root that stays exact for upright walls.
 *
 *   h = h_i + 2 r/(A_i + √(A_i² + 2 s r)),  r = V − V_i,  s = dA/dh
 *
 * volume       [m³] above the first row
 * returns      h [m]; null outside the table
 * range        the rows of the table
 * source       definition      check: 1.5 L stand at 72.916504 mm (computed by another program)
 */
export function levelByArea_m(at: { table: readonly AreaRow[]; volume_m3: number }): number | null {
  for (const { low, s, below_m3, whole_m3 } of segments(at.table)) {
    const r = at.volume_m3 - below_m3;
    if (r >= 0 && r <= whole_m3) return low.h_m + (2 * r) / (low.area_m2 + Math.sqrt(low.area_m2 ** 2 + 2 * s * r));
  }
  return null;
}

function* segments(table: readonly AreaRow[]) {
  let below_m3 = 0;
  for (const [i, high] of table.entries()) {
    const low = table[i - 1];
    if (low === undefined) continue;
    const rise_m = high.h_m - low.h_m;
    const whole_m3 = 0.5 * (low.area_m2 + high.area_m2) * rise_m;
    yield { low, high, s: (high.area_m2 - low.area_m2) / rise_m, below_m3, whole_m3 };
    below_m3 += whole_m3;
  }
}
