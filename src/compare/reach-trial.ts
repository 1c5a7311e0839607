import { inSpan } from '../statistics/rank.ts';
import type { PlannedRun, ReachItem, ReachKind } from '../trial/plan-reach.ts';
import type { TrialKind } from '../trial/plan.ts';
import type { TrialCells } from './reach-article.ts';
import * as texts from './texts-reach.ts';

/** What the trial as a whole can tell: scatter, drift, limits, temperature, airflow. */
export function ofTheTrial(of: TrialCells, order: readonly PlannedRun[]): ReachItem[] {
  const item = (kind: ReachKind, { estimable, why }: Told): ReachItem => ({
    ...{ trial: of.trial, kind, of: '', estimable, why },
    cells: of.cells.map(({ cell }) => cell),
  });
  const ranked = comparedTrials.includes(of.trial);
  return [
    ...(ranked
      ? [
          item('scatter', scatter(of)),
          item('steady drift', steadyDrift(of, order)),
          item('bent drift', bentDrift(of, order)),
        ]
      : []),
    ...(of.trial === 'heat-up' ? [item('limit', limits(of))] : []),
    ...(of.trial === 'spin' ? [item('temperature', temperature(of))] : []),
    ...(of.trial === 'heat-up' ? [item('airflow', { estimable: false, why: texts.oneAirflow })] : []),
  ];
}

interface Told {
  readonly estimable: boolean;
  readonly why: string;
}

/** Trials whose figures are ranked with intervals. */
const comparedTrials: readonly TrialKind[] = ['spin', 'heat-up'];

const extraRuns = (of: TrialCells): number => of.cells.reduce((sum, { cell }) => sum + cell.wanted - 1, 0);

/** Repeats beyond the first run of each cell that measure the scatter of a trial; a loaded run leans on the spin trials below four. */
const enough = (trial: TrialKind): number => (trial === 'spin' ? 2 : 4);

function scatter(of: TrialCells): Told {
  const extra = extraRuns(of);
  const measured = extra >= enough(of.trial);
  const refit = of.plan.repeatUnit === 'refit';
  return {
    estimable: measured && refit,
    why: measured
      ? refit
        ? texts.repeatsOf(extra, of.cells.length)
        : texts.otherUnit(of.plan.repeatUnit)
      : [
          extra === 0 ? texts.onceEach : texts.fewRepeats(extra),
          of.trial === 'heat-up' ? texts.fromSpin : texts.notUsedFor,
        ].join('; '),
  };
}

/** A column of time that the means of the cells do not already span; its scatter needs four repeats to be told from it. */
function steadyDrift(of: TrialCells, order: readonly PlannedRun[]): Told {
  const base = order.filter(({ baseline }) => baseline);
  const extra = extraRuns(of);
  const design = cellColumns(order);
  const apart = order.length > 0 && !inSpan(design, times(order));
  const { start, end } = of.plan.rerun;
  const why = [
    ...(base.length === 0 ? [texts.baselineNotRun] : base.length === 1 ? [texts.baselineOnce] : []),
    ...(base.length > 1 && start === false ? [texts.baselineNotFirst] : []),
    ...(base.length > 1 && (end === false || order.at(-1)?.baseline !== true) ? [texts.baselineNotLast] : []),
    ...(apart && extra >= 4 ? [] : [`${texts.fewRepeats(extra)}; ${texts.driftNeedsFive}`]),
  ];
  return { estimable: why.length === 0, why: why.length === 0 ? texts.driftFrom(extra) : why.join('; ') };
}

function bentDrift(of: TrialCells, order: readonly PlannedRun[]): Told {
  const base = order.filter(({ baseline }) => baseline);
  if (base.length < 2) return { estimable: false, why: base.length === 0 ? texts.baselineNotRun : texts.baselineOnce };
  const { start, middle, end, everyN } = of.plan.rerun;
  const steady = times(order);
  const bent = steady.map((t) => t * t);
  // The middle is what a bend is seen in; the baseline's own runs alone must show it.
  const own = base.map(({ position }) => position);
  const seen = !inSpan(
    [own.map(() => 1), own],
    own.map((p) => p * p),
  );
  const placed = start !== false && end !== false && (middle !== false || everyN !== null);
  const estimable = placed && seen && !inSpan([...cellColumns(order), steady], bent);
  return { estimable, why: estimable ? texts.bends(base.length) : texts.noBend };
}

/** One column a cell: a run belongs to it or not. */
function cellColumns(order: readonly PlannedRun[]): number[][] {
  const cells = [...new Set(order.map(({ cell }) => cell))];
  return cells.map((cell) => order.map((run) => (run.cell === cell ? 1 : 0)));
}

/** From −1 to 1 over the trial. */
function times(order: readonly PlannedRun[]): number[] {
  const half = Math.max(1, order.length - 1) / 2;
  return order.map((_, i) => (i - half) / half);
}

function limits({ plan }: TrialCells): Told {
  const n = plan.limits_K.length;
  return n < 3 ? { estimable: false, why: texts.fewLimits(n) } : { estimable: true, why: texts.limits(n) };
}

function temperature({ plan }: TrialCells): Told {
  const n = plan.temperatures_K.length;
  if (n > 2) return { estimable: true, why: texts.temperatures(n) };
  return { estimable: n === 2, why: n === 2 ? texts.twoTemperatures : texts.oneTemperature };
}
