import type { Figure } from '../ledger/figure.ts';
import { litres, rpm } from '../ledger/ids.ts';
import type { Cell } from '../trial/derived.ts';
import type { Effect } from '../trial/compared.ts';
import type { Run } from '../trial/run.ts';
import { cellDetail, cellFigures, cited, figureNamed, runFigures } from './cite.ts';
import { flowSheets, isGraded, sameStep, stepFigure, type FlowSheet } from './flow-steps.ts';
import { gradeText, whyNotUsable } from './grade-words.ts';
import type { MarginNote, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { listed } from './spans.ts';
import { derivedOf, type View } from './view.ts';

/** Less loss may mean less oil at the pinion: beside every loss stand Reach and the rise of the pinion bearing. */

/** Quantities that are loss, or a ceiling of one. */
export const isLoss = (quantity: string): boolean =>
  ['spin-power', 'spin-torque', 'heat-made', 'jet-power'].includes(quantity);

/** "Reach at 290 wheel rpm": the reference speed of the series, way up. */
export const reachHead = (view: View): string =>
  `Reach at ${rpm(view.series.reference.outputSpeed_rad_s)}\u00a0${view.speed}`;

/** Reach of one cell: the grade of its flow trial, or why there is none. */
export function reachSpans(view: View, cell: Cell): Span[] {
  const of = flowsFor(view, cell);
  const graded = of.same.filter((sheet) => isGraded(sheet));
  if (graded.length === 0) return [of.same.length > 0 ? 'filmed, not graded' : of.why];
  const unusable = whyNotUsable(view, 'reach');
  return [
    ...listed(graded.map((sheet) => reachOf(view, sheet))),
    ...(unusable === null ? [] : [` (graded, ${unusable})`]),
  ];
}

function reachOf(view: View, { run, flow }: FlowSheet): Span[] {
  const reference = { outputSpeed_rad_s: view.series.reference.outputSpeed_rad_s, direction: 'up' } as const;
  const step = flow.steps.find((each) => sameStep(each.step, reference));
  const figure = stepFigure(view, run.id, 'reach', reference);
  if (figure !== undefined) return [cited(view, figure)];
  const grade = step?.grades?.reach;
  if (grade === undefined || grade.how === 'not graded') return ['not graded at this speed'];
  return [grade.how === 'differ' ? `${gradeText(grade)}, open between observers` : gradeText(grade)];
}

/** Flow trials of a cell behind the window copies of its article too; without one, what stands nearest says why. */
function flowsFor(view: View, cell: Cell): { readonly same: readonly FlowSheet[]; readonly why: string } {
  const worn = new Set(
    [...view.articles.values()]
      .filter(
        ({ id, role, standsInFor }) =>
          id === cell.article || (role === 'window_copy' && standsInFor.includes(cell.article)),
      )
      .map(({ id }) => id)
      .concat(cell.article),
  );
  const seen = flowSheets(view).filter(({ run }) => worn.has(run.article));
  const oil = ({ derived }: FlowSheet): boolean => derived.cell.oil === cell.oil;
  const fill = ({ derived }: FlowSheet): boolean => litres(derived.cell.fill_m3) === litres(cell.fill_m3);
  const tilt = ({ derived }: FlowSheet): boolean =>
    Math.abs(derived.cell.tilt_ratio - cell.tilt_ratio) <= view.series.tolerance.tilt_ratio;
  const same = seen.filter((sheet) => oil(sheet) && fill(sheet) && tilt(sheet));
  const without = (...held: readonly ((sheet: FlowSheet) => boolean)[]): boolean =>
    seen.some((sheet) => held.every((holds) => holds(sheet)));
  const why =
    seen.length === 0
      ? 'not graded'
      : !without(oil)
        ? `not graded with ${cell.oil}`
        : !without(oil, fill)
          ? 'not graded at this fill'
          : 'not graded at this tilt';
  return { same, why };
}

/** What the pinion bearing does in the same cell: its own value, and the difference where one was formed. */
export function bearingSpans(view: View, { cell, effect }: { cell: Cell; effect: Effect | null }): Span[] {
  const [change] = effect ? cellFigures(view, cell, 'bearing-rise', effect.against) : [];
  const own = bearingFigure(view, cell);
  if (own) return [cited(view, own), ...(change ? [' (', cited(view, change), ')'] : [])];
  return change ? [cited(view, change)] : ['not measured'];
}

/** A window copy is never loaded: its bearing is that of the article it stands in for. */
function bearingFigure(view: View, cell: Cell): Figure | undefined {
  const article = view.articles.get(cell.article);
  const loaded = article?.role === 'window_copy' ? article.standsInFor : [cell.article];
  return loaded
    .map((id) => ({ ...cell, article: id }))
    .flatMap((own) => [
      ...cellFigures(view, own, 'bearing-rise'),
      ...view.runs
        .filter(({ id }) => sameCell(derivedOf(view, id)?.cell, own))
        .flatMap(({ id }) => runFigures(view, id, 'bearing-rise')),
    ])[0];
}

/** Both, as cells of a table whose heads name them. */
export const besideCells = (view: View, cell: Cell): readonly Span[][] => [
  reachSpans(view, cell),
  bearingSpans(view, { cell, effect: null }),
];

const sameCell = (a: Cell | undefined, b: Cell): boolean =>
  a !== undefined &&
  a.article === b.article &&
  a.oil === b.oil &&
  litres(a.fill_m3) === litres(b.fill_m3) &&
  a.tilt_ratio === b.tilt_ratio;

/** The note beside a loss of one cell. */
export const besideTheLoss = (view: View, cell: Cell, named = false): MarginNote => ({
  name: 'Beside the loss.',
  text: [
    `${reachHead(view)}${named ? ` in ${cell.article}, ${cellDetail(cell)}` : ''}: `,
    ...reachSpans(view, cell),
    '. Pinion bearing above sump: ',
    ...bearingSpans(view, { cell, effect: null }),
    '.',
    ...seenIn(view, cell),
  ],
});

/** The same of several cells in one note, each once; null without any. */
export function besideTheCells(view: View, cells: readonly Cell[]): MarginNote | null {
  const once = cells.filter((cell, i) => cells.findIndex((other) => sameCell(other, cell)) === i);
  if (once.length === 0) return null;
  const otherOil = ({ oil }: Cell): string => (oil === view.series.baseline.oil ? '' : ` of ${oil}`);
  const each = (of: (cell: Cell) => Span[]): Span[] =>
    listed(once.map((cell) => [`${cell.article} ${cellDetail(cell)}${otherOil(cell)}: `, ...of(cell)]));
  return {
    name: 'Beside the loss.',
    text: [
      `${reachHead(view)}, `,
      ...each((cell) => reachSpans(view, cell)),
      '. Pinion bearing above sump, ',
      ...each((cell) => bearingSpans(view, { cell, effect: null })),
      '.',
    ],
  };
}

/** Which trial the grade was given in, where it is another run than the one on the page. */
function seenIn(view: View, cell: Cell): Span[] {
  const { same } = flowsFor(view, cell);
  const graded = same.filter((sheet) => isGraded(sheet));
  if (graded.length === 0) return [];
  return [' Graded in ', ...listed(graded.map(({ run }) => [runLink(view, run.id)])), ', without load.'];
}

export const besideTheRun = (view: View, run: Run): MarginNote | null => {
  const cell = derivedOf(view, run.id)?.cell;
  return cell === undefined ? null : besideTheLoss(view, cell);
};

/** The note beside a loss on the page of its working; null for what is no loss. */
export function besideTheFigure(view: View, figure: Figure): MarginNote | null {
  if (!isLoss(figure.quantity)) return null;
  const { run } = figure.subject;
  const effect = view.effectOf.get(figure.id);
  const cell =
    run !== undefined
      ? derivedOf(view, run)?.cell
      : (effect?.cell ??
        view.input.compared.cells.find(
          ({ cell: subject, quantity, at }) =>
            figureNamed(view, { subject: { cell: subject }, quantity, at }) === figure,
        )?.cell);
  return cell === undefined ? null : besideTheLoss(view, cell, run === undefined);
}
