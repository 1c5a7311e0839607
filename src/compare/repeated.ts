import { writeNumber } from '../quantity/write.ts';
import { estimate, mean, type Cause, type Estimate, type Part } from '../quantity/estimate.ts';
import { groupsWithDrift } from '../statistics/blocks.ts';
import { pooledScatter } from '../statistics/scatter.ts';
import { coverageFactor } from '../statistics/student.ts';
import type { Moved } from '../trial/campaign.ts';
import type { DayScatter, Drift, Wander } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import { notBracketed, wanderOf } from './baseline.ts';
import { daysOf } from './days.ts';
import { cellKey, type Group, type Reduced } from './group.ts';
import * as texts from './texts.ts';
import type { TimeBase } from './time-base.ts';

/** Cells of one group with their figures, from runs that repeat each other. */
export interface Celled {
  readonly cells: readonly {
    readonly cell: Cell;
    readonly estimate: Estimate;
    readonly runs: readonly Reduced[];
    /** How it was brought to the first campaign; absent where it was run in that one only. */
    readonly moved?: readonly Moved[];
  }[];
  /** The baseline as later campaigns of the table had it, which no row shows. */
  readonly again?: Celled['cells'];
  readonly causes: readonly Cause[];
  readonly repeatability: { readonly s: number; readonly dof: number } | null;
  readonly drift: Drift | null;
  readonly wander: Wander | null;
  readonly days: DayScatter | null;
  /** Why what follows from them is indicative only. */
  readonly indicative: readonly string[];
  readonly notes: readonly string[];
  /** Null when cells may be compared; otherwise why none is. */
  readonly unranked: string | null;
}

/** How a series compares its repeats. */
export interface Repeating {
  readonly isSeriesCause: (id: string) => boolean;
  readonly isBase: (cell: Cell) => boolean;
  /** Null when no drift is taken out. */
  readonly time: TimeBase | null;
  /** Standard deviation of one refit that the lab knows from elsewhere, in this quantity, SI. */
  readonly lab: number | null;
}

/**
 * Scatter from repeats: one number a refit, cell means with one linear drift over the time base of the series taken out.
 * What belongs to a run or a refit is inside the scatter between runs; only causes of the whole series are carried beside
 * it, and cancel in differences. Null without a single repeat.
 */
export function repeated(group: Group, { isSeriesCause, isBase, time, lab }: Repeating): Celled | null {
  const { reduced } = group;
  const byCell = new Map<string, Reduced[]>();
  for (const r of reduced) byCell.set(cellKey(r.run.cell), [...(byCell.get(cellKey(r.run.cell)) ?? []), r]);
  const keys = reduced.map((r) => cellKey(r.run.cell));
  const pooled = pooledScatter([...byCell.values()].map((list) => list.map((r) => r.estimate.value)));
  if (pooled === null || pooled.dof < 2) return null;
  const family = familyOf(group);
  const at = (r: Reduced): number => time?.of(r.run) ?? 0;
  const fit =
    time === null
      ? ({ ok: false, why: 'the series says so' } as const)
      : pooled.dof < 4
        ? ({ ok: false, why: 'fewer than five repeats in all' } as const)
        : groupsWithDrift({
            values: reduced.map((r) => r.estimate.value),
            group: keys,
            time: reduced.map(at),
          });
  const known = daysOf({ reduced, group: keys, time: fit.ok ? reduced.map(at) : null, family });
  const days = known?.told.separated === true ? known : null;
  const s = days?.within ?? (fit.ok ? { s: fit.s, dof: fit.dof } : pooled);
  const slope = fit.ok ? fit.drift.slope : 0;
  const times = reduced.map(at);
  const middle = times.reduce((sum, t) => sum + t, 0) / reduced.length;
  const driftCause: Cause = {
    id: `drift:${family}`,
    name: 'drift over the series',
    kind: 'offset',
    distribution: 't',
    dof: s.dof,
    scope: 'series',
    family,
  };
  const cells = [...byCell].map(([key, list]) => {
    const own = mean(list.map((r) => r.estimate));
    const meanTime = list.reduce((sum, r) => sum + at(r), 0) / list.length;
    const parts: Part[] = [
      ...own.parts.filter((p) => isSeriesCause(p.cause)),
      { cause: `scatter:${family}:${key}`, u: s.s / Math.sqrt(list.length) },
      ...(fit.ok ? [{ cause: driftCause.id, u: -(meanTime - middle) * fit.drift.u * (s.s / fit.s) }] : []),
      ...(days?.parts(weightsOf({ keys, key, times, along: fit.ok ? meanTime - middle : null })) ?? []),
    ];
    return { cell: list[0]!.run.cell, runs: list, estimate: estimate(own.value - slope * (meanTime - middle), parts) };
  });
  const wander = wanderOf({
    ...residuals(cells, { isBase, of: (r) => r.estimate.value - slope * (at(r) - middle) }),
    lab,
  });
  return {
    cells,
    wander,
    days: known?.told ?? null,
    indicative: notBracketed({ runs: reduced.map((r) => r.run), isBase: ({ cell }) => isBase(cell) }),
    unranked:
      wander?.wandered === true
        ? texts.baselineWandered({ runs: wander.runs, times: wander.s / wander.against })
        : null,
    causes: [
      driftCause,
      ...(days?.causes ?? []),
      ...[...byCell].map(([key, list]): Cause => ({
        id: `scatter:${family}:${key}`,
        name: `scatter of refits, ${cellWords(list[0]!.run.cell)}`,
        kind: 'scatter',
        distribution: 't',
        dof: s.dof,
        scope: 'refit',
        family,
      })),
    ],
    repeatability: s,
    drift:
      fit.ok && time !== null
        ? {
            ...fit.drift,
            over: time.over,
            inAll: fit.drift.slope * spanOf(times),
            separated: Math.abs(fit.drift.slope) > coverageFactor(0.95, fit.dof) * fit.drift.u,
          }
        : null,
    notes: [
      texts.repeats({ runs: reduced.length, cells: byCell.size }),
      ...(fit.ok ? [] : [texts.tooFewForDrift(fit.why)]),
    ],
  };
}

/** How much each run weighs in the mean of its cell at the middle time; `along` is how far the cell lies off that time, null without drift. */
function weightsOf(of: {
  keys: readonly string[];
  key: string;
  times: readonly number[];
  along: number | null;
}): number[] {
  const { keys, key, times, along } = of;
  const own = (k: string): number[] => times.filter((_, i) => keys[i] === k);
  const middles = new Map([...new Set(keys)].map((k) => [k, own(k).reduce((a, b) => a + b, 0) / own(k).length]));
  const off = times.map((t, i) => t - middles.get(keys[i]!)!);
  const length2 = off.reduce((sum, x) => sum + x * x, 0);
  return off.map(
    (x, i) =>
      (keys[i] === key ? 1 / own(key).length : 0) - (along === null || length2 === 0 ? 0 : (along * x) / length2),
  );
}

/** What the runs lie off the fitted mean of their cell, the baseline's apart. The drift takes its degree from the others. */
function residuals(
  cells: Celled['cells'],
  how: { isBase: (cell: Cell) => boolean; of: (r: Reduced) => number },
): { own: number[]; others: number[]; othersDof: number } {
  const off = (c: Celled['cells'][number]): number[] => c.runs.map((r) => how.of(r) - c.estimate.value);
  const others = cells.filter((c) => !how.isBase(c.cell));
  const repeats = others.reduce((sum, c) => sum + c.runs.length - 1, 0);
  return {
    own: cells.filter((c) => how.isBase(c.cell)).flatMap(off),
    others: others.flatMap(off),
    othersDof: repeats - 1,
  };
}

const spanOf = (list: readonly number[]): number => Math.max(...list) - Math.min(...list);

const cellWords = (c: Cell): string =>
  `${c.article} ${writeNumber(c.fill_m3 * 1e3, 2)} L ${c.oil}${c.tilt_ratio === 0 ? '' : ' tilted'}${c.campaign === undefined ? '' : ` in ${c.campaign}`}`;

const familyOf = (group: Group): string => `refit:${group.trial}:${group.quantity}:${keyOf(group)}`;

const keyOf = (group: Group): string =>
  [
    group.campaign,
    group.at.outputSpeed_rad_s?.toFixed(3),
    group.at.sump_K === 'own' ? 'own' : group.at.sump_K?.toFixed(1),
    group.at.limit_K?.toFixed(1),
  ]
    .filter((x) => x !== undefined)
    .join(',');

/** Cells with their own figures alone: no repeat anywhere and no scatter known from elsewhere, so nothing is compared. */
export function alone(group: Group): Celled {
  const byCell = new Map<string, Reduced[]>();
  for (const r of group.reduced) byCell.set(cellKey(r.run.cell), [...(byCell.get(cellKey(r.run.cell)) ?? []), r]);
  return {
    cells: [...byCell.values()].map((list) => ({
      cell: list[0]!.run.cell,
      runs: list,
      estimate: mean(list.map((r) => r.estimate)),
    })),
    causes: [],
    repeatability: null,
    drift: null,
    wander: null,
    days: null,
    indicative: [],
    notes: [texts.noRepeat],
    unranked: texts.noRepeat,
  };
}
