import type { PlanReach, ReachItem } from '../trial/plan-reach.ts';
import { placedCells, trialsOf, type Planned } from './plan-cells.ts';
import { plannedRuns } from './plan-order.ts';
import { againstBaseline } from './reach-article.ts';
import { byFill, byOil } from './reach-squares.ts';
import { ofOneArticle } from './reach-one.ts';
import { ofTheTrial } from './reach-trial.ts';

/**
 * Which effects the planned cells can tell apart, and which not, kind of trial by kind of trial. An effect counts as told
 * apart when the plan holds the very cells that a comparison would take, within the tolerances of the series; where it does
 * not, the rank of the design says what the effect goes with.
 */
export function planReach(planned: Planned): PlanReach {
  const cells = placedCells(planned);
  const order = plannedRuns(planned);
  return {
    items: trialsOf(cells).flatMap((trial): ReachItem[] => {
      const own = { ...planned, trial, cells: cells.filter(({ cell }) => cell.trial === trial) };
      return [
        ...againstBaseline(own),
        ...ofOneArticle(own),
        ...byFill(own),
        ...byOil(own),
        ...ofTheTrial(
          own,
          order.filter(({ cell }) => cell.trial === trial),
        ),
      ];
    }),
  };
}
