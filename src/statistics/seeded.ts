import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';

/** Whole numbers of 32 bits, from -2³¹ on, one after the other. */
export interface Source {
  next(): number;
}

/**
 * A source of its own for each list of keys: neighbouring keys share nothing, and what else is drawn moves nothing.
 * All 128 bits of the state come from the keys.
 *
 * source  xoroshiro128+ of Blackman and Vigna, ACM Trans. Mathematical Software 47 (2021) 36, by the library pure-rand
 *         check: first numbers of its reference program from state 1, 2
 */
export function seededSource(...keys: readonly (string | number)[]): Source {
  const text = new TextEncoder().encode(JSON.stringify(keys));
  return xoroshiro128plusFromState([1, 2, 3, 4].map((seed) => textHash(text, seed)));
}

/** Pairs of independent standard normal numbers, by the polar method (Marsaglia and Bray, SIAM Review 6, 1964, 260). */
export function fillNormal(into: Float64Array, source: Source): void {
  for (let i = 0; i < into.length; i += 2) {
    let [x, y, square] = [0, 0, 0];
    do {
      x = source.next() * perUnit;
      y = source.next() * perUnit;
      square = x * x + y * y;
    } while (square >= 1 || square === 0);
    const scale = Math.sqrt((-2 * Math.log(square)) / square);
    into[i] = x * scale;
    // In an odd length the last one is written past the end, where a typed array drops it.
    into[i + 1] = y * scale;
  }
}

/** Even between -√3 and √3, whose standard deviation is 1; the middle of each of 2³² steps. */
export function fillRectangular(into: Float64Array, source: Source): void {
  for (let i = 0; i < into.length; i++) into[i] = (source.next() + 0.5) * perUnit * Math.sqrt(3);
}

/**
 * Chi-square, whole or broken degrees of freedom above zero.
 *
 *   χ²_ν = 2 Γ(ν/2);   Γ(a) by rejection with a normal cubed for a ≥ 1, below that Γ(a + 1) · U^(1/a)
 *
 * source  Marsaglia and Tsang, ACM Trans. Mathematical Software 26 (2000) 363
 *         check: moments ν and 2ν; Student's t made with it
 */
export function fillChiSquare(into: Float64Array, source: Source, dof: number): void {
  const shape = dof / 2;
  const d = (shape < 1 ? shape + 1 : shape) - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  const normals = new Float64Array(256);
  let used = normals.length;
  for (let i = 0; i < into.length; i++) {
    for (;;) {
      if (used === normals.length) {
        fillNormal(normals, source);
        used = 0;
      }
      const x = normals[used++]!;
      const square = x * x;
      const root = 1 + c * x;
      if (root <= 0) continue;
      const v = root * root * root;
      const even = unit(source);
      // The first condition implies the second and spares two logarithms nearly always.
      if (even < 1 - 0.0331 * square * square || Math.log(even) < square / 2 + d * (1 - v + Math.log(v))) {
        into[i] = 2 * d * v;
        break;
      }
    }
    if (shape < 1) into[i]! *= unit(source) ** (1 / shape);
  }
}

const perUnit = 2 ** -31;

/** Between 0 and 1, neither of them reached. */
const unit = (source: Source): number => (source.next() + 0.5) * 2 ** -32 + 0.5;

/**
 * 32 bits from bytes.
 *
 * source  MurmurHash3_x86_32 of Appleby (public domain)        check: values of its reference program
 */
export function textHash(bytes: Uint8Array, seed: number): number {
  let h = seed | 0;
  const whole = bytes.length & ~3;
  for (let i = 0; i < whole; i += 4) {
    h ^= scrambled(bytes[i]! | (bytes[i + 1]! << 8) | (bytes[i + 2]! << 16) | (bytes[i + 3]! << 24));
    h = (Math.imul((h << 13) | (h >>> 19), 5) + 0xe6546b64) | 0;
  }
  let rest = 0;
  for (let i = bytes.length - 1; i >= whole; i--) rest = (rest << 8) | bytes[i]!;
  h ^= scrambled(rest) ^ bytes.length;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}

function scrambled(word: number): number {
  const k = Math.imul(word, 0xcc9e2d51);
  return Math.imul((k << 15) | (k >>> 17), 0x1b873593);
}

/** Sixteen hexadecimal digits that stand for a text: enough to see that it was changed, or to draw by. */
export function shortSum(text: string): string {
  const bytes = new TextEncoder().encode(text);
  return [0, 1].map((n) => (textHash(bytes, n) >>> 0).toString(16).padStart(8, '0')).join('');
}
