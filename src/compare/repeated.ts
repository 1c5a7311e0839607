import { writeNumber } from '../quantity/write.ts';
import { estimate, mean, type Cause, type Estimate, type Part } from '../quantity/estimate.ts';
import { groupsWithDrift } from '../statistics/blocks.ts';
import { pooledScatter } from '../statistics/scatter.ts';
import { coverageFactor } from '../statistics/student.ts';
import type { Cell } from '../trial/derived.ts';
import { cellKey, type Group, type Reduced } from './group.ts';
import * as texts from './texts.ts';

/** Cells of one group with their figures, from runs that repeat each other. */
export interface Celled {
  readonly cells: readonly { readonly cell: Cell; readonly estimate: Estimate; readonly runs: readonly Reduced[] }[];
  readonly causes: readonly Cause[];
  readonly repeatability: { readonly s: number; readonly dof: number } | null;
  readonly drift: { readonly slope: number; readonly u: number; readonly separated: boolean } | null;
  readonly notes: readonly string[];
  /** Null when cells may be compared; otherwise why none is. */
  readonly unranked: string | null;
}

/**
 * Scatter from repeats: one number a refit, cell means with one linear drift over the order of runs taken out.
 * What belongs to a run or a refit is inside the scatter between runs; only causes of the whole series are carried beside
 * it, and cancel in differences. Null without a single repeat.
 */
export function repeated(group: Group, isSeriesCause: (id: string) => boolean): Celled | null {
  const { reduced } = group;
  const byCell = new Map<string, Reduced[]>();
  for (const r of reduced) byCell.set(cellKey(r.run.cell), [...(byCell.get(cellKey(r.run.cell)) ?? []), r]);
  const pooled = pooledScatter([...byCell.values()].map((list) => list.map((r) => r.estimate.value)));
  if (pooled === null || pooled.dof < 2) return null;
  const family = `refit:${group.trial}:${group.quantity}:${keyOf(group)}`;
  const fit =
    pooled.dof < 4
      ? ({ ok: false, why: 'fewer than five repeats in all' } as const)
      : groupsWithDrift({
          values: reduced.map((r) => r.estimate.value),
          group: reduced.map((r) => cellKey(r.run.cell)),
          time: reduced.map((r) => r.run.order),
        });
  const s = fit.ok ? { s: fit.s, dof: fit.dof } : pooled;
  const middle = reduced.reduce((sum, r) => sum + r.run.order, 0) / reduced.length;
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
    const meanOrder = list.reduce((sum, r) => sum + r.run.order, 0) / list.length;
    const slope = fit.ok ? fit.drift.slope : 0;
    const parts: Part[] = [
      ...own.parts.filter((p) => isSeriesCause(p.cause)),
      { cause: `scatter:${family}:${key}`, u: s.s / Math.sqrt(list.length) },
      ...(fit.ok ? [{ cause: driftCause.id, u: -(meanOrder - middle) * fit.drift.u }] : []),
    ];
    return { cell: list[0]!.run.cell, runs: list, estimate: estimate(own.value - slope * (meanOrder - middle), parts) };
  });
  return {
    cells,
    unranked: null,
    causes: [
      driftCause,
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
    drift: fit.ok
      ? { ...fit.drift, separated: Math.abs(fit.drift.slope) > coverageFactor(0.95, fit.dof) * fit.drift.u }
      : null,
    notes: [
      texts.repeats({ runs: reduced.length, cells: byCell.size }),
      ...(fit.ok ? [] : [texts.tooFewForDrift(fit.why)]),
    ],
  };
}

const cellWords = (c: Cell): string =>
  `${c.article} ${writeNumber(c.fill_m3 * 1e3, 2)} L ${c.oil}${c.tilt_ratio === 0 ? '' : ' tilted'}`;

const keyOf = (group: Group): string =>
  [
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
    notes: [texts.noRepeat],
    unranked: texts.noRepeat,
  };
}
