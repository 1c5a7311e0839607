import type { HeatSeries } from './heat-series.ts';

/** Runge–Kutta 4 over the bins from t = 0; the value at each bin's middle. */
export function integrate(
  series: HeatSeries,
  start: readonly number[],
  rate: (y: readonly number[], bin: number) => readonly number[],
): Float64Array[] {
  const n = series.time_s.length;
  const out = start.map(() => new Float64Array(n));
  let y = [...start];
  for (let i = 0; i < n; i++) {
    const h = i === 0 ? series.bin_s / 2 : series.bin_s;
    const k1 = rate(y, i);
    const k2 = rate(moved(y, k1, h / 2), i);
    const k3 = rate(moved(y, k2, h / 2), i);
    const k4 = rate(moved(y, k3, h), i);
    y = y.map((v, j) => v + (h / 6) * (k1[j]! + 2 * k2[j]! + 2 * k3[j]! + k4[j]!));
    y.forEach((v, j) => (out[j]![i] = v));
  }
  return out;
}

const moved = (y: readonly number[], k: readonly number[], h: number): number[] => y.map((v, j) => v + h * k[j]!);
