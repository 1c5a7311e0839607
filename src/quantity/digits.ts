/**
 * Rounding on the decimal digits of a number, half to even: the number is taken as the shortest decimal that names it,
 * so that 0.125 and 2.675 are halves, as they are on paper. The place is 10^-decimals; decimals may be negative.
 */
export function roundedDigits(value: number, decimals: number): string {
  const { digits, point } = decimalDigits(value);
  const keep = point + decimals;
  const kept = keep < 0 ? '0' : roundHalfEven(digits.padEnd(keep, '0'), keep);
  const whole = decimals < 0 ? kept + '0'.repeat(-decimals) : kept.padStart(decimals + 1, '0');
  const cut = decimals > 0 ? whole.length - decimals : whole.length;
  const text = whole.slice(0, cut).replace(/^0+(?=\d)/, '');
  return decimals > 0 ? `${text}.${whole.slice(cut)}` : text;
}

/** Decimals at which the value shows so many significant digits, taken after rounding; 0 for zero. */
export function decimalsAt(value: number, digits: number): number {
  if (value === 0) return 0;
  const { digits: all, point } = decimalDigits(value);
  // 9.96 becomes 10: one place more than it had.
  const carried = roundHalfEven(all.padEnd(digits, '0'), digits).length > digits;
  return digits - point - Number(carried);
}

/** The number rounded to significant digits. */
export function significant(value: number, digits: number): number {
  if (value === 0) return 0;
  const size = Math.abs(value);
  return Math.sign(value) * Number(roundedDigits(size, digits - decimalDigits(size).point));
}

/** 0.ddd… × 10^point, digits without leading zero. */
function decimalDigits(value: number): { readonly digits: string; readonly point: number } {
  const [mantissa, exponent] = Math.abs(value).toExponential().split('e') as [string, string];
  return { digits: mantissa.replace('.', ''), point: Number(exponent) + 1 };
}

/** The first `keep` digits as a whole number, rounded by those that follow. */
function roundHalfEven(digits: string, keep: number): string {
  const head = digits.slice(0, keep) || '0';
  const tail = digits.slice(keep);
  const up = tail >= '5' && (!/^50*$/.test(tail) || Number(head.at(-1)) % 2 === 1);
  // Beyond fifteen digits a number would lose the last.
  return keep <= 15 ? String(Number(head) + Number(up)) : String(BigInt(head) + (up ? 1n : 0n));
}
