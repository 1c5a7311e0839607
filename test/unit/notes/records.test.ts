import { parse } from 'yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { jsonSchemas } from '../../../src/notes/json-schema.ts';
import { flowBook } from './flow-book.ts';
import { goodBook } from './good-book.ts';
import { outcome, spoil } from './spoilt.ts';

const { notes } = outcome(goodBook);
const series = notes.series[0]!;
const run = (id: string) => series.runs.find((r) => r.id === id)!;

// conversions by the SI Brochure, 9th ed. (2019): 1 min = 60 s, one turn = 2π rad, t/°C = T/K − 273.15
describe('what stands in a record', () => {
  it('is SI', () => {
    expect(series.series.reference.outputSpeed_rad_s).toBeCloseTo((290 * 2 * Math.PI) / 60, 10);
    expect(series.series.reference.mainSump_K).toBeCloseTo(333.15, 10);
    expect(series.series.tolerance).toMatchObject({
      ambient_K: 3,
      airflow_m_s: 0.3,
      outputSpeed_ratio: 0.01,
      tilt_ratio: 0.005,
    });
    expect(series.series.tolerance.level_m).toBeCloseTo(0.003, 12);
    expect(series.rig.ringRadius_m).toBeCloseTo(0.124, 12);
    expect(series.rig.states[0]?.gearsetHours).toBeCloseTo(140, 10);
    expect(series.plan?.load?.powerOut_W).toBeCloseTo(22000, 8);
    expect(series.plan?.steadySlope_K_s).toBeCloseTo(0.5 / 60, 12);
    expect(series.oils.get('O1')?.nu40_m2_s).toBeCloseTo(170e-6, 12);
    expect(series.oils.get('O1')?.expansion_1_K).toBe(0.0007);
    expect(run('S-07').fill).toMatchObject({ basis: 'volume', mass_kg: 2.152, volume_m3: null, wait_s: 1200 });
    expect(run('S-08').fill.volume_m3).toBeCloseTo(2.4e-3, 12);
    expect(series.articles.get('P0')?.profile?.shroud?.to_rad).toBeCloseTo((150 * Math.PI) / 180, 12);
  });

  it('keeps what an oil note says of its viscosities', () => {
    const said = outcome(spoil('hill-bowl/oils/O1.md', 'at-40: 170 mm²/s', 'at-40: 170 mm²/s ± 2 mm²/s (k=2)'));
    expect(said.loud).toEqual([]);
    const oil = said.notes.series[0]?.oils.get('O1');
    expect(oil?.nu40PlusMinus?.value).toBeCloseTo(2e-6, 12);
    expect(oil?.nu40PlusMinus?.k).toBe(2);
    expect(oil).not.toHaveProperty('nu100PlusMinus');
  });

  it('keeps a zero with the last digit that was typed', () => {
    expect(run('S-07').zeros).toEqual([
      { instrument: 'torque-low', before_Nm: 0.021, after_Nm: 0.043, step_Nm: 0.001 },
    ]);
  });

  it('keeps accuracy as said: limits without k, a standard statement with it', () => {
    const [torque, , probe] = series.rig.instruments;
    expect(torque?.accuracy).toEqual({ asWritten: '± 0.05 % of range', of: 'range', value: 0.0005, k: null });
    expect(probe?.accuracy).toEqual({ asWritten: '± 0.3 K (k=2)', of: 'absolute', value: 0.3, k: 2 });
    expect(probe?.tip_z_m.get('P1')).toBeCloseTo(-0.112, 12);
    expect([torque?.shareGroup, probe?.shareGroup]).toEqual(['torque-low', 'loggerbox']);
  });

  it('keeps the column map with units by their names', () => {
    const [map] = series.rig.maps;
    expect(map).toMatchObject({ id: 'bench-low', delimiter: ',', decimal: '.', header: 1, missing: ['', 'NaN'] });
    expect(map?.columns.map((c) => [c.header, c.is, c.unit, c.instrument])).toEqual([
      ['n_in', 'pinion-speed', 'rpm', 'enc-1'],
      ['tq_in', 'torque-in', 'N·m', 'torque-low'],
      ['T_sump', 'sump', '°C', 'tc-1'],
      ['evt', 'event', null, null],
    ]);
    expect(map?.columns[2]?.plausible?.[1]).toBeCloseTo(473.15, 10);
    expect(map?.columns.map((c) => c.maxStep)).toEqual([null, 5, 2, null]);
  });

  it('keeps where and how each field was typed, and the words under the front matter', () => {
    const { places, typed, body } = run('S-07');
    expect(places.get('fill.mass-in')).toMatchObject({
      file: 'hill-bowl/runs/S-07.md',
      line: 16,
      column: 33,
      length: 6,
    });
    expect(places.get('exclude.0.reason')).toMatchObject({ line: 23, column: 59 });
    expect(typed.get('fill.mass-in')).toBe('2152 g');
    expect(typed.get('operators')).toBe('[A]');
    expect(typed.get('zeros.torque-low.before')).toBe('0.021 N·m');
    expect(body).toBe('Second refit. Nothing leaked.\n');
  });

  it('is for the house unless it says otherwise', () => {
    expect([run('S-07').shownTo, run('S-08').shownTo]).toEqual(['public', 'house']);
  });

  it('reads delimiters as signs and as words', () => {
    for (const [typed, sign] of [
      ['";"', ';'],
      ['semicolon', ';'],
      ['"\\t"', '\t'],
      ['tab', '\t'],
      ['comma', ','],
    ] as const) {
      const { notes: read } = outcome(spoil('hill-bowl/rig.md', 'delimiter: ","', `delimiter: ${typed}`));
      expect(read.series[0]?.rig.maps[0]?.delimiter).toBe(sign);
    }
  });

  it('takes 90 % within one grade and a kappa of 0.6 for agreement unless the series says otherwise', () => {
    expect(series.series.agreement).toEqual({ withinOne_ratio: 0.9, kappa: 0.6 });
    const said = outcome(spoil('hill-bowl/series.md', 'coverage: 95 %', 'agreement: { within-one: 95 %, kappa: 0.7 }'));
    expect(said.loud).toEqual([]);
    expect(said.notes.series[0]?.series.agreement.withinOne_ratio).toBeCloseTo(0.95, 12);
    expect(said.notes.series[0]?.series.agreement.kappa).toBe(0.7);
  });

  it('has the height of the teeth where the rig sheet says it', () => {
    expect(series.rig.toothHeight_m).toBeNull();
    const said = outcome(spoil('hill-bowl/rig.md', 'face: 38 mm }', 'face: 38 mm, tooth-height: 11.6 mm }'));
    expect(said.loud).toEqual([]);
    expect(said.notes.series[0]?.rig.toothHeight_m).toBeCloseTo(0.0116, 12);
  });

  it('has bearings and lip seals where the rig sheet names them, each with its shaft', () => {
    expect([series.rig.bearings, series.rig.seals]).toEqual([[], []]);
    const named = [
      'offset: -32 mm',
      'bearings:',
      '  - { at: pinion, bore: 45 mm, outside: 90 mm, turning-torque: 0.4 N·m }',
      '  - { at: ring, bore: 2 in, outside: 90 mm }',
      'seals: [{ at: wheel, shaft: 55 mm }]',
    ].join('\n');
    const { notes: read, loud } = outcome(spoil('hill-bowl/rig.md', 'offset: -32 mm', named));
    expect(loud).toEqual([]);
    const { bearings, seals } = read.series[0]!.rig;
    expect(bearings[0]).toEqual({ at: 'pinion', bore_m: 0.045, outside_m: 0.09, turning_Nm: 0.4 });
    expect(bearings[1]!.bore_m).toBeCloseTo(0.0508, 12);
    expect(bearings[1]!.turning_Nm).toBeNull();
    expect(seals).toEqual([{ at: 'wheel', shaft_m: 0.055 }]);
  });

  it('takes n.a. for a rolling radius that does not apply', () => {
    const { notes: read, loud } = outcome(spoil('hill-bowl/rig.md', 'rolling-radius: 0.338 m', 'rolling-radius: n.a.'));
    expect(loud).toEqual([]);
    expect(read.series[0]?.rig.rollingRadius_m).toBeNull();
  });
});

describe('the published schemas, read by a general validator', () => {
  const frontMatter = (path: string): unknown => parse((flowBook[path] ?? '').toString().split(/^---$/m)[1] ?? '');
  const kindOf = (path: string): string =>
    /^[^/]+\/(article|oil|run)s\//.exec(path)?.[1] ?? /(\w+)\.md$/.exec(path)?.[1] ?? '';
  const notesOf = Object.keys(flowBook).filter((path) => path.endsWith('.md') && !/claims|parts/.test(path));
  const schemaOf = (path: string) => z.fromJSONSchema(jsonSchemas()[`${kindOf(path)}.schema.json`] as never);

  it.each(notesOf)('accept %s', (path) => {
    expect(schemaOf(path).safeParse(frontMatter(path)).error?.issues).toBeUndefined();
  });
  it.each(notesOf)('refuse %s with a field more or a field less', (path) => {
    const good = frontMatter(path) as Record<string, unknown>;
    expect(schemaOf(path).safeParse({ ...good, moon: 'full' }).success).toBe(false);
    const first = path === 'book.md' ? 'name' : path.endsWith('plan.md') ? 'factors' : 'id';
    expect(schemaOf(path).safeParse({ ...good, [first]: undefined }).success).toBe(false);
  });
});
