import { estimate } from '../../../src/quantity/estimate.ts';
import type { Cause } from '../../../src/quantity/estimate.ts';
import type { Series } from '../../../src/trial/book.ts';
import type { Cell, DerivedRun } from '../../../src/trial/derived.ts';
import type { Plan } from '../../../src/trial/plan.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { readNotes } from '../../../src/notes/book.ts';
import { asFiles, goodBook } from '../notes/good-book.ts';

export const cell = (of: Partial<Cell> = {}): Cell => ({
  article: 'P0',
  oil: 'O1',
  fill_m3: 2.4e-3,
  tilt_ratio: 0,
  ...of,
});

/** A run reduced to nothing but its conditions. */
export type Some = Omit<Partial<DerivedRun>, 'conditions'> & {
  readonly conditions?: Partial<DerivedRun['conditions']>;
};
export const derived = (of: Some = {}): DerivedRun => ({
  run: 'S-01',
  trial: 'spin',
  cell: cell(),
  rigState: 'Q1-a',
  order: 1,
  startedDay: '2026-03-17',
  clock_s: [1773738300, 1773744720],
  heatSlope_W_K: null,
  toLoad: null,
  spinExponent: null,
  leftOut: null,
  flow: null,
  results: [],
  causes: [],
  windows: [],
  models: [],
  crossings: [],
  traces: [],
  fitted: null,
  remarks: [],
  findings: [],
  ...of,
  conditions: {
    ambient_K: 294,
    airflow_m_s: 0,
    level_z_m: -0.053,
    volume20_m3: 2.4e-3,
    rotation: 'forward',
    outputSpeed_rad_s: null,
    powerOut_W: null,
    ...of.conditions,
  },
});

/** Runs follow each other day by day. */
export const dayOf = (order: number): string => `2026-03-${String(1 + (order % 28)).padStart(2, '0')}`;

/** One refit of an article with its spin power at the reference speed and temperature. */
export const spinRun = (of: {
  article: string;
  order: number;
  watts: number;
  calibration_W?: number;
  readings_W?: number;
}): DerivedRun =>
  derived({
    run: `${of.article}-${of.order}`,
    order: of.order,
    startedDay: dayOf(of.order),
    cell: cell({ article: of.article }),
    results: [
      {
        quantity: 'spin-power',
        at: { outputSpeed_rad_s: (290 * Math.PI) / 30, sump_K: 333.15 },
        estimate: estimate(of.watts, [
          { cause: 'calibration:torque-low', u: of.calibration_W ?? 0 },
          { cause: `readings:${of.article}-${of.order}`, u: of.readings_W ?? 0 },
        ]),
        bound: null,
        class: 'derived from measurement',
        relation: 'spin-power',
        method: 'spin',
        notes: [],
        given: [],
        steps: [],
      },
    ],
  });

export const calibrationCause: Cause = {
  id: 'calibration:torque-low',
  name: 'calibration of torque-low',
  kind: 'offset',
  distribution: 'normal',
  dof: Infinity,
  scope: 'series',
};

const notes = readNotes(asFiles(goodBook)).series[0]!;
export const record: SeriesRecord = { ...notes, logs: new Map() };
export const series: Series = notes.series;
/** Its factors are article and fill. */
export const plan: Plan = notes.plan!;
export const rig = notes.rig;
