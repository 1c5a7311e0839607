import { describe, expect, it } from 'vitest';
import { deriveSeries } from '../../../src/derive/series.ts';
import { viscosityRelation } from '../../../src/physics/viscosity.ts';
import { standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { DerivedRun, Result } from '../../../src/trial/derived.ts';
import type { Rig } from '../../../src/trial/rig.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { logged, recordOf } from './logged.ts';

const rpm = (n: number): number => (n * Math.PI) / 30;
const teeth = 41 / 9;
const steps = [60, 120, 200, 290, 390, 520];
const levels_K = [313.15, 333.15, 353.15];
const hold_s = 130;
const oil = { nu40_m2_s: 168e-6, nu100_m2_s: 15.4e-6 };
const nu = (oil_K: number): number => viscosityRelation.of({ ...oil, oil_K })!;

interface Made {
  readonly torque_Nm: (at: { readonly speed_rad_s: number; readonly nu_m2_s: number }) => number;
  readonly offset_K?: number;
  readonly off?: (step: number) => number;
  readonly rig?: Partial<Rig>;
  readonly record?: (whole: SeriesRecord) => Partial<SeriesRecord>;
}

/** A spin run through all planned steps at each planned temperature, noise a few parts in ten thousand. */
function spun({ torque_Nm, offset_K = 0, off = () => 0, rig, record }: Made): DerivedRun {
  const at = (t: number) => {
    const i = Math.min(Math.floor(t / hold_s), steps.length * levels_K.length - 1);
    const step = steps[i % steps.length]!;
    const sump_K = levels_K[Math.floor(i / steps.length)]! + offset_K;
    return { speed_rad_s: rpm(step) * (1 + off(step)), sump_K };
  };
  const log = logged(
    {
      'pinion-speed': (t) => at(t).speed_rad_s * teeth,
      sump: (t) => at(t).sump_K,
      'torque-in': (t) =>
        torque_Nm({ speed_rad_s: at(t).speed_rad_s, nu_m2_s: nu(at(t).sump_K) }) * (1 + 2e-4 * Math.sin(1.7 * t)),
    },
    { length_s: hold_s * steps.length * levels_K.length, step_s: 1 },
  );
  const whole = recordOf('S-01', log, (r) => ({
    runs: r.runs.filter(({ id }) => id === 'S-01').map((run) => ({ ...run, zeros: [], exclude: [] })),
    oils: new Map([...r.oils].map(([id, o]) => [id, { ...o, ...oil }])),
    rig: { ...r.rig, ...rig },
  }));
  return deriveSeries({ ...whole, ...record?.(whole) }).runs.get('S-01')!;
}

const power = {
  torque_Nm: (at: { speed_rad_s: number; nu_m2_s: number }) =>
    0.9 * at.speed_rad_s ** 0.5 * (at.nu_m2_s / 60e-6) ** 0.3,
};
const geometry: Partial<Rig> = { ringFace_m: 0.038, toothHeight_m: 0.0116 };
const of = (run: DerivedRun, quantity: string): Result[] => run.results.filter((r) => r.quantity === quantity);

describe('the oil of a spin run', () => {
  const run = spun({ ...power, offset_K: 0.7, rig: geometry });
  it('has viscosity and Reynolds number at every step and temperature', () => {
    expect(of(run, 'viscosity')).toHaveLength(18);
    expect(of(run, 'reynolds')).toHaveLength(18);
  });

  it('is that of the sump of the window, and not of the temperature it is planned for', () => {
    const hot = of(run, 'viscosity').find(({ at }) => at.sump_K === 333.15)!;
    expect(hot.estimate!.value / nu(333.85)).toBeCloseTo(1, 9);
    expect(hot.notes.join()).toContain('at the sump of the window');
  });

  it('has ω R b/ν of the ring gear: at 290 rpm 30.37 · 0.124 · 0.038/ν', () => {
    const at290 = of(run, 'reynolds').find(
      ({ at }) => at.sump_K === 333.15 && Math.abs(at.outputSpeed_rad_s! - rpm(290)) < 1e-9,
    )!;
    expect(at290.estimate!.value).toBeCloseTo((rpm(290) * 0.124 * 0.038) / nu(333.85), 6);
    expect(standardUncertainty(at290.estimate!)).toBeGreaterThan(0);
  });

  it('says where the line of the oil does not reach: below 2 mm²/s', () => {
    const thin = { nu40_m2_s: 4e-6, nu100_m2_s: 1.2e-6 };
    const run = spun({
      ...power,
      rig: geometry,
      record: (r) => ({ oils: new Map([...r.oils].map(([id, o]) => [id, { ...o, ...thin }])) }),
    });
    const [hot, cold] = [353.15, 313.15].map((K) => of(run, 'viscosity').find(({ at }) => at.sump_K === K)!);
    expect(hot!.notes.join()).toContain('below the range');
    expect(cold!.notes.join()).not.toContain('below the range');
  });

  it('has no Reynolds number without the face of the ring gear', () => {
    const bare = spun({ ...power, rig: { ringFace_m: null } });
    expect(of(bare, 'viscosity')).toHaveLength(18);
    expect(of(bare, 'reynolds')).toHaveLength(0);
  });
});

describe('what models let one expect', () => {
  const bearings = [{ at: 'pinion', bore_m: 0.045, outside_m: 0.09, turning_Nm: null }] as const;
  const seals = [{ at: 'pinion', shaft_m: 0.05 }] as const;
  const bandAt = (run: DerivedRun, sump_K = 333.15) =>
    of(run, 'loss-estimate').find(
      ({ at }) => at.sump_K === sump_K && Math.abs(at.outputSpeed_rad_s! - rpm(290)) < 1e-9,
    )!;
  const alone = spun({ ...power, rig: { ...geometry, bearings: [], seals: [] } });
  const whole = spun({ ...power, rig: { ...geometry, bearings, seals } });

  it('is a band at every speed and temperature of the spin power, a model estimate with no value in it', () => {
    const bands = of(alone, 'loss-estimate');
    expect(bands).toHaveLength(18);
    for (const r of bands) {
      expect(r.estimate).toBeNull();
      expect(r.class).toBe('model estimate');
      expect(r.band!.high / r.band!.low).toBeGreaterThanOrEqual(4 * (1 - 1e-12));
      expect(r.notes.join()).toContain('unverified');
    }
    expect(alone.noLossEstimate).toBeNull();
  });

  it('is of churning alone where the rig sheet names no bearings and no seals, and says so', () => {
    expect(bandAt(alone).notes.join()).toContain('of churning alone: bearings and seals left out');
    expect(bandAt(alone).steps).toHaveLength(2);
    expect(bandAt(whole).notes.join()).not.toContain('churning alone');
    expect(bandAt(whole).notes.join()).toContain('preload of the bearings left out');
    expect(bandAt(whole).steps).toHaveLength(6);
    expect(bandAt(whole).band!.low).toBeGreaterThan(bandAt(alone).band!.low);
    expect(bandAt(whole).band!.high).toBeGreaterThan(bandAt(alone).band!.high);
  });

  it('says for a gear larger than those measured that it lies outside their range', () => {
    expect(bandAt(alone).notes).toContain('pitch radius is above the range: measured on single gears of 90 to 160 mm');
  });

  it.each([
    ['ring.tooth-height', { ...geometry, toothHeight_m: null }],
    ['ring.face and ring.tooth-height', { ringFace_m: null, toothHeight_m: null }],
  ])('is not there without geometry, and asks for %s', (fields, rig) => {
    const run = spun({ ...power, rig });
    expect(of(run, 'loss-estimate')).toHaveLength(0);
    expect(run.noLossEstimate).toContain(`does not say ${fields}`);
    expect(run.noLossEstimate).toContain('hill-bowl/rig.md');
  });

  it('is not there for a ring gear that stands clear of its oil', () => {
    const run = spun({ ...power, rig: { ...geometry, ringRadius_m: 0.04 } });
    expect(of(run, 'loss-estimate')).toHaveLength(0);
    expect(run.noLossEstimate).toContain('does not dip');
  });
});

describe('exponents of a spin run', () => {
  it('come back from a loss that is a pure power of both: torque n^0.5·ν^0.3 is power n^1.5·ν^0.3', () => {
    const run = spun(power);
    expect(of(run, 'speed-exponent')[0]!.estimate!.value).toBeCloseTo(1.5, 3);
    expect(of(run, 'viscosity-exponent')[0]!.estimate!.value).toBeCloseTo(0.3, 3);
    expect(run.exponents!.find((e) => e.of === 'whole')!.condition).toBeCloseTo(1, 1);
  });

  it('above a constant part are not told where the condition number is above ten, and no figure is made of them', () => {
    const run = spun({ torque_Nm: (at) => 0.4 + power.torque_Nm(at) });
    const above = run.exponents!.find((e) => e.of === 'above a constant')!;
    expect(above.condition).toBeGreaterThan(10);
    expect(of(run, 'speed-exponent-above')).toHaveLength(0);
    expect(run.remarks.join()).toContain('too high for its exponents to be told');
  });
});

it('spin power of a run held half a percent fast is that of its steps', () => {
  const [held, exact] = [spun({ ...power, off: () => 0.005 }), spun(power)];
  for (const [i, r] of of(held, 'spin-power').entries())
    expect(r.estimate!.value / of(exact, 'spin-power')[i]!.estimate!.value).toBeCloseTo(1, 5);
  expect(of(held, 'spin-torque')[0]!.steps.map(({ formula }) => formula)).toContain('T_step = T·(n_step/n)^e');
});
