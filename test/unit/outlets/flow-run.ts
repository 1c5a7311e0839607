import type { FlowRun, FlowStep, TiedClip } from '../../../src/trial/derived.ts';
import type { Clip, Direction, Observation } from '../../../src/trial/flow.ts';
import type { Run } from '../../../src/trial/run.ts';

/** A flow trial as the rooms below hand it on: invented, and only as much of it as clips need. */

const place = { file: 'hill/runs/F-01.md', line: 20, column: 5 };

export const clip = (more: Partial<Clip> = {}): Clip => ({
  file: 'F-01.webm',
  code: null,
  shows: 'film',
  length_s: null,
  sync_s: 12,
  pieces: [{ clip_s: 0, film_s: 0 }],
  captions: null,
  kept: null,
  place,
  ...more,
});

export const speed_rad_s = (rpm: number): number => (rpm * Math.PI) / 30;

export const seen = (rpm: number, direction: Direction, more: Partial<Observation> = {}): Observation => ({
  step: { outputSpeed_rad_s: speed_rad_s(rpm), direction },
  observer: 'A',
  pass: 'first',
  blind: [],
  grades: { reach: 1, side: 1, wall: 0, bubble: 0, tube: 0 },
  view: 3,
  level_z_m: null,
  swing_m: null,
  foam_m: null,
  detach_rad: null,
  words: null,
  clip: null,
  from_s: null,
  to_s: null,
  place,
  ...more,
});

const step = (rpm: number, direction: Direction, from_s: number): FlowStep => ({
  step: { outputSpeed_rad_s: speed_rad_s(rpm), direction },
  name: `${rpm} rpm ${direction}`,
  from_s,
  to_s: from_s + 90,
  sump_K: null,
  level_z_m: null,
  swing_m: null,
  steady: true,
  probeAbove: false,
  grades: null,
  observations: [],
});

/**
 * Holds of 90 s at 60 rpm from 43.4 s of the log, 120 rpm from 153.4 s, 60 rpm down from 263.4 s; the gear stands at
 * 3 700 s. The camera is 7.4 s ahead of the logger: log time = film time − 7.4 s.
 */
export const flow = (clips: readonly TiedClip[], more: Partial<FlowRun> = {}): FlowRun => ({
  steps: [step(60, 'up', 43.4), step(120, 'up', 153.4), step(60, 'down', 263.4)],
  clips,
  settled: {
    stop_s: 3700,
    points: [],
    fit: null,
    before_z_m: null,
    bubbles: [],
    airUntold: null,
  },
  standsFor: null,
  ...more,
});

/** The clip with its pieces on the logger's clock. */
export const tied = (of: Clip, pieces: TiedClip['pieces']): TiedClip => ({ clip: of, ahead_s: 7.4, pieces });
export const uncut: TiedClip['pieces'] = [{ clip_s: 0, to_clip_s: Infinity, offset_s: -7.4 }];

export const run = (more: Partial<Run> = {}): Run => ({
  file: 'hill/runs/F-01.md',
  places: new Map(),
  typed: new Map(),
  body: '',
  shownTo: 'public',
  id: 'F-01',
  trial: 'flow',
  status: 'accepted',
  statusReason: null,
  article: 'P0w',
  oil: 'O1',
  rigState: 'Q1-a',
  refit: 1,
  order: 1,
  started: '2026-03-02T09:10:00+01:00',
  ended: '2026-03-02T09:38:00+01:00',
  operators: ['A', 'B'],
  releasedBy: 'B',
  releasedOn: null,
  fill: {
    basis: 'volume',
    mass_kg: 2.153,
    volume_m3: null,
    temperature_K: 294,
    wait_s: null,
    levelLeft_z_m: null,
    levelRight_z_m: null,
  },
  ambient: { place: 'shielded', start_K: 294, end_K: 294 },
  airflow_m_s: 0,
  tilt_ratio: 0,
  rotation: 'forward',
  zeros: [],
  log: null,
  exclude: [],
  fromRun: null,
  gearState: null,
  clips: [clip()],
  observations: [],
  stills: [],
  settle: [],
  airSample: null,
  ...more,
});
