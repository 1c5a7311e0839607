import { describe, expect, it } from 'vitest';
import { fitNonlinear } from '../../src/statistics/nonlinear.ts';
import '../matchers.ts';
import { bennett5, boxBOD, danWood, mgh09, mgh17, misra1a } from './tables/strd-nonlinear.ts';

const { exp } = Math;
type P = readonly number[];
const rise = ([a, b]: P, x: number) => a! * (1 - exp(-b! * x));
const power = ([a, b]: P, x: number) => a! * x ** b!;
const rational = ([a, b, c, d]: P, x: number) => (a! * (x * x + x * b!)) / (x * x + x * c! + d!);
const twoExponentials = ([a, b, c, d, e]: P, x: number) => a! + b! * exp(-x * d!) + c! * exp(-x * e!);
const shiftedPower = ([a, b, c]: P, x: number) => a! * (b! + x) ** (-1 / c!);

describe('curve fits with certified answers (NIST StRD)', () => {
  it.each([
    { name: 'Misra1a, heating towards an asymptote', set: misra1a, curve: rise, digits: 8 },
    { name: 'BoxBOD, the same by six points', set: boxBOD, curve: rise, digits: 8 },
    { name: 'DanWood, a power law', set: danWood, curve: power, digits: 8 },
    { name: 'MGH09, a rational curve', set: mgh09, curve: rational, digits: 6 },
    { name: 'MGH17, two exponentials', set: mgh17, curve: twoExponentials, digits: 7 },
    { name: 'Bennett5, an ill-conditioned power law', set: bennett5, curve: shiftedPower, digits: 6 },
  ])('$name: parameters and deviations to $digits digits, from both starts', ({ set, curve, digits }) => {
    for (const start of set.starts) {
      const fit = fitNonlinear({ model: (p) => set.x.map((x) => curve(p, x)), y: set.y, start });
      expect(fit.stopped).toBe('converged');
      set.certified.forEach((printed, i) => {
        expect(fit.parameters[i]).toShareDigits(printed, digits);
        expect(Math.sqrt(fit.covariance[i]![i]!)).toShareDigits(set.standardDeviations[i]!, digits);
      });
      expect(fit.s).toShareDigits(set.residualDeviation, 9);
    }
  });
});

describe('covariance of a heating curve (StRD Misra1a; digits by 40-digit Gauss–Newton on its data)', () => {
  const { covariance, parameters } = fitNonlinear({
    model: (p) => misra1a.x.map((x) => rise(p, x)),
    y: misra1a.y,
    start: misra1a.starts[1]!,
  });
  const [[aa, ab], [, bb]] = covariance as [[number, number], [number, number]];
  const [a, b] = parameters as [number, number];

  it('has asymptote and rate almost perfectly opposed', () => {
    expect(ab / Math.sqrt(aa * bb)).toAgreeWithPrinted('-0.998776');
    expect(1 / b).toAgreeWithPrinted('1817.665');
    expect(Math.sqrt(bb) / b ** 2).toAgreeWithPrinted('24.009');
  });

  it('gives 0.385 on a prediction at twice the range, and 1.90 were the covariance left out', () => {
    const [da, db] = [1 - exp(-b * 1500), a * 1500 * exp(-b * 1500)];
    expect(rise(parameters, 1500)).toAgreeWithPrinted('134.25389');
    expect(Math.sqrt(da * da * aa + 2 * da * db * ab + db * db * bb)).toAgreeWithPrinted('0.38540');
    expect(Math.sqrt(da * da * aa + db * db * bb)).toAgreeWithPrinted('1.9015');
  });
});
