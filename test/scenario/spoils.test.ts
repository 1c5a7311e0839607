import { afterEach, describe, expect, it } from 'vitest';
import { figuredRuns, houseBook, loudOf, smallDemo, smallRuns, spoilt, textOf, withText } from './small.ts';

/** What would leave a mark in this process if anything in a note were run. */
const payload = 'globalThis.ranFromNote = true';
afterEach(() => {
  expect('ranFromNote' in globalThis).toBe(false);
});

const S07 = 'hill-bowl/runs/S-07.md';
const rig = 'hill-bowl/rig.md';
const plan = 'hill-bowl/plan.md';
const series = 'hill-bowl/series.md';
const P4 = 'hill-bowl/articles/P4.md';
const O1 = 'hill-bowl/oils/O1.md';
const book = 'book.md';

/** `at` is the text that the finding has to underline, in the spoilt file; `write` stands in what it says to write. */
interface Row {
  readonly title: string;
  readonly path: string;
  readonly was: string;
  readonly is: string;
  readonly code: string;
  readonly at: string;
  readonly write: string;
  /** Runs that lose their figures by it; S-07 unless said. */
  readonly lost: readonly string[];
}
type Told = readonly [
  title: string,
  was: string,
  is: string,
  code: string,
  at: string,
  write: string,
  lost?: readonly string[],
];
const inFile = (path: string, list: readonly Told[]): Row[] =>
  list.map(([title, was, is, code, at, write, lost = ['S-07']]) => ({ title, path, was, is, code, at, write, lost }));

const older = ['W-1', 'W-2'];
const hillBowl: readonly string[] = smallRuns;
const ofP4 = ['S-07', 'S-18', 'S-30', 'H-10'];
const none: readonly string[] = [];

const rows: readonly Row[] = [
  ...inFile(S07, [
    ['a fill without unit', '2152 g', '2152', 'unit-missing', '2152', 'g'],
    ['a fill in seconds', '2152 g', '2152 s', 'unit-of-other-kind', 's, temperature', 'g'],
    ['a comma that may be a point', '2152 g', '"2,152 kg"', 'number-ambiguous', '2,152 kg', '2.152'],
    ['a misspelt key', 'rig-state:', 'rig-stat:', 'field-unknown', 'rig-stat', 'rig-state'],
    ['a key that stands twice', 'refit: 2\n', 'refit: 2\nrefit: 3\n', 'field-twice', 'refit: 3', 'one'],
    ['a missing key', 'refit: 2\n', '', 'field-missing', 'id: S-07', 'refit'],
    ['a tab as indent', 'fill: { basis', 'fill:\n\t{ basis', 'yaml-tab', '\t{', 'blank'],
    ['a quote that is not closed', 'rotation: forward', 'rotation: "forward', 'yaml-unclosed', '"forward', 'Close'],
    ['an unclosed front matter', '\n---\nSecond', '\nSecond', 'front-matter-unclosed', '---', '---'],
    ['front matter that says it is code', '---\nid', `---js\n${payload}\nid`, 'front-matter-language', '---js', '---'],
    [
      'a tag that asks for a function',
      'rotation: forward',
      `rotation: !!js/function "${payload}"`,
      'yaml-tag',
      '!!js',
      '!',
    ],
    ['a directive', '---\nid', '---\n%TAG ! tag:x,2026:\nid', 'yaml-directive', '%TAG', 'YAML'],
    ['an unknown article', 'article: P4', 'article: P44', 'article-unknown', 'P44', 'P4'],
    ['an unknown oil', 'oil: O1', 'oil: O9', 'oil-unknown', 'O9', 'known'],
    ['an unknown rig state', 'rig-state: Q1-a', 'rig-state: Q1-aa', 'rig-state-unknown', 'Q1-aa', 'Q1-a'],
    ['an unknown column map', 'map: bench-low', 'map: bench-lov', 'column-map-unknown', 'bench-lov', 'bench-low'],
    ['a fill above the level table', '2152 g', '9152 g', 'fill-outside-table', '9152 g', 'Survey', none],
    [
      'a level read off the survey',
      'level-left: -52 mm',
      'level-left: -25 mm',
      'level-off-survey',
      '-25 mm',
      'read again',
      none,
    ],
    ['a log that is not there', 'S-07.csv', 'S-77.csv', 'log-missing', 'S-77.csv', '.csv'],
    ['a log outside the book', 'S-07.csv', '../../../S-07.csv', 'log-outside', '../', 'beside'],
    ['a log at the root of the disk', 'S-07.csv', '/dev/zero', 'log-outside', '/dev', 'beside'],
    [
      'an end before the start',
      'ended: 2026-03-17T11:02',
      'ended: 2026-03-17T09:02',
      'ended-before-started',
      '2026-03-17T09:02',
      'ended',
    ],
    ['a start without offset', '10:05:00+01:00', '10:05:00', 'time-offset-missing', '2026-03-17T10:05:00\n', '+01:00'],
    [
      'a zero that is missing',
      'zeros: { torque-low: { before: -0.003 N·m, after: -0.006 N·m } }\n',
      '',
      'zeros-missing',
      'spin',
      'zeros',
    ],
    ['an id that is not the name of the file', 'id: S-07', 'id: S-70', 'id-not-file', 'S-70', 'S-07'],
    [
      'a run set aside without a reason',
      'status: accepted',
      'status: set aside',
      'field-missing',
      'set aside',
      'status-reason',
    ],
    ['an ambient that moved', 'end: 21.2 °C', 'end: 25.2 °C', 'ambient-moved', '25.2 °C', 'Repeat', none],
  ]),
  ...inFile(P4, [
    ['an article whose level table falls', 'z: -124 mm', 'z: -104 mm', 'level-table-order', '-110 mm', 'upwards', ofP4],
    ['an article of a kind nobody knows', 'kind: insert', 'kind: inset', 'word-unknown', 'inset', 'insert', ofP4],
    [
      'an article that would run',
      '---\nid',
      `---javascript\n${payload}\nid`,
      'front-matter-language',
      '---javascript',
      '---',
      ofP4,
    ],
  ]),
  ...inFile(O1, [
    [
      'an oil thinner when cold',
      'at-40: 170 mm²/s',
      'at-40: 1.70 mm²/s',
      'viscosity-order',
      '1.70 mm²/s',
      'exchanged',
      hillBowl,
    ],
    [
      'an oil that would run',
      'grade: SAE 85W-90',
      `grade: !!js/undefined "${payload}"`,
      'yaml-tag',
      '!!js',
      '!',
      hillBowl,
    ],
  ]),
  ...inFile(plan, [
    ['steps that fall', '60 rpm, 120 rpm', '120 rpm, 60 rpm', 'not-rising', '60 rpm', 'rising', hillBowl],
    [
      'a plan that would run',
      '---\nfactors',
      `--- js\n${payload}\nfactors`,
      'front-matter-language',
      '--- js',
      '---',
      hillBowl,
    ],
  ]),
  ...inFile(rig, [
    [
      'a column in a unit of nothing',
      'unit: N·m, instrument: torque-low',
      'unit: Nn, instrument: torque-low',
      'unit-unknown',
      'Nn,',
      'N·m',
      hillBowl,
    ],
    [
      'a column of an unknown instrument',
      'instrument: torque-low',
      'instrument: torque-lov',
      'instrument-unknown',
      'torque-lov',
      'torque-low',
      hillBowl,
    ],
    [
      'an instrument overdue',
      'next-due: 2028-01-12\n    checked: 2026-03-01',
      'next-due: 2026-02-12',
      'instrument-overdue',
      '2026-02-12',
      'checked',
      none,
    ],
    ['a rig that would run', '---\nid', `---node\n${payload}\nid`, 'front-matter-language', '---node', '---', hillBowl],
  ]),
  ...inFile(series, [
    ['a baseline nobody knows', 'article: P0, fill', 'article: P00, fill', 'article-unknown', 'P00', 'P0', hillBowl],
    [
      'a series that would run',
      'question: Does',
      `question: !!js/regexp "${payload}" #`,
      'yaml-tag',
      '!!js',
      '!',
      hillBowl,
    ],
  ]),
  ...inFile(book, [
    ['a book without a lab', 'lab: Quillstone Axle Room\n', '', 'field-missing', 'name: The', 'lab', none],
    ['a book that would run', '---\nname', `---js\n${payload}\nname`, 'front-matter-language', '---js', '---', none],
  ]),
  ...inFile('hill-bowl/runs/S-07.csv', [
    ['a column that the map names and the file has not', 'T_sump', 'T_smp', 'column-missing', 't_s', 'T_smp'],
    ['a decimal comma under a point', '1321.6,', '"1321,6",', 'decimal-mixed', '"1321,6"', 'decimal'],
    ['a word for a reading', '1321.6,', 'open,', 'cell-unknown', 'open', 'missing'],
    ['a clock that goes back', '\n2,', '\n-2,', 'clock-not-rising', '-2', 'clock'],
  ]),
];

const tried = (row: Row) => {
  const { path, was, is, at } = row;
  const files = spoilt(path, was, is);
  const made = houseBook(files);
  const text = textOf(path, files);
  const offset = text.indexOf(at);
  const before = text.slice(0, offset).split('\n');
  return { made, loud: loudOf(made), place: { file: path, line: before.length, column: before.at(-1)!.length + 1 } };
};

const all = new Set([...older, ...hillBowl]);

describe('the small book as it stands', () => {
  it('has figures of every run and no finding above notice', () => {
    const made = houseBook(smallDemo());
    expect(loudOf(made)).toEqual([]);
    expect(figuredRuns(made)).toEqual(all);
  });
});

describe('a book with one thing spoilt gives one finding at its place, and figures of all that it does not touch', () => {
  it.each(rows)('for $title', (row) => {
    const { made, loud, place } = tried(row);
    const [only] = loud;
    expect(loud.map((f) => `${f.code} ${f.place.file}:${f.place.line}:${f.place.column}`)).toEqual([
      `${row.code} ${place.file}:${place.line}:${place.column}`,
    ]);
    expect(only!.write).toContain(row.write);
    expect(`${only!.says} ${only!.why} ${only!.effect ?? ''}`).not.toMatch(/undefined|NaN|\[object|null|\bstring\b/);
    const lost = new Set(row.lost);
    expect(figuredRuns(made)).toEqual(new Set([...all].filter((run) => !lost.has(run))));
  });

  // Which of two runs a log belongs to cannot be told: neither is derived, and the later note is shown.
  it.each([
    ['with one file', spoilt(S07, 'S-07.csv', 'S-08.csv')],
    ['with the same readings under two names', withText('hill-bowl/runs/S-07.csv', textOf('hill-bowl/runs/S-08.csv'))],
  ])('for two runs %s', (_, files) => {
    const made = houseBook(files);
    const told = loudOf(made).map((f) => `${f.code} ${f.place.file}:${f.place.line}:${f.place.column}`);
    expect(told).toEqual(['log-twice hill-bowl/runs/S-08.md:21:14']);
    expect(figuredRuns(made)).toEqual(new Set([...all].filter((run) => run !== 'S-07' && run !== 'S-08')));
  });
});

describe('front matter is never run, whatever its first line says', () => {
  const spelled = ['---JavaScript', '--- js', '---json', '---coffee', '---__proto__', '\uFEFF---js'];
  it.each(spelled)('not after %j', (opening) => {
    const made = houseBook(
      withText(
        S07,
        textOf(S07).replace('---', () => `${opening}\n${payload}`),
      ),
    );
    expect(loudOf(made).map((f) => `${f.code} ${f.place.line}:${f.place.column}`)).toEqual([
      'front-matter-language 1:1',
    ]);
    expect(figuredRuns(made).size).toBe(all.size - 1);
  });

  it('and the words of a note are shown, not run: templates and tags stay text', () => {
    const words = `{{ ${payload} }} {% set x = 1 %} <script>${payload}</script> \${${payload}}`;
    const made = houseBook(withText(S07, `${textOf(S07)}\n${words}\n`));
    expect(loudOf(made)).toEqual([]);
    const sheet = made.pages.find((p) => p.path === 'series/hill-bowl/runs/S-07/')!;
    expect(JSON.stringify(sheet)).toContain('{% set x = 1 %}');
  });
});
