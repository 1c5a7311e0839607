import type { Article } from '../../../src/trial/article.ts';
import type { Book, Series } from '../../../src/trial/book.ts';
import type { NoteHead, ShownTo } from '../../../src/trial/note.ts';
import type { Oil } from '../../../src/trial/oil.ts';
import type { Plan, TrialKind } from '../../../src/trial/plan.ts';
import type { Rig } from '../../../src/trial/rig.ts';
import type { Run } from '../../../src/trial/run.ts';

/** The notes of a small invented series: a baseline, a shroud, a window copy, one oil, a run of each kind. */

export const rpm = (n: number): number => (n * Math.PI) / 30;
export const celsius = (t: number): number => t + 273.15;

export const note = (file: string, shownTo: ShownTo = 'public', body = ''): NoteHead => ({
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

export const series: Series = {
  ...note('pan/series.md'),
  id: 'pan',
  format: 1,
  agreement: { withinOne_ratio: 0.9, kappa: 0.6 },
  margins: null,
  driftOver: 'running-time',
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
  toothHeight_m: null,
  offset_m: -0.03,
  rollingRadius_m: 0.32,
  pinionFront: { ahead_m: 0.19, below_m: 0.032, raceRadius_m: 0.045 },
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

export const article = (id: string, name: string, role: Article['role'], more: Partial<Article> = {}): Article => ({
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

export const oil: Oil = {
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

export const plan: Plan = {
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

const typedObservation: readonly (readonly [string, string])[] = [
  ['observations.0.observer', 'KZQ'],
  ['observations.0.blind.0', 'fill'],
  ['observations.0.blind.1', 'oil'],
  ['observations.0.steps.150 rpm up.reach', '1'],
  ['observations.0.steps.150 rpm up.view', '3'],
];

export const run = (id: string, trial: TrialKind, article: string, more: Partial<Run> = {}): Run => ({
  ...note(`pan/runs/${id}.md`, 'public', `Words of ${id}.`),
  id,
  trial,
  status: 'accepted',
  clips: [],
  observations: [],
  stills: [],
  settle: [],
  airSample: null,
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
  ...more,
  typed: new Map([
    ['id', id],
    ['operators', '[KZQ]'],
    ['released-by', 'RZQ'],
    ['exclude.0.by', 'XZQ'],
    ['exclude.0.reason', 'connector touched'],
    ...(trial === 'flow' ? typedObservation : []),
  ]),
});
