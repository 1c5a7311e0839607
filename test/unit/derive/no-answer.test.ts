import { describe, expect, it } from 'vitest';
import { deriveSeries } from '../../../src/derive/series.ts';
import { standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { DerivedRun } from '../../../src/trial/derived.ts';
import type { Log } from '../../../src/trial/log.ts';
import type { ChannelKind } from '../../../src/trial/rig.ts';
import { logged, recordOf, type Course } from './logged.ts';

/* A fit always answers. These are runs that have no answer, or less of one than they seem to have. */
const ratio = 41 / 9;
const speed_rad_s = (290 * Math.PI) / 30;
const outEach_Nm = 22_000 / speed_rad_s / 2;
/** As typed in the note of H-01. */
const zero_Nm: Course = (t) => 0.09 + ((0.04 - 0.09) * t) / 9000;
const into_Nm = (2 * outEach_Nm + 1000 / speed_rad_s) / ratio;
/** One store, and readings that scatter a little. */
const sump: Course = (t) => 294 + 84 * (1 - Math.exp(-t / 2900)) + 0.05 * Math.sin(2.7 * t);

const heatUp = (other: Partial<Record<ChannelKind, Course>> = {}): Log =>
  logged(
    {
      'pinion-speed': () => speed_rad_s * ratio,
      'torque-in': (t) => into_Nm + zero_Nm(t),
      'torque-out-left': () => outEach_Nm + 1.8,
      'torque-out-right': () => outEach_Nm - 0.9,
      sump,
      skin: (t) => 294 + 74 * (1 - Math.exp(-t / 3100)),
      ambient: () => 294,
      airflow: () => 4,
      ...other,
    },
    { length_s: 9000, step_s: 5 },
  );
const reduced = (id: string, log: Log): DerivedRun => [...deriveSeries(recordOf(id, log)).runs.values()][0]!;
const codes = (d: DerivedRun) => d.findings.map((f) => f.code);
/** Every quantity of the trial itself; the fill has its own, and its oil was warm all the same. */
const quantities = (d: DerivedRun) =>
  new Set(d.results.map((r) => r.quantity).filter((q) => !/fill|level|immersion|thermal-dose/.test(q)));
const value = (d: DerivedRun, quantity: string): number | undefined =>
  d.results.find((r) => r.quantity === quantity)?.estimate?.value;

describe('a heat-up whose final temperature cannot be told', () => {
  it.each([
    [
      'ambient ends before the last half hour',
      { ambient: (t: number) => (t > 6600 ? NaN : 294) },
      /ambient was not read/,
    ],
    ['shafts give out more than goes in', { 'torque-in': () => 150 }, /signs or zeros/],
    ['the sump rises in a straight line', { sump: (t: number) => 294 + 0.01 * t }, /does not bend/],
  ] as const)('because %s gives its times to limits and says why there is nothing else', (_, other, why) => {
    const d = reduced('H-01', heatUp(other));
    expect([...quantities(d)]).toEqual(['limit-crossing']);
    expect(codes(d)).toEqual(['final-not-told']);
    expect(d.remarks.join()).toMatch(why);
    expect(d.models).toEqual([]);
  });
});

describe('a channel without an instrument', () => {
  it('is named with every figure whose ± lacks its calibration', () => {
    const record = recordOf('H-01', heatUp(), (r) => ({
      rig: {
        ...r.rig,
        maps: r.rig.maps.map((m) => ({
          ...m,
          columns: m.columns.map((c) => (c.is === 'torque-in' ? { ...c, instrument: null } : c)),
        })),
      },
    }));
    const d = [...deriveSeries(record).runs.values()][0]!;
    const notes = (quantity: string) => d.results.find((r) => r.quantity === quantity)!.notes.join();
    expect(notes('heat-made')).toMatch(/no instrument is named for torque-in/);
    expect(notes('fill-volume')).toBe('');
  });
});

describe('a heat-up with a hole in it', () => {
  it('whose sump was lost bounds a limit by the last reading and not by the end of the file', () => {
    const d = reduced('H-01', heatUp({ sump: (t) => (t > 4800 ? NaN : sump(t)) }));
    const open = d.results.filter((r) => r.quantity === 'limit-crossing' && r.estimate === null);
    expect(open.map((r) => r.bound)).toEqual([
      { side: 'above', at: 4800 },
      { side: 'above', at: 4800 },
    ]);
  });
  it('whose torque was lost for twenty minutes keeps its balance closed', () => {
    const hole: Course = (t) => (t > 3000 && t < 4200 ? NaN : into_Nm + zero_Nm(t));
    // 1000 W for 1200 of 9000 s would be 133 W
    expect(Math.abs(value(reduced('H-01', heatUp({ 'torque-in': hole })), 'closure')!)).toBeLessThan(10);
  });
  it('is the same run on a logger that had been counting for ten hours', () => {
    const log = heatUp();
    const late = { ...log, time_s: log.time_s.map((t) => t + 36_000) };
    expect(reduced('H-01', late).results.map((r) => r.estimate?.value)).toEqual(
      reduced('H-01', log).results.map((r) => r.estimate?.value),
    );
  });
});

describe('a cool-down', () => {
  const coolDown = (course: Course) =>
    reduced('C-01', logged({ sump: course, ambient: () => 294 }, { length_s: 5400, step_s: 5 }));
  it('that falls to ambient gives its time constant', () => {
    expect(
      value(
        coolDown((t) => 294 + 80 * Math.exp(-t / 4000)),
        'time-constant',
      ),
    ).toBeCloseTo(4000, 0);
  });
  it.each([
    ['stands still', () => 294],
    ['rises', (t: number) => 350 + 0.002 * t],
  ] as const)('whose sump %s has none', (_, course) => {
    const d = coolDown(course);
    expect(d.leftOut).toMatch(/does not fall/);
    expect([...quantities(d)]).toEqual([]);
  });
});

describe('a spin run', () => {
  const steps = [60, 120, 200, 290, 390, 520];
  const law = (t_C: number, rpm: number): number => 0.55 + 1.2 * Math.exp(-0.018 * (t_C - 60)) * (rpm / 390) ** 0.7;
  /** Six steps of two minutes at each of these temperatures; the zero of S-07 is of no account here. */
  const spin = (levels_C: readonly number[], turn: 1 | -1 = 1) => {
    const at = (t: number) => {
      const i = Math.min(Math.floor(t / 130), 6 * levels_C.length - 1);
      return { t_C: levels_C[Math.floor(i / 6)]! + 0.02 * Math.sin(t), rpm: t - 130 * i < 8 ? 0 : steps[i % 6]! };
    };
    return reduced(
      'S-07',
      logged(
        {
          'pinion-speed': (t) => (turn * at(t).rpm * ratio * Math.PI) / 30,
          'torque-in': (t) => turn * (law(at(t).t_C, at(t).rpm) + 0.001 * Math.sin(7 * t)),
          sump: (t) => at(t).t_C + 273.15,
          ambient: () => 294,
        },
        { length_s: 130 * 6 * levels_C.length, step_s: 2 },
      ),
    );
  };
  const at60 = (d: DerivedRun) =>
    d.results.find(
      (r) =>
        r.quantity === 'spin-torque' &&
        r.at.sump_K === 333.15 &&
        Math.abs(r.at.outputSpeed_rad_s! - speed_rad_s) < 1e-6,
    )?.estimate;

  it('at one temperature off the reference leaves open what the way to it would do', () => {
    const [off, on] = [at60(spin([58.2]))!, at60(spin([60]))!];
    expect(Math.abs(off.value - on.value)).toBeGreaterThan(2 * standardUncertainty(on));
    expect(Math.abs(off.value - on.value)).toBeLessThan(2 * standardUncertainty(off));
  });
  it('names the planned temperatures at which nothing was found', () => {
    expect(spin([40, 62.5, 80]).remarks.at(-1)).toMatch(/no window found .*: every step at 60 °C\.$/);
    expect(spin([40, 60, 80]).remarks.filter((r) => r.startsWith('Planned'))).toEqual([]);
  });
  it('gives the same loss turned the other way, with torque and speed both signed', () => {
    const [forward, reverse] = [at60(spin([40, 60, 80]))!, at60(spin([40, 60, 80], -1))!];
    // The zero of the note is small and stands on the other side.
    expect(reverse.value).toBeGreaterThan(0);
    expect(Math.abs(reverse.value - forward.value)).toBeLessThan(0.1);
  });
});
