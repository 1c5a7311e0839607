import { describe, expect, it } from 'vitest';
import { eachGivesOneFinding, outcome, placed, S07, spoil } from './spoilt.ts';
import { goodBook } from './good-book.ts';

const rig = 'hill-bowl/rig.md';
const plan = 'hill-bowl/plan.md';
const series = 'hill-bowl/series.md';
const P0 = 'hill-bowl/articles/P0.md';

/** Place of a text in a spoilt file, as `name:line:column`. */
const placeOf = (path: string, was: string, is: string, at: string): string => {
  const text = spoil(path, was, is)[path] as string;
  const before = text.slice(0, text.indexOf(at)).split('\n');
  return `${path.split('/').at(-1)!}:${before.length}:${before.at(-1)!.length + 1}`;
};
const row = (
  title: string,
  path: string,
  was: string,
  is: string,
  code: string,
  at: string,
  write: string,
  runs?: readonly string[],
) => ({
  title,
  path,
  was,
  is,
  finds: `${code} ${placeOf(path, was, is, at)}`,
  write,
  ...(runs === undefined ? {} : { runs }),
});
const both = ['S-07', 'S-08'];

eachGivesOneFinding('what does not go together', [
  row(
    'a bearing whose outside is no larger than its bore',
    rig,
    'offset: -32 mm',
    'offset: -32 mm\nbearings: [{ at: pinion, bore: 90 mm, outside: 45 mm }]',
    'bearing-turned-round',
    '45 mm }]',
    'the larger diameter as "outside"',
    [],
  ),
  row(
    'a baseline that the article sheet calls a candidate',
    P0,
    'role: baseline',
    'role: candidate',
    'baseline-role',
    'candidate',
    'baseline',
    both,
  ),
  row(
    'a main limit that the plan does not time',
    series,
    'main-limit: 95 °C',
    'main-limit: 97 °C',
    'main-limit-not-planned',
    '97 °C',
    'limits',
    both,
  ),
  row(
    'a main sump temperature that is not listed',
    series,
    'main-sump: 60 °C',
    'main-sump: 65 °C',
    'main-sump-not-listed',
    '65 °C',
    'sump',
    [],
  ),
  row(
    'a steady window longer than the hold',
    plan,
    'window: 60 s',
    'window: 180 s',
    'window-longer-than-hold',
    '180 s',
    'within 120 s',
    both,
  ),
  row(
    'a differential with one output',
    rig,
    'differential: open_two_outputs',
    'differential: open_one_output',
    'one-output',
    'open_one_output',
    'Lock',
    both,
  ),
  row(
    'two columns of one kind',
    rig,
    'evt:    { is: event }',
    'evt:    { is: event }\n      T_two:  { is: sump, unit: °C, instrument: tc-1 }',
    'channel-twice',
    'sump, unit: °C, instrument: tc-1 }',
    'one',
    [],
  ),
  row('a point of three numbers', P0, '[40, -128]', '[40, -128, 3]', 'point-form', '[40, -128, 3]', '[', []),
  row(
    'a value that begins with a sign of YAML',
    S07,
    'rotation: forward',
    'rotation: @forward',
    'yaml-sign',
    '@forward',
    'quotes',
  ),
  row(
    'a field whose name is a list',
    S07,
    'rotation: forward',
    '[rotation]: forward',
    'key-not-a-word',
    '[rotation]',
    'name: value',
  ),
  row(
    'a list with an empty place',
    S07,
    'operators: [A]',
    'operators: [A,,B]',
    'yaml-unreadable',
    ',B]',
    'name: value',
  ),
]);

describe('what is missing from a series', () => {
  it('a plan: the runs are read, and that there is none is said', () => {
    const without = Object.fromEntries(Object.entries(goodBook).filter(([path]) => path !== plan));
    const { loud, runs } = outcome(without);
    expect(placed(loud)).toEqual(['plan-missing plan.md:1:1']);
    expect(loud[0]!.write).toContain('plan.md');
    expect(runs).toEqual(both);
  });
});

describe('what stops nothing', () => {
  const notices = (files: Parameters<typeof outcome>[0]) =>
    outcome(files)
      .notes.series.flatMap((s) => s.findings)
      .filter((f) => f.level === 'notice');

  it('a value that is possible and not usual is said at it, and its run stands', () => {
    const { loud, runs } = outcome(spoil(S07, 'start: 20.8 °C, end', 'start: 51 °C, end'));
    expect(runs).toEqual(both);
    expect(placed(loud)).toEqual([
      `value-unusual ${placeOf(S07, 'start: 20.8 °C, end', 'start: 51 °C, end', '51 °C')}`,
    ]);
  });

  it('a field that is recommended and not there', () => {
    const found = notices(spoil(rig, '    calibrated: 2026-01-12\n', '')).filter((f) => f.code === 'field-not-stated');
    expect(found.some((f) => f.says.includes('calibrated'))).toBe(true);
    expect(notices(goodBook).filter((f) => f.code === 'field-not-stated' && f.says.includes('calibrated'))).toEqual([]);
  });
});
