import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A stream of random numbers of its own for every purpose, so that adding one draw moves nothing else. */
export interface Stream {
  /** Even between low and high. */
  readonly even: (low: number, high: number) => number;
  readonly normal: (sd: number) => number;
}

export function stream(...keys: readonly number[]): Stream {
  const source = xoroshiro128plus(keys.reduce(mix, 0x9e3779b9));
  const unit = (): number => uniformFloat64(source);
  let spare: number | null = null;
  const standard = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const x = 2 * unit() - 1;
      const y = 2 * unit() - 1;
      const square = x * x + y * y;
      if (square === 0 || square >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * scale;
      return x * scale;
    }
  };
  return { even: (low, high) => low + (high - low) * unit(), normal: (sd) => sd * standard() };
}

/** For a run without noise: always the middle. */
export const still: Stream = { even: (low, high) => (low + high) / 2, normal: () => 0 };

export function shuffled<T>(items: readonly T[], from: Stream): T[] {
  const rest = [...items];
  return items.map(() => rest.splice(Math.floor(from.even(0, rest.length)), 1)[0]!);
}

/** Neighbouring keys must not give neighbouring streams. */
function mix(state: number, key: number): number {
  let h = (state ^ key) | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) | 0;
}
