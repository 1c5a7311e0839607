import { calibration } from '../derive/causes.ts';
import { overallRatio } from '../physics/speeds.ts';
import type { Cause, Estimate } from '../quantity/estimate.ts';
import type { At, Cell, DerivedRun, Result } from '../trial/derived.ts';
import type { Instrument } from '../trial/rig.ts';
import type { SeriesRecord } from '../trial/series.ts';
import type { StressCause, StressInput, StressResult, StressRun } from '../trial/stress.ts';
import { atKey, cellKey } from './group.ts';
import { isRefitGroup } from './celled.ts';

/**
 * What claims and main standings rest on, as plain data: of each run the figures that they ask for, of the rest nothing.
 * Numbers keep ten digits, uncertainties seven.
 */
export function stressInput(
  record: SeriesRecord,
  runs: ReadonlyMap<string, DerivedRun>,
  putBack: ReadonlyMap<string, DerivedRun>,
): StressInput {
  const { series, plan, rig } = record;
  const asked = askedOf(record);
  const all = [...runs.values(), ...putBack.values()];
  const kept = new Map(all.map((run) => [run, run.results.filter((r) => asked(run, r))]));
  const causes = causeList(
    all,
    new Set([...[...kept.values()].flatMap((list) => list.flatMap(idsOf)), ...all.flatMap(slopeIds)]),
  );
  const [ats, cells] = [places<At>(atKey), places<Cell>(cellKey)];
  const runOf = (run: DerivedRun): StressRun => ({
    run: run.run,
    trial: run.trial,
    cell: cells.of(run.cell),
    rigState: run.rigState,
    order: run.order,
    day: run.startedDay,
    clock_s: run.clock_s,
    conditions: rounded(run.conditions),
    counts: run.leftOut === null,
    slope: run.heatSlope_W_K === null ? null : flat(run.heatSlope_W_K, causes.place),
    toLoad: run.toLoad === null ? null : flat(run.toLoad.by_W, causes.place),
    moved: run.findings.some(({ code }) => code === 'ambient-moved'),
    causes: [...new Set(run.causes.flatMap(({ id }) => causes.place.get(id) ?? []))],
    results: (kept.get(run) ?? []).flatMap((r) => resultOf(r, ats.of(r.at), causes.place)),
  });
  const meter = rig.instruments.find((i) => i.measures === 'airflow');
  return {
    series: {
      baseline: series.baseline,
      reference: series.reference,
      tolerance: series.tolerance,
      driftOver: series.driftOver,
      coverage: series.coverage,
      familyLevel: series.familyLevel,
      ...(series.campaigns === undefined ? {} : { campaigns: series.campaigns.map((c) => ({ ...c, why: '' })) }),
      refit_Nm: series.refit_Nm === null ? null : series.refit_Nm * overallRatio(rig),
    },
    plan: plan === null ? null : { factors: plan.factors, loadSpeed_rad_s: plan.load?.outputSpeed_rad_s ?? null },
    airflow: meter === undefined ? null : meterOf(meter),
    bearing_K: bearing_K(record),
    claims: record.claims.map(({ id, clauses }) => ({
      id,
      clauses: clauses.map(({ quantity, at, subject, against, direction, threshold }) => ({
        ...{ quantity, at, subject, against, direction, threshold },
      })),
    })),
    causes: causes.list,
    runs: [...runs.values()].map(runOf),
    putBack: [...putBack.values()].map(runOf),
    ats: ats.list,
    cells: cells.list,
  };
}

/** Spin at the reference speed, at the loaded one and at those of claims, and the figures of a loaded run. */
function askedOf(record: SeriesRecord): (run: DerivedRun, result: Result) => boolean {
  const { series, claims } = record;
  const speeds = [
    series.reference.outputSpeed_rad_s,
    ...claims.flatMap(({ clauses }) => clauses.flatMap(({ at }) => at.outputSpeed_rad_s ?? [])),
  ];
  const near = (speed = NaN): boolean => speeds.some((s) => Math.abs(s - speed) < 1e-6);
  return ({ trial }, { quantity, at }) =>
    trial === 'heat-up'
      ? loadedFigures.has(quantity)
      : trial === 'spin' &&
        quantity === 'spin-power' &&
        (near(at.outputSpeed_rad_s) || isRefitGroup({ quantity, at }, record));
}

const loadedFigures: ReadonlySet<string> = new Set([
  ...['final-rise', 'final-temperature', 'heat-made', 'shed', 'store', 'limit-crossing', 'bearing-rise'],
]);

const slopeIds = ({ heatSlope_W_K, toLoad }: DerivedRun): string[] =>
  [heatSlope_W_K, toLoad?.by_W].flatMap((e) => e?.parts.map(({ cause }) => cause) ?? []);

const idsOf = ({ estimate }: Result): string[] => estimate?.parts.map(({ cause }) => cause) ?? [];

function causeList(
  runs: readonly DerivedRun[],
  used: ReadonlySet<string>,
): { readonly list: readonly StressCause[]; readonly place: ReadonlyMap<string, number> } {
  const known = new Map<string, Cause>();
  for (const run of runs) for (const cause of run.causes) if (used.has(cause.id)) known.set(cause.id, cause);
  const families = places<string>((name) => name);
  return {
    place: new Map([...known.keys()].map((id, i) => [id, i])),
    list: [...known.values()].map(({ kind, distribution, dof, scope, family }) => ({
      ...{ kind, distribution, scope },
      dof: Number.isFinite(dof) ? rounded(dof) : null,
      family: family === undefined ? null : families.of(family),
    })),
  };
}

function resultOf(result: Result, at: number, place: ReadonlyMap<string, number>): StressResult[] {
  const { quantity, estimate, bound } = result;
  if (estimate === null) return bound === null ? [] : [[quantity, at, null, bound.side, rounded(bound.at)]];
  return [[quantity, at, Number(estimate.value.toPrecision(10)), partsOf(estimate, place)]];
}

const flat = (e: Estimate, place: ReadonlyMap<string, number>): readonly [number, readonly number[]] => [
  rounded(e.value),
  partsOf(e, place),
];

const partsOf = ({ parts }: Estimate, place: ReadonlyMap<string, number>): number[] =>
  parts.flatMap(({ cause, u }) => {
    const where = place.get(cause);
    return where === undefined ? [] : [where, Number(u.toPrecision(7))];
  });

/** As an uncertainty of its own: what the meter is, is no business of who reads. */
function meterOf(meter: Instrument): NonNullable<StressInput['airflow']> {
  if (meter.repeat !== null) return { of: 'absolute', u: rounded(meter.repeat) };
  return { of: meter.accuracy.of === 'reading' ? 'reading' : 'absolute', u: rounded(calibration(meter, 1).u) };
}

function bearing_K({ rig }: SeriesRecord): number {
  const column = rig.maps.flatMap((m) => m.columns).find((c) => c.is === 'pinion-bearing' && c.instrument !== null);
  const probe = rig.instruments.find((i) => i.id === column?.instrument);
  return probe === undefined ? 0 : rounded(calibration(probe, 370).u);
}

/** A list without repeats, and the place of each in it. */
function places<T>(key: (item: T) => string): { readonly list: readonly T[]; readonly of: (item: T) => number } {
  const list: T[] = [];
  const known = new Map<string, number>();
  return {
    list,
    of: (item) => {
      const before = known.get(key(item));
      if (before !== undefined) return before;
      known.set(key(item), list.length);
      return list.push(item) - 1;
    },
  };
}

function rounded<T>(value: T): T;
function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(10));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, rounded(inner as unknown)]));
}
