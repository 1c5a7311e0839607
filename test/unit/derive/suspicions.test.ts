import { describe, expect, it } from 'vitest';
import { deriveSeries } from '../../../src/derive/series.ts';
import type { ChannelKind } from '../../../src/trial/rig.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { logged, recordOf, type Course } from './logged.ts';

/* Logs made here, run through the whole room; places are rows of the made log (line 2 is its first), or lines of the demo's notes. */
const ratio = 41 / 9;
const speed_rad_s = (290 * Math.PI) / 30;
const outEach_Nm = 22_000 / speed_rad_s / 2;
const zero_Nm: Course = (t) => 0.09 + ((0.04 - 0.09) * t) / 9000;
const sump: Course = (t) => 294 + 84 * (1 - Math.exp(-t / 2900));

/** A loaded heat-up in which nothing is wrong: 1000 W, zeros of the input as typed in the note of H-01, kept zeros of the hubs of +1.8 and −0.9 N·m. */
const heatUp = (other: Partial<Record<ChannelKind, Course>> = {}) =>
  logged(
    {
      'pinion-speed': () => speed_rad_s * ratio,
      'torque-in': (t) => (2 * outEach_Nm + 1000 / speed_rad_s) / ratio + zero_Nm(t),
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

const derived = (record: SeriesRecord) => {
  const { runs, findings } = deriveSeries(record);
  const own = [...runs.values()];
  return {
    told: [...findings, ...own.flatMap((r) => r.findings)].map((f) => ({
      code: f.code,
      at: `${f.place.file.split('/').at(-1)!}:${f.place.line}`,
      says: f.says,
      cell: f.place.cell,
    })),
    results: own.flatMap((r) => r.results),
    leftOut: own.map((r) => r.leftOut),
  };
};
const codes = (record: SeriesRecord): string[] => derived(record).told.map((f) => `${f.code} ${f.at}`);
const H01 = (other: Partial<Record<ChannelKind, Course>> = {}, change?: (r: SeriesRecord) => Partial<SeriesRecord>) =>
  recordOf('H-01', heatUp(other), change);
/** The end of a run that was logged for so long. */
const after = ({ started }: { readonly started: string }, length_s: number): string =>
  new Date(Date.parse(started) + length_s * 1e3).toISOString();

describe('a heat-up in which nothing is wrong', () => {
  it('gives its figures and no finding', () => {
    const { told, results, leftOut } = derived(H01());
    expect(told).toEqual([]);
    expect(leftOut).toEqual([null]);
    expect(results.find((r) => r.quantity === 'heat-made')!.estimate!.value).toBeCloseTo(1000, 0);
  });
});

describe('what is held against what', () => {
  it('ambient against the note: a column that agrees with it only as °F leaves the run out', () => {
    const asF: Course = () => 273.15 + 69.4;
    const found = derived(H01({ ambient: asF }));
    expect(found.told).toMatchObject([{ code: 'unit-doubtful', at: 'made.csv:2', cell: 8 }]);
    expect(found.leftOut[0]).toContain('°F');
    expect(found.results.some((r) => r.quantity === 'heat-made')).toBe(false);
  });

  it('left against right: outputs whose kept zeros changed places may be swapped', () => {
    const swapped = { 'torque-out-left': () => outEach_Nm - 0.9, 'torque-out-right': () => outEach_Nm + 1.8 };
    const found = derived(H01(swapped));
    expect(found.told).toMatchObject([{ code: 'swap-doubtful', at: 'made.csv:2', cell: 4 }]);
    // their sum is the same, so that heat made is kept
    expect(found.results.find((r) => r.quantity === 'heat-made')!.estimate!.value).toBeCloseTo(1000, 0);
  });

  it('skin against sump: a skin that falls within a minute and stays down came loose', () => {
    const skin: Course = (t) => 294 + 74 * (1 - Math.exp(-t / 3100)) - (t >= 4200 ? 9 : 0);
    const [told] = derived(H01({ skin })).told;
    expect(told).toMatchObject({ code: 'probe-loose', at: `made.csv:${4200 / 5 + 2}`, cell: 7 });
  });

  it('skin against sump: a skin that comes back within the minute did not', () => {
    const skin: Course = (t) => 294 + 74 * (1 - Math.exp(-t / 3100)) - (t >= 4200 && t < 4230 ? 9 : 0);
    expect(codes(H01({ skin }))).toEqual([]);
  });

  it('sump against ambient at a cold start: more than 2 K apart is said and kept', () => {
    const found = derived(H01({ ambient: () => 296.5 }));
    expect(found.told).toMatchObject([{ code: 'start-spread', at: 'made.csv:2' }]);
    expect(found.leftOut).toEqual([null]);
    expect(codes(H01({ ambient: () => 295.8 }))).toEqual([]);
  });

  it('ambient at the end against ambient at the start, as typed', () => {
    const moved = (end_K: number) => (r: SeriesRecord) => ({
      runs: r.runs.map((run) => ({ ...run, ambient: { ...run.ambient, end_K } })),
    });
    const start_K = H01().runs[0]!.ambient.start_K;
    expect(codes(H01({}, moved(start_K + 3.4)))).toEqual(['ambient-moved H-01.md:17']);
    expect(codes(H01({}, moved(start_K - 3.4)))).toEqual(['ambient-moved H-01.md:17']);
    expect(codes(H01({}, moved(start_K + 2.6)))).toEqual([]);
  });
});

describe('the fill against the survey', () => {
  const filled = (fill: Partial<SeriesRecord['runs'][number]['fill']>) => (r: SeriesRecord) => ({
    runs: r.runs.map((run) => ({ ...run, fill: { ...run.fill, ...fill } })),
  });

  it('a dipped level more than 3 mm off is said at its side, and its level figures carry it', () => {
    const found = derived(H01({}, filled({ levelRight_z_m: -0.0572 })));
    expect(found.told).toMatchObject([{ code: 'level-off-survey', at: 'H-01.md:16' }]);
    expect(found.told[0]!.says).toContain('right');
    for (const quantity of ['static-level', 'immersion'])
      expect(found.results.find((r) => r.quantity === quantity)!.notes).toEqual([expect.stringContaining('right')]);
    expect(found.results.find((r) => r.quantity === 'heat-made')!.notes).toEqual([]);
  });

  it('litres beyond the level table have no level, and the run keeps its other figures', () => {
    const found = derived(H01({}, filled({ mass_kg: 9 })));
    expect(found.told).toMatchObject([{ code: 'fill-outside-table', at: 'H-01.md:16' }]);
    expect(found.results.map((r) => r.quantity)).not.toContain('static-level');
    expect(found.results.map((r) => r.quantity)).toContain('heat-made');
  });
});

describe('limits and instruments', () => {
  it('a window run past its cap is said at its hottest row', () => {
    const hot: Course = (t) => 333.15 + (t < 600 ? 0 : t === 700 ? 1.4 : 0.1);
    const log = logged({ 'pinion-speed': () => 0, sump: hot, level: () => -0.05 }, { length_s: 1200, step_s: 10 });
    const sync = [{ time_s: 12, line: 3, text: 'sync' }];
    const ungraded = (whole: SeriesRecord) => ({
      runs: whole.runs
        .filter(({ id }) => id === 'F-01')
        .map((run) => ({ ...run, ended: after(run, 1200), observations: [] })),
    });
    expect(codes(recordOf('F-01', { ...log, events: sync }, ungraded))).toEqual(['cap-exceeded made.csv:72']);
  });

  it('a sump past what the oil states is said, and nothing is said at the limit itself', () => {
    const oil = (maxSump_K: number) => (r: SeriesRecord) => ({
      oils: new Map([...r.oils].map(([id, o]) => [id, { ...o, maxSump_K }])),
    });
    const top_K = sump(9000);
    expect(codes(H01({}, oil(top_K - 1)))).toEqual(['sump-limit-exceeded made.csv:1802']);
    expect(codes(H01({}, oil(top_K)))).toEqual([]);
  });

  it('an instrument overdue is said once at its date, and in the notes of the figures that rest on it', () => {
    const due = (checkedOn: string | null) => (r: SeriesRecord) => ({
      rig: {
        ...r.rig,
        instruments: r.rig.instruments.map((i) =>
          i.id === 'torque-high' ? { ...i, nextDue: '2026-03-01', checkedOn } : i,
        ),
      },
    });
    const found = derived(H01({}, due(null)));
    expect(found.told.map((f) => f.code)).toEqual(['instrument-overdue']);
    const notes = (quantity: string) => found.results.find((r) => r.quantity === quantity)!.notes.join();
    for (const quantity of ['heat-made', 'shed']) expect(notes(quantity)).toContain('torque-high');
    for (const quantity of ['final-temperature', 'static-level']) expect(notes(quantity)).not.toContain('torque-high');
    expect(codes(H01({}, due('2026-03-01')))).toEqual([]);
  });

  it('a probe whose tip hangs above the running level is said at the step', () => {
    const speed: Course = (t) => ((t < 200 ? 60 : 120) * Math.PI * ratio) / 30;
    const level: Course = (t) => (t < 200 ? -0.05 : -0.08);
    const log = logged({ 'pinion-speed': speed, sump: () => 330, level }, { length_s: 400, step_s: 2 });
    const short = (whole: SeriesRecord) => ({ runs: whole.runs.map((run) => ({ ...run, ended: after(run, 400) })) });
    const [told] = derived(recordOf('F-01', log, short)).told;
    expect(told).toMatchObject({ code: 'probe-above-level', at: `made.csv:${200 / 2 + 2}` });
    expect(told!.says).toContain('120 rpm');
  });

  it('a log without the channels of its trial is said, at the log, and its run gives nothing', () => {
    const log = logged({ sump, ambient: () => 294 }, { length_s: 9000, step_s: 5 });
    const found = derived(recordOf('H-01', log));
    expect(found.told).toMatchObject([{ code: 'nothing-derived', at: 'made.csv:1' }]);
    expect(found.leftOut[0]).toContain('torque');
  });
});

describe('an oil against its grade', () => {
  // SAE J306: a 90 has 13.5 to under 18.5 mm²/s at 100 °C (from memory)
  it('outside the band is said at the viscosity, inside it is not', () => {
    const oil = (nu100_m2_s: number) => (r: SeriesRecord) => ({
      oils: new Map([...r.oils].map(([id, o]) => [id, { ...o, nu100_m2_s }])),
    });
    expect(codes(H01({}, oil(12e-6))).filter((c) => c.includes('O1.md'))).toEqual(['grade-off O1.md:6']);
    expect(codes(H01({}, oil(15e-6))).filter((c) => c.includes('O1.md'))).toEqual([]);
  });
});
