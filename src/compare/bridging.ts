import { combine, difference } from '../quantity/estimate.ts';
import { mayAdjust, type Bridge, type Campaign } from '../trial/campaign.ts';
import type { Standing } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import { atKey, cellKey, type Group, type Reduced } from './group.ts';
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
 * repeats allow. Within it there is one table; beyond it there are two, unless the series said beforehand that the shift is
 * taken off all the same.
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
      ...{ outcome: 'separate', shift: null, u: null, limit: null },
      why: after === null ? texts.notRunAgain(campaign.id) : texts.notRunBefore(campaign.id),
    };
  const shift = after.mean - before.mean;
  const [n1, n2] = [first.length, again.length];
  const u = scatter === null ? null : scatter.s * Math.sqrt(1 / n1 + 1 / n2);
  const limit = scatter === null ? null : repeatabilityLimit(scatter.s, n1, n2);
  const inAll = { ...known, shift, u, limit };
  const stray = outOfOrder(of, again);
  if (stray !== null) return { ...inAll, outcome: 'separate', why: stray };
  if (u === null || limit === null) return { ...inAll, outcome: 'separate', why: texts.noScatter };
  if (Math.abs(shift) <= limit) return { ...inAll, outcome: 'joint', why: texts.within };
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
 * Cells of one table made of those of its campaigns. The campaign term, which is what the baseline moved by, is taken off the
 * cells of the campaign, each with the doubt of both baselines: within a campaign it cancels, between two it does not. The
 * baseline itself stays that of the first campaign, and so does every cell that was run in that one only.
 *
 * source  least squares of value = cell + campaign with the baseline as the one cell that both have
 */
export function withCampaigns(
  celled: Celled,
  of: { readonly bridges: readonly Bridge[]; readonly isBase: (cell: Cell) => boolean },
): Celled {
  const joined = new Set(of.bridges.map(({ campaign }) => campaign));
  const baseIn = (campaign: string | undefined) =>
    celled.cells.find(({ cell }) => of.isBase(cell) && cell.campaign === campaign);
  const first = baseIn(undefined);
  if (joined.size === 0 || first === undefined) return celled;
  const held = celled.cells.flatMap((c): Celled['cells'][number][] => {
    const { campaign } = c.cell;
    const own = campaign !== undefined && joined.has(campaign) ? baseIn(campaign) : undefined;
    if (campaign === undefined || own === undefined) return [c];
    if (c === own) return [];
    const shift = difference(own.estimate, first.estimate);
    const runs = [...own.runs, ...first.runs].map(({ run }) => run.run);
    return [{ ...c, estimate: difference(c.estimate, shift), moved: [{ campaign, by: -shift.value, runs }] }];
  });
  return {
    ...celled,
    cells: pooled(held),
    again: celled.cells.filter(
      ({ cell }) => of.isBase(cell) && cell.campaign !== undefined && joined.has(cell.campaign),
    ),
  };
}

/** A cell of the first campaign takes in the runs of its like, each run with the same weight. */
function pooled(cells: Celled['cells']): Celled['cells'] {
  const keyOf = ({ article, oil, fill_m3, tilt_ratio }: Cell): string => cellKey({ article, oil, fill_m3, tilt_ratio });
  const firsts = new Set(cells.filter(({ cell }) => cell.campaign === undefined).map(({ cell }) => keyOf(cell)));
  return cells.flatMap((c) => {
    if (!firsts.has(keyOf(c.cell))) return [c];
    if (c.cell.campaign !== undefined) return [];
    const alike = cells.filter(({ cell }) => keyOf(cell) === keyOf(c.cell));
    if (alike.length === 1) return [c];
    const runs = alike.flatMap((one) => one.runs);
    const terms = alike.map((one) => ({ of: one.estimate, sensitivity: one.runs.length / runs.length }));
    const value = terms.reduce((all, t) => all + t.sensitivity * t.of.value, 0);
    const moved = alike.flatMap((one) => one.moved ?? []);
    return [{ cell: c.cell, runs, estimate: combine(value, terms), moved }];
  });
}

/** What brought rows of later campaigns into this table; empty where all of them are of one. */
export const joinsOf = (
  { quantity, at, rows }: Pick<Standing, 'quantity' | 'at' | 'rows'>,
  bridges: readonly Bridge[],
): readonly Bridge[] =>
  bridges.filter(
    (b) =>
      b.outcome !== 'separate' &&
      b.quantity === quantity &&
      atKey(b.at) === atKey(at) &&
      rows.some(({ effect }) => effect?.moved?.some(({ campaign }) => campaign === b.campaign) ?? false),
  );

function meanOf(list: readonly Reduced[]): Bridge['before'] {
  if (list.length === 0) return null;
  return {
    runs: list.map(({ run }) => run.run),
    mean: list.reduce((sum, { estimate: { value } }) => sum + value, 0) / list.length,
  };
}
