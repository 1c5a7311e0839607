import { stressInput } from '../../../src/compare/stress-input.ts';
import { outlookOf } from '../../../src/compare/outlook.ts';
import { buildLedger } from '../../../src/ledger/build.ts';
import { ownAxleOf } from '../../../src/ledger/own-axle.ts';
import type { Finding } from '../../../src/finding/finding.ts';
import type { Audience, SeriesInput } from '../../../src/report/input.ts';
import type { Book } from '../../../src/trial/book.ts';
import type { ComparedSeries, Effect, StandingRow } from '../../../src/trial/compared.ts';
import type { At, DerivedRun, Result } from '../../../src/trial/derived.ts';
import type { GradeKind } from '../../../src/trial/flow.ts';
import type { Plan } from '../../../src/trial/plan.ts';
import type { Rig } from '../../../src/trial/rig.ts';
import type { Run } from '../../../src/trial/run.ts';
import { rpm, celsius, note, book, series, rig, article, oil, plan, run } from './fixture-notes.ts';
import { claims, judgedClaims, split } from './fixture-claims.ts';
import { agreementsOf, flowDerived, flowRuns, media } from './fixture-flow.ts';
import { causes, cellOf, derived, of, result } from './fixture-results.ts';

export { book, rig, run } from './fixture-notes.ts';
export { cellOf } from './fixture-results.ts';

/** A small invented series: a baseline, a shroud, a window copy, one oil, a run of each kind. Numbers are hand-made. */

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
  ...flowRuns,
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
  ...flowDerived,
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
  ...{ trials: null, margin: null, indicative: [] },
  basis: 'same litres',
  runs: ['S-02'],
  againstRuns: ['S-01'],
  notes: [],
});

const power = effect('spin-power', at(300, 60), -28, 4, true);
const rise = effect('final-rise', {}, -1.5, 0.9, false);
const rows = (e: Effect): StandingRow[] => [
  { cell: cellOf('A0'), effect: null, baseline: true, letters: 'b', places: null, lowest: null, refused: [] },
  {
    cell: cellOf('A1'),
    effect: e,
    baseline: false,
    letters: e.separated ? 'a' : 'b',
    places: null,
    lowest: null,
    refused: [],
  },
  {
    cell: cellOf('A1', 3.2e-3),
    effect: null,
    baseline: false,
    letters: '',
    places: null,
    lowest: null,
    refused: ['ambient differs by 4.1 K'],
  },
];

const compared: ComparedSeries = {
  seed: null,
  claims: judgedClaims,
  splits: [split()],
  films: [],
  surfaces: [],
  costs: [],
  depends: [],
  factorials: [],
  agreements: [],
  cells: [
    {
      cell: cellOf('A1'),
      quantity: 'spin-power',
      at: at(300, 60),
      estimate: of(213, 3),
      bound: null,
      runs: ['S-02'],
      notes: [],
      unranked: null,
      indicative: [],
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
    drift: { slope: 0.01, u: 0.02, separated: false, over: 'order', inAll: 0.3 },
    ...{ wander: null, days: null, indicative: [] },
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
  readonly plan?: Partial<Plan>;
  /** Runs as they are, or with changes. */
  readonly runs?: (runs: readonly Run[]) => readonly Run[];
  readonly derived?: (runs: readonly DerivedRun[]) => readonly DerivedRun[];
  /** Kinds of grade on which the observers do not agree well enough. */
  readonly unusable?: readonly GradeKind[];
  readonly agreements?: ComparedSeries['agreements'];
  readonly media?: SeriesInput['media'];
  readonly claims?: SeriesInput['record']['claims'];
  /** What was compared, or with changes. */
  readonly compared?: (compared: ComparedSeries) => ComparedSeries;
}

export function input({
  audience = 'house',
  unitsShown = 'si',
  findings = [],
  rig: changes = {},
  plan: planned = {},
  runs: changeRuns = (list) => list,
  derived: changeDerived = (list) => list,
  unusable = ['wall'],
  agreements = agreementsOf(unusable),
  media: files = media,
  claims: written = claims,
  compared: changeCompared = (made) => made,
}: Variation = {}): SeriesInput {
  const judged = changeCompared({ ...compared, agreements });
  const record = {
    series,
    rig: { ...rig, ...changes },
    plan: { ...plan, ...planned },
    articles: new Map([
      ['A0', article('A0', 'pressed bowl', 'baseline')],
      ['A1', article('A1', 'shroud', 'candidate')],
      ['A0w', article('A0w', 'clear bowl', 'window_copy', { kind: 'window_copy', standsInFor: ['A0'], profile: null })],
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
    runs: changeRuns(runs),
    claims: written,
    claimsNote: null,
    corrections: [],
    objections: [],
    parts: [],
    reports: [],
    questions: [],
    logs: new Map(),
    findings: [],
  };
  const derivedMap = new Map(changeDerived(derivedRuns).map((d) => [d.run, d]));
  const ledger = buildLedger({ record, runs: derivedMap, compared: judged, sums: new Map(), rigShown: true });
  return {
    book: { ...book, unitsShown },
    record,
    derived: derivedMap,
    compared: judged,
    ledger,
    ownAxle: ownAxleOf({ record, runs: derivedMap, compared: judged, ledger }),
    stress: { claims: [], steps: [], input: stressInput(record, derivedMap, new Map()) },
    outlook: outlookOf({ record, runs: derivedMap, compared: judged }),
    sums: new Map(),
    media: files,
    findings,
    reaches: [],
    held: { runs: 0, notes: 0, claims: 0 },
    audience,
  };
}
