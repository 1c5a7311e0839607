/**
 * Classical Runge–Kutta of fourth order with a fixed step; the last one is cut to end at t1.
 * `visit` sees every point, the start and the end among them. Answers y at t1.
 *
 * source  any text on numerical analysis (from memory)     check: Burden and Faires, y' = y − t² + 1
 */
export function rungeKutta4(given: {
  readonly f: (t: number, y: readonly number[]) => readonly number[];
  readonly y0: readonly number[];
  readonly t0: number;
  readonly t1: number;
  readonly step: number;
  readonly visit?: (t: number, y: readonly number[]) => void;
}): readonly number[] {
  const { f, t0, t1, visit } = given;
  const steps = Math.max(0, Math.ceil((t1 - t0) / given.step - 1e-9));
  let y = given.y0;
  visit?.(t0, y);
  for (let n = 0; n < steps; n++) {
    const t = t0 + n * given.step;
    const h = n === steps - 1 ? t1 - t : given.step;
    const k1 = f(t, y);
    const k2 = f(t + h / 2, along(y, k1, h / 2));
    const k3 = f(t + h / 2, along(y, k2, h / 2));
    const k4 = f(t + h, along(y, k3, h));
    y = y.map((value, i) => value + (h / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!));
    visit?.(t + h, y);
  }
  return y;
}

const along = (y: readonly number[], k: readonly number[], h: number): number[] => y.map((v, i) => v + h * k[i]!);
