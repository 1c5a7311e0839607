/**
 * The interval that leaves as many values below it as above.
 *
 *   q = pM rounded, r = (M − q)/2 rounded up:   [y(r), y(r+q)]
 *
 * `sorted` upwards, at least two values; only the two at the ends need to stand in their places.
 * source  JCGM 101:2008, 7.7.2                         check: its 9.2.2 and 9.2.3
 */
export function symmetricInterval(sorted: Float64Array, coverage: number): readonly [number, number] {
  const { low, high } = symmetricRanks(sorted.length, coverage);
  return [sorted[low]!, sorted[high]!];
}

/**
 * The shortest of all intervals that hold the share: for skewed values, where it differs from the symmetric one.
 *
 *   r with y(r+q) − y(r) least, the first of equals
 *
 * `sorted` upwards, at least two values.
 * source  JCGM 101:2008, 7.7.3 and 5.3.4               check: its 9.3 and 9.4; the exponential distribution
 */
export function shortestInterval(sorted: Float64Array, coverage: number): readonly [number, number] {
  const width = valuesBetween(sorted.length, coverage);
  let first = 0;
  for (let r = 1; r + width < sorted.length; r++) {
    if (sorted[r + width]! - sorted[r]! < sorted[first + width]! - sorted[first]!) first = r;
  }
  return [sorted[first]!, sorted[first + width]!];
}

/** Puts the two ends of the symmetric interval where sorting would put them, in a fraction of its time. Changes the order. */
export function placeSymmetricEnds(values: Float64Array, coverage: number): Float64Array {
  const { low, high } = symmetricRanks(values.length, coverage);
  placeRank(values, low, 0);
  placeRank(values, high, low + 1);
  return values;
}

/** q: half a value up, and one less than there are at most. */
const valuesBetween = (all: number, coverage: number): number =>
  Math.min(all - 1, Math.floor(coverage * all + 0.5 + 1e-9));

function symmetricRanks(all: number, coverage: number): { readonly low: number; readonly high: number } {
  if (all < 2) throw new Error('interval of fewer than two values');
  const width = valuesBetween(all, coverage);
  const low = Math.floor((all - width + 1) / 2) - 1;
  return { low, high: low + width };
}

/**
 * The value of that rank comes to its place, lower ones before it, higher ones behind.
 *
 * source  FIND of Hoare, Comm. ACM 4 (1961) 321, algorithm 65
 */
function placeRank(values: Float64Array, rank: number, from: number): void {
  let [left, right] = [from, values.length - 1];
  while (left < right) {
    const pivot = values[rank]!;
    let [up, down] = [left, right];
    while (up <= down) {
      while (values[up]! < pivot) up++;
      while (pivot < values[down]!) down--;
      if (up > down) break;
      [values[up], values[down]] = [values[down]!, values[up]!];
      up++;
      down--;
    }
    if (down < rank) left = up;
    if (rank < up) right = down;
  }
}
