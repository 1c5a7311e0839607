import { combine, estimate, type Cause, type Part } from '../quantity/estimate.ts';
import { mayAdjust, type Bridge, type Campaign } from '../trial/campaign.ts';
import type { Cell } from '../trial/derived.ts';
import { cellKey, type Group, type Reduced } from './group.ts';
import type { Celled } from './repeated.ts';
import * as texts from './texts-bridging.ts';

/** Fewer runs of the baseline on a side say too little of a shift to take it off (common practice, no source). */
const leastToAdjust = 3;

/**
 * Two results of one refit each differ by r = 2.8·s_r at most in 19 of 20 cases; two means of n₁ and n₂ by r·√[(1/n₁ + 1/n₂)/2].
 *
 * source  ISO 5725-6:1994, 4.1.4 and 4.2 (critical difference of two means under repeatability); the factor of ISO 5725-2
 */
export const repeatabilityLimit = (s: number, n1 = 1, n2 = 1): number => 2.8 * s * Math.sqrt((1 / n1 + 1 / n2) / 2);

/**
 * Whether the runs of a later campaign may stand beside those of the first: the shift of the baseline against what its own
 * repeats allow. In a joint table values stay as measured, and each run of the campaign carries a term that all of them
 * share: the doubt of the shift, and no less than the shift itself, since it is not taken off.
 */
export function bridged(of: {
  readonly campaign: Campaign;
  readonly table: Pick<Group, 'trial' | 'quantity' | 'at'>;
  /** Runs of the first campaign and of this one, all cells. */
  readonly before: readonly Reduced[];
  readonly after: readonly Reduced[];
  readonly isBase: (cell: Cell) => boolean;
  /** Of one refit; null where it is not known. */
  readonly scatter: { readonly s: number; readonly dof: number } | null;
  /** Repeats are bracketed by the baseline; a loaded run each is not. */
  readonly bracketed: boolean;
}): Bridge {
  const { campaign, scatter } = of;
  const { trial, quantity, at } = of.table;
  const baseOf = (list: readonly Reduced[]): Reduced[] => list.filter(({ run }) => of.isBase(run.cell));
  const [first, again] = [baseOf(of.before), baseOf(of.after)];
  const [before, after] = [meanOf(first), meanOf(again)];
  const known = { campaign: campaign.id, trial, quantity, at, before, after, scatter };
  if (before === null || after === null)
    return {
      ...known,
      ...{ outcome: 'separate', shift: null, u: null, limit: null, term: null },
      why: after === null ? texts.notRunAgain(campaign.id) : texts.notRunBefore(campaign.id),
    };
  const shift = after.mean - before.mean;
  const [n1, n2] = [first.length, again.length];
  const u = scatter === null ? null : scatter.s * Math.sqrt(1 / n1 + 1 / n2);
  const limit = scatter === null ? null : repeatabilityLimit(scatter.s, n1, n2);
  const inAll = { ...known, shift, u, limit, term: null };
  const stray = outOfOrder(of, again);
  if (stray !== null) return { ...inAll, outcome: 'separate', why: stray };
  if (u === null || limit === null) return { ...inAll, outcome: 'separate', why: texts.noScatter };
  if (Math.abs(shift) <= limit)
    return { ...inAll, outcome: 'joint', term: Math.max(u, Math.abs(shift)), why: texts.within };
  if (campaign.bridge === 'separate') return { ...inAll, outcome: 'separate', why: texts.beyond };
  if (!mayAdjust(campaign)) return { ...inAll, outcome: 'separate', why: texts.chosenLate };
  if (Math.min(n1, n2) < leastToAdjust)
    return { ...inAll, outcome: 'separate', why: texts.tooFewToAdjust(leastToAdjust) };
  return { ...inAll, outcome: 'adjusted', why: texts.beyondAdjusted };
}

/** Why the baseline did not stand first, or not last, among the runs of the campaign; null where it did. */
function outOfOrder(
  of: { campaign: Campaign; after: readonly Reduced[]; bracketed: boolean },
  again: readonly Reduced[],
): string | null {
  const orders = again.map(({ run }) => run.order);
  const others = of.after.filter((r) => !again.includes(r)).map(({ run }) => run);
  const early = others.find(({ order }) => order < Math.min(...orders));
  const late = others.filter(({ order }) => order > Math.max(...orders)).sort((a, b) => b.order - a.order)[0];
  if (early !== undefined) return texts.notFirst({ campaign: of.campaign.id, run: early.run });
  if (of.bracketed && late !== undefined) return texts.notLast({ campaign: of.campaign.id, run: late.run });
  return null;
}

/**
 * Cells of one table made of those of its campaigns: a cell that was run in several is the mean of all its runs. Where the
 * shift is taken off, the cell of the baseline stays that of the first campaign, and the others are held to it.
 */
export function withCampaigns(
  celled: Celled,
  of: {
    readonly bridges: readonly Bridge[];
    readonly isBase: (cell: Cell) => boolean;
    readonly family: string;
  },
): Celled {
  if (of.bridges.length === 0) return celled;
  const termOf = (campaign: string): string => `campaign:${of.family}:${campaign}`;
  const byCampaign = new Map(of.bridges.map((bridge) => [bridge.campaign, bridge]));
  const baseIn = (campaign: string | null) =>
    celled.cells.find(({ cell }) => of.isBase(cell) && (cell.campaign ?? null) === campaign);
  const held = celled.cells.flatMap((c): Celled['cells'][number][] => {
    const bridge = c.cell.campaign === undefined ? undefined : byCampaign.get(c.cell.campaign);
    if (bridge === undefined) return [c];
    if (bridge.outcome === 'joint') {
      const part: Part = { cause: termOf(bridge.campaign), u: bridge.term ?? 0 };
      return [{ ...c, estimate: estimate(c.estimate.value, [...c.estimate.parts, part]) }];
    }
    const [own, first] = [baseIn(bridge.campaign), baseIn(null)];
    if (own === undefined || first === undefined || c === own) return [];
    const sum = [
      { of: c.estimate, sensitivity: 1 },
      { of: own.estimate, sensitivity: -1 },
      { of: first.estimate, sensitivity: 1 },
    ];
    return [{ ...c, estimate: combine(sum.reduce((all, t) => all + t.sensitivity * t.of.value, 0), sum) }];
  });
  return {
    ...celled,
    cells: pooled(held),
    causes: [
      ...celled.causes,
      ...of.bridges.flatMap(({ campaign, outcome, scatter }): Cause[] =>
        outcome !== 'joint'
          ? []
          : [
              {
                id: termOf(campaign),
                name: texts.termName(campaign),
                ...{ kind: 'offset', distribution: 't', scope: 'rig-state' },
                dof: scatter?.dof ?? Infinity,
                family: `campaign:${of.family}`,
              },
            ],
      ),
    ],
  };
}

/** A cell of the first campaign takes in the runs of its like, each run with the same weight. */
function pooled(cells: Celled['cells']): Celled['cells'] {
  const keyOf = ({ article, oil, fill_m3, tilt_ratio }: Cell): string =>
    cellKey({ article, oil, fill_m3, tilt_ratio });
  const firsts = new Set(cells.filter(({ cell }) => cell.campaign === undefined).map(({ cell }) => keyOf(cell)));
  return cells.flatMap((c) => {
    if (!firsts.has(keyOf(c.cell))) return [c];
    if (c.cell.campaign !== undefined) return [];
    const alike = cells.filter(({ cell }) => keyOf(cell) === keyOf(c.cell));
    if (alike.length === 1) return [c];
    const runs = alike.flatMap((one) => one.runs);
    const terms = alike.map((one) => ({ of: one.estimate, sensitivity: one.runs.length / runs.length }));
    return [{ cell: c.cell, runs, estimate: combine(terms.reduce((all, t) => all + t.sensitivity * t.of.value, 0), terms) }];
  });
}

/** Which tables each campaign joined, by the id of their standings or by quantity and condition. */
export const joinedBy = (bridges: readonly Bridge[], campaign: string): readonly Bridge[] =>
  bridges.filter((bridge) => bridge.campaign === campaign && bridge.outcome !== 'separate');

function meanOf(list: readonly Reduced[]): Bridge['before'] {
  if (list.length === 0) return null;
  return {
    runs: list.map(({ run }) => run.run),
    mean: list.reduce((sum, { estimate: { value } }) => sum + value, 0) / list.length,
  };
}
