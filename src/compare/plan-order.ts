import { seededSource, type Source } from '../statistics/seeded.ts';
import type { Plan, PlanCell, Rerun } from '../trial/plan.ts';
import type { PlannedRun } from '../trial/plan-reach.ts';
import { isBaselineCell, placedCells, sameTilt, trialsOf, type PlacedCell, type Planned } from './plan-cells.ts';

interface Turn {
  readonly placed: PlacedCell;
  readonly time: number;
}

/** Without a seed in the plan the order is drawn from this one, so that it can be drawn again. */
export const seedOf = (plan: Plan): number => plan.seed ?? 1;

/**
 * Every wanted run in the order of the plan: trial by trial, in rounds that hold each cell once, shuffled within the round
 * from the seed; the baseline before, between and after. A cool-down follows the heat-up of its cell.
 */
export function plannedRuns(planned: Planned): PlannedRun[] {
  const { series, plan } = planned;
  const cells = placedCells(planned);
  const isBase = (placed: PlacedCell): boolean => isBaselineCell(placed, series);
  const ordered = trialsOf(cells)
    .filter((trial) => trial !== 'cool-down' || !cells.some(({ cell }) => cell.trial === 'heat-up'))
    .flatMap((trial) => {
      const own = cells.filter(({ cell }) => cell.trial === trial);
      const others = inRounds(
        own.filter((placed) => !isBase(placed)),
        { plan, trial },
      );
      const base = own.filter(isBase).flatMap(turnsOf);
      const turns = bracketed(others, base, plan.rerun);
      return trial === 'heat-up' ? withCoolDowns(turns, cells, planned) : turns;
    });
  return ordered.map(({ placed, time }, i) => ({
    position: i + 1,
    cell: placed.cell,
    time,
    baseline: isBase(placed),
  }));
}

const turnsOf = (placed: PlacedCell): Turn[] =>
  Array.from({ length: placed.cell.wanted }, (_, i) => ({ placed, time: i + 1 }));

/** Round by round, so that no cell has its second run before every other had its first. */
function inRounds(own: readonly PlacedCell[], { plan, trial }: { plan: Plan; trial: string }): Turn[] {
  const rounds = Math.max(0, ...own.map(({ cell }) => cell.wanted));
  return Array.from({ length: rounds }, (_, i) => i + 1).flatMap((round) => {
    const list = own.filter(({ cell }) => cell.wanted >= round);
    const drawn =
      plan.order === 'random'
        ? shuffled(list, seededSource('plan-order', seedOf(plan), trial, round))
        : plan.order === 'latin'
          ? [...list.slice((round - 1) % list.length), ...list.slice(0, (round - 1) % list.length)]
          : list;
    return drawn.map((placed) => ({ placed, time: round }));
  });
}

/**
 * The baseline first and last unless the plan says otherwise, and evenly between, or after every so many of the others. A
 * single run of it comes first, unless it is wanted only at the end.
 */
function bracketed(others: readonly Turn[], base: readonly Turn[], { start, end, everyN }: Rerun): Turn[] {
  const [before, after] = [start === false ? 1 : 0, end === false ? 1 : 0];
  const last = base.length - 1;
  const stretches = Math.max(1, last + before + after);
  const gaps = base.map((_, i) =>
    everyN === null || (i === last && last > 0 && after === 0)
      ? Math.round(((i + before) * others.length) / stretches)
      : Math.min((i + before) * everyN, others.length),
  );
  return Array.from({ length: others.length + 1 }, (_, gap) => [
    ...base.filter((__, i) => gaps[i] === gap),
    ...others.slice(gap, gap + 1),
  ]).flat();
}

/** Each cool-down right behind a heat-up of its cell; one whose cell is not heated comes last. */
function withCoolDowns(turns: readonly Turn[], cells: readonly PlacedCell[], { series }: Planned): Turn[] {
  const same = (a: PlanCell, b: PlanCell): boolean =>
    a.article === b.article && a.oil === b.oil && a.fill_m3 === b.fill_m3 && sameTilt(a, b, series);
  const left = cells.filter(({ cell }) => cell.trial === 'cool-down').flatMap(turnsOf);
  const all = turns.flatMap((turn) => {
    const next = left.findIndex(({ placed }) => same(placed.cell, turn.placed.cell));
    return next < 0 ? [turn] : [turn, ...left.splice(next, 1)];
  });
  return [...all, ...left];
}

/** Fisher and Yates, from the last place down. */
function shuffled<T>(list: readonly T[], source: Source): T[] {
  const out = [...list];
  for (let i = out.length - 1; i > 0; i--) {
    const j = Math.floor(((source.next() + 2 ** 31) / 2 ** 32) * (i + 1));
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
}
