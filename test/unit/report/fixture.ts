import { buildLedger } from '../../../src/ledger/build.ts';
import type { Finding } from '../../../src/finding/finding.ts';
import { estimate, type Cause } from '../../../src/quantity/estimate.ts';
import type { Audience, SeriesInput } from '../../../src/report/input.ts';
import type { Article } from '../../../src/trial/article.ts';
import type { Book, Series } from '../../../src/trial/book.ts';
import type { ComparedSeries, Effect, StandingRow } from '../../../src/trial/compared.ts';
import type { At, Cell, DerivedRun, Result } from '../../../src/trial/derived.ts';
import type { NoteHead, ShownTo } from '../../../src/trial/note.ts';
import type { Oil } from '../../../src/trial/oil.ts';
import type { Plan, TrialKind } from '../../../src/trial/plan.ts';
import type { Rig } from '../../../src/trial/rig.ts';
import type { Run } from '../../../src/trial/run.ts';

/** A small invented series: a baseline, a shroud, a window copy, one oil, a run of each kind. Numbers are hand-made. */

const rpm = (n: number): number => (n * Math.PI) / 30;
const celsius = (t: number): number => t + 273.15;

const note = (file: string, shownTo: ShownTo = 'public', body = ''): NoteHead => ({
  file,
  shownTo,
  body,
  places: new Map(),
  typed: new Map([['id', file]]),
});

export const book: Book = {
  ...note('book.md'),
  name: 'The Millrace book',
  lab: 'Millrace Axle Bench',
  hook: 'How many watts is a shroud worth?',
  contact: 'corrections@millrace.example',
  address: null,
  pathPrefix: '/',
  language: 'en',
  unitsShown: 'si',
  licence: 'CC-BY-4.0',
  invented: true,
};

const series: Series = {
  ...note('pan/series.md'),
  id: 'pan',
  format: 1,
  title: 'Shroud or none',
  summary: 'Two bowls and one oil.',
  question: 'Does the shroud pay?',
  started: '2026-05-04',
  licence: 'CC-BY-4.0',
  conflicts: 'none declared',
  baseline: { article: 'A0', fill_m3: 2.4e-3, oil: 'L1' },
  reference: {
    outputSpeed_rad_s: rpm(300),
    sump_K: [celsius(40), celsius(60)],
    mainSump_K: celsius(60),
    mainLimit_K: celsius(95),
    airflow_m_s: 4,
  },
  tolerance: {
    ambient_K: 3,
    airflow_m_s: 0.3,
    level_m: 0.003,
    fill_m3: 5e-5,
    outputSpeed_ratio: 0.01,
    tilt_ratio: 0.005,
  },
  coverage: 0.95,
  familyLevel: 0.05,
  refit_Nm: null,
  cautionsBy: 'Q. Longname',
};

export const rig: Rig = {
  ...note('pan/rig.md'),
  id: 'M-1',
  name: 'Millrace bench',
  kind: 'axle_bench',
  gearKind: 'hypoid',
  teethPinion: 11,
  teethRing: 41,
  hubReduction: 1,
  ringRadius_m: 0.111,
  ringFace_m: null,
  offset_m: -0.03,
  rollingRadius_m: 0.32,
  pinionFront: null,
  tubeLip_z_m: -0.035,
  fillerLip_z_m: -0.048,
  floor_z_m: -0.12,
  differential: 'open_two_outputs',
  boundary: ['input flange', 'hub flanges'],
  drive: 'motor',
  absorbers: 'one at each hub',
  airflowDevice: null,
  window: { usedOn: ['A1w'], material: 'polycarbonate', maxSump_K: celsius(60) },
  states: [{ id: 'M1-a', from: '2026-05-01', gearsetHours: null, preloadTouched: false, note: 'as built' }],
  instruments: [
    {
      id: 'torque-low',
      measures: 'torque',
      what: 'input flange',
      range: [0, 50],
      accuracy: { asWritten: '± 0.05 % of range', of: 'range', value: 5e-4, k: null },
      repeat: null,
      calibratedOn: '2026-02-01',
      nextDue: null,
      checkedOn: null,
      certificate: null,
      position: null,
      tip_z_m: new Map(),
      zero: 0,
      zeroPolicy: 'before-after',
      shareGroup: 'torque-low',
    },
  ],
  maps: [],
};

const article = (id: string, name: string, role: Article['role'], more: Partial<Article> = {}): Article => ({
  ...note(`pan/articles/${id}.md`),
  id,
  name,
  kind: 'bowl',
  role,
  standsInFor: [],
  differences: [],
  insideShape: 'domed',
  material: 'steel',
  wall_m: 0.0025,
  mass_kg: 3.1,
  heatCapacity_J_K: null,
  obtained: 'bought_retail',
  samples: 1,
  condition: 'new',
  maxSump_K: null,
  makerFillAdvice: null,
  levelTable: {
    method: 'pour_and_dip',
    rows: [-120, -110, -95, -80, -65, -52].map((mm, i) => ({ z_m: mm / 1000, volume_m3: (i + 1) * 5e-4 })),
  },
  profile: {
    wall: [
      { x_m: 0.04, z_m: -0.12 },
      { x_m: 0.12, z_m: -0.06 },
    ],
    tray: null,
    shroud: null,
  },
  ...more,
});

const oil: Oil = {
  ...note('pan/oils/L1.md'),
  id: 'L1',
  name: 'mineral 80W-90',
  grade: 'SAE 80W-90',
  base: 'mineral',
  nu40_m2_s: 145e-6,
  nu100_m2_s: 14.2e-6,
  nuSource: 'measured',
  density15_kg_m3: 897,
  expansion_1_K: 7e-4,
  specificHeat_J_kgK: 2000,
  maxSump_K: null,
  batch: 'L-0504',
  openedOn: null,
  hoursUsed_s: null,
};

const plan: Plan = {
  ...note('pan/plan.md'),
  factors: ['article'],
  repeatUnit: 'refit',
  order: 'random',
  seed: 7,
  baselineRerun: 'at start and end',
  steps_rad_s: [rpm(150), rpm(300)],
  hold_s: 120,
  steadyWindow_s: 60,
  steadySlope_K_s: 0.01,
  temperatures_K: [celsius(40), celsius(60)],
  limits_K: [celsius(80), celsius(95)],
  sustained_s: 20,
  maxTime_s: 9000,
  load: { outputSpeed_rad_s: rpm(300), powerOut_W: 22000 },
  cells: [{ trial: 'spin', article: 'A1', oil: 'L1', fill_m3: 2.4e-3, tilt_ratio: 0, wanted: 3 }],
};

export const run = (id: string, trial: TrialKind, article: string, more: Partial<Run> = {}): Run => ({
  ...note(`pan/runs/${id}.md`, 'public', `Words of ${id}.`),
  id,
  trial,
  status: 'accepted',
  statusReason: null,
  article,
  oil: 'L1',
  rigState: 'M1-a',
  refit: 1,
  order: 1,
  started: '2026-05-06T09:10:00+02:00',
  ended: '2026-05-06T10:40:00+02:00',
  operators: ['KZQ'],
  releasedBy: 'RZQ',
  releasedOn: '2026-05-06T09:05:00+02:00',
  fill: {
    basis: 'volume',
    mass_kg: 2.14,
    volume_m3: null,
    temperature_K: celsius(20.5),
    wait_s: 1200,
    levelLeft_z_m: -0.053,
    levelRight_z_m: -0.053,
  },
  ambient: { place: 'shielded', start_K: celsius(20.4), end_K: celsius(21) },
  airflow_m_s: 0,
  tilt_ratio: 0,
  rotation: 'forward',
  zeros: [{ instrument: 'torque-low', before_Nm: 0.021, after_Nm: 0.035, step_Nm: 0.001 }],
  log: null,
  exclude: [],
  fromRun: null,
  gearState: null,
  clips: [],
  ...more,
  typed: new Map([
    ['id', id],
    ['operators', '[KZQ]'],
    ['released-by', 'RZQ'],
    ['exclude.0.by', 'XZQ'],
    ['exclude.0.reason', 'connector touched'],
  ]),
});

const causes: Cause[] = [
  { id: 'refit', name: 'refitting', kind: 'scatter', distribution: 't', dof: 14, scope: 'refit' },
  { id: 'zero', name: 'torque zero', kind: 'offset', distribution: 'rectangular', dof: Infinity, scope: 'run' },
];
const of = (value: number, u: number) =>
  estimate(value, [
    { cause: 'refit', u },
    { cause: 'zero', u: u / 2 },
  ]);

const result = (
  quantity: Result['quantity'],
  at: At,
  value: number | null,
  u = 0,
  more: Partial<Result> = {},
): Result => ({
  quantity,
  at,
  estimate: value === null ? null : of(value, u),
  bound: null,
  class: 'derived from measurement',
  relation: 'shaft-power',
  method: 'derive/by-hand',
  notes: [],
  given: [
    { symbol: 'z', name: 'zero', value: 0.021, u: 0.0003, unit: 'N·m', from: { kind: 'constant', text: 'by hand' } },
    {
      symbol: 'T',
      name: 'raw torque',
      value: 1.74,
      u: null,
      unit: 'N·m',
      from: { kind: 'log', file: 'pan/runs/S-01.csv', fromLine: 10, toLine: 40, channel: 'torque-in' },
    },
  ],
  steps: [{ says: 'Net torque is raw torque less the zero', formula: 'T = T_raw − z', value: 1.719, unit: 'N·m' }],
  ...more,
});

export const cellOf = (article: string, fill_m3 = 2.4e-3): Cell => ({ article, oil: 'L1', fill_m3, tilt_ratio: 0 });

const derived = (of: Run, results: Result[], more: Partial<DerivedRun> = {}): DerivedRun => ({
  run: of.id,
  trial: of.trial,
  cell: cellOf(of.article),
  rigState: 'M1-a',
  order: of.order,
  startedDay: '2026-05-06',
  conditions: {
    ambient_K: celsius(20.7),
    airflow_m_s: 4.02,
    level_z_m: -0.0533,
    volume20_m3: 2.401e-3,
    rotation: 'forward',
    outputSpeed_rad_s: null,
    powerOut_W: null,
  },
  leftOut: null,
  results,
  causes,
  windows: [],
  models: [],
  crossings: [],
  traces: [],
  fitted: null,
  remarks: ['exponent of speed 1.9, condition number 14'],
  findings: [],
  ...more,
});

const at = (speed: number, sump: number): At => ({ outputSpeed_rad_s: rpm(speed), sump_K: celsius(sump) });
const spinResults = (power: number): Result[] => [
  result('spin-power', at(150, 60), power * 0.3, 2),
  result('spin-power', at(300, 60), power, 4),
  result('spin-power', at(300, 40), power * 1.4, 5),
  result('static-level', {}, -0.0533, 0.0005),
];

const heatTrace = { channel: 'sump', time_s: [0, 600, 1200, 9000], value: [21, 45, 60, 93].map(celsius) };

export const runs: readonly Run[] = [
  run('S-01', 'spin', 'A0'),
  run('S-02', 'spin', 'A1', { order: 2, releasedBy: null, releasedOn: null }),
  run('H-01', 'heat-up', 'A0', { order: 3, airflow_m_s: 4 }),
  run('H-02', 'heat-up', 'A1', { order: 4, airflow_m_s: 4 }),
  run('C-01', 'cool-down', 'A1', { order: 5, fromRun: 'H-02', gearState: 'still' }),
  run('F-01', 'flow', 'A1w', { order: 6, tilt_ratio: 0.12, clips: ['F-01.mp4'] }),
  run('S-03', 'spin', 'A1', { order: 7, status: 'set aside', statusReason: 'belt slipped' }),
  run('S-99', 'spin', 'A1', {
    ...note('pan/runs/S-99.md', 'house', 'Words for the house about HIDDENCLIENT.'),
    id: 'S-99',
    order: 8,
  }),
];

const heatUp = (of: Run, final: number): DerivedRun =>
  derived(
    of,
    [
      result('limit-crossing', { limit_K: celsius(80) }, 2862, 60),
      result('limit-crossing', { limit_K: celsius(95) }, null, 0, { bound: { side: 'above', at: 9000 } }),
      result('final-temperature', {}, celsius(final), 0.65),
      result('final-rise', {}, final - 21, 0.65),
      result('heat-made', {}, 991, 25),
      result('shed', {}, 13.3, 0.35),
      result('bearing-rise', {}, 6.8, 0.4),
    ],
    {
      traces: [heatTrace],
      fitted: { ...heatTrace, channel: 'sump' },
      crossings: [
        { limit_K: celsius(80), t_s: 2862, nearFinal: false },
        { limit_K: celsius(95), t_s: null, nearFinal: true },
      ],
      models: [
        {
          model: 'tail',
          final_K: celsius(final),
          u_K: 0.6,
          misfit_K: 0.05,
          parameters: [{ name: 'time constant', value: 40, u: NaN, unit: 'min' }],
          taken: true,
          why: 'its residuals allow it',
        },
      ],
    },
  );

const byId = (id: string): Run => runs.find((r) => r.id === id)!;
const derivedRuns: readonly DerivedRun[] = [
  derived(byId('S-01'), spinResults(241)),
  derived(byId('S-02'), spinResults(213)),
  heatUp(byId('H-01'), 105.2),
  heatUp(byId('H-02'), 95.7),
  derived(byId('C-01'), [result('time-constant', {}, 5160, 90), result('shed-rest', {}, 6.5, 0.3)], {
    traces: [heatTrace],
  }),
  derived(
    byId('F-01'),
    [
      result('running-level', { outputSpeed_rad_s: rpm(150) }, -0.06, 5e-4),
      result('running-level', { outputSpeed_rad_s: rpm(300) }, -0.065, 5e-4),
    ],
    { cell: { ...cellOf('A1w'), tilt_ratio: 0.12 } },
  ),
  derived(byId('S-99'), spinResults(215)),
];

const effect = (quantity: Effect['quantity'], where: At, value: number, u: number, separated: boolean): Effect => ({
  cell: cellOf('A1'),
  against: cellOf('A0'),
  quantity,
  at: where,
  estimate: of(value, u),
  interval: [value - 2 * u, value + 2 * u],
  simultaneous: [value - 2.6 * u, value + 2.6 * u],
  k: 2,
  dof: 14,
  separated,
  basis: 'same litres',
  runs: ['S-02'],
  againstRuns: ['S-01'],
  notes: [],
});

const power = effect('spin-power', at(300, 60), -28, 4, true);
const rise = effect('final-rise', {}, -1.5, 0.9, false);
const rows = (e: Effect): StandingRow[] => [
  { cell: cellOf('A0'), effect: null, baseline: true, letters: 'b', refused: [] },
  { cell: cellOf('A1'), effect: e, baseline: false, letters: e.separated ? 'a' : 'b', refused: [] },
  { cell: cellOf('A1', 3.2e-3), effect: null, baseline: false, letters: '', refused: ['ambient differs by 4.1 K'] },
];

const compared: ComparedSeries = {
  cells: [
    {
      cell: cellOf('A1'),
      quantity: 'spin-power',
      at: at(300, 60),
      estimate: of(213, 3),
      bound: null,
      runs: ['S-02'],
      notes: [],
    },
  ],
  effects: [power, rise],
  refusals: [
    {
      cell: cellOf('A1', 3.2e-3),
      against: cellOf('A0'),
      quantity: 'spin-power',
      reasons: ['ambient differs by 4.1 K'],
    },
  ],
  standings: [power, rise].map((e) => ({
    id: e.quantity,
    trial: e.quantity === 'spin-power' ? 'spin' : 'heat-up',
    quantity: e.quantity,
    at: e.at,
    oil: 'L1',
    against: cellOf('A0'),
    rows: rows(e),
    repeatability: e.quantity === 'spin-power' ? { s: 6, dof: 14 } : null,
    drift: { slope: 0.01, u: 0.02, separated: false },
    smallest: 9,
    notes: [],
  })),
  causes,
  findings: [],
};

export const findingOf = (code: string, about: { run: string }, file = `pan/runs/${about.run}.md`): Finding => ({
  code,
  level: 'warning',
  place: { file, line: 3, column: 5, length: 4, lineText: 'a: by KZQ' },
  says: 'the sump reads 61.2 °C',
  why: 'the cap is 60 °C',
  write: 'nothing; the run is marked',
  about: { series: 'pan', ...about },
});

export interface Variation {
  readonly audience?: Audience;
  readonly unitsShown?: Book['unitsShown'];
  readonly findings?: readonly Finding[];
  readonly rig?: Partial<Rig>;
}

export function input({
  audience = 'house',
  unitsShown = 'si',
  findings = [],
  rig: changes = {},
}: Variation = {}): SeriesInput {
  const record = {
    series,
    rig: { ...rig, ...changes },
    plan,
    articles: new Map([
      ['A0', article('A0', 'pressed bowl', 'baseline')],
      ['A1', article('A1', 'shroud', 'candidate')],
      [
        'A1w',
        article('A1w', 'clear shroud', 'window_copy', {
          kind: 'window_copy',
          standsInFor: ['A1'],
          differences: ['clear plate in the floor'],
        }),
      ],
    ]),
    oils: new Map([['L1', oil]]),
    runs,
    logs: new Map(),
    findings: [],
  };
  const derivedMap = new Map(derivedRuns.map((d) => [d.run, d]));
  return {
    book: { ...book, unitsShown },
    record,
    derived: derivedMap,
    compared,
    ledger: buildLedger({ record, runs: derivedMap, compared, sums: new Map(), rigShown: true }),
    sums: new Map(),
    findings,
    held: { runs: 0, notes: 0 },
    audience,
  };
}
