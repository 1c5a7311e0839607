import { describe, expect, it } from 'vitest';
import { seriesTrials } from '../../src/compare/by-trials.ts';
import { estimate, type Cause } from '../../src/quantity/estimate.ts';
import { drawsOf, standardDraws, type Drawn } from '../../src/statistics/standard-draws.ts';
import { coverageFactor } from '../../src/statistics/student.ts';
import {
  agrees,
  numericalTolerance,
  runTrials,
  shortestInterval,
  symmetricInterval,
} from '../../src/statistics/trials.ts';

/** Inputs drawn by their name; a value is its estimate and u a standard uncertainty or the scale of its t. */
const seed = 'reference';
const normal = (id: string): Drawn => ({ id, distribution: 'normal', dof: Infinity });
const rectangular = (id: string): Drawn => ({ id, distribution: 'rectangular', dof: Infinity });
const t = (id: string, dof: number): Drawn => ({ id, distribution: 't', dof });
const near = (value: number, expected: number, within: number, what = ''): void => {
  expect(Math.abs(value - expected), `${what} ${String(value)} for ${String(expected)}`).toBeLessThanOrEqual(within);
};

/** So many trials of a model of standardised inputs, as one block: then the noise of an end is known beforehand. */
function trialsOf(of: {
  inputs: readonly Drawn[];
  model: (z: readonly number[]) => number;
  coverage?: number;
  shape?: 'symmetric' | 'shortest';
}) {
  const { inputs, model, coverage = 0.95, shape = 'symmetric' } = of;
  const columns = inputs.map((cause) => standardDraws({ seed, cause, block: 0, size: 400_000 }));
  const values = Float64Array.from({ length: 400_000 }, (_, i) => model(columns.map((c) => c[i]!))).sort();
  const value = values.reduce((total, v) => total + v, 0) / values.length;
  const u = Math.sqrt(values.reduce((total, v) => total + (v - value) ** 2, 0) / (values.length - 1));
  return { value, u, interval: (shape === 'shortest' ? shortestInterval : symmetricInterval)(values, coverage) };
}

const four = ['a', 'b', 'c', 'd'];
const sum = (z: readonly number[]): number => z.reduce((s, x) => s + x, 0);

describe('additive model (JCGM 101:2008, 9.2, tables 2 to 4)', () => {
  it('JCGM101-9.2.2: four normals, 2.0 and ±3.92, as the linear interval has it', () => {
    const by = trialsOf({ inputs: four.map(normal), model: sum });
    near(by.u, 2, 0.02);
    near(by.interval[0], -3.92, 0.04);
    near(by.interval[1], 3.92, 0.04);
    expect(agrees([-3.92, 3.92], by.interval, numericalTolerance(by.u, 1))).toBe(true);
  });
  it('JCGM101-9.2.3: four rectangles, ±3.88 where the linear interval is ±3.92', () => {
    const by = trialsOf({ inputs: four.map(rectangular), model: sum });
    near(by.u, 2, 0.02);
    near(by.interval[0], -3.88, 0.02);
    near(by.interval[1], 3.88, 0.02);
  });
  it('JCGM101-9.2.4: one of them ten times as wide, 10.1 and ±17.0 where the linear interval is ±19.9', () => {
    const by = trialsOf({ inputs: four.map(rectangular), model: ([a, b, c, d]) => a! + b! + c! + 10 * d! });
    near(by.u, 10.15, 0.05);
    near(by.interval[0], -17.0, 0.1);
    near(by.interval[1], 17.0, 0.1);
    expect(agrees([-19.9, 19.9], by.interval, numericalTolerance(by.u, 2))).toBe(false);
  });
});

describe('calibration of a mass, whose first-order terms vanish (JCGM 101:2008, 9.3, table 5)', () => {
  it('JCGM101-9.3-mass: 1.234 mg, 0.0754 mg, shortest 1.0834 to 1.3825 mg; the linear answer has 0.0539 mg', () => {
    const half = Math.sqrt(3);
    const by = trialsOf({
      inputs: [normal('m'), normal('dm'), rectangular('air'), rectangular('W'), rectangular('R')],
      model: ([m, dm, air, w, r]) => {
        const rhoA = 1.2 + (0.1 / half) * air!;
        const rhoW = 8000 + (1000 / half) * w!;
        const rhoR = 8000 + (50 / half) * r!;
        const [reference, difference] = [100000 + 0.05 * m!, 1.234 + 0.02 * dm!];
        return (reference + difference) * (1 + (rhoA - 1.2) * (1 / rhoW - 1 / rhoR)) - 100000;
      },
      shape: 'shortest',
    });
    near(by.value, 1.234, 0.0008);
    near(by.u, 0.0754, 0.0006);
    near(by.interval[0], 1.0834, 0.006);
    near(by.interval[1], 1.3825, 0.006);
  });
});

/** Means and standard deviations from the exact moments of a quadratic form; shortest intervals as printed, in 1e-6. */
describe('sum of two squares near their bottom (JCGM 101:2008, 9.4, tables 6 to 8; moments exact)', () => {
  it.each([
    { id: 'JCGM101-9.4-x1_0-r_0', x1: 0, r: 0, mean: 50, u: 50, low: 0, high: 150 },
    { id: 'JCGM101-9.4-x1_0.01-r_0', x1: 0.01, r: 0, mean: 150, u: 111.8, low: 0, high: 367 },
    { id: 'JCGM101-9.4-x1_0.05-r_0', x1: 0.05, r: 0, mean: 2550, u: 502.5, low: 1590, high: 3543 },
    { id: 'JCGM101-9.4-x1_0-r_0.9', x1: 0, r: 0.9, mean: 50, u: 67.27, low: 0, high: 185 },
    { id: 'JCGM101-9.4-x1_0.01-r_0.9', x1: 0.01, r: 0.9, mean: 150, u: 120.5, low: 13, high: 398 },
  ])('$id', ({ x1, r, mean, u, low, high }) => {
    const by = trialsOf({
      inputs: [normal('x1'), normal('x2')],
      model: ([a, b]) => 1e6 * ((x1 + 0.005 * a!) ** 2 + (0.005 * (r * a! + Math.sqrt(1 - r * r) * b!)) ** 2),
      shape: 'shortest',
    });
    near(by.value, mean, 0.012 * u, 'mean');
    near(by.u, u, 0.015 * u, 'u');
    // The card allows 1e-5 at the ends of the shortest interval; the wide one is normal, and its ends are flat.
    const within = x1 === 0.05 ? 30 : 10;
    near(by.interval[0], low, within, 'low');
    near(by.interval[1], high, within, 'high');
  });
});

describe('calibration of a gauge block (JCGM 101:2008, 9.5, table 12)', () => {
  it('JCGM101-9.5-gauge-block: 838 nm, 36 nm, 745 to 932 nm at 99 %', () => {
    const half = Math.sqrt(3);
    const nominal = 5e7;
    // A trapezoid with curved sides: a rectangle whose half width is itself rectangular (JCGM 101, 6.4.3.2).
    const curved = (limit: number, doubt: number, wide: number, z: number): number =>
      (limit + (doubt / half) * wide) * (z / half);
    const by = trialsOf({
      inputs: [
        ...[t('Ls', 18), t('D', 24), t('d1', 5), t('d2', 8), rectangular('alpha'), normal('theta0')],
        ...[
          rectangular('Delta'),
          rectangular('da'),
          rectangular('da-limit'),
          rectangular('dt'),
          rectangular('dt-limit'),
        ],
      ],
      model: (z) => {
        const ls = 50000623 + 25 * z[0]!;
        const d = 215 + 6 * z[1]! + 4 * z[2]! + 7 * z[3]!;
        const alpha = 11.5e-6 + (2e-6 / half) * z[4]!;
        const theta = -0.1 + 0.2 * z[5]! + 0.5 * Math.sin((Math.PI * z[6]!) / (2 * half));
        const da = curved(1e-6, 0.1e-6, z[8]!, z[7]!);
        const dt = curved(0.05, 0.025, z[10]!, z[9]!);
        return ls + d - ls * (da * theta + alpha * dt) - nominal;
      },
      coverage: 0.99,
      shape: 'shortest',
    });
    near(by.value, 838, 1);
    near(by.u, 36, 1);
    near(by.interval[0], 745, 4);
    near(by.interval[1], 932, 4);
  });
});

describe('how long trials go on (JCGM 101:2008, 7.2.2, 7.9.2 and 7.9.4)', () => {
  it('JCGM101-7.9.2-tolerance: its three examples', () => {
    expect(numericalTolerance(0.00035, 2)).toBeCloseTo(5e-6, 18);
    expect(numericalTolerance(0.00035, 1)).toBeCloseTo(5e-5, 17);
    expect(numericalTolerance(2, 1)).toBe(0.5);
  });
  it('JCGM101-7.9.4-blocks: a block is 10,000 trials at 95 %, though 100/(1 − 0.95) is no whole number here', () => {
    const sizes: number[] = [];
    const trial = (_: number, size: number) => [(sizes.push(size), new Float64Array(size).fill(1))];
    runTrials({ trial, coverage: 0.95 });
    expect(sizes[0]).toBe(10_000);
    // 100/(1 − 0.999) = 100,000 is more than 10,000
    runTrials({ trial, coverage: 0.999 });
    expect(sizes.at(-1)).toBe(100_000);
  });
});

describe('a logarithm of a rectangle (NPL report DEM-ES-011, 9.2; exact values)', () => {
  const model = ([z]: readonly number[]): number => Math.log(0.6 + (0.5 / Math.sqrt(3)) * z!);
  it('MC-shortest-log: −0.665, 0.606, shortest −1.897 to 0.095, symmetric −2.079 to 0.072', () => {
    const [shortest, symmetric] = (['shortest', 'symmetric'] as const).map((shape) =>
      trialsOf({ inputs: [rectangular('x')], model, shape }),
    );
    near(shortest!.value, -0.6649, 0.005);
    near(shortest!.u, 0.6062, 0.005);
    near(shortest!.interval[0], -1.8971, 0.02);
    near(shortest!.interval[1], 0.0953, 0.005);
    near(symmetric!.interval[0], -2.0794, 0.03);
    near(symmetric!.interval[1], 0.0723, 0.005);
  });
  it('takes the shortest of what it is given', () => {
    expect(shortestInterval(Float64Array.from([0, 5, 6, 7, 8, 20]), 0.5)).toEqual([5, 8]);
  });
});

describe('the chance of lying lowest (normal differences, worked at more digits by an independent script)', () => {
  const cause = (id: string): Cause => ({
    ...normal(id),
    name: id,
    kind: 'offset',
    scope: 'run',
    distribution: 'normal',
  });
  const causes = new Map(['own:1', 'own:2', 'shared', 'mine', 'yours'].map((id) => [id, cause(id)]));
  const chance = (parts: readonly (readonly { cause: string; u: number }[])[]): number =>
    seriesTrials({ seed, causes, coverage: 0.95, remember: (_, make) => make() }).lowest([
      estimate(92.4, parts[0]!),
      estimate(93.1, parts[1]!),
    ])[0]!;
  // Ten thousand trials: one standard error is 0.0037 at 0.84.
  it('p-best-two: 0.839 of two that are 0.7 apart with 0.5 each', () => {
    near(chance([[{ cause: 'own:1', u: 0.5 }], [{ cause: 'own:2', u: 0.5 }]]), 0.8389, 0.012);
  });
  it('p-best-shared-offset: an offset of 2.0 that both share does not blur 0.951; taken for two it would be 0.597', () => {
    const own = (i: number) => ({ cause: `own:${String(i)}`, u: 0.3 });
    const shared = { cause: 'shared', u: 2 };
    near(
      chance([
        [own(1), shared],
        [own(2), shared],
      ]),
      0.9505,
      0.008,
    );
    near(
      chance([
        [own(1), { cause: 'mine', u: 2 }],
        [own(2), { cause: 'yours', u: 2 }],
      ]),
      0.5967,
      0.016,
    );
  });
});

describe('numbers of one cause', () => {
  it.each([2, 4, 10, 20])(
    't of %i degrees has the coverage factor of its table at 95 % (JCGM 100:2008, table G.2)',
    (dof) => {
      const values = drawsOf(seed)(t(`t${String(dof)}`, dof), 0, 400_000);
      const k = coverageFactor(0.95, dof);
      const inside = values.filter((v) => Math.abs(v) <= k).length / values.length;
      near(inside, 0.95, 0.0015);
    },
  );
});
