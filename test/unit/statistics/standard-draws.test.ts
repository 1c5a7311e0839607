import { describe, expect, it } from 'vitest';
import { drawsOf, standardDraws, type Drawn } from '../../../src/statistics/standard-draws.ts';

const size = 20000;
const draw = (cause: Drawn, block = 0, seed = 'a') => standardDraws({ seed, cause, block, size });
const normal = (id: string): Drawn => ({ id, distribution: 'normal', dof: Infinity });
const t = (id: string, dof: number, family = id): Drawn => ({ id, distribution: 't', dof, family });

const product = (a: Float64Array, b: Float64Array) => a.reduce((sum, x, i) => sum + x * b[i]!, 0) / a.length;

describe('numbers of a cause', () => {
  it('are the same whenever they are asked for, and whatever was drawn before', () => {
    const draws = drawsOf('a');
    draws(t('other', 3), 0, size);
    expect(draws(normal('cell'), 2, size)).toEqual(draw(normal('cell'), 2));
    expect(draws(t('own', 5, 'pooled'), 1, size)).toEqual(draw(t('own', 5, 'pooled'), 1));
  });

  it('are others for another cause, block or seed, and share nothing with them', () => {
    const first = draw(normal('cell'));
    for (const other of [draw(normal('cell '), 0), draw(normal('cell'), 1), draw(normal('cell'), 0, 'b')]) {
      // Five standard deviations of the mean of so many products.
      expect(Math.abs(product(first, other))).toBeLessThan(5 / Math.sqrt(size));
    }
  });

  it('are as even over the first draws of three thousand causes as over many draws of one', () => {
    const firsts = Float64Array.from(
      { length: 3000 },
      (_, i) => standardDraws({ seed: 'a', cause: normal(`run ${i}`), block: 0, size: 1 })[0]!,
    );
    expect(Math.abs(product(firsts, firsts) - 1)).toBeLessThan((5 * Math.SQRT2) / Math.sqrt(3000));
    expect(Math.abs(product(firsts.slice(1), firsts.slice(0, -1)))).toBeLessThan(5 / Math.sqrt(3000));
  });

  it('have standard uncertainty 1 whether normal or rectangular, the latter within √3', () => {
    const even = draw({ id: 'limits', distribution: 'rectangular', dof: Infinity });
    expect(Math.abs(product(even, even) - 1)).toBeLessThan(0.03);
    expect(even.every((x) => Math.abs(x) < Math.sqrt(3))).toBe(true);
    expect(Math.max(...even)).toBeGreaterThan(1.73);
    const plain = draw(normal('cell'));
    expect(Math.abs(product(plain, plain) - 1)).toBeLessThan(0.05);
  });

  it('of a t without end of degrees are normal', () => {
    expect(draw(t('cell', Infinity))).toEqual(draw(normal('cell')));
  });

  it('of one family are large together, and yet of either sign', () => {
    const [a, b] = [draw(t('run 1', 3, 'refits')), draw(t('run 2', 3, 'refits'))];
    const large = (values: Float64Array) => values.map((x) => (Math.abs(x) > 3.182 ? 1 : 0));
    // Apart, both would be beyond their 95 % in a quarter of a per cent of trials.
    expect(product(large(a), large(b))).toBeGreaterThan(0.01);
    expect(Math.abs(product(a.map(Math.sign), b.map(Math.sign)))).toBeLessThan(5 / Math.sqrt(size));
    const apart = draw(t('run 3', 3));
    expect(product(large(a), large(apart))).toBeLessThan(0.006);
  });

  it('come back the same after they had to be dropped from memory', () => {
    const draws = drawsOf('a', 2 * size);
    const first = draws(normal('cell'), 0, size).slice();
    for (let block = 1; block < 6; block++) draws(normal('cell'), block, size);
    expect(draws(normal('cell'), 0, size)).toEqual(first);
    expect(draws(normal('cell'), 0, size)).toBe(draws(normal('cell'), 0, size));
  });

  it('without degrees of freedom are a slip of ours', () => {
    expect(() => draw(t('cell', 0))).toThrow('cause "cell"');
    expect(() => draw(t('cell', NaN))).toThrow('cause "cell"');
  });
});
