import { describe, expect, it } from 'vitest';
import { deriveSeries } from '../../../src/derive/series.ts';
import { timeInBands } from '../../../src/derive/thermal-dose.ts';
import { standardUncertainty } from '../../../src/quantity/estimate.ts';
import type { Result } from '../../../src/trial/derived.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { logged, recordOf, type Course } from './logged.ts';

const zero_K = 273.15;
const evenly = (of: { length_s: number; step_s: number; celsius: Course }) => {
  const time_s = Float64Array.from({ length: of.length_s / of.step_s + 1 }, (_, i) => i * of.step_s);
  return { time_s, sump_K: time_s.map((t) => of.celsius(t) + zero_K) };
};
const inCelsius = (of: Parameters<typeof timeInBands>[0]) =>
  timeInBands(of).bands.map(({ from_K, time_s }) => [Math.round(from_K - zero_K), time_s] as const);

describe('time of the oil in bands of temperature', () => {
  it('is the whole of a log at one temperature, in one band: a bench that holds at 60 °C is in the band round it', () => {
    for (const held of [55, 60, 64.999])
      expect(inCelsius(evenly({ length_s: 3600, step_s: 2, celsius: () => held }))).toEqual([[55, 3600]]);
    expect(inCelsius(evenly({ length_s: 3600, step_s: 2, celsius: () => 65 }))).toEqual([[65, 3600]]);
  });

  // arithmetic: a line climbs each ten degrees in one time, whatever the rows
  it('is equal in equal bands on a steady climb, also where no row lies on an edge', () => {
    for (const step_s of [1, 7, 700]) {
      const found = inCelsius(evenly({ length_s: 7000, step_s, celsius: (t) => 25 + t / 100 }));
      expect(found.slice(0, 7).map(([from]) => from)).toEqual([25, 35, 45, 55, 65, 75, 85]);
      for (const [, time_s] of found.slice(0, 7)) expect(time_s).toBeCloseTo(1000, 6);
    }
  });

  // Newton's law of cooling in closed form: from T1 to T2 takes τ·ln((T1 − Ta)/(T2 − Ta)); any book of heat transfer
  it('follows a body that cools: hours from 95 to 85 °C and on are those of the closed form', () => {
    const tau_s = 4000;
    const cooling = evenly({ length_s: 9000, step_s: 2, celsius: (t) => 20 + 75 * Math.exp(-t / tau_s) });
    const found = new Map(inCelsius(cooling));
    for (const from of [85, 75, 65, 55, 45, 35])
      expect(found.get(from)! / (tau_s * Math.log((from + 10 - 20) / (from - 20)))).toBeCloseTo(1, 5);
  });

  it('goes below nought without a band of twice the width', () => {
    const found = inCelsius(evenly({ length_s: 4000, step_s: 10, celsius: (t) => t / 100 - 20 }));
    expect(found.map(([from]) => from)).toEqual([-25, -15, -5, 5, 15]);
    expect(found.map(([, s]) => Math.round(s))).toEqual([500, 1000, 1000, 1000, 500]);
  });

  it('leaves out a gap, and says how long it was', () => {
    const time_s = Float64Array.from([0, 2, 4, 6, 606, 608, 610]);
    const dose = timeInBands({ time_s, sump_K: time_s.map(() => 350) });
    expect([dose.counted_s, dose.missed_s]).toEqual([10, 600]);
  });

  it('takes a logger that slows down for a slower logger, not for gaps', () => {
    const time_s = Float64Array.from({ length: 200 }, (_, i) => (i < 150 ? i : 150 + (i - 150) * 10));
    expect(timeInBands({ time_s, sump_K: time_s.map(() => 350) }).missed_s).toBe(0);
  });

  it('has no time where the sump has no reading, and none at all for a log of one row', () => {
    const sump_K = Float64Array.from([350, 350, NaN, 350, 350]);
    const dose = timeInBands({ time_s: Float64Array.from([0, 1, 2, 3, 4]), sump_K });
    expect([dose.counted_s, dose.missed_s]).toEqual([2, 2]);
    expect(timeInBands({ time_s: Float64Array.of(5), sump_K: Float64Array.of(350) }).bands).toEqual([]);
  });
});

const climb: Course = (t) => zero_K + 25 + t / 100;
const log = (sump: Course) =>
  logged({ 'pinion-speed': () => 100, 'torque-in': () => 5, sump, ambient: () => 294 }, { length_s: 6000, step_s: 4 });
const doses = (record: SeriesRecord): Result[] =>
  [...deriveSeries(record).runs.values()][0]!.results.filter(({ quantity }) => quantity === 'thermal-dose');
const change = (id: string, more: object) => (record: SeriesRecord) => ({
  runs: record.runs.map((run) => (run.id === id ? { ...run, ...more } : run)),
});
const excluded = (channels: readonly string[]) => ({
  exclude: [{ from_s: 1000, to_s: 2000, channels, reason: 'door open', by: 'A', on: null }],
});
const whole_s = (list: readonly Result[]) => list.find(({ at }) => at.band_K === undefined)?.estimate?.value;

describe('the thermal dose of a run', () => {
  it('is given band by band, and the bands are the whole of it', () => {
    const found = doses(recordOf('S-01', log(climb)));
    const bands = found.filter(({ at }) => at.band_K !== undefined);
    expect(whole_s(found)).toBe(6000);
    expect(bands.reduce((sum, { estimate }) => sum + estimate!.value, 0)).toBeCloseTo(6000, 6);
    expect(bands.map(({ at }) => Math.round(at.band_K![0] - zero_K))).toEqual([25, 35, 45, 55, 65, 75, 85].slice(0, 6));
  });

  it('knows least where the sump stands at an edge, and nothing is in doubt in the middle of a band', () => {
    const u_s = (held: number) =>
      Math.max(
        ...doses(
          recordOf(
            'S-01',
            log(() => zero_K + held),
          ),
        ).map((r) => standardUncertainty(r.estimate!)),
      );
    expect(u_s(60)).toBe(0);
    expect(u_s(65)).toBeGreaterThan(2000);
  });

  it('counts a stretch that the note excludes, since the oil was hot, but not one of the sump itself', () => {
    const of = (channels: readonly string[]) =>
      whole_s(doses(recordOf('S-01', log(climb), change('S-01', excluded(channels)))));
    expect(of([])).toBe(6000);
    expect(of(['torque-in'])).toBe(6000);
    expect(of(['sump'])).toBeLessThan(5000);
  });

  it('is given for a run that is set aside too, and not for one that another stands for', () => {
    const of = (status: string) =>
      whole_s(doses(recordOf('S-01', log(climb), change('S-01', { status, statusReason: 'belt slip' }))));
    expect(of('set aside')).toBe(6000);
    expect(of('superseded')).toBeUndefined();
  });

  it('says how much of the log is not in it', () => {
    const found = doses(recordOf('S-01', log(climb), change('S-01', excluded(['sump']))));
    expect(found[0]!.notes.join()).toContain('0.28 h of the log are not counted');
  });

  it('is not given without a sump in the log, nor where its temperatures look like °F', () => {
    const dry = logged({ 'pinion-speed': () => 100, ambient: () => 294 }, { length_s: 600 });
    expect(doses(recordOf('S-01', dry))).toEqual([]);
    const fahrenheit = logged({ sump: climb, ambient: () => zero_K + 70 }, { length_s: 600 });
    expect(doses(recordOf('S-01', fahrenheit))).toEqual([]);
  });
});
