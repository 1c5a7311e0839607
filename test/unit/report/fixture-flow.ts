import type { Agreement } from '../../../src/trial/compared.ts';
import type { DerivedRun, FlowRun, FlowStep, Result, StepGrade } from '../../../src/trial/derived.ts';
import type { Clip, Graded, GradeKind, Observation, Still, StepName } from '../../../src/trial/flow.ts';
import { gradeKinds } from '../../../src/trial/flow.ts';
import type { Run } from '../../../src/trial/run.ts';
import type { MediaFile } from '../../../src/trial/series.ts';
import { estimate, exact } from '../../../src/quantity/estimate.ts';
import { celsius, rpm, run } from './fixture-notes.ts';
import { cellOf, derived, result } from './fixture-results.ts';

/**
 * Four hand-made flow trials: the baseline's window copy and the shroud's at the same litres, the shroud's at the same level,
 * and the shroud's with the nose up. Two observers grade; KZQ and XZQ are initials that no public page may hold.
 */

export const observers = ['KZQ', 'XZQ'] as const;

interface Seen {
  readonly step: StepName;
  readonly level_mm: number;
  /** First grades of Reach; the other kinds are 1 in the eyes of both. */
  readonly reach: readonly [Graded, Graded];
  readonly joint?: Graded;
  readonly words?: string;
}

const up = (speed: number): StepName => ({ outputSpeed_rad_s: rpm(speed), direction: 'up' });
const down = (speed: number): StepName => ({ outputSpeed_rad_s: rpm(speed), direction: 'down' });
const place = { file: 'pan/runs/F-02.md', line: 30, column: 3 };

const shown: Readonly<Record<string, readonly Seen[]>> = {
  'F-01': [{ step: up(300), level_mm: -66, reach: [1, 1] }],
  'F-02': [
    { step: up(150), level_mm: -60, reach: [1, 1], words: 'single drops at the pocket' },
    { step: up(300), level_mm: -65, reach: [2, 3], joint: 3 },
    { step: down(150), level_mm: -62, reach: [1, 'ng'] },
  ],
  'F-03': [
    { step: up(150), level_mm: -61, reach: [0, 0] },
    { step: up(300), level_mm: -64, reach: [2, 2] },
    { step: down(150), level_mm: -61, reach: [0, 1] },
  ],
  'F-04': [{ step: up(300), level_mm: -66, reach: [3, 3] }],
};

/** The film began 5 s before the log, and the clip 9 s into the film. */
const from_s = (i: number): number => 60 + 120 * i;
export const ahead_s = 5;
const intoFilm_s = 9;
const inClip_s = (log_s: number): number => log_s + ahead_s - intoFilm_s;

function observationsOf(seen: readonly Seen[], clip: Clip | null): Observation[] {
  return seen.flatMap(({ step, reach, joint, words }, i) => {
    const at_s = clip === null ? null : inClip_s(from_s(i));
    const by = (observer: string, grade: Graded, pass: Observation['pass']): Observation => ({
      ...{ step, observer, pass, view: grade === 'ng' ? 1 : 3, place },
      blind: pass === 'first' ? ['fill', 'oil'] : [],
      grades: { ...ofEach(() => (grade === 'ng' ? 'ng' : 1)), reach: grade },
      ...{ level_z_m: null, swing_m: null, foam_m: null, detach_rad: null },
      words: pass === 'first' && observer === observers[0] ? (words ?? null) : null,
      ...{ clip: clip?.file ?? null, from_s: at_s, to_s: at_s === null ? null : at_s + 10 },
    });
    return [
      ...reach.map((grade, k) => by(observers[k]!, grade, 'first')),
      ...(joint === undefined ? [] : [by('KZQ+XZQ', joint, 'joint')]),
    ];
  });
}

const ofEach = <T>(of: (kind: GradeKind) => T): Record<GradeKind, T> =>
  Object.fromEntries(gradeKinds.map((kind) => [kind, of(kind)])) as Record<GradeKind, T>;

function standing(observations: readonly Observation[], kind: GradeKind): StepGrade {
  const first = observations
    .filter(({ pass }) => pass === 'first')
    .map(({ observer, grades }) => ({ observer, grade: grades[kind] }));
  const joint = observations.find(({ pass }) => pass === 'joint');
  if (joint) return { stands: joint.grades[kind], how: 'joint look', first };
  const equal = first.every(({ grade }) => grade === first[0]?.grade);
  return equal ? { stands: first[0]!.grade, how: 'equal', first } : { stands: null, how: 'differ', first };
}

export const clip = (file: string, code: string | null, more: Partial<Clip> = {}): Clip => ({
  ...{ file, code, shows: 'drawing', length_s: null, sync_s: 20, captions: null, kept: null, place },
  pieces: [{ clip_s: 0, film_s: intoFilm_s }],
  ...more,
});

const still = (file: string, step: StepName, more: Partial<Still>): Still => ({
  ...{ file, step, clip: null, at_s: null, rule: 'offset', offset_s: 5, event: null, shows: 'drawing', alters: [] },
  ...{ caption: 'Closed sheet.', alt: `Picture ${file}: a closed sheet over the gear`, rights: null, place },
  ...more,
});

const clipsOf: Readonly<Record<string, readonly Clip[]>> = {
  'F-01': [clip('F-01.mp4', null, { kept: 'camera shelf 2', sync_s: null })],
  'F-02': [clip('F-02.webm', 'K7')],
  'F-03': [clip('F-03.webm', 'B3', { length_s: 400 })],
};

const stillsOf: Readonly<Record<string, readonly Still[]>> = {
  'F-02': [
    still('F-02-300.png', up(300), {}),
    still('F-02-edge.png', up(300), { rule: 'chosen', offset_s: null, shows: 'photograph', alters: ['crop'] }),
    still('F-02-lost.png', up(150), { rule: 'event', offset_s: null, event: 'first mist' }),
  ],
  'F-03': [still('F-03-300.png', up(300), {})],
};

export const fileOf = (path: string): [string, MediaFile] => [
  path,
  { path, size: 900, head: new Uint8Array(), sha256: `sum-of-${path}` },
];
export const media = new Map(
  ['pan/runs/F-02.webm', 'pan/runs/F-03.webm', 'pan/pictures/F-02-300.png', 'pan/pictures/F-02-edge.png'].map(fileOf),
);

const flowRun = (id: string, article: string, more: Partial<Run>): Run =>
  run(id, 'flow', article, {
    clips: clipsOf[id] ?? [],
    observations: observationsOf(shown[id]!, clipsOf[id]?.[0] ?? null),
    stills: stillsOf[id] ?? [],
    ...more,
  });

export const flowRuns: readonly Run[] = [
  flowRun('F-01', 'A1w', { order: 6, tilt_ratio: 0.12 }),
  flowRun('F-02', 'A0w', { order: 10 }),
  flowRun('F-03', 'A1w', { order: 11 }),
  flowRun('F-04', 'A1w', { order: 12 }),
];

const settled: NonNullable<FlowRun['settled']> = {
  stop_s: 420,
  points: [0, 10, 60, 600].map((after_s) => ({ after_s, level_z_m: -0.054 - 0.004 * 2 ** (-after_s / 45) })),
  fit: { end_z_m: -0.054, depth_m: 0.004, half_s: 45 },
  before_z_m: -0.053,
  bubbles: [
    { after_s: 0, bubble: 2, foam_m: 0.003 },
    { after_s: 60, bubble: 1, foam_m: 0 },
  ],
  airUntold: 'no sample was weighed',
};

function stepsOf(of: Run): FlowStep[] {
  return shown[of.id]!.map(({ step, level_mm }, i) => {
    const observations = of.observations.filter((o) => o.step === step);
    return {
      ...{ step, name: `${String(Math.round((step.outputSpeed_rad_s * 30) / Math.PI))} rpm ${step.direction}` },
      ...{ from_s: from_s(i), to_s: from_s(i) + 90, sump_K: celsius(58), level_z_m: level_mm / 1000, swing_m: 0.003 },
      ...{ steady: true, probeAbove: level_mm <= -66, observations },
      grades: ofEach((kind) => standing(observations, kind)),
    };
  });
}

const at = ({ outputSpeed_rad_s, direction }: StepName): Result['at'] => ({
  outputSpeed_rad_s,
  ...(direction === 'down' ? { direction } : {}),
});

const resultsOf = (steps: readonly FlowStep[]): Result[] =>
  steps.flatMap(({ step, level_z_m, grades }) => [
    result('running-level', at(step), level_z_m, 5e-4),
    result('level-swing', at(step), 0.003, 3e-4),
    result('reynolds', at(step), 2100, 14),
    ...(step.direction === 'down' ? [] : [{ ...result('reynolds-loaded', at(step), 11000, 50) }]),
    {
      ...result('jet-power', at(step), null),
      ...{ bound: null, band: { low: 3.2, high: 18.4 }, class: 'model estimate' as const },
    },
    ...gradeKinds.flatMap((kind) => {
      const grade = grades![kind].stands;
      return typeof grade === 'number'
        ? [{ ...result(kind, at(step), 0), estimate: exact(grade), class: 'measured' as const }]
        : [];
    }),
  ]);

const step = (says: string, formula: string, value: number) => ({ says, formula, value, unit: 'mm' });
const drop = step('Drop of the surface there', 'Δz = L·i', 22.8);
const known = (value: number, u: number) => estimate(value, [{ cause: 'zero', u }]);

/** 190 mm ahead at 12 % nose up: −53.3 − 22.8 = −76.1 mm, over the lowest point at −32 − 45 = −77 mm. */
export const pinionResults = (surface: number, over: number, u = 5.6e-4): Result[] => [
  { ...result('level-at-pinion', {}, 0), estimate: known(surface, u), steps: [drop] },
  {
    ...result('bath-over-race', {}, 0),
    estimate: known(over, u),
    steps: [drop, step('Lowest point of the race', '−(below + r)', -77)],
  },
];

function flowOf(of: Run, more: Partial<DerivedRun> & { readonly own?: readonly Result[] } = {}): DerivedRun {
  const steps = stepsOf(of);
  const { own = [], ...rest } = more;
  const line = (channel: string, value: readonly number[]) => ({ channel, time_s: [0, 60, 300, 480], value });
  return derived(
    of,
    [...resultsOf(steps), result('static-level', {}, -0.0533, 5e-4), result('immersion', {}, 0.0577, 5e-4), ...own],
    {
      traces: [
        line('level', [-0.053, -0.06, -0.065, -0.054]),
        line('sump', [57.9, 58, 58.2, 58.1].map(celsius)),
        line('output-speed', [0, rpm(150), rpm(300), 0]),
      ],
      flow: {
        steps,
        clips: of.clips.map((c) =>
          c.sync_s === null
            ? { clip: c, ahead_s: null, pieces: [] }
            : {
                ...{ clip: c, ahead_s },
                pieces: [{ clip_s: 0, to_clip_s: c.length_s ?? Infinity, offset_s: intoFilm_s - ahead_s }],
              },
        ),
        settled: of.id === 'F-02' ? settled : null,
        standsFor: of.id === 'F-02' ? { run: 'H-01', reynoldsTimesLower: 5.2 } : null,
      },
      ...rest,
    },
  );
}

const [tilted, baseline, shroud, fuller] = flowRuns as readonly [Run, Run, Run, Run];
export const flowDerived: readonly DerivedRun[] = [
  flowOf(tilted, { cell: { ...cellOf('A1w'), tilt_ratio: 0.12 }, own: pinionResults(-0.0761, 0.0009) }),
  flowOf(baseline, {
    own: [
      result('level-gap', { outputSpeed_rad_s: rpm(150) }, 0.002, 3e-4),
      result('camera-ahead', {}, ahead_s, 0.5),
      result('held-up', {}, 0.001, 1e-4),
      result('level-half-time', {}, 45, 2),
      result('bubble-clear-time', {}, 30, 10),
      ...pinionResults(-0.0533, 0.0237),
    ],
  }),
  flowOf(shroud),
  flowOf(fuller, { cell: cellOf('A1w', 3.59e-3) }),
];

/** Six steps were graded by both; the pairs are the same for each kind but for what is judged of them. */
export const agreementsOf = (unusable: readonly GradeKind[]): readonly Agreement[] =>
  gradeKinds.map((grade) => ({
    ...{ grade, observers, n: 7, notGraded: 1, equal: 5, withinOne: 7 },
    kappa: estimate(0.87, [{ cause: 'agreement', u: 0.09 }]),
    leavingOneRunOut: [0.81, 0.9],
    usable: !unusable.includes(grade),
    why: unusable.includes(grade)
      ? 'kappa 0.42 is under the 0.60 of the series'
      : 'kappa 0.87 and 100 % within one grade; the series asks for 0.60 and 90 %',
    table: [0, 1, 2, 3, 4].map((a) => [0, 1, 2, 3, 4].map((b) => (a === b && a < 3 ? 2 : 0))),
    differ:
      grade === 'reach'
        ? [
            { run: 'F-02', step: up(300), grades: [2, 3], joint: 3, clip: 'F-02.webm', from_s: 176 },
            { run: 'F-03', step: down(150), grades: [0, 1], joint: null, clip: 'F-03.webm', from_s: 296 },
          ]
        : [],
  }));
