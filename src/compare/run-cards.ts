import { density_kg_m3 } from '../physics/density.ts';
import { level_z_m } from '../physics/immersion.ts';
import { pinionSpeed_rad_s, roadSpeed_m_s } from '../physics/speeds.ts';
import type { Article } from '../trial/article.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Oil } from '../trial/oil.ts';
import type { Plan, PlanCell } from '../trial/plan.ts';
import type { PlannedRun } from '../trial/plan-reach.ts';
import type { Rig } from '../trial/rig.ts';
import type { CardStep, RunCard } from '../trial/run-card.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { logging } from './card-logging.ts';
import { doneOf } from './plan-done.ts';
import { plannedRuns } from './plan-order.ts';

/** What a card is made from, as far as the series has come. */
export interface CardInput {
  readonly record: SeriesRecord & { readonly plan: Plan };
  readonly runs: ReadonlyMap<string, DerivedRun>;
}

/**
 * A card for each planned run in the order of the plan. Of a cell that was run twice, the first two places are taken as
 * done; orders and fittings are counted on from the runs there are.
 */
export function runCards({ record, runs }: CardInput): RunCard[] {
  const planned = plannedRuns(record);
  const done = new Map(record.plan.cells.map((cell) => [cell, doneOf(cell, runs.values(), record.series)]));
  const count = counter(record);
  return planned.flatMap((run) => {
    const [article, oil] = [record.articles.get(run.cell.article), record.oils.get(run.cell.oil)];
    if (article === undefined || oil === undefined) return [];
    const isDone = run.time <= (done.get(run.cell) ?? 0);
    const numbers = isDone ? { order: null, refit: null } : count(run.cell);
    return [{ ...run, of: planned.length, done: isDone, ...numbers, ...filled(run, record, { article, oil }) }].map(
      (card): RunCard => ({
        ...card,
        ...turning(run, record),
        ...logging(run, record, article),
        caps: caps(record.rig, article, oil),
      }),
    );
  });
}

/**
 * Next places and fittings: a cool-down keeps the fitting of the heat-up before it. Where a repeat is no refit, whoever runs
 * it knows whether the article came off.
 */
function counter({ runs, plan }: CardInput['record']): (cell: PlanCell) => Pick<RunCard, 'order' | 'refit'> {
  let order = Math.max(0, ...runs.map((run) => run.order));
  const refits = new Map<string, number>();
  for (const run of runs) refits.set(run.article, Math.max(refits.get(run.article) ?? 0, run.refit));
  return ({ article, trial }) => {
    order += 1;
    const refit = Math.max(1, (refits.get(article) ?? 0) + (trial === 'cool-down' ? 0 : 1));
    refits.set(article, refit);
    return { order, refit: plan.repeatUnit === 'refit' ? refit : null };
  };
}

/** m = V₂₀·ρ(20 °C), with the tolerance of the series on litres, and the level that the article's table gives. */
function filled(
  { cell }: PlannedRun,
  { series, runs }: SeriesRecord,
  { article, oil }: { article: Article; oil: Oil },
): Pick<RunCard, 'mass_kg' | 'massTolerance_kg' | 'wait_s' | 'level_z_m'> {
  const density = density_kg_m3({ ...oil, oil_K: 293.15 });
  const rows = article.levelTable?.rows;
  return {
    mass_kg: cell.fill_m3 * density,
    massTolerance_kg: series.tolerance.fill_m3 * density,
    wait_s: [...runs].sort((a, b) => b.order - a.order).find(({ fill }) => fill.wait_s !== null)?.fill.wait_s ?? null,
    level_z_m: rows === undefined ? null : level_z_m({ survey: rows, volume_m3: cell.fill_m3 }),
  };
}

/** Steps go up; behind a window they come down again too. */
function turning({ cell }: PlannedRun, { plan, rig }: CardInput['record']): Pick<RunCard, 'steps' | 'load'> {
  const { rollingRadius_m } = rig;
  const road = (output_rad_s: number): number | null =>
    rollingRadius_m === null ? null : roadSpeed_m_s({ output_rad_s, rollingRadius_m });
  const step = (output_rad_s: number, direction: CardStep['direction']): CardStep => ({
    ...{ output_rad_s, direction },
    pinion_rad_s: pinionSpeed_rad_s({ output_rad_s, teeth: rig }),
    road_m_s: road(output_rad_s),
  });
  const up = plan.steps_rad_s.map((speed) => step(speed, 'up'));
  const down = [...plan.steps_rad_s].reverse().map((speed) => step(speed, 'down'));
  const { load } = plan;
  return {
    steps: cell.trial === 'flow' ? [...up, ...down] : cell.trial === 'spin' || cell.trial === 'check' ? up : [],
    load:
      cell.trial === 'heat-up' && load !== null
        ? { ...step(load.outputSpeed_rad_s, 'up'), powerOut_W: load.powerOut_W }
        : null,
  };
}

function caps({ window }: Rig, article: Article, oil: Oil): RunCard['caps'] {
  const behind = window?.usedOn.includes(article.id) === true ? window.maxSump_K : null;
  return [
    { what: `window, ${window?.material ?? ''}`, limit_K: behind },
    { what: `article ${article.id}`, limit_K: article.maxSump_K },
    { what: `oil ${oil.id}`, limit_K: oil.maxSump_K },
  ].flatMap(({ what, limit_K }) => (limit_K === null ? [] : [{ what, limit_K }]));
}
