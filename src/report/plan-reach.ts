import { effectNames } from '../compare/texts-reach.ts';
import type { TrialKind } from '../trial/plan.ts';
import { reachKinds, type PlanReach, type ReachItem } from '../trial/plan-reach.ts';
import type { Block, Section } from './page.ts';
import { capital, fold, prose, row, section, tableBlock } from './spans.ts';
import { groupBy, type View } from './view.ts';

/** One effect of one kind of trial: of what it can be told apart, and of what not, with the reasons. */
export interface ReachRow {
  readonly effect: string;
  /** "P1 and P2 with O1; P4 with O2"; empty when of nothing. */
  readonly can: string;
  /** "P3 with O1: …", one a reason. */
  readonly cannot: readonly string[];
}

/** A kind of trial after the other, its effects in a fixed order. */
export const reachRows = (
  reach: PlanReach,
): readonly { readonly trial: TrialKind; readonly rows: readonly ReachRow[] }[] =>
  [...groupBy(reach.items, ({ trial }) => trial)].map(([trial, items]) => ({
    trial: trial as TrialKind,
    rows: reachKinds.flatMap((kind): ReachRow[] => {
      const own = items.filter((item) => item.kind === kind);
      return own.length === 0 ? [] : [reachRow(effectNames[kind], own)];
    }),
  }));

function reachRow(effect: string, items: readonly ReachItem[]): ReachRow {
  const can = items.filter(({ estimable }) => estimable);
  const reasons = groupBy(
    items.filter(({ estimable }) => !estimable),
    ({ why }) => why,
  );
  const whole = can.find(({ of }) => of === '');
  return {
    effect,
    can: whole === undefined ? ofWords(can) : capital(whole.why),
    cannot: [...reasons].map(([why, list]) =>
      list.some(({ of }) => of === '') ? capital(why) : `${ofWords(list)}: ${why}`,
    ),
  };
}

/** "P1, P2 and P3 with O1; P4 with O2" */
function ofWords(items: readonly ReachItem[]): string {
  const named = items.map(({ of }) => {
    const [article = '', ...rest] = of.split(' with ');
    return { article, rest: rest.join(' with ') };
  });
  return [...groupBy(named, ({ rest }) => rest)]
    .map(([rest, list]) => {
      const articles = list.map(({ article }) => article);
      const joined =
        articles.length < 2 ? articles.join('') : `${articles.slice(0, -1).join(', ')} and ${articles.at(-1)!}`;
      return rest === '' ? joined : `${joined} with ${rest}`;
    })
    .join('; ');
}

/** What the plan can and cannot separate: the first kind of trial open, the others folded beneath. */
export function reachSection(view: View): Section | null {
  const { reach } = view.input.outlook;
  if (reach === null || reach.items.length === 0) return null;
  const groups = reachRows(reach);
  return section(
    'reach',
    'What this plan can and cannot separate',
    [
      prose(
        'From the cells, the level tables and the tolerances alone, before anything is run: an effect is told apart where the plan holds the very cells that a comparison would take.',
      ),
      ...groups.map(({ trial, rows }, i) =>
        i === 0 ? reachTable(trial, rows) : fold(`The same for ${trial} trials`, reachTable(trial, rows)),
      ),
    ],
    [
      {
        name: 'Cannot is a result.',
        text: ['What goes with something else in every run stays with it, however often it is run.'],
      },
    ],
  );
}

const reachTable = (trial: TrialKind, rows: readonly ReachRow[]): Block =>
  tableBlock(
    `reach-${trial}`,
    ['wide effect', 'wide can be told apart', 'wide cannot, and why'],
    rows.map(({ effect, can, cannot }) =>
      row(effect, can === '' ? '—' : can, cannot.length === 0 ? '—' : `${cannot.join('. ')}.`),
    ),
    `${capital(trial)} trials`,
  );
