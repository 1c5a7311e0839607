import { describe, expect, it } from 'vitest';
import { conditionsDiffer } from '../../../src/compare/conditions.ts';
import { corrected } from '../../../src/compare/corrected.ts';
import { groupsOf } from '../../../src/compare/group.ts';
import { estimate, standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { DerivedRun, Result } from '../../../src/trial/derived.ts';
import type { QuantityName } from '../../../src/trial/figures.ts';
import { derived, series } from './runs.ts';

const result = (quantity: QuantityName, value: number, u = 0): Result => ({
  quantity,
  at: {},
  estimate: estimate(value, u === 0 ? [] : [{ cause: `${quantity}:x`, u }]),
  bound: null,
  class: 'derived from measurement',
  relation: '',
  method: '',
  notes: [],
  given: [],
  steps: [],
});

interface Steady {
  readonly ambient_K: number;
  readonly final_K: number;
  readonly heat_W: number;
  readonly shed_W_K: number;
  readonly slope_W_K: number | null;
  readonly uSlope_W_K?: number;
}
const heatUp = (of: Steady): DerivedRun =>
  derived({
    run: 'H-01',
    trial: 'heat-up',
    conditions: { ambient_K: of.ambient_K, airflow_m_s: 4 },
    heatSlope_W_K:
      of.slope_W_K === null ? null : estimate(of.slope_W_K, [{ cause: 'slope:H-01', u: of.uSlope_W_K ?? 0 }]),
    results: [
      result('final-temperature', of.final_K),
      result('final-rise', of.final_K - of.ambient_K),
      result('heat-made', of.heat_W),
      result('shed', of.shed_W_K),
    ],
  });
const brought = (run: DerivedRun, quantity: QuantityName, ambient_K: number) =>
  corrected(
    groupsOf(new Map([[run.run, run]])).find((g) => g.quantity === quantity)!,
    { ambient_K, stated: true },
  ).reduced[0]!;

/** Steady state of an axle with this heat law and shed: heat(T) = shed·(T − ambient), by halving. */
function steady(heat_W: (T_K: number) => number, shed_W_K: number, ambient_K: number): number {
  let [low, high] = [ambient_K, ambient_K + 400];
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (heat_W(middle) > shed_W_K * (middle - ambient_K)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe('a loaded run brought to another ambient', () => {
  // physics card of the project, 10.3: 11 K of ambient move the sump by 9.3 K where dP/dT is −2 W/K and shed 11 W/K
  it('moves by K/(K − s), not by one to one', () => {
    const run = heatUp({ ambient_K: 304.15, final_K: 380, heat_W: 834, shed_W_K: 11, slope_W_K: -2 });
    const by = brought(run, 'final-temperature', 293.15).estimate.value - 380;
    expect(by).toBeCloseTo((-11 * 11) / 13, 9);
    expect(by).toBeCloseTo(-9.3, 1);
    expect(brought(run, 'final-rise', 293.15).estimate.value).toBeCloseTo(380 + by - 293.15, 9);
  });

  it.each([-1.5, 1.2])(
    'lands on the steady state of an axle whose heat changes by %f W/K, where a plain shift does not',
    (s) => {
      // A bent heat law: the slope is that at the final temperature, and the correction is first order.
      const heat = (T: number): number => 1000 + s * (T - 375) + 0.002 * (T - 375) ** 2;
      const [warm, cool] = [299.15, 294.15].map((ambient) => ({ ambient, final: steady(heat, 12, ambient) }));
      const slope = s + 0.004 * (warm!.final - 375);
      const run = heatUp({
        ...{ ambient_K: warm!.ambient, final_K: warm!.final, heat_W: heat(warm!.final) },
        ...{ shed_W_K: 12, slope_W_K: slope },
      });
      const rise = brought(run, 'final-rise', cool!.ambient).estimate.value;
      const truth = cool!.final - cool!.ambient;
      expect(Math.abs(rise - truth)).toBeLessThan(0.01);
      expect(Math.abs(warm!.final - warm!.ambient - truth)).toBeGreaterThan(0.4);
      expect(brought(run, 'heat-made', cool!.ambient).estimate.value).toBeCloseTo(heat(cool!.final), 0);
    },
  );

  it('carries the doubt of its slope: so much a kelvin of ambient, and nothing at the reference', () => {
    const at = (ambient_K: number) =>
      standardUncertainty(
        brought(
          heatUp({ ambient_K, final_K: 375, heat_W: 1000, shed_W_K: 12, slope_W_K: 1, uSlope_W_K: 0.5 }),
          'final-rise',
          294.15,
        ).estimate,
      );
    // ∂(ΔT_a·K/(K − s))/∂s = ΔT_a·K/(K − s)² = 3·12/121
    expect(at(297.15)).toBeCloseTo((0.5 * 3 * 12) / 121, 9);
    expect(at(294.15)).toBe(0);
  });

  it('stays as it is where no slope was measured, and shed and times always', () => {
    const bare = heatUp({ ambient_K: 299, final_K: 375, heat_W: 1000, shed_W_K: 12, slope_W_K: null });
    expect(brought(bare, 'final-rise', 294).estimate.value).toBe(76);
    expect(brought(bare, 'final-rise', 294).toAmbient).toBeUndefined();
    const run = heatUp({ ambient_K: 299, final_K: 375, heat_W: 1000, shed_W_K: 12, slope_W_K: 1 });
    expect(brought(run, 'shed', 294).estimate.value).toBe(12);
  });
});

describe('how far ambient may differ', () => {
  const wide = { ...series, tolerance: { ...series.tolerance, ambient_K: 5 } };
  const why = (slope_W_K: number | null) => {
    const [a, b] = [294, 297.5].map((ambient_K) =>
      heatUp({ ambient_K, final_K: 375, heat_W: 1000, shed_W_K: 12, slope_W_K }),
    );
    return conditionsDiffer({ quantity: 'final-rise', series: wide, runs: [a!], againstRuns: [b!] }).join();
  };
  it('is what the series allows where each run measured its slope, and 3 K where one did not', () => {
    expect(why(1)).toBe('');
    expect(why(null)).toContain('more than the 3.0 K');
  });
});
