/** Powers of ten that a double holds exactly: a product or quotient of two exact numbers is rounded once, so correctly. */
const exactTens = Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));
/** Below this a digit string read one by one into a double has lost nothing. */
const exactMantissa = 9e15;

const plus = 43;
const minus = 45;
const zero = 48;
const nine = 57;
const lowerE = 101;

/**
 * The number that bytes[from, to) spell: sign, digits, decimal mark, digits, exponent, and nothing else; NaN when they spell
 * anything else. Equal to Number(text) to the last bit, with the decimal mark put to a point.
 */
export function readNumber(bytes: Uint8Array, from: number, to: number, decimal: number): number {
  let at = from;
  const negative = bytes[at] === minus;
  if (negative || bytes[at] === plus) at++;
  let mantissa = 0;
  let digits = at;
  while (at < to) {
    const byte = bytes[at]!;
    if (byte < zero || byte > nine) break;
    mantissa = mantissa * 10 + (byte - zero);
    at++;
  }
  digits = at - digits;
  let power = 0;
  if (at < to && bytes[at] === decimal) {
    const first = ++at;
    while (at < to) {
      const byte = bytes[at]!;
      if (byte < zero || byte > nine) break;
      mantissa = mantissa * 10 + (byte - zero);
      at++;
    }
    power = first - at;
    digits -= power;
  }
  if (digits === 0) return NaN;
  if (at < to) {
    const exponent = readExponent(bytes, at, to);
    if (Number.isNaN(exponent)) return NaN;
    power += exponent;
  }
  if (mantissa > exactMantissa || power < -22 || power > 22) return readLong(bytes, from, to, decimal);
  const size = power < 0 ? mantissa / exactTens[-power]! : mantissa * exactTens[power]!;
  return negative ? -size : size;
}

function readExponent(bytes: Uint8Array, from: number, to: number): number {
  if ((bytes[from]! | 32) !== lowerE) return NaN;
  let at = from + 1;
  const negative = bytes[at] === minus;
  if (negative || bytes[at] === plus) at++;
  if (at >= to) return NaN;
  let exponent = 0;
  for (; at < to; at++) {
    const byte = bytes[at]!;
    if (byte < zero || byte > nine) return NaN;
    exponent = Math.min(exponent * 10 + (byte - zero), 99999);
  }
  return negative ? -exponent : exponent;
}

/** More digits than a double holds, or a far power of ten: rare in a log, and left to the language. */
function readLong(bytes: Uint8Array, from: number, to: number, decimal: number): number {
  let text = '';
  for (let at = from; at < to; at++) text += bytes[at] === decimal ? '.' : String.fromCharCode(bytes[at]!);
  return Number(text);
}
