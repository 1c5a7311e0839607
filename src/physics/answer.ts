/** Null for NaN and for what is beyond any number: a relation answers with a number or not at all. */
export const answer = (value: number): number | null => (Number.isFinite(value) ? value : null);

/** Whether each of these is a number above 0 and below infinity. */
export const allAbove0 = (...values: readonly number[]): boolean =>
  values.every((value) => value > 0 && value !== Infinity);
