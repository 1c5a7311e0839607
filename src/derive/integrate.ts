import type { HeatSeries } from './heat-series.ts';

/** Rates of change of sump and skin, K/s, written into `rate`. */
export type Rates = (sump_K: number, skin_K: number, ambient_K: number, rate: Float64Array) => void;

/**
 * Runge–Kutta 4 over the bins of a run from t = 0, ambient as logged; values at each bin's middle. One store leaves the
 * skin where it starts. Called some thousand times a run, so nothing is allocated on the way.
 */
export function integrate(
  series: Pick<HeatSeries, 'bin_s' | 'ambient_K'>,
  start: { readonly sump_K: number; readonly skin_K: number },
  rates: Rates,
): { readonly sump_K: Float64Array; readonly skin_K: Float64Array } {
  const n = series.ambient_K.length;
  const sump_K = new Float64Array(n);
  const skin_K = new Float64Array(n);
  const [k1, k2, k3, k4] = [new Float64Array(2), new Float64Array(2), new Float64Array(2), new Float64Array(2)];
  let a = start.sump_K;
  let b = start.skin_K;
  for (let i = 0; i < n; i++) {
    const h = i === 0 ? series.bin_s / 2 : series.bin_s;
    const air = series.ambient_K[i]!;
    rates(a, b, air, k1);
    rates(a + (h / 2) * k1[0]!, b + (h / 2) * k1[1]!, air, k2);
    rates(a + (h / 2) * k2[0]!, b + (h / 2) * k2[1]!, air, k3);
    rates(a + h * k3[0]!, b + h * k3[1]!, air, k4);
    a += (h / 6) * (k1[0]! + 2 * k2[0]! + 2 * k3[0]! + k4[0]!);
    b += (h / 6) * (k1[1]! + 2 * k2[1]! + 2 * k3[1]! + k4[1]!);
    sump_K[i] = a;
    skin_K[i] = b;
  }
  return { sump_K, skin_K };
}
