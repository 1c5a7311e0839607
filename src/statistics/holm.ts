/**
 * Tails of several planned comparisons, adjusted so that the chance of any false word among them keeps its level.
 * In the order given.
 *
 *   sorted upwards, p(i) → max over j ≤ i of (m − j + 1) p(j), at most 1
 *
 * source  Holm, Scandinavian Journal of Statistics 6 (1979) 65
 */
export function holm(tails: readonly number[]): number[] {
  const upwards = tails.map((p, index) => ({ p, index })).sort((a, b) => a.p - b.p);
  const adjusted = new Array<number>(tails.length);
  let largest = 0;
  upwards.forEach(({ p, index }, i) => {
    largest = Math.max(largest, Math.min(1, (tails.length - i) * p));
    adjusted[index] = largest;
  });
  return adjusted;
}
