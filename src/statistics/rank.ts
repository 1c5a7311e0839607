import { dependentColumn, factor } from './householder.ts';

/** How many of the vectors are independent of those before them. */
export const rank = (vectors: readonly (readonly number[])[]): number => basis(vectors).length;

/** Whether a vector is a sum of multiples of the others; of a design and a contrast: whether the contrast can be estimated. */
export const inSpan = (vectors: readonly (readonly number[])[], vector: readonly number[]): boolean =>
  vector.every((x) => x === 0) || dependentOn(basis(vectors), vector);

function basis(vectors: readonly (readonly number[])[]): (readonly number[])[] {
  const kept: (readonly number[])[] = [];
  for (const vector of vectors) if (!dependentOn(kept, vector)) kept.push(vector);
  return kept;
}

/** To a millionth of a millionth: designs hold noughts, ones, and values scaled to about one. */
const dependentOn = (kept: readonly (readonly number[])[], vector: readonly number[]): boolean =>
  dependentColumn(factor([...kept, vector], vector.length), 1e-12) !== null;
