import '../../matchers.ts';
import { describe, expect, it } from 'vitest';
import { levelSlope } from '../../../src/compare/level-slope.ts';
import { norris } from '../../reference/tables/strd-linear.ts';
import { estimate, exact, standardUncertainty, type Estimate } from '../../../src/quantity/estimate.ts';

const through = (points: readonly (readonly [level: Estimate, value: Estimate])[]) =>
  levelSlope(points.map(([level, value]) => ({ level, value })));
const of = (value: number, cause: string, u: number): Estimate => estimate(value, [{ cause, u }]);

describe('a line through levels', () => {
  it('leaves a straight line as it is', () => {
    // 100 W and 3 W a millimetre, at four levels
    const line = through([0, 4, 10, 11].map((z) => [exact(z), exact(100 + 3 * z)]))!;
    expect(line.value).toBeCloseTo(3, 12);
    expect(line.parts).toEqual([]);
  });

  it('has the certified slope of a line with scatter (NIST StRD, Norris)', () => {
    const line = through(norris.y.map((y, i) => [exact(norris.x[0]![i]!), exact(y)]))!;
    expect(line.value).toShareDigits(norris.certified[1]!, 12);
  });

  it('passes on an error of one level: of two points 2 mm and 4 W apart a millimetre more makes it 1 W/mm less', () => {
    const line = through([
      [exact(0), exact(10)],
      [of(2, 'rule', 0.1), exact(14)],
    ])!;
    // b = 4/(z2 − z1), db/dz2 = −4/4
    expect(line.parts).toEqual([{ cause: 'rule', u: expect.closeTo(-0.1, 12) as number }]);
  });

  it('passes on an error of one value by its distance from the mean level', () => {
    // off −5, 0, 5 mm: S 50 mm²; 2 W at the top come to 2·5/50
    const line = through([
      [exact(0), exact(1)],
      [exact(5), exact(2)],
      [exact(10), of(9, 'refit', 2)],
    ])!;
    expect(standardUncertainty(line)).toBeCloseTo(0.2, 12);
  });

  it('does not feel what moves all values, or all levels, alike', () => {
    const both = (z: number, y: number) => [of(z, 'rule', 1), of(y, 'torque cell', 6)] as const;
    expect(standardUncertainty(through([both(0, 1), both(3, 9), both(10, 4)])!)).toBeCloseTo(0, 12);
  });

  it('needs two levels', () => {
    expect(through([[exact(1), exact(2)]])).toBeNull();
    expect(
      through([
        [exact(1), exact(2)],
        [exact(1), exact(5)],
      ]),
    ).toBeNull();
  });
});
