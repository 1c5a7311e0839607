import { estimate, type Cause } from '../../../src/quantity/estimate.ts';
import type { At, Cell, DerivedRun, Result } from '../../../src/trial/derived.ts';
import type { Run } from '../../../src/trial/run.ts';
import { celsius } from './fixture-notes.ts';

/** Hand-made results: two causes, of which the first makes 80 % of the variance. */

export const causes: Cause[] = [
  { id: 'refit', name: 'refitting', kind: 'scatter', distribution: 't', dof: 14, scope: 'refit' },
  { id: 'zero', name: 'torque zero', kind: 'offset', distribution: 'rectangular', dof: Infinity, scope: 'run' },
];
export const of = (value: number, u: number) =>
  estimate(value, [
    { cause: 'refit', u },
    { cause: 'zero', u: u / 2 },
  ]);

export const result = (
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
      from: {
        kind: 'log',
        file: 'pan/runs/S-01.csv',
        fromLine: 10,
        from_s: 0,
        to_s: 60,
        toLine: 40,
        channel: 'torque-in',
      },
    },
  ],
  steps: [{ says: 'Net torque is raw torque less the zero', formula: 'T = T_raw − z', value: 1.719, unit: 'N·m' }],
  ...more,
});

export const cellOf = (article: string, fill_m3 = 2.4e-3): Cell => ({ article, oil: 'L1', fill_m3, tilt_ratio: 0 });

export const derived = (of: Run, results: Result[], more: Partial<DerivedRun> = {}): DerivedRun => ({
  run: of.id,
  trial: of.trial,
  cell: cellOf(of.article),
  flow: null,
  rigState: 'M1-a',
  order: of.order,
  startedDay: '2026-05-06',
  clock_s: [1773738300, 1773744720],
  conditions: {
    ambient_K: celsius(20.7),
    airflow_m_s: 4.02,
    level_z_m: -0.0533,
    volume20_m3: 2.401e-3,
    rotation: 'forward',
    outputSpeed_rad_s: null,
    powerOut_W: null,
  },
  ...{ heatSlope_W_K: null, toLoad: null, spinExponent: null },
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
