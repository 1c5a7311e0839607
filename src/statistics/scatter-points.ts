/**
 * Points and weights to average over what a standard deviation with these degrees of freedom may really be:
 * x = √(χ²_ν/ν), weights not normalised. One point at 1 for infinite degrees.
 *
 * Even steps in u = ln x: the density vanishes smoothly at both ends, so plain sums converge fast and need no gamma function.
 */
export function scatterPoints(dof: number): readonly { readonly x: number; readonly weight: number }[] {
  if (dof === Infinity) return [{ x: 1, weight: 1 }];
  const [low, high] = [-28 / dof - 6 / Math.sqrt(dof), 6 / Math.sqrt(dof)];
  const points = Math.ceil(((high - low) * Math.sqrt(dof)) / 0.16);
  return Array.from({ length: points + 1 }, (_, i) => {
    const u = low + ((high - low) * i) / points;
    const x = Math.exp(u);
    return { x, weight: Math.exp(dof * (u - (x * x - 1) / 2)) };
  }).filter(({ weight }) => weight > 1e-15);
}
