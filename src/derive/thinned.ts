/** Means of even stretches of time, at most `most` of them, for drawing. Stretches without a reading are left out. */
export function thinned(
  time_s: Float64Array,
  values: Float64Array,
  most: number,
): { readonly time_s: number[]; readonly value: number[] } {
  const end = (time_s.at(-1) ?? 0) + 1e-9;
  const start = time_s[0] ?? 0;
  const sum = new Float64Array(most);
  const at = new Float64Array(most);
  const n = new Float64Array(most);
  for (let i = 0; i < values.length; i++) {
    const v = values[i]!;
    if (Number.isNaN(v)) continue;
    const bin = Math.min(most - 1, Math.floor(((time_s[i]! - start) / (end - start)) * most));
    sum[bin]! += v;
    at[bin]! += time_s[i]!;
    n[bin]! += 1;
  }
  const full = [...n.keys()].filter((b) => n[b]! > 0);
  return { time_s: full.map((b) => at[b]! / n[b]!), value: full.map((b) => sum[b]! / n[b]!) };
}
