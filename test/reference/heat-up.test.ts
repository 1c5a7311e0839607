import { describe, expect, it } from 'vitest';
import { firstSustained } from '../../src/derive/crossings.ts';
import { heatLaw } from '../../src/derive/heat-law.ts';
import type { HeatSeries } from '../../src/derive/heat-series.ts';
import { integrate } from '../../src/derive/integrate.ts';
import { oneStore, settle } from '../../src/derive/stores.ts';
import { viscosityAt_m2_s } from '../../src/physics/viscosity.ts';
import { fitNonlinear } from '../../src/statistics/nonlinear.ts';
import { rungeKutta4 } from '../../src/statistics/ode.ts';
import '../matchers.ts';
import { expectNear } from './agreement.ts';

/**
 * C dT/dt = 600 W + 150 W (ν/100 mm²/s)^½ − K (T − Ta), C 22 kJ/K, K 11 W/K, from 22 °C in air of 22 °C, ν of the
 * reference oil: solved at 25 digits by two methods, printed to 1e-8 K (independent script).
 */
const line = { A: 7.70711286055181, B: 2.96647118005639 };
const ambient_K = 295.15;
const heat_W = (oil_K: number) => 600 + 150 * (viscosityAt_m2_s({ line, oil_K })! / 100e-6) ** 0.5;
const rate_K_s = (oil_K: number) => (heat_W(oil_K) - 11 * (oil_K - ambient_K)) / 22000;

/** The sump at 0, step, 2 step … to the end. */
function sumpEvery(step_s: number, to_s: number): number[] {
  const sump_K: number[] = [];
  rungeKutta4({
    f: (_, [T]) => [rate_K_s(T!)],
    y0: [ambient_K],
    t0: 0,
    t1: to_s,
    step: step_s,
    visit: (_, [T]) => sump_K.push(T!),
  });
  return sump_K;
}

describe('loss that falls as the oil warms (25-digit solution by an independent script)', () => {
  const printed = [
    [300, 32.20156707],
    [600, 40.45585364],
    [1800, 61.52777836],
    [3600, 75.10360875],
  ] as const;

  it.each(printed)('solved in steps of 5 s, the sump after %i s is at %f °C', (time_s, sump_C) => {
    expect(Math.abs(sumpEvery(5, time_s).at(-1)! - 273.15 - sump_C)).toBeLessThanOrEqual(1e-8);
  });

  it.each(printed)('run through the bins of a log, the sump after %i s is at %f °C', (time_s, sump_C) => {
    // The last of 500 bins has its middle at that time.
    const bins = { bin_s: time_s / 499.5, ambient_K: new Float64Array(500).fill(ambient_K) };
    const { sump_K } = integrate(bins, { sump_K: ambient_K, skin_K: ambient_K }, (T, _, __, rate) => {
      rate[0] = rate_K_s(T);
      rate[1] = 0;
    });
    expect(Math.abs(sump_K.at(-1)! - 273.15 - sump_C)).toBeLessThanOrEqual(1e-8);
  });

  it('rests at 83.06802026 °C, where heat made meets heat shed', () => {
    expect(Math.abs(settle(ambient_K, 1 / 11, { at_W: heat_W }) - 273.15 - 83.06802026)).toBeLessThanOrEqual(1e-8);
  });

  it('crosses 70 °C after 2700.22805 s, found in readings of 2 s', () => {
    const sump_K = Float64Array.from(sumpEvery(2, 4000));
    const hit = firstSustained({ time_s: sump_K.map((_, i) => 2 * i), sump_K, limit_K: 343.15, sustained_s: 60 })!;
    // A parabola through five minutes follows this curve to some hundredths of a second.
    expect(Math.abs(hit.t_s - 2700.22805)).toBeLessThanOrEqual(0.05);
    expectNear(hit.slope_K_s, rate_K_s(343.15), 0.001);
  });
});

describe('an exponential through that run (three free parameters; independent script)', () => {
  it.each([
    { to_s: 1000, final_C: 77.43423, tau_s: 1483.507 },
    { to_s: 3000, final_C: 81.41975, tau_s: 1646.489 },
  ])('of $to_s s ends at $final_C °C with τ $tau_s s, below the true 83.06802 °C', ({ to_s, final_C, tau_s }) => {
    const y = sumpEvery(10, to_s);
    const fit = fitNonlinear({
      model: ([end, tau, start]) => y.map((_, i) => end! - (end! - start!) * Math.exp((-10 * i) / tau!)),
      y,
      start: [360, 2000, ambient_K],
    });
    expect(fit.stopped).toBe('converged');
    expectNear(fit.parameters[0]! - 273.15, final_C, 1e-5);
    expectNear(fit.parameters[1]!, tau_s, 1e-5);
  });

  it.each([1000, 3000])('while one store with the heat of the run itself, %i s long, ends where it rests', (to_s) => {
    const series = binned(to_s);
    const heat = heatLaw(series, line)!;
    const fit = oneStore({ series, heat, skinOffset_K: 0 });
    // The heat law is a table each quarter kelvin, straight between.
    expect(Math.abs(fit.final_K - 273.15 - 83.06802)).toBeLessThanOrEqual(1e-3);
    expectNear(fit.store!.value, 22000, 1e-4);
    expectNear(fit.shed!.value, 11, 1e-4);
  });
});

/** The run in bins of 20 s, each holding the sump at its middle. */
function binned(to_s: number): HeatSeries {
  const bins = to_s / 20;
  const middles = sumpEvery(10, to_s).filter((_, i) => i % 2 === 1);
  const sump_K = Float64Array.from(middles);
  return {
    bin_s: 20,
    time_s: sump_K.map((_, i) => (i + 0.5) * 20),
    sump_K,
    skin_K: new Float64Array(bins).fill(NaN),
    ambient_K: new Float64Array(bins).fill(ambient_K),
    heat_W: sump_K.map(heat_W),
    count: 10,
  };
}

describe('what noise of 0.3 K leaves open in a final temperature (linearised covariance; independent script)', () => {
  it.each([
    { runs: 0.5, printed: 3.16081 },
    { runs: 1, printed: 0.576076 },
    { runs: 1.5, printed: 0.216548 },
    { runs: 2, printed: 0.110522 },
  ])('a run of $runs τ, 82 K of rise, read each 10 s: ± $printed K', ({ runs, printed }) => {
    const course = ([end, tau, start]: readonly number[], i: number) =>
      end! - (end! - start!) * Math.exp((-10 * i) / tau!);
    const truth = [104, 2000, 22];
    // A micro-kelvin up and down, so that there is a scatter to scale from.
    const y = Array.from({ length: runs * 200 + 1 }, (_, i) => course(truth, i) + (i % 2 === 0 ? 1e-6 : -1e-6));
    const fit = fitNonlinear({ model: (p) => y.map((_, i) => course(p, i)), y, start: [100, 1900, 21] });
    expectNear((Math.sqrt(fit.covariance[0]![0]!) / fit.s) * 0.3, printed, 1e-4);
  });
});
