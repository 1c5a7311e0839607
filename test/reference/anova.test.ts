import { describe, expect, it } from 'vitest';
import { daysApart } from '../../src/statistics/day-scatter.ts';
import { groupDifference, groupsWithDrift } from '../../src/statistics/blocks.ts';
import { fTail } from '../../src/statistics/f-tail.ts';
import { grubbs, grubbsLimit, oneWayAnova, pooledScatter, precision } from '../../src/statistics/scatter.ts';
import '../matchers.ts';
import { resistivity } from './tables/handbook-readings.ts';
import { glucose } from './tables/handbook.ts';
import { simulatedGroups, siRstv } from './tables/strd-anova.ts';

const rSquared = (a: { ssBetween: number; ssWithin: number }) => a.ssBetween / (a.ssBetween + a.ssWithin);

describe('one-way analysis of variance with certified answers (NIST StRD)', () => {
  it('SiRstv: sums of squares, ratio and deviation', () => {
    const a = oneWayAnova(siRstv)!;
    expect(a.ssBetween).toShareDigits('0.0511462616', 10);
    expect(a.ssWithin).toShareDigits('0.21663656', 10);
    expect(a.ratio).toShareDigits('1.18046237440255', 10);
    expect(rSquared(a)).toShareDigits('0.190999039051129', 10);
    expect(a.s).toShareDigits('0.104076068334656', 10);
    expect([a.dofBetween, a.dofWithin]).toEqual([4, 20]);
    // Not certified there: the tail by SciPy 1.17, stats.f.sf.
    expect(a.p).toAgreeWithPrinted('0.349447493');
  });

  it.each([
    { set: 'SmLs01', whole: '1', digits: 12 },
    { set: 'SmLs04', whole: '1000000', digits: 9 },
    // Under an offset of 1e12 the readings themselves hold about four digits in double precision.
    { set: 'SmLs07', whole: '1000000000000', digits: 3 },
  ])('$set: ratio 21 and deviation 0.1 to $digits digits', ({ whole, digits }) => {
    const a = oneWayAnova(simulatedGroups(whole))!;
    expect(a.ratio).toShareDigits('21.0', digits);
    expect(a.s).toShareDigits('0.1', digits);
    expect(rSquared(a)).toShareDigits('0.482758620689655', digits);
  });
});

it('e-Handbook 7.4.3: three groups of five give the printed table', () => {
  const a = oneWayAnova([
    [6.9, 5.4, 5.8, 4.6, 4.0],
    [8.3, 6.8, 7.8, 9.2, 6.5],
    [8.0, 10.5, 8.1, 6.9, 9.3],
  ])!;
  expect(a.ssBetween).toAgreeWithPrinted('27.897');
  expect(a.ssWithin).toAgreeWithPrinted('17.452');
  expect(a.s ** 2).toAgreeWithPrinted('1.454');
  expect(a.ratio).toAgreeWithPrinted('9.59');
});

describe('repeatability and reproducibility of glucose in serum (ASTM E691, printed digits from memory)', () => {
  it.each([
    // Level 1: between laboratories comes out below zero and is put to zero.
    { level: 1 as const, mean: '41.5183', repeatability: '1.0632', reproducibility: '1.0632' },
    { level: 2 as const, mean: '79.6796', repeatability: '1.4949', reproducibility: '1.5796' },
    // Level 3 as stored, with its slip; the table is printed for the data put right, checked below.
    { level: 3 as const, mean: '135.1429', repeatability: '2.7483', reproducibility: '3.4770' },
    { level: 4 as const, mean: '194.7171', repeatability: '2.6251', reproducibility: '3.3657' },
    { level: 5 as const, mean: '294.4921', repeatability: '3.9350', reproducibility: '4.1923' },
  ])('level $level: $repeatability and $reproducibility', ({ level, mean, repeatability, reproducibility }) => {
    const found = precision(glucose[level])!;
    expect(found.mean).toAgreeWithPrinted(mean);
    expect(found.repeatability).toAgreeWithPrinted(repeatability);
    expect(found.reproducibility).toAgreeWithPrinted(reproducibility);
    expect(pooledScatter(glucose[level])).toEqual({ s: expect.closeTo(found.repeatability, 12) as number, dof: 16 });
  });

  it('level 3 with 148.3 put right to 138.3 gives the printed 1.5434 and 2.1482', () => {
    const found = precision(glucose[3].map((lab) => lab.map((x) => (x === 148.3 ? 138.3 : x))))!;
    expect(found.repeatability).toAgreeWithPrinted('1.5434');
    expect(found.reproducibility).toAgreeWithPrinted('2.1482');
  });
});

it.each([2, 3, 4, 5] as const)(
  'days as the laboratories of level %s: the same repeatability, and with the day the printed reproducibility',
  (level) => {
    const labs = glucose[level];
    const found = daysApart({
      values: labs.flat(),
      group: labs.flat().map(() => 'serum'),
      time: null,
      day: labs.flatMap((lab, i) => lab.map(() => `lab ${i}`)),
    })!;
    const printed = {
      2: ['1.4949', '1.5796'],
      3: ['2.7483', '3.4770'],
      4: ['2.6251', '3.3657'],
      5: ['3.9350', '4.1923'],
    };
    expect(found.s).toAgreeWithPrinted(printed[level][0]!);
    expect(Math.hypot(found.s, found.s_day)).toAgreeWithPrinted(printed[level][1]!);
    expect([found.dofDays, found.dof]).toEqual([7, 16]);
    expect(found.ratio).toBeCloseTo(oneWayAnova(labs)!.ratio, 9);
  },
);

it('pooled repeatability of 0.55, 0.35, 0.42 from 3, 3, 4 runs is 0.4439 with 7 degrees (weighted by hand)', () => {
  // Two or three runs about zero that have just that deviation.
  const withDeviation = (s: number, n: number) =>
    n === 3 ? [-s, 0, s] : [-s, -s, s, s].map((x) => (x * Math.sqrt(3)) / 2);
  const pooled = pooledScatter([withDeviation(0.55, 3), withDeviation(0.35, 3), withDeviation(0.42, 4), [12]])!;
  expect(pooled.s).toAgreeWithPrinted('0.4438790');
  expect(pooled.dof).toBe(7);
});

describe('nested repeatability of a resistivity probe (e-Handbook 2.6.1, probe 2362; digits by an independent script on its data)', () => {
  const cells = resistivity.flat();
  const averages = (days: (typeof cells)[number]) => days.map(([average]) => average);

  it('six readings a day scatter by 0.0729 with 300 degrees', () => {
    // Six readings with just the deviation that the study kept of them.
    const day = ([average, s]: readonly [number, number]) =>
      [-1, -1, -1, 1, 1, 1].map((sign) => average + sign * s * Math.sqrt(5 / 6));
    const pooled = pooledScatter(cells.flatMap((days) => days.map(day)))!;
    expect(pooled.s).toShareDigits('0.07286672537356587', 8);
    expect(pooled.dof).toBe(300);
  });

  it('days of one run by 0.0362 with 50, runs of one wafer by 0.0196 with 5', () => {
    const days = pooledScatter(cells.map(averages))!;
    expect(days.s).toShareDigits('0.036168240672355724', 8);
    expect(days.dof).toBe(50);
    const runs = pooledScatter(resistivity.map((wafer) => oneWayAnova(wafer.map(averages))!.means))!;
    expect(runs.s).toShareDigits('0.019645236205131405', 8);
    expect(runs.dof).toBe(5);
  });
});

it.each([
  { printed: '0.516', longer: 0.5156874570365015, tail: 0.05 },
  { printed: '0.615', longer: 0.6151665102966508, tail: 0.01 },
])(
  'ISO 5725-2 table 4, Cochran: eight groups of three, $printed, leaves $tail/8 of F above',
  ({ printed, longer, tail }) => {
    // C = 1/(1 + (p − 1)/F), from memory; the printed three digits hold the tail to two of it.
    const above = (C: number) => fTail(7 / (1 / C - 1), { above: 2, below: 14 }) * 8;
    expect(longer).toAgreeWithPrinted(printed);
    expect(above(longer)).toBeCloseTo(tail, 10);
  },
);

describe('one reading far from the others (Grubbs)', () => {
  const values = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

  it('e-Handbook 1.3.5.17.1: 245.57 has G 2.4687 over the limit 2.0317', () => {
    const test = grubbs({ values, side: 'upper' })!;
    expect(test.index).toBe(7);
    expect(test.G).toAgreeWithPrinted('2.4688');
    expect(test.critical).toAgreeWithPrinted('2.0317');
    expect(test.outlying).toBe(true);
  });

  it('the seven others hold none', () => {
    expect(grubbs({ values: values.slice(0, 7) })!.outlying).toBe(false);
  });

  it('ISO 5725-2 table 5: limits 2.126 and 2.274 for eight means (from memory)', () => {
    // 2.12665 here: printed cut, not rounded.
    expect(grubbsLimit({ n: 8, side: 'either', coverage: 0.95 })).toShareDigits('2.126', 3);
    expect(grubbsLimit({ n: 8, side: 'either', coverage: 0.99 })).toAgreeWithPrinted('2.274');
  });
});

describe('a baseline that brackets (worked by hand; common practice, no source)', () => {
  it('A-B-A off the middle: the baseline is read off the line between its two runs', () => {
    const fit = groupsWithDrift({
      values: [100, 98, 101.5],
      group: ['A', 'B', 'A'],
      time: [0, 1, 3],
      scatter: { s: 0.4, dof: 6 },
    });
    if (!fit.ok) throw new Error(fit.why);
    const d = groupDifference(fit, { of: 'B', against: 'A' });
    expect(d.value).toBeCloseTo(98 - 100.5, 12);
    expect(d.u).toBeCloseTo(0.4 * Math.sqrt(1 + (2 / 3) ** 2 + (1 / 3) ** 2), 12);
    expect(fit.drift.slope / fit.drift.u).toBeCloseTo(1.5 / (0.4 * Math.SQRT2), 12);
  });

  it('A-B-A with B in the middle: u is 1.225 s, against 1.414 s beside one baseline alone', () => {
    const fit = groupsWithDrift({
      values: [100, 98, 101.5],
      group: ['A', 'B', 'A'],
      time: [0, 1, 2],
      scatter: { s: 1, dof: 6 },
    });
    if (!fit.ok) throw new Error(fit.why);
    expect(groupDifference(fit, { of: 'B', against: 'A' }).u).toAgreeWithPrinted('1.224744871');
  });

  it('A-B-B-A at equal steps: a linear drift leaves no trace, and u is s', () => {
    const fit = groupsWithDrift({
      values: [100, 98.4, 98.8, 101.2],
      group: ['A', 'B', 'B', 'A'],
      time: [0, 1, 2, 3],
    });
    if (!fit.ok) throw new Error(fit.why);
    const d = groupDifference(fit, { of: 'B', against: 'A' });
    expect(d.value).toBeCloseTo(-2, 12);
    expect(d.u / fit.s).toBeCloseTo(1, 12);
    expect(fit.dof).toBe(1);
  });
});
