import { describe, expect, it } from 'vitest';
import { finalTemperature } from '../../../src/derive/final.ts';
import type { HeatSeries } from '../../../src/derive/heat-series.ts';
import { oneStore, tail, twoStore } from '../../../src/derive/stores.ts';

const ambient_K = 294;
/** Heat falls as the oil warms. */
const heat_W = (sump_K: number): number => 1180 - 2 * (sump_K - ambient_K);
const heat = { at_W: heat_W, u_W: () => 0, dof: 400, scatter_W: 0 };

/** Two stores stepped by plain Euler at 0.1 s, read at the middle of each 20 s: no noise, none of our own integration. */
function made(p: { C1: number; C2: number; G: number; K: number }, minutes = 150): HeatSeries {
  const bins = minutes * 3;
  const sump_K = new Float64Array(bins);
  const skin_K = new Float64Array(bins);
  let [sump, skin] = [ambient_K, ambient_K];
  const dt = 0.1;
  for (let i = 0; i < bins * 200; i++) {
    if (i % 200 === 100) [sump_K[(i - 100) / 200], skin_K[(i - 100) / 200]] = [sump, skin];
    const across = p.G * (sump - skin);
    const rate = (heat_W(sump) - across) / p.C1;
    skin += (dt * (across - p.K * (skin - ambient_K))) / p.C2;
    sump += dt * rate;
  }
  const time_s = Float64Array.from({ length: bins }, (_, i) => (i + 0.5) * 20);
  return {
    bin_s: 20,
    time_s,
    sump_K,
    skin_K,
    ambient_K: new Float64Array(bins).fill(ambient_K),
    heat_W: sump_K.map(heat_W),
    count: 10,
  };
}

/** Where heat made meets heat shed: 1180 − 2θ = θ·S with 1/S = 1/G + 1/K. */
const final = (p: { G: number; K: number }): number => ambient_K + 1180 / (2 + 1 / (1 / p.G + 1 / p.K));
const inputOf = (series: HeatSeries) => ({ series, heat, ambient_K, skinOffset_K: 0.3 });

describe('two stores fitted to a run without noise', () => {
  it.each([
    { C1: 14_000, C2: 19_000, G: 110, K: 13.4 },
    { C1: 20_000, C2: 15_000, G: 70, K: 11 },
  ])('give back C1 $C1, C2 $C2, G $G, K $K', (p) => {
    const fit = twoStore(inputOf(made(p)))!;
    // Euler at 0.1 s and the steps of the fit agree to some parts in ten thousand.
    const [C1, C2, G, K] = fit.parameters.map((x) => x.value);
    expect(C1! / (p.C1 / 1e3)).toBeCloseTo(1, 2);
    expect(C2! / (p.C2 / 1e3)).toBeCloseTo(1, 2);
    expect(G! / p.G).toBeCloseTo(1, 2);
    expect(K! / p.K).toBeCloseTo(1, 3);
    expect(Math.abs(fit.final_K - final(p))).toBeLessThan(0.01);
    expect(fit.store!.value / (p.C1 + p.C2)).toBeCloseTo(1, 3);
    expect(fit.shed!.value).toBeCloseTo(1 / (1 / p.G + 1 / p.K), 2);
    expect(fit.misfit_K).toBeLessThan(0.005);
  });

  it('are taken where one store misfits, and the final temperature is right', () => {
    const p = { C1: 14_000, C2: 19_000, G: 110, K: 13.4 };
    const found = finalTemperature(inputOf(made(p)));
    expect(found.taken.model).toBe('two-store');
    expect(Math.abs(found.taken.final_K - final(p))).toBeLessThan(0.01);
    expect(found.tried.map((t) => [t.model, t.taken])).toEqual([
      ['one-store', false],
      ['two-store', true],
      ['tail', false],
    ]);
  });
});

describe('one store', () => {
  const p = { C1: 14_000, C2: 19_000, G: 110, K: 13.4 };
  it('cannot follow a sump whose heat has to cross first: its misfit says so', () => {
    expect(oneStore(inputOf(made(p))).misfit_K).toBeGreaterThan(10 * twoStore(inputOf(made(p)))!.misfit_K);
  });
  it('is right when the coupling is so good that there is one store only', () => {
    const tight = { ...p, G: 20_000 };
    const fit = oneStore(inputOf(made(tight)));
    expect(fit.store!.value / (p.C1 + p.C2)).toBeCloseTo(1, 2);
    expect(Math.abs(fit.final_K - final(tight))).toBeLessThan(0.05);
  });
});

describe('two stores whose skin was not read', () => {
  const p = { C1: 14_000, C2: 19_000, G: 110, K: 13.4 };
  const unread = (series: HeatSeries): HeatSeries => ({ ...series, skin_K: series.skin_K.map(() => NaN) });
  it.each([45, 90, 150])('are told by the sump alone after a cold start of %i min', (minutes) => {
    const fit = twoStore(inputOf(unread(made(p, minutes))))!;
    expect(Math.abs(fit.final_K - final(p))).toBeLessThan(0.05);
    expect(fit.store!.value / (p.C1 + p.C2)).toBeCloseTo(1, 2);
  });
  it('cannot be told apart where the housing may have begun at another temperature than the oil', () => {
    const warm = made(p);
    expect(twoStore(inputOf(unread({ ...warm, ambient_K: warm.ambient_K.map((t) => t - 5) })))).toBeNull();
  });
});

describe('the tail', () => {
  it('of a long run heads for the same final temperature', () => {
    const p = { C1: 14_000, C2: 19_000, G: 110, K: 13.4 };
    expect(Math.abs(tail(inputOf(made(p)))!.final_K - final(p))).toBeLessThan(0.5);
  });
  it.each([45, 60, 90, 120, 150])('falls short after %i min, by no more than it says is open', (minutes) => {
    const p = { C1: 14_000, C2: 19_000, G: 110, K: 13.4 };
    const fit = tail(inputOf(made(p, minutes)))!;
    expect(final(p) - fit.final_K).toBeGreaterThan(-1e-6);
    expect(final(p) - fit.final_K).toBeLessThan(2 * fit.u_K);
  });
  it('of a run that does not bend has no answer', () => {
    const series = made({ C1: 14_000, C2: 19_000, G: 110, K: 13.4 });
    expect(tail(inputOf({ ...series, sump_K: series.time_s.map((t) => 300 + t / 100) }))).toBeNull();
  });
});
