/**
 * Modified Bessel functions of order 0 and 1, for fins round a cylinder.
 *
 *   I_n(x) by its power series;   K_n(x) by K_n(x) = ∫ exp(−x·cosh t)·cosh(n·t) dt from 0 on
 *
 * range   0 < x < 100; K to some 12 digits, by the trapezium rule, which converges fast for it
 * source  NIST Digital Library of Mathematical Functions, 10.25.2 and 10.32.9     check: Wronskian, 10.28.2
 */
export function besselI(order: 0 | 1, x: number): number {
  let term = order === 0 ? 1 : x / 2;
  let sum = term;
  for (let k = 1; k < 500 && term > sum * 1e-17; k++) {
    term *= (x * x) / 4 / (k * (k + order));
    sum += term;
  }
  return sum;
}

export function besselK(order: 0 | 1, x: number): number {
  const step = 0.01;
  let sum = Math.exp(-x) / 2;
  for (let i = 1; i < 2000; i++) {
    const t = i * step;
    const add = Math.exp(-x * Math.cosh(t)) * (order === 0 ? 1 : Math.cosh(t));
    sum += add;
    if (add < sum * 1e-18) break;
  }
  return sum * step;
}
