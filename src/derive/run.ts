import type { Finding } from '../finding/finding.ts';
import type { Cause, Estimate } from '../quantity/estimate.ts';
import { readInstant } from '../quantity/time.ts';
import { logLogLine, type LogLogLine } from '../physics/viscosity.ts';
import type { Article } from '../trial/article.ts';
import type { Series } from '../trial/book.ts';
import type { Cell, DerivedRun, Result, Trace } from '../trial/derived.ts';
import type { Log } from '../trial/log.ts';
import type { Oil } from '../trial/oil.ts';
import type { Plan } from '../trial/plan.ts';
import type { ChannelKind, Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import { cellOf } from './cell.ts';
import { endsInStep } from './ends-in-step.ts';
import { suspect } from './faults.ts';
import { flagged } from './flags.ts';
import { deriveLevel, type LevelDerived } from './level.ts';
import { levelFindings } from './level-findings.ts';
import { outputSpeed, readingOf, type Reading } from './reading.ts';
import { meanOf } from './readings-of.ts';
import { atThePinion } from './tilted.ts';
import { thinned } from './thinned.ts';
import { probeInAir } from './texts-dose.ts';
import { deriveDose, type DoseDerived } from './thermal-dose.ts';

/** What a run is reduced with. */
export interface RunInput {
  readonly run: Run;
  readonly rig: Rig;
  readonly series: Series;
  readonly plan: Plan | null;
  readonly article: Article | undefined;
  readonly baseline: Article | undefined;
  readonly oil: Oil;
  readonly log: Log | null;
}

/** A run made ready: level and cell known, suspect stretches out, nothing trial-specific yet. */
export interface Ready {
  readonly input: RunInput;
  readonly cell: Cell;
  readonly line: LogLogLine | null;
  readonly level: LevelDerived;
  readonly reading: Reading | null;
  /** Of the whole log, whatever its trial makes of it. */
  readonly dose: DoseDerived;
  readonly leftOut: string | null;
  readonly findings: readonly Finding[];
}

export function makeReady(input: RunInput): Ready {
  const { run, rig, series, plan, article, baseline, oil, log } = input;
  const table = article?.levelTable ?? null;
  const level = deriveLevel({
    run,
    rig,
    oil,
    table,
    baseline: baseline?.levelTable ? { table: baseline.levelTable, volume_m3: series.baseline.fill_m3 } : null,
  });
  const { tolerance, campaigns } = series;
  const cell = cellOf({ run, plan, volume20_m3: level.volume20_m3, tolerance, campaigns });
  const map = rig.maps.find((m) => m.id === run.log?.map);
  const doubt = log === null || map === undefined ? null : suspect({ run, rig, log, map });
  const reading =
    log === null || map === undefined || doubt === null ? null : readingOf({ run, rig, log, map, drop: doubt.drop });
  return {
    input,
    cell,
    line: logLogLine(oil),
    level,
    reading,
    dose:
      log === null || map === undefined || doubt === null
        ? { results: [], causes: [] }
        : deriveDose({ run, rig, log, map, inDoubt: doubt.leftOut !== null }),
    leftOut: leftOut({ run, log, plan, line: logLogLine(oil), doubt: doubt?.leftOut ?? null }),
    findings: [
      ...levelFindings({ run, rig, table, level }),
      ...(doubt?.findings ?? []),
      ...(reading === null || plan === null ? [] : endsInStep(reading, plan)),
    ],
  };
}

/** The run as it leaves this room: what every trial has, with what its own trial adds. */
export function assembled(
  ready: Ready,
  own: {
    results?: readonly Result[];
    causes?: readonly Cause[];
    windows?: DerivedRun['windows'];
    models?: DerivedRun['models'];
    crossings?: DerivedRun['crossings'];
    flow?: DerivedRun['flow'];
    fitted?: Trace | null;
    heatSlope_W_K?: Estimate | null;
    spinExponent?: Estimate | null;
    exponents?: DerivedRun['exponents'];
    noLossEstimate?: DerivedRun['noLossEstimate'];
    remarks?: readonly string[];
    findings?: readonly Finding[];
    leftOut?: string | null;
  },
): DerivedRun {
  const { input, reading, level } = ready;
  const { run } = input;
  const air = reading?.channel('airflow') ?? null;
  const ambient = reading?.channel('ambient') ?? null;
  const out = own.leftOut ?? ready.leftOut;
  // The bath at the pinion is asked where oil is watched, and wherever the axle does not stand level.
  const pinion = run.trial === 'flow' || run.tilt_ratio !== 0 ? atThePinion(run, input.rig, level) : [];
  return {
    run: run.id,
    trial: run.trial,
    cell: ready.cell,
    rigState: run.rigState,
    order: run.order,
    startedDay: run.started.slice(0, 10),
    clock_s: [epoch_s(run.started), epoch_s(run.ended)],
    conditions: {
      ambient_K: (ambient && known(meanOf(ambient))) ?? (run.ambient.start_K + run.ambient.end_K) / 2,
      airflow_m_s: (air && known(meanOf(air))) ?? run.airflow_m_s,
      level_z_m: level.level_z_m,
      volume20_m3: level.volume20_m3,
      rotation: run.rotation,
      ...loadOf(run, reading),
    },
    heatSlope_W_K: out === null ? (own.heatSlope_W_K ?? null) : null,
    toLoad: null,
    spinExponent: out === null ? (own.spinExponent ?? null) : null,
    ...(out !== null || own.exponents === undefined ? {} : { exponents: own.exponents }),
    ...(out !== null || own.noLossEstimate === undefined ? {} : { noLossEstimate: own.noLossEstimate }),
    leftOut: out,
    results: flagged(
      [...level.results, ...pinion, ...doseOf(ready, own.findings), ...(out === null ? (own.results ?? []) : [])],
      { ...input, level },
    ),
    causes: [...level.causes, ...ready.dose.causes, ...(own.causes ?? [])],
    windows: own.windows ?? [],
    models: own.models ?? [],
    crossings: own.crossings ?? [],
    flow: own.flow ?? null,
    traces: reading === null ? [] : tracesOf(reading),
    fitted: own.fitted ?? null,
    remarks: own.remarks ?? [],
    findings: [...ready.findings, ...(own.findings ?? [])],
  };
}

/** A probe that hung in the air at a step did not read the oil. */
const doseOf = ({ dose }: Ready, findings: readonly Finding[] = []): readonly Result[] =>
  findings.some(({ code }) => code === 'probe-above-level')
    ? dose.results.map((result) => ({ ...result, notes: [...result.notes, probeInAir] }))
    : dose.results;

/** The note was read with this very form, so that it cannot be unclear here. */
function epoch_s(written: string): number {
  const read = readInstant(written);
  return read.ok ? read.value.epoch_s : NaN;
}

function leftOut(of: {
  run: Run;
  log: Log | null;
  plan: Plan | null;
  line: LogLogLine | null;
  doubt: string | null;
}): string | null {
  const { run, log, plan, line, doubt } = of;
  if (run.status === 'set aside') return `set aside: ${run.statusReason ?? 'no reason given'}`;
  if (run.status === 'superseded') return 'superseded';
  if (run.status === 'draft') return 'draft';
  if (plan === null) return 'the series has no plan to say which steps and limits were meant';
  if (log === null) return 'its logger file could not be used';
  if (line === null && (run.trial === 'spin' || run.trial === 'heat-up'))
    return 'the two viscosities of its oil give no line';
  return doubt;
}

const known = (m: { mean: number; n: number }): number | null => (m.n === 0 ? null : m.mean);

/** Speed and power of the output shafts of a loaded run, as logged. */
function loadOf(run: Run, reading: Reading | null): Pick<DerivedRun['conditions'], 'outputSpeed_rad_s' | 'powerOut_W'> {
  const speed = reading === null || run.trial !== 'heat-up' ? null : outputSpeed(reading);
  if (reading === null || speed === null) return { outputSpeed_rad_s: null, powerOut_W: null };
  const [left, right] = [reading.channel('torque-out-left'), reading.channel('torque-out-right')];
  const power = left === null ? null : speed.map((w, i) => Math.abs(w * (left[i]! + (right?.[i] ?? 0))));
  return { outputSpeed_rad_s: known(meanOf(speed.map(Math.abs))), powerOut_W: power && known(meanOf(power)) };
}

/** Lines for the charts: what was logged, thinned, suspect stretches shown as they were logged. */
function tracesOf(reading: Reading): Trace[] {
  const shown: readonly ChannelKind[] = [
    'sump',
    'skin',
    'pinion-bearing',
    'ambient',
    'torque-in',
    'output-speed',
    'level',
  ];
  return shown.flatMap((kind) => {
    const values = reading.channel(kind);
    if (values === null || values.every((v) => Number.isNaN(v))) return [];
    return [{ channel: kind, ...thinned(reading.log.time_s, values, 150) }];
  });
}
