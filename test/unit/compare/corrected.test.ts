import { describe, expect, it } from 'vitest';
import { conditionsDiffer } from '../../../src/compare/conditions.ts';
import { corrected } from '../../../src/compare/corrected.ts';
import { groupsOf } from '../../../src/compare/group.ts';
import { estimate, standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { DerivedRun, Result } from '../../../src/trial/derived.ts';
import type { QuantityName } from '../../../src/trial/figures.ts';
import { toPlanLoad } from '../../../src/derive/to-load.ts';
import type { Plan } from '../../../src/trial/plan.ts';
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
const valueOf = (run: DerivedRun, quantity: QuantityName): number =>
  run.results.find((r) => r.quantity === quantity)!.estimate!.value;
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
    expect(brought(bare, 'final-rise', 294).corrected).toBeUndefined();
    const run = heatUp({ ambient_K: 299, final_K: 375, heat_W: 1000, shed_W_K: 12, slope_W_K: 1 });
    expect(brought(run, 'shed', 294).estimate.value).toBe(12);
  });
});

describe('a loaded run brought to the load and the speed of the plan', () => {
  const [shed, ambient] = [12, 294.15];
  const [speed0, power0] = [30, 21_000];
  /** Mesh loss goes with torque and speed, spin with speed to the power 1.4; both fall as the oil warms. */
  const mesh = (T: number, speed: number, torque: number): number => 0.0375 * torque * speed - 0.4 * (T - 370);
  const spin = (T: number, speed: number): number => (160 - 0.8 * (T - 370)) * (speed / speed0) ** 1.4;
  const loaded = (speed: number, torque: number) => {
    const heat = (T: number): number => mesh(T, speed, torque) + spin(T, speed);
    const final_K = steady(heat, shed, ambient);
    return { final_K, heat_W: heat(final_K) };
  };
  const plan = { load: { outputSpeed_rad_s: speed0, powerOut_W: power0 } } as unknown as Plan;
  const run = (of: { speed: number; torque: number; spun?: boolean }) => {
    const { final_K, heat_W } = loaded(of.speed, of.torque);
    const own = heatUp({ ambient_K: ambient, final_K, heat_W, shed_W_K: shed, slope_W_K: -1.2 });
    const bare = {
      ...own,
      conditions: { ...own.conditions, outputSpeed_rad_s: of.speed, powerOut_W: of.torque * of.speed },
    };
    const spun = derived({
      spinExponent: estimate(1.4, [{ cause: 'fit:S-01:exponent of speed', u: 0.1 }]),
      results: [{ ...result('spin-power', spin(final_K, speed0)), at: { outputSpeed_rad_s: speed0, sump_K: 'own' } }],
    });
    return toPlanLoad(bare, of.spun === false ? [] : [spun], plan);
  };
  const truth = loaded(speed0, power0 / speed0);

  it.each([
    { speed: 30, torque: 735, what: 'load 5 % high' },
    { speed: 29.4, torque: 700, what: 'speed 2 % low' },
    { speed: 30.3, torque: 720, what: 'both a little off' },
  ])('lands where an axle of known heat would have settled: $what', ({ speed, torque }) => {
    const off = run({ speed, torque });
    const before = valueOf(off, 'final-temperature') - truth.final_K;
    const after = brought(off, 'final-temperature', ambient).estimate.value - truth.final_K;
    expect(Math.abs(before)).toBeGreaterThan(0.2);
    expect(Math.abs(after)).toBeLessThan(0.06 * Math.abs(before) + 0.01);
    expect(brought(off, 'final-rise', ambient).estimate.value).toBeCloseTo(truth.final_K + after - ambient, 6);
    expect(Math.abs(brought(off, 'heat-made', ambient).estimate.value - truth.heat_W)).toBeLessThan(1.5);
  });

  // physics card of the project, sep-load-scaling: 1150 W with 480 W of spin, 30 kW brought to 28.5 kW, is 1116.5 W
  it('scales what spin leaves with the load', () => {
    const own = heatUp({ ambient_K: ambient, final_K: 390, heat_W: 1150, shed_W_K: 12, slope_W_K: 0 });
    const bare = { ...own, conditions: { ...own.conditions, outputSpeed_rad_s: 30, powerOut_W: 30_000 } };
    const spun = derived({
      spinExponent: estimate(1.6, []),
      results: [{ ...result('spin-power', 480), at: { outputSpeed_rad_s: 30, sump_K: 'own' } }],
    });
    const at = { load: { outputSpeed_rad_s: 30, powerOut_W: 28_500 } } as unknown as Plan;
    const { toLoad } = toPlanLoad(bare, [spun], at);
    expect(1150 + toLoad!.by_W.value).toBeCloseTo(1116.5, 9);
    expect(toLoad).toMatchObject({ byLoad_W: expect.closeTo(-33.5, 9) as number, bySpeed_W: 0 });
  });

  it('stays as it is where spin of the cell was not measured, and beyond a tenth', () => {
    expect(run({ speed: 30, torque: 735, spun: false }).toLoad).toBeNull();
    expect(run({ speed: 30, torque: 800 }).toLoad).toBeNull();
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
