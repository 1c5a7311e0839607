/** Little things that fly, each with a fate of its own. A place follows from the time alone, so that any moment can be drawn. */
export interface Flier {
  /** Between 0 and 1, of its own. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** How far on its way, 0 to 1. */
  readonly gone: number;
}

/** Between 0 and 1 from two whole numbers. */
export function chance(i: number, salt: number): number {
  let h = Math.imul(i + 1, 0x9e3779b1) ^ Math.imul(salt + 7, 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39);
  return ((h ^ (h >>> 15)) >>> 0) / 2 ** 32;
}

/** `share`: the part of its time that each is under way; the rest of it cannot be seen. */
export function fliers(n: number, salt: number, t_s: number, every_s: number, share = 1): Flier[] {
  return Array.from({ length: n }, (_, i) => {
    const turn = t_s / every_s + chance(i, salt);
    const round = Math.floor(turn);
    const now = 97 * round + i;
    return {
      ...{ a: chance(now, salt + 1), b: chance(now, salt + 2), c: chance(now, salt + 3) },
      gone: (turn - round) / share,
    };
  }).filter(({ gone }) => gone <= 1);
}
