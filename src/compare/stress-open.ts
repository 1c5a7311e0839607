import { currentMethod } from '../trial/method.ts';
import type { Cause } from '../quantity/estimate.ts';
import type { Finding, Place } from '../finding/finding.ts';
import type { Series } from '../trial/book.ts';
import type { Claim } from '../trial/claim.ts';
import type { DerivedRun, Result } from '../trial/derived.ts';
import type { Instrument } from '../trial/rig.ts';
import type { StressInput, StressResult, StressRun } from '../trial/stress.ts';
import type { Compared } from './celled.ts';

/** A series as the comparison takes it, from plain data. What no comparison asks for is empty. */
export interface Opened extends Compared {
  readonly claims: readonly Claim[];
  readonly runs: ReadonlyMap<string, DerivedRun>;
  readonly putBack: ReadonlyMap<string, DerivedRun>;
}

export function opened(input: StressInput): Opened {
  const causes = input.causes.map(({ dof, family, ...cause }, i): Cause => ({
    ...cause,
    id: `c${String(i)}`,
    name: '',
    dof: dof ?? Infinity,
    ...(family === null ? {} : { family: `f${String(family)}` }),
  }));
  const byRun = (list: readonly StressRun[]) =>
    new Map(list.map((run) => [run.run, openedRun(run, { ...input, causes })] as const));
  const { plan } = input;
  return {
    series: openedSeries(input),
    plan:
      plan === null
        ? null
        : {
            factors: plan.factors,
            load: plan.loadSpeed_rad_s === null ? null : { outputSpeed_rad_s: plan.loadSpeed_rad_s, powerOut_W: NaN },
          },
    rig: openedRig(input),
    claims: input.claims.map(({ id, clauses }) => ({
      id,
      ...{ sentence: '', by: null, made: '', override: null, place: nowhere },
      clauses: clauses.map((clause) => ({ ...clause, thresholdTyped: null, place: nowhere })),
    })),
    runs: byRun(input.runs),
    putBack: byRun(input.putBack),
  };
}

function openedRun(
  run: StressRun,
  input: Pick<StressInput, 'ats' | 'cells'> & { readonly causes: readonly Cause[] },
): DerivedRun {
  return {
    run: run.run,
    trial: run.trial,
    cell: input.cells[run.cell]!,
    rigState: run.rigState,
    order: run.order,
    startedDay: run.day,
    clock_s: run.clock_s,
    conditions: run.conditions,
    heatSlope_W_K: run.slope === null ? null : { value: run.slope[0], parts: openedParts(run.slope[1], input.causes) },
    toLoad:
      run.toLoad === null
        ? null
        : { ...atPlan, by_W: { value: run.toLoad[0], parts: openedParts(run.toLoad[1], input.causes) } },
    spinExponent: null,
    leftOut: run.counts ? null : 'left out',
    results: run.results.map((result) => openedResult(result, input)),
    causes: run.causes.map((i) => input.causes[i]!),
    findings: run.moved ? [ambientMoved] : [],
    ...{ windows: [], models: [], crossings: [], flow: null, traces: [], fitted: null, remarks: [] },
  };
}

function openedResult(
  result: StressResult,
  { ats, causes }: Pick<StressInput, 'ats'> & { readonly causes: readonly Cause[] },
): Result {
  const [quantity, at] = result;
  const rest = {
    ...{ quantity, at: ats[at]!, class: 'derived from measurement' as const, relation: '', method: '' },
    ...{ notes: [], given: [], steps: [] },
  };
  if (result[2] === null) return { ...rest, estimate: null, bound: { side: result[3], at: result[4] } };
  return { ...rest, estimate: { value: result[2], parts: openedParts(result[3], causes) }, bound: null };
}

const openedParts = (flat: readonly number[], causes: readonly Cause[]) =>
  Array.from({ length: flat.length / 2 }, (_, i) => ({ cause: causes[flat[2 * i]!]!.id, u: flat[2 * i + 1]! }));

/** Only the whole is asked for: its lines stand in the working. */
const atPlan = { byLoad_W: 0, bySpeed_W: 0, torque_ratio: 1, speed_ratio: 1, spin_W: 0, exponent: 1 };
const nowhere: Place = { file: '', line: 1, column: 1 };
const ambientMoved: Finding = { code: 'ambient-moved', level: 'warning', place: nowhere, says: '', why: '', write: '' };

const openedSeries = ({ series }: StressInput): Series => ({
  ...series,
  ...{ id: '', format: 1, title: '', summary: '', question: '', started: '', licence: '', conflicts: '' },
  reference: { ...series.reference, sump_K: [], airflow_m_s: null },
  agreement: { withinOne_ratio: 1, kappa: 1 },
  ...{ margins: null, cautionsBy: null, notTested: [], method: currentMethod, duty: null },
  ...{ file: '', shownTo: 'house', body: '', places: new Map(), typed: new Map() },
});

/** Figures of the lab stand at the output shaft already, so that the ratio is 1. */
function openedRig({ airflow, bearing_K }: StressInput): Compared['rig'] {
  const meter = (
    id: string,
    measures: Instrument['measures'],
    accuracy: Omit<Instrument['accuracy'], 'asWritten'>,
  ) => ({
    ...{ id, measures, what: '', range: null, repeat: null, calibratedOn: null, nextDue: null, checkedOn: null },
    ...{ certificate: null, position: null, tip_z_m: new Map(), zero: 0, zeroPolicy: 'none' as const, shareGroup: id },
    accuracy: { asWritten: '', ...accuracy },
  });
  const bearing = {
    ...{ header: '', is: 'pinion-bearing' as const, unit: null, sign: 1 as const, instrument: 'bearing' },
    ...{ plausible: null, maxStep: null, stuck_s: null },
  };
  return {
    ...{ teethPinion: 1, teethRing: 1, hubReduction: 1 },
    instruments: [
      ...(airflow === null ? [] : [meter('airflow', 'airflow', { of: airflow.of, value: airflow.u, k: 1 })]),
      meter('bearing', 'temperature', { of: 'absolute', value: bearing_K, k: 1 }),
    ],
    maps: [{ columns: [bearing] }],
  };
}
