import { describe, expect, it } from 'vitest';
import { leastSquares, predict } from '../../src/statistics/least-squares.ts';
import type { LinearFit, Refused } from '../../src/statistics/least-squares.ts';
import '../matchers.ts';
import { loadCell, pressureTemperature } from './tables/handbook.ts';
import { filip, longley, norris } from './tables/strd-linear.ts';

const fitted = (fit: LinearFit | Refused): LinearFit => {
  if (!fit.ok) throw new Error(fit.why);
  return fit;
};
const uncertainty = (fit: LinearFit, i: number) => Math.sqrt(fit.covariance[i]![i]!);

describe('linear fits with certified answers (NIST StRD)', () => {
  it.each([
    // Digits that double precision reaches by QR; the normal equations have none at Filip.
    { name: 'Norris', set: norris, powers: [0, 1], digits: 12 },
    { name: 'Longley', set: longley, powers: null, digits: 10 },
    { name: 'Filip', set: filip, powers: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10], digits: 6 },
  ])('$name: coefficients and their deviations to $digits digits', ({ set, powers, digits }) => {
    const design = set.y.map((_, i) =>
      powers === null ? [1, ...set.x.map((column) => column[i]!)] : powers.map((n) => set.x[0]![i]! ** n),
    );
    const fit = fitted(leastSquares({ design, y: set.y }));
    set.certified.forEach((printed, i) => {
      expect(fit.coefficients[i]).toShareDigits(printed, digits);
      expect(uncertainty(fit, i)).toShareDigits(set.standardDeviations[i]!, digits);
    });
    expect(fit.s).toShareDigits(set.residualDeviation, Math.min(digits, 9));
  });

  it('Longley: scaled condition number 43 275 (Belsley, Kuh and Welsch 1980, from memory)', () => {
    const design = longley.y.map((_, i) => [1, ...longley.x.map((column) => column[i]!)]);
    expect(fitted(leastSquares({ design, y: longley.y })).condition).toAgreeWithPrinted('43275');
  });
});

describe('calibration line of a thermometer (JCGM 100:2008 H.3, tables H.6 and H.7)', () => {
  const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  const fit = fitted(leastSquares({ design: t.map((x) => [1, x - 20]), y: b }));

  it('gives the printed line, its deviations and their correlation', () => {
    expect(fit.coefficients[0]).toAgreeWithPrinted('-0.1712');
    expect(fit.coefficients[1]).toAgreeWithPrinted('0.00218');
    expect(uncertainty(fit, 0)).toAgreeWithPrinted('0.0029');
    expect(uncertainty(fit, 1)).toAgreeWithPrinted('0.00067');
    expect(fit.covariance[0]![1]! / uncertainty(fit, 0) / uncertainty(fit, 1)).toAgreeWithPrinted('-0.930');
    expect(fit.s).toAgreeWithPrinted('0.0035');
    expect(fit.dof).toBe(9);
  });

  it('gives the printed correction at 30 °C with its uncertainty', () => {
    const at30 = predict(fit, [1, 10]);
    expect(at30.value).toAgreeWithPrinted('-0.1494');
    expect(at30.u).toAgreeWithPrinted('0.0041');
  });

  it('would give 0.0073 there, nearly double, were the covariance left out', () => {
    const withoutCovariance = fit.covariance.map((row, i) => row.map((c, j) => (i === j ? c : 0)));
    expect(predict({ ...fit, covariance: withoutCovariance }, [1, 10]).u).toAgreeWithPrinted('0.0073');
  });
});

describe('worked fits of the e-Handbook (NIST/SEMATECH)', () => {
  it('2.3.6.5: a load cell by a quadratic', () => {
    const rows = loadCell.flatMap(([load, outputs]) => outputs.map((output) => ({ load, output })));
    const fit = fitted(
      leastSquares({ design: rows.map(({ load }) => [1, load, load ** 2]), y: rows.map(({ output }) => output) }),
    );
    expect(fit.coefficients[0]).toAgreeWithPrinted('-0.183980E-04');
    expect(fit.coefficients[1]).toAgreeWithPrinted('0.100102');
    // Printed there as 0.703186E-05, cut and not rounded; the digits are those of 60-digit arithmetic on the data.
    expect(fit.coefficients[2]).toAgreeWithPrinted('7.03187E-06');
    expect(fit.s).toAgreeWithPrinted('0.376403E-04');
    expect(fit.dof).toBe(30);
  });

  it('4.4.4: pressure against temperature by a line', () => {
    const fit = fitted(
      leastSquares({ design: pressureTemperature.temperature.map((x) => [1, x]), y: pressureTemperature.pressure }),
    );
    // Printed there as 7.74899 and 4.299098, cut and not rounded.
    expect(fit.coefficients[0]).toAgreeWithPrinted('7.74900');
    expect(fit.coefficients[1]).toAgreeWithPrinted('3.93014');
    expect(fit.s).toAgreeWithPrinted('4.299099');
    expect(uncertainty(fit, 0)).toAgreeWithPrinted('2.3538');
    expect(uncertainty(fit, 1)).toAgreeWithPrinted('0.0507');
  });
});
