/**
 * Modified Bessel functions of order 0 and 1 for rods and rings, freed of their growth: e^(−x) I(x) and e^x K(x), so that
 * neither overflows. Power series for I and the integral of cosh for K up to x = 30, the series in 1/x above.
 *
 * x            [1], above 0
 * returns      [1], to about 14 digits
 * source       any table of functions (from memory)      check: mpmath at 30 digits
 */
export const scaledI = (order: 0 | 1, x: number): number =>
  x < turn ? seriesI(order, x) : inverseSeries(order, x, -1);

/** As scaledI. */
export const scaledK = (order: 0 | 1, x: number): number =>
  x < turn ? integralK(order, x) : Math.PI * inverseSeries(order, x, 1);

/** Above it e^(−2x), what the series in 1/x leaves out, is far below the last digit. */
const turn = 30;

/** Σ (x/2)^(2k + n)/(k! (k + n)!) times e^(−x): all terms have one sign. */
function seriesI(order: 0 | 1, x: number): number {
  let term = order === 0 ? 1 : x / 2;
  let sum = term;
  for (let k = 1; term > sum * 1e-17; k++) {
    term *= (x / 2) ** 2 / (k * (k + order));
    sum += term;
  }
  return sum * Math.exp(-x);
}

/** ∫ exp(−x (cosh t − 1)) cosh(n t) dt from 0; at this step the trapezoid errs by less than e^(x/2 − 2π/step), below the last digit. */
function integralK(order: 0 | 1, x: number): number {
  const step = 0.08;
  let sum = 0.5;
  for (let i = 1; ; i++) {
    const t = i * step;
    // cosh t − 1 without the loss of its digits at small t
    const term = Math.exp(-2 * x * Math.sinh(t / 2) ** 2) * (order === 0 ? 1 : Math.cosh(t));
    sum += term;
    if (term <= sum * 1e-17 || !Number.isFinite(sum)) return sum * step;
  }
}

/** 1/√(2πx) Σ (±1)^k Π (4n² − (2j − 1)²)/(k! (8x)^k), cut where it no longer matters. */
function inverseSeries(order: 0 | 1, x: number, sign: 1 | -1): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; Math.abs(term) > 1e-17; k++) {
    term *= (sign * (4 * order - (2 * k - 1) ** 2)) / (k * 8 * x);
    sum += term;
  }
  return sum / Math.sqrt(2 * Math.PI * x);
}
