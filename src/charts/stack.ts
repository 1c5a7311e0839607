/**
 * Places blocks of words of different heights near where they belong, in their order and without overlap (isotonic regression by
 * pooling neighbours); within bounds as far as these have room. Takes and gives the middles.
 */
export function stack(
  blocks: readonly { readonly wanted: number; readonly height: number }[],
  low: number,
  high: number,
) {
  const order = blocks.map((_, i) => i).sort((a, b) => (blocks[a]?.wanted ?? 0) - (blocks[b]?.wanted ?? 0));
  // Measured from where each would stand if all of them were packed at the top.
  let packed = low;
  const offset = blocks.map(() => 0);
  for (const i of order) {
    const height = blocks[i]?.height ?? 0;
    offset[i] = packed + height / 2;
    packed += height;
  }
  const pools: { mean: number; members: number[] }[] = [];
  for (const i of order) {
    let pool = { mean: (blocks[i]?.wanted ?? 0) - (offset[i] ?? 0), members: [i] };
    for (let last = pools.at(-1); last && last.mean > pool.mean; last = pools.at(-1)) {
      const members = [...last.members, ...pool.members];
      pool = { mean: (last.mean * last.members.length + pool.mean * pool.members.length) / members.length, members };
      pools.pop();
    }
    pools.push(pool);
  }
  const slack = Math.max(0, high - packed);
  const places = blocks.map(() => 0);
  for (const { mean, members } of pools)
    for (const i of members) places[i] = (offset[i] ?? 0) + Math.min(Math.max(mean, 0), slack);
  return places;
}
