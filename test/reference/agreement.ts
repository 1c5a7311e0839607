import { expect, it } from 'vitest';
import { today, type Inputs, type Relation } from '../../src/physics/relation.ts';

/** One test a check of the relation: its source in the title, the printed digits as tolerance unless the check says why not. */
export function agreesWithItsSources<I extends Inputs>(relation: Relation<I>): void {
  it.each(today(relation))(
    `${relation.title}: $source ($seen) prints $printed $unit`,
    ({ got, printed, tolerance }) => {
      expect(got).not.toBeNull();
      expect(Math.abs(got! - Number(printed))).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
    },
  );
}

/** For rows that give more digits than a source prints: agreement to a stated share of the value. */
export function expectNear(got: number | null, expected: number, relative: number): void {
  expect(got).not.toBeNull();
  expect(Math.abs(got! - expected)).toBeLessThanOrEqual(Math.abs(expected) * relative);
}
