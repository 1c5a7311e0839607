import { describe, expect, it } from 'vitest';
import { deriveSeries } from '../../../src/derive/series.ts';
import type { DerivedRun } from '../../../src/trial/derived.ts';
import type { Run } from '../../../src/trial/run.ts';
import { logged, recordOf } from './logged.ts';

const rpm = (n: number): number => (n * Math.PI) / 30;
const place = { file: 'hill-bowl/runs/F-01.md', line: 9, column: 1 };

/** One hold at 120 rpm, then ten minutes at rest; the level after the stop as given. */
const log = (after: (t: number) => number, sump_K = 331.15) =>
  logged(
    {
      'pinion-speed': (t) => (t >= 30 && t < 150 ? rpm((120 * 41) / 9) : 0),
      sump: () => sump_K,
      level: (t) => (t < 30 ? -53e-3 : t < 150 ? -60e-3 : after(t - 150)) + 1e-4 * Math.sin(1.3 * t),
    },
    { length_s: 750, step_s: 1 },
  );
const rising = (t: number): number => -54e-3 - 6e-3 * 2 ** (-t / 45);
/** Highest at 60 s, then 4 mm lower as the air goes. */
const falling = (t: number): number =>
  t < 60 ? -60e-3 + (t / 60) * 10e-3 : -50e-3 - 4e-3 * (1 - 2 ** (-(t - 60) / 60));

function reduced(id: string, of: ReturnType<typeof log>, change: Partial<Run> = {}): DerivedRun {
  const record = recordOf(id, of, (whole) => ({
    runs: whole.runs
      .filter((run) => run.id === id)
      .map((run) => ({ ...run, clips: [], observations: [], settle: [], airSample: null, ...change })),
  }));
  return deriveSeries(record).runs.get(id)!;
}
const valueOf = (run: DerivedRun, quantity: string): number | undefined =>
  run.results.find(({ quantity: q }) => q === quantity)?.estimate?.value;

describe('air in the oil', () => {
  it('is not told from a level that only rises: oil draining back hides it', () => {
    const run = reduced('F-01', log(rising));
    expect(valueOf(run, 'air-share')).toBeUndefined();
    expect(run.flow!.settled!.airUntold).toContain('draining back hides');
  });

  it('is not told where the fill was poured and not weighed', () => {
    const fill = {
      basis: 'volume' as const,
      mass_kg: null,
      volume_m3: 2.4e-3,
      temperature_K: 293.15,
      wait_s: null,
      levelLeft_z_m: null,
      levelRight_z_m: null,
    };
    const run = reduced('F-01', log(falling), { fill });
    expect(valueOf(run, 'air-share')).toBeUndefined();
    expect(run.flow!.settled!.airUntold).toContain('not weighed');
  });

  it('is read from the level table where the level of a weighed fill falls again', () => {
    const run = reduced('F-01', log(falling));
    // Rows of the survey: −52 mm 2.45 L, −65 mm 1.95 L, −45 mm 2.75 L; −50 mm is 2.536 L and −54 mm 2.373 L: 6.4 %.
    expect(valueOf(run, 'air-share')! * 100).toBeGreaterThan(5.4);
    expect(valueOf(run, 'air-share')! * 100).toBeLessThan(6.8);
    expect(run.flow!.settled!.airUntold).toBeNull();
  });

  it('is told from a weighed sample by its density', () => {
    const airSample = {
      step: { outputSpeed_rad_s: rpm(120), direction: 'up' as const },
      mass_kg: 82.6e-3,
      volume_m3: 100e-6,
      temperature_K: 331.15,
      place,
    };
    // Oil of 900 kg/m³ at 15 °C that loses 0.07 % a kelvin is 872.9 at 58 °C; air there is 1.07: (872.9 − 826)/871.8 = 5.4 %.
    expect(valueOf(reduced('F-01', log(rising), { airSample }), 'air-share')! * 100).toBeCloseTo(5.38, 1);
  });
});

describe('the bath at the pinion', () => {
  it('drops by the distance times the tilt: 190 mm at 12 % are 22.8 mm', () => {
    const run = reduced('T-01', log(rising));
    const still = valueOf(run, 'static-level')!;
    expect((still - valueOf(run, 'level-at-pinion')!) * 1e3).toBeCloseTo(22.8, 9);
    // Lowest point of the race: 32 mm below the axle and 45 mm of radius, −77 mm.
    expect(valueOf(run, 'bath-over-race')! * 1e3).toBeCloseTo(valueOf(run, 'level-at-pinion')! * 1e3 + 77, 9);
  });

  it('stands as high as the level itself on an axle that is not tilted', () => {
    const run = reduced('F-01', log(rising));
    expect(valueOf(run, 'level-at-pinion')).toBe(valueOf(run, 'static-level'));
  });
});

describe('Reynolds beside the picture', () => {
  it('is ω R b/ν of the ring gear in the oil of the hold', () => {
    const run = reduced('F-01', log(rising, 333.15));
    // 62.3 mm²/s at 60 °C: 12.566 rad/s · 0.124 m · 0.038 m/62.3e-6 = 950.
    expect(valueOf(run, 'reynolds')! / 950).toBeCloseTo(1, 2);
  });

  it('is given at no step whose probe hangs above the level, and no power of thrown oil either', () => {
    const hung = (tip_z_m: number): string[] => {
      const record = recordOf('F-01', log(rising), (whole) => ({
        runs: whole.runs.filter(({ id }) => id === 'F-01').map((run) => ({ ...run, clips: [], observations: [] })),
        rig: {
          ...whole.rig,
          instruments: whole.rig.instruments.map((i) => ({ ...i, tip_z_m: new Map([['other', tip_z_m]]) })),
        },
      }));
      return deriveSeries(record)
        .runs.get('F-01')!
        .results.map(({ quantity }) => quantity);
    };
    // The hold runs at −60 mm.
    expect(hung(-76e-3)).toEqual(expect.arrayContaining(['reynolds', 'jet-power', 'running-level']));
    expect(hung(-50e-3)).toContain('running-level');
    expect(hung(-50e-3)).not.toContain('reynolds');
    expect(hung(-50e-3)).not.toContain('jet-power');
  });
});

it('warm oil stands higher: 2.4 L from 20 to 58 °C rise by 2.4 L · 0.0007 · 38 K over the area of the sump', () => {
  const rise_mm = valueOf(reduced('F-01', log(rising)), 'hot-level-rise')! * 1e3;
  // 0.064 L; the survey gives 13 mm for 0.50 L below −52 mm and 7 mm for 0.30 L above: 1.3 mm to −52, 0.014 L after it.
  expect(rise_mm).toBeGreaterThan(1.4);
  expect(rise_mm).toBeLessThan(1.9);
});
