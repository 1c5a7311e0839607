import type { Spread } from '../trial/own-axle.ts';

/** The two neighbours that a number lies between, and how far along; at a point itself both are that point. */
export interface Between {
  readonly low: number;
  readonly high: number;
  /** 0 at the lower, 1 at the higher. */
  readonly share: number;
}

/** Closer than this, as a share of the step, is the point itself. */
const atPoint = 1e-9;

/** `sorted` rising. Null outside; `slack` is how far outside still counts as the end itself. */
export function between(sorted: readonly number[], x: number, slack = 0): Between | null {
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined || !Number.isFinite(x)) return null;
  if (x < first - slack || x > last + slack) return null;
  const above = sorted.findIndex((each) => each >= x);
  if (above <= 0) return above === 0 ? only(0) : only(sorted.length - 1);
  const share = (x - sorted[above - 1]!) / (sorted[above]! - sorted[above - 1]!);
  if (share < atPoint) return only(above - 1);
  return share > 1 - atPoint ? only(above) : { low: above - 1, high: above, share };
}

const only = (i: number): Between => ({ low: i, high: i, share: 0 });

/** Along a straight line; the half-intervals too, as if both ends erred together. */
export const alongLine = (a: Spread, b: Spread, share: number): Spread => ({
  value: a.value + share * (b.value - a.value),
  half: a.half + share * (b.half - a.half),
});

/** A value between two that were found, along a power law, and how far a curve through a third one would part from it. */
export interface Bowed {
  readonly value: number;
  readonly parts: number;
}

/** Coordinate (a logarithm) and value of a point. */
export type Point = readonly [x: number, y: number];

/**
 * Along a power law between two points: ln y straight in x. Nothing was run between them, so the parabola in ln y through the
 * next point says how far that may be off; with two points alone the straight line in y does. Where a value is not above 0,
 * y itself goes straight.
 */
export function alongPower(a: Point, b: Point, next: Point | null, x: number): Bowed {
  const share = (x - a[0]) / (b[0] - a[0]);
  const line = a[1] + share * (b[1] - a[1]);
  if (!(a[1] > 0 && b[1] > 0)) return { value: line, parts: 0 };
  const value = Math.exp((1 - share) * Math.log(a[1]) + share * Math.log(b[1]));
  if (next === null || !(next[1] > 0)) return { value, parts: Math.abs(value - line) };
  const slope = (p: Point, q: Point): number => Math.log(q[1] / p[1]) / (q[0] - p[0]);
  const second = (slope(b, next) - slope(a, b)) / (next[0] - a[0]);
  return { value, parts: value * Math.abs(Math.expm1(second * (x - a[0]) * (x - b[0]))) };
}
